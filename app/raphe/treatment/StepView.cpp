#include "app/raphe/treatment/StepView.h"

#include "app/raphe/treatment/PlacePicture.h"
#include "core/plan/PlanWords.h"
#include "core/reasoning/Position.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

QString text(const std::string &words)
{
    return QString::fromStdString(words);
}

QString clockOf(int seconds)
{
    constexpr int minute = 60;
    return QStringLiteral("%1:%2").arg(seconds / minute).arg(seconds % minute, 2, 10, QLatin1Char('0'));
}

} // namespace

QString sideAloud(Side side)
{
    switch (side) {
    case Side::Right: return StepView::tr("RIGHT");
    case Side::Left: return StepView::tr("LEFT");
    case Side::Midline: break;
    }
    return StepView::tr("MIDLINE");
}

StepView::StepView(VisitSession &session, const Theme &theme, QWidget *parent)
    : QWidget(parent), m_session(session), m_theme(theme), m_body(new PlacePicture(session.knowledge(), theme))
{
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(24, 16, 24, 16);
    row->setSpacing(24);
    auto *column = new QVBoxLayout;
    column->setSpacing(0);
    row->addLayout(column, 3);
    m_count = line(smallestShare, false);
    m_side = line(0.17, true);
    m_place = line(0.075, true);
    m_technique = line(0.06, false);
    m_position = line(smallestShare, false);
    m_clock = line(0.15, true);
    m_notice = line(smallestShare, true);
    m_next = line(smallestShare, false);
    m_count->setStyleSheet(QStringLiteral("color: %1;").arg(theme.quiet.name()));
    m_next->setStyleSheet(QStringLiteral("color: %1;").arg(theme.quiet.name()));
    for (const auto &[label, share] : m_lines) {
        column->addWidget(label);
        if (label == m_position || label == m_notice)
            column->addStretch(1);
    }
    row->addWidget(m_body, 2);
    m_side->setAccessibleName(tr("Side"));
    m_clock->setAccessibleName(tr("Time worked"));
}

StepView::~StepView() = default;

QLabel *StepView::line(double share, bool isBold)
{
    auto *label = new QLabel;
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setFont(typeface(10, isBold ? QFont::Bold : QFont::Normal));
    m_lines.emplace_back(label, share);
    return label;
}

void StepView::resizeEvent(QResizeEvent *event)
{
    for (const auto &[label, share] : m_lines) {
        QFont font = label->font();
        font.setPixelSize(std::max(12, static_cast<int>(share * height())));
        label->setFont(font);
    }
    QWidget::resizeEvent(event);
}

void StepView::show(const TreatmentRun &run, TreatmentRun::Time now)
{
    const TreatmentLog &log = run.treatment();
    const TreatmentStep *step = run.current();
    if (!step)
        return;
    const bool isWorking = run.phase() == TreatmentRun::Phase::Working;
    const auto number = log.steps.size() + (isWorking ? 0 : 1);
    m_count->setText(tr("Step %1 of %2").arg(number).arg(log.steps.size() + log.ahead.size()));
    m_side->setText(sideAloud(step->place.side));
    const Structure &structure = m_session.knowledge().atlas->at(step->place.structure);
    m_place->setText(text(structure.names.english));
    const Technique *technique = m_session.handTechniques().find(step->technique);
    m_technique->setText(text(technique ? technique->name : step->technique));
    m_position->setText(positionOf(*step, technique));
    const TreatmentStep *next = run.next();
    m_next->setText(next
            ? tr("Then: %1 %2", "side, place")
                  .arg(sideAloud(next->place.side), text(m_session.knowledge().atlas->at(next->place.structure).names.english))
            : tr("Then: the end"));
    m_body->setPlace(step->place);
    tick(run, now);
}

QString StepView::positionOf(const TreatmentStep &step, const Technique *technique) const
{
    if (!step.position)
        return {};
    const QString position = text(positionInWords(*step.position));
    if (technique && technique->throughCloth)
        return tr("%1; through cloth", "a position").arg(position);
    const int cover = m_session.access().coverOf(step.place, *step.position);
    return cover == 0 ? position
                      : tr("%1; uncover: %2", "a position, a part of the body")
                            .arg(position, text(m_session.access().covers()[static_cast<std::size_t>(cover - 1)].name));
}

void StepView::tick(const TreatmentRun &run, TreatmentRun::Time now)
{
    const TreatmentStep *step = run.current();
    if (!step)
        return;
    const bool isReading = run.toRead() != nullptr; // what holds fills the screen until it is read
    for (QWidget *aside : {static_cast<QWidget *>(m_body), static_cast<QWidget *>(m_clock), static_cast<QWidget *>(m_position)})
        aside->setVisible(!isReading);
    const QString worked = clockOf(run.seconds(now));
    m_clock->setText(step->planned > 0 ? tr("%1 of %2", "two times").arg(worked, clockOf(step->planned)) : worked);
    m_clock->setStyleSheet(
        QStringLiteral("color: %1;").arg((run.phase() == TreatmentRun::Phase::Working ? m_theme.ink : m_theme.quiet).name()));
    if (const QString words = noticeOf(run, now); !words.isEmpty())
        notice(words, run.held().empty() ? m_theme.ink : m_theme.tender);
    else if (run.phase() == TreatmentRun::Phase::Ready)
        notice(tr("Ready"), m_theme.accent);
}

void StepView::notice(const QString &words, const QColor &colour)
{
    m_notice->setText(words);
    m_notice->setStyleSheet(QStringLiteral("color: %1;").arg(colour.name()));
}

QString StepView::noticeOf(const TreatmentRun &run, TreatmentRun::Time now) const
{
    if (run.phase() != TreatmentRun::Phase::Ready)
        return {};
    if (const CautionVerdict *v = run.toRead())
        return v->verdict == Verdict::Stop ? tr("STOP: %1 Press to leave it out.").arg(text(v->reason))
                                           : tr("CAUTION: %1 Press when read.").arg(text(v->reason));
    if (run.isBarred())
        return tr("STOPPED. Press to leave it out.");
    if (!run.interruptedAt().empty())
        return tr("Interrupted at %1: the clock stood since then.").arg(text(run.interruptedAt()));
    if (const int rest = run.restLeft(now); rest > 0)
        return tr("Rest: %1 more").arg(clockOf(rest));
    if (!run.held().empty()) // read before at another step
        return tr("MIND: %1").arg(text(run.held().front().reason));
    return {};
}

void StepView::echo(const QString &words)
{
    notice(words, m_theme.accent);
}

} // namespace raphe
