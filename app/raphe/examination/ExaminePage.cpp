#include "app/raphe/examination/ExaminePage.h"

#include "app/raphe/Settings.h"
#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/examination/MovementRow.h"
#include "app/raphe/examination/SegmentRow.h"
#include "app/raphe/examination/SideHeads.h"
#include "app/raphe/examination/TestRow.h"
#include "app/raphe/practice/FormParts.h"
#include "core/examination/RecordWords.h"
#include "core/safety/Warnings.h"

#include <QApplication>
#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

enum Part { Movements, Joints, Tests };

// A page of a tab: a grid of four columns, names, right, left, and what else.
QGridLayout *gridOn(QWidget *page, int stretchOfNames)
{
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(2, 4, 4, 8);
    auto *grid = new QGridLayout;
    grid->setHorizontalSpacing(10);
    grid->setVerticalSpacing(2);
    grid->setColumnStretch(0, stretchOfNames);
    grid->setColumnStretch(1, 2);
    grid->setColumnStretch(2, 2);
    column->addLayout(grid);
    column->addStretch(1);
    return grid;
}

// Once the page is whole, so that it is shown whole.
void put(QScrollArea *area, QWidget *page)
{
    delete area->takeWidget();
    area->setWidget(page);
    page->show(); // an area that is seen already does not show it
}

} // namespace

ExaminePage::ExaminePage(VisitSession &session, QWidget *parent)
    : QWidget(parent),
      m_session(session),
      m_sheets(new QComboBox),
      m_mode(new QComboBox),
      m_device(new QComboBox),
      m_parts(new QTabWidget),
      m_throughout(new WrappedLabel),
      m_retest(hint()),
      m_counts(new WrappedLabel),
      m_worth(pushButton(tr("What the count is worth")))
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(10, 8, 10, 10);
    column->setSpacing(6);
    column->addWidget(makeHead());
    m_throughout->setProperty("role", QStringLiteral("warning"));
    m_throughout->setTextFormat(Qt::PlainText);
    column->addWidget(m_throughout);
    for (const QString &title : {tr("Movements"), tr("Joint by joint"), tr("Tests")}) {
        QScrollArea *area = scrolled(new QWidget);
        m_areas.push_back(area);
        auto *page = new QWidget;
        auto *rows = new QVBoxLayout(page);
        rows->setContentsMargins(0, 4, 0, 0);
        if (m_areas.size() == Tests + 1) {
            auto *counted = new QHBoxLayout;
            m_counts->setProperty("role", QStringLiteral("head"));
            counted->addWidget(m_counts, 1);
            counted->addWidget(m_worth, 0, Qt::AlignTop);
            rows->addLayout(counted);
        }
        m_heads.push_back(new SideHeads);
        rows->addWidget(m_heads.back());
        rows->addWidget(area, 1);
        m_parts->addTab(page, title);
    }
    m_parts->tabBar()->setAccessibleName(tr("Parts of the sheet"));
    column->addWidget(m_parts, 1);
    column->addWidget(m_retest);
    column->addWidget(hint(tr("Ranges of other people and counts of studies are no diagnosis. Assists a trained practitioner; "
                              "follow local law, scope of practice and licensed care.")));

    connect(m_worth, &QPushButton::clicked, this, &ExaminePage::showStudies);
    connect(&session, &VisitSession::visitOpened, this, [this] {
        if (isVisible() && m_shownFor != m_session.visitId())
            propose();
        else
            refresh();
    });
    connect(&session, &VisitSession::findingsChanged, this, &ExaminePage::refresh);
    connect(&session, &VisitSession::intakeChanged, this, &ExaminePage::refresh);
    connect(m_parts, &QTabWidget::currentChanged, this, &ExaminePage::refresh);
    offerSheets();
}

