#include "app/raphe/intake/SafetyBanner.h"

#include "app/paint/TypedText.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/CautionsDialog.h"
#include "app/raphe/intake/WarningsDialog.h"
#include "app/raphe/practice/FormParts.h"
#include "core/record/CautionVerdict.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace raphe {

SafetyBanner::SafetyBanner(VisitSession &session, QWidget *parent)
    : QFrame(parent), m_session(session), m_words(new WrappedLabel), m_read(pushButton({})), m_ask(pushButton({}))
{
    setObjectName(QStringLiteral("banner"));
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(12, 4, 8, 4);
    m_words->setTextFormat(Qt::PlainText);
    m_words->setAccessibleName(tr("What must be respected with this patient"));
    row->addWidget(m_words, 1, Qt::AlignVCenter);
    auto *buttons = new QVBoxLayout;
    buttons->setSpacing(4);
    buttons->addWidget(m_ask);
    buttons->addWidget(m_read);
    row->addLayout(buttons);
    m_ask->setToolTip(tr("Ask for the warning signs (A)"));
    connect(m_ask, &QPushButton::clicked, this, &SafetyBanner::ask);
    connect(m_read, &QPushButton::clicked, this, [this] {
        CautionsDialog(m_session, window()).exec();
        refresh();
    });
    connect(&session, &VisitSession::visitOpened, this, &SafetyBanner::refresh);
    connect(&session, &VisitSession::findingsChanged, this, &SafetyBanner::refresh);
    refresh();
}

void SafetyBanner::setTheme(const Theme &theme)
{
    m_theme = theme;
    refresh();
}

void SafetyBanner::ask()
{
    if (m_session.visitId() == 0)
        return;
    if (m_session.isReadOnly()) {
        Q_EMIT failed(tr("This visit is signed or in error: its answers stay as they are."));
        return;
    }
    WarningsDialog(m_session, window()).exec();
    refresh();
}

void SafetyBanner::refresh()
{
    setVisible(m_session.visitId() != 0);
    if (m_session.visitId() == 0)
        return;
    const auto standing = m_session.standingVerdicts();
    const CautionVerdict *lock = lockAmong(standing);
    QStringList lines;
    if (lock)
        lines << tr("STOP: %1").arg(QString::fromStdString(lock->reason));
    QStringList conditions;
    for (const Condition &condition : m_session.visit().conditions)
        if (const ConditionKind *kind = m_session.adviser().rules().findCondition(condition.id))
            conditions << QString::fromStdString(kind->name);
    if (!conditions.isEmpty())
        lines << capitalised(conditions.join(QStringLiteral("; ")));
    QStringList typed;
    for (const std::string &caution : m_session.visit().cautions)
        typed << QString::fromStdString(caution);
    if (!typed.isEmpty())
        lines << tr("Cautions: %1").arg(typed.join(QStringLiteral("; ")));
    const auto rest = [](std::size_t count) { return count > 1 ? tr(" (and %1 more)").arg(count - 1) : QString(); };
    const auto reminders = m_session.reminders();
    if (!reminders.empty()) { // those that are left stand behind the button
        lines << tr("To confirm: %1%2.", "what speaks for it, how many more")
                     .arg(causeWords(reminders.front()), rest(reminders.size()));
    }
    const std::vector<std::string> &unclear = m_session.record().unclear;
    if (!unclear.empty()) {
        lines << tr("To clarify: the record says '%1'%2. Ask before treating.", "what cannot be, how many more")
                     .arg(QString::fromStdString(unclear.front()), rest(unclear.size()));
    }
    const auto unknown = unwatched(m_session.adviser().rules().feeds(), m_session.record());
    if (!unknown.empty()) {
        constexpr qsizetype shown = 40; // characters of what the record says
        const QString first = QString::fromStdString(unknown.front());
        lines << tr("Not recognised, so that no rule watches it: '%1'%2.", "a medicine or allergy, how many more")
                     .arg(first.size() > shown ? first.left(shown - 1) + QChar(0x2026) : first, rest(unknown.size()));
    }
    for (QString &line : lines)
        line = safelyShown(line);
    const std::size_t toRead = standing.size() + reminders.size();
    m_read->setVisible(toRead > 0);
    m_read->setText(tr("What it means: %1").arg(toRead));
    m_read->setAccessibleName(m_read->text());
    const std::size_t due = m_session.warningsToAsk().size();
    m_words->say(lines.isEmpty() ? tr("No caution is known of this patient.") : lines.join(QLatin1Char('\n')));
    const QString button = due == 0 ? tr("Warning signs: all asked")
        : m_session.isReadOnly()    ? tr("Warning signs: %1 not asked").arg(due)
                                    : tr("Warning signs: %1 to ask").arg(due);
    m_ask->setText(button);
    m_ask->setAccessibleName(button);
    const QColor ground = lock ? m_theme.tender : m_theme.panel;
    const QColor ink = lock ? m_theme.onMark : !standing.empty() ? m_theme.tender : m_theme.ink;
    setStyleSheet(QStringLiteral("QFrame#banner { background: %1; } QFrame#banner > QLabel { color: %2; font-weight: 700; }")
                      .arg(ground.name(), ink.name()));
}

} // namespace raphe
