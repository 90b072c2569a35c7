#include "app/raphe/intake/PainPanel.h"

#include "app/raphe/BodyPanes.h"
#include "app/raphe/SearchBox.h"
#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/intake/PainWords.h"
#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/practice/FormParts.h"
#include "app/words/ErrorText.h"
#include "core/anatomy/StrokeRaster.h"
#include "core/outcome/DrawingOverlap.h"
#include "core/record/PainMask.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLocale>
#include <QMessageBox>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

// The side of all that is not in the midline; nothing when there are both, or none.
std::optional<Side> onlySide(const std::vector<Place> &places)
{
    std::optional<Side> side;
    for (const Place &place : places) {
        if (place.side == Side::Midline)
            continue;
        if (side && *side != place.side)
            return std::nullopt;
        side = place.side;
    }
    return side;
}

} // namespace

PainPanel::PainPanel(VisitSession &session, QWidget *parent)
    : QWidget(parent),
      m_session(session),
      m_board(new PainBoard(session.knowledge())),
      m_quality(new ChoiceRow(tr("What it feels like"), painQualityNames(), 5)),
      m_intensity(ChoiceRow::ofNumbers(tr("How strong it is here"), PainScore::highest)),
      m_details(new QWidget),
      m_remove(pushButton(tr("Remove"))),
      m_patch(new WrappedLabel),
      m_places(new WrappedLabel),
      m_measures(hint()),
      m_patient(pushButton(tr("The patient marks it ..."))),
      m_confirm(pushButton(tr("Said back and agreed")))
{
    m_board->setPainter(Painter::Practitioner);
    m_board->setMinimumSize(320, 260); // on a small laptop the form stands beside it
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    column->addWidget(makeTools());
    column->addWidget(m_board, 1);
    for (WrappedLabel *label : {m_places, m_measures}) {
        label->setTextFormat(Qt::PlainText);
        column->addWidget(label);
    }
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(m_patient);
    buttons->addStretch(1);
    buttons->addWidget(m_confirm);
    column->addLayout(buttons);
    auto *details = new QVBoxLayout(m_details);
    details->setContentsMargins(4, 0, 8, 6);
    details->setSpacing(4);
    m_patch->setProperty("role", QStringLiteral("head"));
    m_patch->setTextFormat(Qt::PlainText);
    auto *head = new QHBoxLayout;
    head->addWidget(m_patch, 1);
    head->addWidget(m_remove, 0, Qt::AlignTop);
    details->addLayout(head);
    details->addWidget(m_quality);
    details->addWidget(m_intensity);
    connect(m_remove, &QPushButton::clicked, this, [this] { m_board->removeCurrent(); });
    m_confirm->setToolTip(tr("The places were said to the patient in words, with the side, and the patient agreed"));
    m_rest.setSingleShot(true);
    m_rest.setInterval(150);

    connect(m_board, &PainBoard::changed, this, [this] { m_session.setPain(m_board->patches()); });
    connect(m_board, &PainBoard::chosen, this, &PainPanel::showPatch);
    connect(m_board, &PainBoard::refused, this, &PainPanel::refused);
    connect(m_board, &PainBoard::brushChanged, this, [this](double radius) {
        const auto at = std::find(PainBoard::brushes.begin(), PainBoard::brushes.end(), radius);
        m_brush->give(static_cast<int>(at - PainBoard::brushes.begin()));
    });
    connect(m_quality, &ChoiceRow::chosen, this, [this] {
        const auto value = m_quality->value();
        m_board->setQuality(value ? std::optional(painQualityWords[static_cast<std::size_t>(*value)].first) : std::nullopt);
    });
    connect(m_intensity, &ChoiceRow::chosen, this, [this] {
        const auto value = m_intensity->value();
        m_board->setIntensity(value ? std::optional(PainScore{*value}) : std::nullopt);
    });
    connect(m_patient, &QPushButton::clicked, this, &PainPanel::patientWanted);
    connect(m_confirm, &QPushButton::clicked, this, &PainPanel::confirm);
    connect(&m_rest, &QTimer::timeout, this, &PainPanel::measure);
    connect(&session, &VisitSession::visitOpened, this, &PainPanel::showVisit);
    connect(&session, &VisitSession::findingsChanged, this, &PainPanel::showVisit);
    showVisit();
}

