#include "app/raphe/examination/TimelinePanel.h"

#include "app/raphe/practice/FormParts.h"
#include "core/document/VisitMap.h"
#include "core/examination/RecordWords.h"

#include <QLabel>
#include <QListWidget>
#include <QVBoxLayout>

namespace raphe {

TimelinePanel::TimelinePanel(VisitSession &session, QWidget *parent)
    : QWidget(parent), m_session(session), m_list(new QListWidget)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(heading(tr("In the order of time")));
    m_list->setAccessibleName(tr("Timeline of the visit"));
    m_list->setWordWrap(true);
    m_list->setSpacing(3);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    column->addWidget(m_list, 1);
    connect(m_list, &QListWidget::itemActivated, this, [this] { choose(m_list->currentRow()); });
    connect(m_list, &QListWidget::itemClicked, this, [this] { choose(m_list->currentRow()); });
    connect(&session, &VisitSession::findingsChanged, this, &TimelinePanel::refresh);
    connect(&session, &VisitSession::visitOpened, this, &TimelinePanel::refresh);
    refresh();
}

QString TimelinePanel::words(const Moment &moment) const
{
    const Visit &visit = m_session.visit();
    QStringList said;
    const auto isIt = [&](const std::string &id, Side side) { return id == moment.id && side == moment.side; };
    switch (moment.kind) {
    case MomentKind::Finding:
        for (const Finding &f : visit.findings)
            if (isIt(f.place.structure.value, f.place.side))
                said << QString::fromStdString(
                    m_session.knowledge().atlas->spoken(f.place) + ": " + findingInWords(*m_session.knowledge().atlas, f));
        break;
    case MomentKind::Movement:
        for (const Measure &m : visit.measures)
            if (isIt(m.movement, m.side))
                said << QString::fromStdString(inWords(m_session.examination(), m));
        break;
    case MomentKind::Test:
        for (const TestResult &r : visit.tests)
            if (isIt(r.test, r.side))
                said << QString::fromStdString(inWords(m_session.examination(), r));
        break;
    }
    return said.join(QLatin1Char('\n'));
}

void TimelinePanel::refresh()
{
    const bool hadFocus = m_list->hasFocus();
    m_list->clear();
    for (const Moment &moment : m_session.visit().timeline)
        m_list->addItem(tr("%1  %2", "a time of day, what was recorded")
                            .arg(QString::fromStdString(moment.time.substr(0, 5)), words(moment)));
    m_list->setCurrentRow(m_list->count() - 1); // the latest; it scrolls there
    if (hadFocus)
        m_list->setFocus();
}

void TimelinePanel::choose(int row)
{
    const auto &timeline = m_session.visit().timeline;
    if (row < 0 || row >= static_cast<int>(timeline.size()))
        return;
    const Moment moment = timeline[static_cast<std::size_t>(row)];
    if (moment.kind == MomentKind::Finding)
        Q_EMIT placeChosen({StructureId{moment.id}, moment.side});
    else
        Q_EMIT sheetWanted(QString::fromStdString(moment.id));
}

} // namespace raphe
