// What can be done with a whole visit: signing, amending, marking as an error, moving, looking at its history.
#include "app/raphe/VisitPanel.h"

#include "app/raphe/patients/PatientsDialog.h"
#include "app/raphe/practice/HistoryDialog.h"

#include <QAction>
#include <QDate>
#include <QInputDialog>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>
#include <QToolButton>

namespace raphe {

void VisitPanel::makeActs()
{
    const auto add = [&](const QString &text, void (VisitPanel::*act)()) {
        QAction *action = m_actsMenu->addAction(text);
        connect(action, &QAction::triggered, this, act);
        return action;
    };
    m_sign = add(tr("Sign"), &VisitPanel::sign);
    m_amend = add(tr("Amend"), &VisitPanel::amend);
    m_call = add(tr("Call after the treatment"), &VisitPanel::writeCall);
    m_dropAmendment = add(tr("Give the amendment up"), &VisitPanel::dropAmendment);
    m_move = add(tr("Move to another patient ..."), &VisitPanel::move);
    m_inError = add(tr("Entered in error ..."), &VisitPanel::markInError);
    m_history = add(tr("History ..."), &VisitPanel::showHistory);
}

void VisitPanel::showActs()
{
    const bool isOpen = m_session.visitId() != 0;
    const VisitState state = m_session.state();
    const auto &call = m_session.visit().closing.call;
    const bool isCallOpen = call && call->made.empty();
    const bool isBeingWritten = isOpen && !m_session.isReadOnly();
    const std::pair<QAction *, bool> offered[] = {{m_sign, isBeingWritten}, {m_amend, isOpen && state == VisitState::Signed},
        {m_call, isOpen && state == VisitState::Signed && isCallOpen}, {m_dropAmendment, isOpen && state == VisitState::Amending},
        {m_move, isOpen && state == VisitState::Draft}, {m_inError, isOpen && state != VisitState::InError}, {m_history, isOpen}};
    QAction *next = isBeingWritten ? m_sign : state == VisitState::Signed ? m_amend : m_history;
    next->setVisible(true);
    m_acts->setDefaultAction(next); // before the old one goes: a button whose action goes gives its focus away
    for (const auto &[action, isOffered] : offered)
        action->setVisible(isOffered);
    m_acts->setEnabled(isOpen);
    m_acts->setAccessibleName(tr("%1; the menu has more", "what a button does").arg(next->text()));
}

std::string VisitPanel::askReason(const QString &title, const QString &question, const QString &usual)
{
    bool ok = false;
    const QString reason = QInputDialog::getText(this, title, question, QLineEdit::Normal, usual, &ok).trimmed();
    return ok ? reason.toStdString() : std::string();
}

// Once: what is meant so is not asked again.
bool VisitPanel::areSidesMeant()
{
    const auto question = m_session.sidesToAsk();
    if (!question)
        return true;
    const bool isRight = question->complaint == Side::Right;
    QStringList found;
    for (const Place &place : question->found)
        found << QString::fromStdString(m_session.knowledge().atlas->spoken(place));
    QMessageBox box(QMessageBox::Question, tr("Left and right"),
        isRight ? tr("The complaint is on the RIGHT, everything found is on the LEFT: is that intended?")
                : tr("The complaint is on the LEFT, everything found is on the RIGHT: is that intended?"),
        QMessageBox::NoButton, this);
    box.setInformativeText(
        tr("No continuity that changes the side ties this to where it hurts: %1.").arg(found.join(QStringLiteral(", "))));
    const QAbstractButton *meant = box.addButton(tr("Intended: sign"), QMessageBox::AcceptRole);
    box.setDefaultButton(box.addButton(tr("Look again"), QMessageBox::RejectRole));
    box.exec();
    if (box.clickedButton() != meant)
        return false;
    m_session.setSidesIntended();
    return true;
}

// The agreed visits are over, and nothing is better.
bool VisitPanel::isReviewed()
{
    if (m_session.state() != VisitState::Draft || !m_session.careProgress().isToReview)
        return true;
    QMessageBox box(QMessageBox::Question, tr("Is this working?"),
        tr("The agreed visits are over, and nothing is better beyond the error of reading it. Change the plan, refer, or end the "
           "care: which, and why?"),
        QMessageBox::NoButton, this);
    const QAbstractButton *later = box.addButton(tr("Sign, decide at the next visit"), QMessageBox::AcceptRole);
    box.setDefaultButton(box.addButton(tr("Decide now"), QMessageBox::RejectRole));
    box.exec();
    if (box.clickedButton() == later)
        return true;
    Q_EMIT closeWanted();
    return false;
}

// Of a signed visit: what is written of it amends the record.
void VisitPanel::writeCall()
{
    const auto begun = m_session.beginAmendment();
    tell(begun);
    if (begun)
        Q_EMIT closeWanted();
}

void VisitPanel::sign()
{
    if (!areSidesMeant() || !isReviewed())
        return;
    std::string reason;
    if (m_session.state() == VisitState::Amending) {
        const auto &call = m_session.visit().closing.call;
        const bool isCall = call && call->made == QDate::currentDate().toString(Qt::ISODate).toStdString();
        reason = askReason(tr("Sign the amendment"), tr("Why was the signed visit changed? The reason stays in the record."),
            isCall ? tr("Call after the treatment") : QString());
        if (reason.empty())
            return;
    } else if (m_session.isLate()) {
        reason = askReason(tr("Sign a late entry"),
            tr("The visit was on an earlier day. Why is it signed today? The reason stays in the record."));
        if (reason.empty())
            return;
    }
    tell(m_session.sign(reason));
}

void VisitPanel::amend()
{
    tell(m_session.beginAmendment());
}

void VisitPanel::dropAmendment()
{
    tell(m_session.dropAmendment());
}

void VisitPanel::markInError()
{
    const std::string reason =
        askReason(tr("Entered in error"), tr("What is wrong with this visit? It stays in the record, marked as an error."));
    if (!reason.empty())
        tell(m_session.markInError(reason));
}

void VisitPanel::move()
{
    PatientsDialog dialog(m_session.practice(), m_session.adviser().rules(), PatientsDialog::Purpose::MoveTo, this);
    if (dialog.exec() != QDialog::Accepted || dialog.chosen() == 0)
        return;
    const std::string reason =
        askReason(tr("Move the visit"), tr("Why does it belong to the other patient? The reason stays in the record."));
    if (!reason.empty())
        tell(m_session.moveTo(dialog.chosen(), reason));
}

void VisitPanel::showHistory()
{
    HistoryDialog(m_session.practice(), m_session.visitId(), m_session.knowledge(), m_session.adviser().rules(),
        m_session.examination(), this)
        .exec();
}

} // namespace raphe