// What was told before and what is painted may lie on opposite sides altogether: somebody thought of a mirror.
void PainPanel::confirm()
{
    std::vector<Place> painted;
    for (std::size_t i = 0; i < m_board->patches().size(); ++i)
        for (const PaintedPlace &place : m_board->places(static_cast<int>(i)))
            painted.push_back(place.place);
    const auto told = onlySide(m_session.visit().complaintAt);
    const auto marked = onlySide(painted);
    if (told && marked && *told != *marked) {
        const bool isRight = *marked == Side::Right;
        QMessageBox box(QMessageBox::Question, tr("Left and right"),
            isRight ? tr("It is painted on the RIGHT, and was told to hurt on the LEFT: which is it?")
                    : tr("It is painted on the LEFT, and was told to hurt on the RIGHT: which is it?"),
            QMessageBox::NoButton, this);
        const QAbstractButton *right = box.addButton(tr("On the RIGHT"), QMessageBox::AcceptRole);
        const QAbstractButton *left = box.addButton(tr("On the LEFT"), QMessageBox::AcceptRole);
        box.setDefaultButton(box.addButton(tr("Ask again"), QMessageBox::RejectRole)); // Enter alone decides nothing
        box.exec();
        if (box.clickedButton() != right && box.clickedButton() != left)
            return;
        const bool isAsPainted = (box.clickedButton() == right) == isRight;
        isAsPainted ? m_session.moveComplaintToOtherSide() : m_session.movePainToOtherSide();
    }
    m_session.confirmPain();
}

QWidget *PainPanel::makeTools()
{
    auto *box = new QWidget;
    auto *row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(6);
    m_views = new QComboBox;
    m_views->setAccessibleName(tr("Views to paint on"));
    m_views->setMinimumHeight(touchTarget);
    m_views->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    for (const Arrangement &arrangement : BodyPanes::arrangements())
        m_views->addItem(arrangement.name);
    connect(m_views, &QComboBox::activated, this,
        [this](int index) { m_board->setViews(BodyPanes::arrangements()[static_cast<std::size_t>(index)].panes); });
    m_views->setMinimumContentsLength(8);
    row->addWidget(m_views);
    auto *search = new SearchBox(*m_session.knowledge().atlas);
    search->setAccessibleName(tr("Place to paint on, by its name"));
    search->setPlaceholderText(tr("Type the place, Enter"));
    connect(search, &SearchBox::chosen, this, [this, search](const Place &place) {
        goTo(place);
        search->clear();
    });
    row->addWidget(search, 1);
    m_brush = new ChoiceRow(tr("Brush"), {tr("Fine"), tr("Middle"), tr("Broad")});
    m_brush->give(1);
    connect(m_brush, &ChoiceRow::chosen, this, [this] {
        if (!m_brush->value())
            m_brush->give(1); // there is always a brush
        m_board->setBrush(PainBoard::brushes[static_cast<std::size_t>(*m_brush->value())]);
    });
    row->addWidget(m_brush);
    m_erase = pushButton(tr("Erase"));
    m_erase->setCheckable(true);
    connect(m_erase, &QPushButton::toggled, this, [this](bool on) { m_board->setErasing(on); });
    row->addWidget(m_erase);
    return box;
}

// Onto the skin over what was named.
void PainPanel::goTo(const Place &named)
{
    const Knowledge &k = m_session.knowledge();
    Place place = named;
    if (k.atlas->at(place.structure).kind != Kind::SurfaceRegion)
        if (const auto &region = k.regions->atMark(place.structure))
            place.structure = *region;
    if (m_board->goTo(place)) {
        m_board->paintAtCursor();
        m_board->setFocus();
    } else
        Q_EMIT refused(tr("%1 is drawn on no view.").arg(capitalised(QString::fromStdString(k.atlas->spoken(named)))));
}

void PainPanel::setTheme(const Theme &theme)
{
    m_board->setTheme(theme);
}

void PainPanel::showVisit()
{
    if (m_board->patches() != m_session.visit().pain)
        m_board->setPatches(m_session.visit().pain);
    m_board->setReadOnly(m_session.visitId() == 0 || m_session.isReadOnly());
    for (QWidget *widget : {static_cast<QWidget *>(m_erase), static_cast<QWidget *>(m_patient)})
        widget->setEnabled(!m_board->isReadOnly());
    showPatch();
    m_rest.start();
}