QWidget *ExaminePage::makeHead()
{
    auto *box = new QWidget;
    auto *row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(heading(tr("Examination")));
    m_sheets->setAccessibleName(tr("Sheet"));
    m_sheets->setMinimumHeight(touchTarget);
    m_sheets->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    row->addWidget(m_sheets);
    connect(m_sheets, &QComboBox::activated, this,
        [this](int index) { showSheet(m_sheets->itemData(index).toString().toStdString()); });
    m_mode->setAccessibleName(tr("Who moves"));
    m_mode->addItems({tr("Active"), tr("Passive")});
    m_mode->setToolTip(tr("Active: the patient alone; passive: your hands. The two are never compared"));
    m_device->setAccessibleName(tr("Measured with"));
    m_device->addItem(tr("not told with what"));
    for (const QString &name :
        {tr("goniometer"), tr("inclinometer"), tr("compass"), tr("phone"), tr("tape"), tr("ruler"), tr("by eye")})
        m_device->addItem(name);
    Settings settings;
    m_mode->setCurrentIndex(static_cast<int>(settings.moveMode()));
    m_device->setCurrentIndex(settings.device() ? static_cast<int>(*settings.device()) + 1 : 0);
    for (QComboBox *combo : {m_mode, m_device}) {
        combo->setMinimumHeight(touchTarget);
        row->addWidget(combo);
        connect(combo, &QComboBox::activated, this, [this] {
            Settings changed;
            changed.setMoveMode(mode());
            changed.setDevice(device());
            refresh();
        });
    }
    row->addStretch(1);
    QPushButton *pass = pushButton(tr("Pass ..."));
    pass->setToolTip(tr("The joints of this sheet by two pedals or keys, spoken, with the hands on the patient (G)"));
    connect(pass, &QPushButton::clicked, this, [this] { Q_EMIT passWanted(placesOfPass()); });
    row->addWidget(pass);
    QPushButton *body = pushButton(tr("To the body"));
    body->setToolTip(tr("Palpation on the body (M)"));
    connect(body, &QPushButton::clicked, this, &ExaminePage::bodyWanted);
    row->addWidget(body);
    return box;
}

MoveMode ExaminePage::mode() const
{
    return static_cast<MoveMode>(m_mode->currentIndex());
}

std::optional<Device> ExaminePage::device() const
{
    const int index = m_device->currentIndex();
    return index > 0 ? std::optional(static_cast<Device>(index - 1)) : std::nullopt;
}

void ExaminePage::begin()
{
    propose();
    m_parts->tabBar()->setFocus();
}

void ExaminePage::propose()
{
    if (m_shownFor != m_session.visitId()) {
        m_shownFor = m_session.visitId();
        m_isChosen = false;
        m_sheet = nullptr; // all rows anew: nothing typed for one patient stays for the next
    }
    offerSheets();
}

// Those of the complaint first; the first is shown, unless another one was chosen by hand.
void ExaminePage::offerSheets()
{
    const Examination &all = m_session.examination();
    auto sheets = proposedSheets(all, *m_session.knowledge().regions, m_session.visit());
    const std::size_t proposed = sheets.size();
    for (const Sheet &sheet : all.sheets)
        if (std::find(sheets.begin(), sheets.end(), &sheet) == sheets.end())
            sheets.push_back(&sheet);
    m_sheets->clear();
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        const QString name = capitalised(QString::fromStdString(sheets[i]->name));
        m_sheets->addItem(
            i < proposed ? tr("%1 - where it hurts", "a sheet").arg(name) : name, QString::fromStdString(sheets[i]->id));
    }
    show(m_isChosen ? *m_sheet : *sheets.front());
}

void ExaminePage::show(const Sheet &sheet)
{
    m_sheets->setCurrentIndex(m_sheets->findData(QString::fromStdString(sheet.id)));
    if (m_sheet == &sheet)
        return refresh();
    m_sheet = &sheet;
    fill();
}

void ExaminePage::showSheet(const std::string &id)
{
    m_isChosen = true;
    show(*m_session.examination().findSheet(id));
}

void ExaminePage::reveal(const std::string &id)
{
    const auto isOn = [&](const Sheet &sheet) {
        for (const auto *list : {&sheet.movements, &sheet.tests, &sheet.nerves, &sheet.cord})
            if (std::find(list->begin(), list->end(), id) != list->end())
                return true;
        return false;
    };
    const auto &sheets = m_session.examination().sheets;
    if (const auto other = std::find_if(sheets.begin(), sheets.end(), isOn); !isOn(*m_sheet) && other != sheets.end())
        showSheet(other->id);
    m_parts->setCurrentIndex(m_session.examination().findMovement(id) ? Movements : Tests);
}

