#include "app/raphe/closing/RetestRow.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/closing/RetestMovement.h"
#include "app/raphe/closing/RetestPlace.h"
#include "app/raphe/closing/RetestTest.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/practice/FormParts.h"

#include <QVBoxLayout>

namespace raphe {

namespace {

class RetestPain : public RetestRow {
public:
    RetestPain(VisitSession &session, RetestItem item)
        : RetestRow(session, std::move(item)),
          m_score(ChoiceRow::ofNumbers(QString::fromStdString(this->item().name), PainScore::highest))
    {
        add(m_score, {});
        connect(m_score, &ChoiceRow::chosen, this, [this] {
            if (isUnread(*m_score))
                return;
            Retested again = m_session.visit().retested;
            again.pain = m_score->value() ? std::optional(PainScore{*m_score->value()}) : std::nullopt;
            m_session.setRetested(again);
        });
    }

protected:
    void showEntry() override
    {
        const auto &pain = m_session.visit().retested.pain;
        m_score->give(pain ? std::optional(pain->value) : std::nullopt);
    }

private:
    ChoiceRow *m_score;
};

} // namespace

RetestRow::RetestRow(VisitSession &session, RetestItem item)
    : m_session(session), m_item(std::move(item)), m_fields(new QVBoxLayout), m_room(new QWidget), m_became(new WrappedLabel)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 4, 0, 8);
    column->setSpacing(4);
    auto *name = new WrappedLabel(capitalised(QString::fromStdString(m_item.name)));
    name->setProperty("role", QStringLiteral("head"));
    column->addWidget(name);
    column->addLayout(m_fields);
    m_became->setTextFormat(Qt::PlainText);
    auto *room = new QVBoxLayout(m_room);
    room->setContentsMargins(0, 0, 0, 0);
    room->addWidget(m_became);
    room->addStretch(1);
    column->addWidget(m_room);
}

void RetestRow::add(QWidget *field, const QString &name)
{
    if (!name.isEmpty())
        m_fields->addWidget(hint(name));
    m_fields->addWidget(field);
    // Hands go down the page without looking up: nothing moves away under them.
    ++m_lines;
    m_room->setMinimumHeight(m_lines * (m_became->fontMetrics().lineSpacing() + 1));
}

bool RetestRow::isUnread(const ChoiceRow &row)
{
    if (row.unread().isEmpty())
        return false;
    m_session.tell(tr("'%1' is no choice here; what was recorded stays.").arg(row.unread()));
    showEntry();
    return true;
}

void RetestRow::addQuiet(const QString &words)
{
    m_fields->addWidget(hint(words));
}

void RetestRow::refresh(const std::vector<RetestPair> &pairs)
{
    showEntry();
    QStringList lines;
    for (const RetestPair &pair : pairs) {
        if (pair.item != m_item)
            continue;
        const QString change =
            tr("before %1, now %2", "two readings").arg(QString::fromStdString(pair.before), QString::fromStdString(pair.now));
        const QString verdict = QString::fromStdString(pair.verdict);
        lines << (pair.quality.empty() ? tr("%1: %2", "two readings, what became of it").arg(capitalised(change), verdict)
                                       : tr("%1 %2: %3", "what was read, two readings, what became of it")
                                             .arg(capitalised(QString::fromStdString(pair.quality)), change, verdict));
    }
    m_became->say(lines.join(QLatin1Char('\n')));
}

RetestRow *makeRetestRow(VisitSession &session, const RetestItem &item)
{
    if (item.isPain())
        return new RetestPain(session, item);
    switch (item.kind) {
    case MomentKind::Finding: return new RetestPlace(session, item);
    case MomentKind::Movement: return new RetestMovement(session, item);
    case MomentKind::Test: break;
    }
    return new RetestTest(session, item);
}

} // namespace raphe