void PainPanel::showPatch()
{
    const int index = m_board->current();
    const bool isThere = index >= 0;
    const bool mayChange = isThere && !m_board->isReadOnly();
    for (QWidget *widget :
        {static_cast<QWidget *>(m_quality), static_cast<QWidget *>(m_intensity), static_cast<QWidget *>(m_remove)})
        widget->setEnabled(mayChange);
    std::optional<int> quality;
    std::optional<int> intensity;
    if (isThere) {
        const PainPatch &patch = m_board->patches()[static_cast<std::size_t>(index)];
        if (patch.quality)
            quality = static_cast<int>(*patch.quality);
        if (patch.intensity)
            intensity = patch.intensity->value;
        m_patch->say(m_board->words(index));
    }
    m_details->setVisible(isThere);
    m_quality->give(quality);
    m_intensity->give(intensity);

    const auto &patches = m_board->patches();
    const auto open = std::count_if(patches.begin(), patches.end(), [](const PainPatch &patch) { return !patch.confirmed; });
    m_confirm->setEnabled(open > 0 && !m_board->isReadOnly());
    m_places->setVisible(!patches.empty());
    m_places->say(
        open > 0 ? tr("Say back: 'You marked %1.'").arg(placeWords()) : tr("Said back and agreed: %1.").arg(placeWords()));
}

// Each place once.
QString PainPanel::placeWords() const
{
    QStringList words;
    for (int i = 0; i < static_cast<int>(m_board->patches().size()); ++i) {
        const QStringList places =
            m_board->places(i).empty() ? QStringList() : m_board->words(i).split(QStringLiteral("; "), Qt::SkipEmptyParts);
        std::copy_if(places.begin(), places.end(), std::back_inserter(words),
            [&](const QString &place) { return !words.contains(place); });
    }
    return words.join(QStringLiteral("; "));
}

void PainPanel::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    measure();
}

// Only where it is seen: the first time takes a moment.
void PainPanel::measure()
{
    if (m_session.visitId() == 0 || !isVisible())
        return;
    if (!m_share) {
        auto share = readEmbeddedBodyShare(*m_session.knowledge().atlas, *m_session.knowledge().body);
        if (!share) {
            m_measures->say(errorText(share.error()));
            return;
        }
        m_share = std::move(share).value();
        m_silhouette = silhouetteMask(*m_session.knowledge().body);
    }
    QStringList lines;
    if (const QString extent = extentWords(); !extent.isEmpty())
        lines << extent;
    if (const QString overlap = overlapWords(); !overlap.isEmpty())
        lines << overlap;
    m_measures->say(lines.join(QLatin1Char('\n')));
}

QString PainPanel::extentWords()
{
    const auto &pain = m_session.visit().pain;
    if (pain.empty())
        return {};
    const auto percent = [](double value) { return QLocale().toString(value, 'f', 1); };
    const SurfaceMask mask = painMask(pain, m_silhouette);
    std::vector<RegionShare> regions = m_share->percentByRegion(mask);
    std::stable_sort(
        regions.begin(), regions.end(), [](const RegionShare &a, const RegionShare &b) { return a.percent > b.percent; });
    constexpr std::size_t most = 3; // the rest is in the words above
    QStringList parts;
    constexpr double least = 0.05; // less reads as 0.0
    for (std::size_t i = 0; i < std::min(most, regions.size()) && regions[i].percent >= least; ++i)
        parts << tr("%1 %2 %", "region, percent")
                     .arg(QString::fromStdString(m_session.knowledge().atlas->spoken(regions[i].region)),
                         percent(regions[i].percent));
    constexpr double almostAll = 80; // percent; our choice
    const double share = m_share->percentOf(mask);
    QString words = tr("%1 % of the body").arg(percent(share));
    if (!parts.isEmpty())
        words += tr(": %1", "regions").arg(parts.join(QStringLiteral(", ")));
    const auto elsewhere =
        std::count_if(pain.begin(), pain.end(), [](const PainPatch &p) { return !SurfaceMask::shows(p.view); });
    if (elsewhere > 0)
        words += tr("; %n patch(es) on other views count in no percent", nullptr, static_cast<int>(elsewhere));
    words += QLatin1Char('.');
    if (share >= almostAll)
        words += tr(" Almost the whole body is marked: is that meant? The ratings, and the worst place, help.");
    return words;
}

QString PainPanel::overlapWords()
{
    const auto &last = m_session.lastVisit();
    if (!last || last->pain.empty())
        return {};
    const QString day = dayWords(last->date);
    if (m_session.visit().pain.empty())
        return tr("Nothing is drawn today, so that it cannot be compared with the drawing of %1.").arg(day);
    const DrawingOverlap overlap = overlapOf(painMask(m_session.visit().pain, m_silhouette), painMask(last->pain, m_silhouette));
    return tr("Beside the drawing of %1: %2").arg(day, QString::fromStdString(inWords(overlap)));
}

} // namespace raphe