void ExaminePage::fill()
{
    for (auto &rows : m_rows) {
        qDeleteAll(rows);
        rows.clear();
    }
    m_filled.clear();
    m_tests = testsNow();
    for (QScrollArea *area : m_areas)
        put(area, new QWidget);
    refresh();
}

void ExaminePage::fillSeen()
{
    const int part = m_parts->currentIndex();
    if (!m_filled.insert(part).second)
        return;
    switch (part) {
    case Movements: return fillMovements();
    case Joints: return fillSegments();
    default: return fillTests();
    }
}

void ExaminePage::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    refresh();
}

void ExaminePage::add(int part, SheetRow *row, QGridLayout &grid)
{
    row->setParent(this);
    row->addTo(grid);
    m_rows[static_cast<std::size_t>(part)].push_back(row);
}

std::vector<const ExamTest *> ExaminePage::testsNow() const
{
    const Visit suspected = withSuspected(m_session.adviser().rules(), m_session.asSuspected());
    const Calls calls = callsOf(*m_session.knowledge().regions, suspected);
    return testsOf(m_session.examination(), *m_sheet, calls, m_session.visit());
}

void ExaminePage::fillMovements()
{
    auto *page = new QWidget;
    QGridLayout *grid = gridOn(page, 3);
    for (const std::string &id : m_sheet->movements) {
        add(Movements,
            new MovementRow(m_session, *m_session.examination().findMovement(id),
                [this] {
                    return Measuring{mode(), device()};
                }),
            *grid);
    }
    put(m_areas[Movements], page);
    m_heads[Movements]->follow(*grid, *page);
}

void ExaminePage::fillSegments()
{
    auto *page = new QWidget;
    QGridLayout *grid = gridOn(page, 1);
    for (const StructureId &joint : m_sheet->segments)
        add(Joints, new SegmentRow(m_session, joint), *grid);
    put(m_areas[Joints], page);
    m_heads[Joints]->follow(*grid, *page);
}

// Under the words of how the patient lies, so that they turn seldom.
void ExaminePage::fillTests()
{
    auto *page = new QWidget;
    QGridLayout *grid = gridOn(page, 3);
    std::string position;
    for (const ExamTest *test : m_tests) {
        if (test->position != position) {
            position = test->position;
            QLabel *head = hint(capitalised(QString::fromStdString(position)));
            head->setContentsMargins(0, 8, 0, 0);
            grid->addWidget(head, grid->rowCount(), 0, 1, 4);
        }
        add(Tests, new TestRow(m_session, *test), *grid);
    }
    put(m_areas[Tests], page);
    m_heads[Tests]->follow(*grid, *page);
}

void ExaminePage::fillTestsAnew()
{
    if (m_tests == testsNow())
        return;
    const bool hadFocus = m_areas[Tests]->isAncestorOf(QApplication::focusWidget());
    qDeleteAll(m_rows[Tests]);
    m_rows[Tests].clear();
    m_tests = testsNow();
    m_filled.erase(Tests);
    put(m_areas[Tests], new QWidget);
    refresh();
    if (hadFocus)
        m_parts->tabBar()->setFocus();
}

void ExaminePage::refresh()
{
    if (!isVisible())
        return; // what nobody sees is not built
    fillSeen();
    if (m_tests != testsNow()) // later: what has just been answered may be in a row that goes
        QMetaObject::invokeMethod(this, &ExaminePage::fillTestsAnew, Qt::QueuedConnection);
    const Cautions cautions = m_session.cautions();
    const std::set<std::string> throughout = tellThroughout(cautions);
    for (const auto &rows : m_rows)
        for (SheetRow *row : rows) {
            row->refresh();
            row->setThroughout(throughout);
            row->bar(cautions);
        }
    tellRetest();
    tellCounts();
}

