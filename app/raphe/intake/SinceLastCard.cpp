#include "app/raphe/intake/SinceLastCard.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/record/TextLine.h"
#include "core/record/PlacesSince.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace raphe {

namespace {

template <class E, std::size_t N> std::optional<E> chosenOf(const ChoiceRow &row, const WordTable<E, N> &table)
{
    const auto index = row.value();
    return index ? std::optional(table[static_cast<std::size_t>(*index)].first) : std::nullopt;
}

template <class E> std::optional<int> indexOf(const std::optional<E> &value)
{
    return value ? std::optional(static_cast<int>(*value)) : std::nullopt;
}

} // namespace

SinceLastCard::SinceLastCard(VisitSession &session, QWidget *parent)
    : QWidget(parent),
      m_session(session),
      m_title(new WrappedLabel),
      m_left(new WrappedLabel),
      m_course(new ChoiceRow(tr("Since the last visit"), {tr("Better"), tr("The same"), tr("Worse")})),
      m_reaction(new ChoiceRow(tr("In the two days after it"), {tr("Nothing unusual"), tr("Sore, and it passed"), tr("Bad")})),
      m_reactionTold(new TextBlock(tr("What came of the last treatment, in their words"), 1)),
      m_promiseRows(new QVBoxLayout),
      m_places(new WrappedLabel),
      m_same(pushButton(tr("All the rest is as it was")))
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    m_title->setProperty("role", QStringLiteral("head"));
    m_title->setTextFormat(Qt::PlainText);
    m_places->setTextFormat(Qt::PlainText);
    m_left->setTextFormat(Qt::PlainText);
    column->addWidget(m_title);
    column->addWidget(m_left);
    column->addWidget(m_course);
    column->addLayout(labelled(m_reaction->accessibleName(), m_reaction));
    m_reactionTold->setPlaceholderText(m_reactionTold->accessibleName());
    column->addWidget(m_reactionTold);
    column->addLayout(m_promiseRows);
    auto *last = new QHBoxLayout;
    last->addWidget(m_places, 1);
    last->addWidget(m_same, 0, Qt::AlignBottom);
    column->addLayout(last);
    m_same->setToolTip(
        tr("It hurts where it did, unless other places are marked today, and what was told of the complaint still holds"));

    for (ChoiceRow *row : {m_course, m_reaction})
        connect(row, &ChoiceRow::chosen, this, &SinceLastCard::typed);
    connect(m_reactionTold, &QPlainTextEdit::textChanged, this, &SinceLastCard::typed);
    connect(m_same, &QPushButton::clicked, this, &SinceLastCard::confirmAll);
    connect(&session, &VisitSession::visitOpened, this, &SinceLastCard::showVisit);
    connect(&session, &VisitSession::intakeChanged, this, &SinceLastCard::showVisit);
    connect(&session, &VisitSession::findingsChanged, this, &SinceLastCard::showPlaces);
    showVisit();
}

void SinceLastCard::showVisit()
{
    const auto &before = m_session.lastVisit();
    setVisible(before.has_value());
    if (!before)
        return;
    m_filling = true;
    setEnabled(!m_session.isReadOnly());
    const SinceLast now = m_session.visit().sinceLast.value_or(SinceLast{});
    m_title->say(tr("Since the visit of %1").arg(dayWords(before->date)));
    showLeft();
    m_course->give(indexOf(now.course));
    m_reaction->give(indexOf(now.reaction));
    m_reactionTold->setVisible(now.reaction && *now.reaction != Reaction::None);
    if (now.reactionTold != m_reactionTold->value())
        m_reactionTold->give(now.reactionTold);
    showPromises();
    showPlaces();
    m_filling = false;
}

void SinceLastCard::showLeft()
{
    QStringList lines;
    for (const std::string &line : m_session.visit().focus)
        lines << tr("For today: %1").arg(QString::fromStdString(line));
    if (const auto &call = m_session.lastVisit()->closing.call)
        lines << (call->made.empty() ? tr("A call was planned for %1; nothing is written down of it.").arg(dayWords(call->due))
                                     : tr("Called on %1: %2").arg(dayWords(call->made), QString::fromStdString(call->told)));
    m_left->setVisible(!lines.isEmpty());
    m_left->say(lines.join(QLatin1Char('\n')));
}

void SinceLastCard::showPromises()
{
    const auto promises = m_session.visit().sinceLast.value_or(SinceLast{}).promises;
    const bool areSame = std::equal(promises.begin(), promises.end(), m_promises.begin(), m_promises.end(),
        [](const Promise &promise, const auto &row) { return promise.task == row.first; });
    if (!areSame) {
        while (QLayoutItem *item = m_promiseRows->takeAt(0)) {
            delete item->widget();
            delete item;
        }
        m_promises.clear();
        for (const Promise &promise : promises) {
            const QString task = QString::fromStdString(promise.task);
            auto *words = new WrappedLabel(tr("Promised: %1").arg(task));
            words->setTextFormat(Qt::PlainText);
            auto *kept = new ChoiceRow(tr("Promised: %1").arg(task), {tr("Done"), tr("In part"), tr("Not done")});
            connect(kept, &ChoiceRow::chosen, this, &SinceLastCard::typed);
            m_promiseRows->addWidget(words);
            m_promiseRows->addWidget(kept);
            m_promises.emplace_back(promise.task, kept);
        }
    }
    for (std::size_t i = 0; i < promises.size(); ++i)
        m_promises[i].second->give(indexOf(promises[i].kept));
}

void SinceLastCard::showPlaces()
{
    if (!m_session.lastVisit())
        return;
    const PlacesSince places = placesSince(m_session.visit(), *m_session.lastVisit());
    const auto words = [&](const std::vector<Place> &list) {
        QStringList out;
        for (const Place &place : list)
            out << QString::fromStdString(m_session.knowledge().atlas->spoken(place));
        return out.join(QStringLiteral(", "));
    };
    QStringList lines;
    if (m_session.visit().complaintAt.empty())
        lines << tr("It hurt then: %1.").arg(words(places.gone));
    else {
        if (!places.same.empty())
            lines << tr("Same place: %1.").arg(words(places.same));
        if (!places.fresh.empty())
            lines << tr("New: %1.").arg(words(places.fresh));
        if (!places.gone.empty())
            lines << tr("Gone, or not told today: %1.").arg(words(places.gone));
    }
    m_places->say(m_session.lastVisit()->complaintAt.empty() && lines.size() <= 1 && m_session.visit().complaintAt.empty()
            ? tr("Where it hurt was not marked then.")
            : lines.join(QLatin1Char('\n')));
}

SinceLast SinceLastCard::told() const
{
    SinceLast out;
    out.course = chosenOf(*m_course, courseWords);
    out.reaction = chosenOf(*m_reaction, reactionWords);
    out.reactionTold = m_reactionTold->value();
    for (const auto &[task, kept] : m_promises)
        out.promises.push_back({task, chosenOf(*kept, keptWords)});
    return out;
}

void SinceLastCard::typed()
{
    if (!m_filling)
        m_session.setSinceLast(told());
}

void SinceLastCard::confirmAll()
{
    if (m_session.visit().complaintAt.empty())
        m_session.takeLastPlaces();
    m_session.confirmComplaints();
    Q_EMIT allSame();
}

} // namespace raphe