// Rules to adapt that hold for the whole patient and bear on testing; their ids.
std::set<std::string> ExaminePage::tellThroughout(const Cautions &cautions)
{
    constexpr std::size_t saidAtMost = 2;
    std::set<std::string> ids;
    QStringList said;
    for (const CautionVerdict &v : cautions.general()) {
        const bool isOfTests = v.concernsAll() || std::any_of(v.actions.begin(), v.actions.end(), [&](const std::string &id) {
            const HandsAction *action = m_session.adviser().rules().findAction(id);
            return action && action->kind == ActionKind::Test;
        });
        if (v.verdict != Verdict::Adapt || !isOfTests || !ids.insert(v.rule).second)
            continue;
        if (ids.size() <= saidAtMost)
            said << QString::fromStdString(v.reason);
    }
    if (ids.size() > saidAtMost)
        said << tr("And %n more under 'What it means'.", "", static_cast<int>(ids.size() - saidAtMost));
    m_throughout->setVisible(!said.isEmpty());
    m_throughout->say(tr("Adapt throughout: %1").arg(said.join(QLatin1Char(' '))));
    return ids;
}

QString ExaminePage::goodRetests() const
{
    constexpr std::size_t namedAtMost = 3;
    const Examination &all = m_session.examination();
    QStringList names;
    for (const std::string &id : m_sheet->retest)
        if (const Movement *movement = all.findMovement(id); movement && names.size() < static_cast<qsizetype>(namedAtMost))
            names << QString::fromStdString(movement->name);
    return names.join(QStringLiteral(", "));
}

void ExaminePage::tellRetest()
{
    const Visit &visit = m_session.visit();
    if (visit.retest) {
        const Movement *movement = m_session.examination().findMovement(visit.retest->id);
        const ExamTest *test = m_session.examination().findTest(visit.retest->id);
        const std::string name = movement ? movement->name : test ? test->name : visit.retest->id;
        m_retest->say(tr("Today's retest: %1.").arg(QString::fromStdString(namedWithSide(name, visit.retest->side))));
        return;
    }
    const bool hurts = std::any_of(visit.measures.begin(), visit.measures.end(), [](const Measure &m) { return m.bringsPain(); });
    m_retest->say(hurts ? tr("Mark one movement that brings the pain as today's retest.")
                        : tr("A movement that brings the pain makes today's retest; good ones here: %1.").arg(goodRetests()));
}

// Of the clusters whose tests all stand on this sheet, once one of them was tried.
std::vector<ClusterCount> ExaminePage::countsNow() const
{
    std::vector<ClusterCount> counts;
    for (const Cluster &cluster : m_session.examination().clusters) {
        const bool isOnSheet = std::all_of(cluster.parts.begin(), cluster.parts.end(), [&](const Cluster::Part &part) {
            return std::find(m_sheet->tests.begin(), m_sheet->tests.end(), part.test) != m_sheet->tests.end();
        });
        const ClusterCount count = countOf(cluster, m_session.visit().tests);
        if (isOnSheet && count.done + count.unable > 0)
            counts.push_back(count);
    }
    return counts;
}

void ExaminePage::tellCounts()
{
    QStringList lines;
    for (const ClusterCount &count : countsNow())
        lines << capitalised(QString::fromStdString(inWords(count))) + QLatin1Char('.');
    m_counts->say(lines.join(QLatin1Char('\n')));
    m_counts->setVisible(!lines.isEmpty());
    m_worth->setVisible(!lines.isEmpty());
}

void ExaminePage::showStudies()
{
    QStringList lines;
    for (const ClusterCount &count : countsNow())
        for (const std::string &study : studiesInWords(count, m_session.examination()))
            lines << capitalised(QString::fromStdString(count.cluster->name)) + QStringLiteral(". ")
                    + QString::fromStdString(study);
    raphe::showStudies(window(), tr("What the counts are worth"), lines);
}

std::vector<Place> ExaminePage::placesOfPass() const
{
    std::vector<Place> out;
    const Atlas &atlas = *m_session.knowledge().atlas;
    for (const StructureId &joint : m_sheet->segments) {
        const auto sides = atlas.sides(atlas.at(joint));
        for (const Side side : {Side::Right, Side::Left, Side::Midline}) {
            const bool isThere = std::find(sides.begin(), sides.end(), side) != sides.end();
            const bool isSpare = side == Side::Midline && sides.size() > 1; // the sides of a segment are felt
            if (isThere && !isSpare)
                out.push_back({joint, side});
        }
    }
    return out;
}

} // namespace raphe
