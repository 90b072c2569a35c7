// All that holds everywhere for this patient, gravest first, each with its source; and what the record lets suspect, which can be
// taken over as a condition in one stroke.
#pragma once

#include "app/raphe/VisitSession.h"
#include "app/raphe/practice/WorkDialog.h"

class QScrollArea;

namespace raphe {

/// What speaks for it: what the record says, the age, the week of pregnancy or the blood pressure.
[[nodiscard]] QString causeWords(const Reminder &reminder);

class CautionsDialog : public WorkDialog {
    Q_OBJECT

public:
    explicit CautionsDialog(VisitSession &session, QWidget *parent = nullptr);

private:
    [[nodiscard]] QWidget *makePage();
    [[nodiscard]] QWidget *makePart(const QString &head, const std::string &words, const std::string &from);
    [[nodiscard]] QWidget *makeReminder(const Reminder &reminder);

    VisitSession &m_session;
    QScrollArea *m_area;
};

} // namespace raphe
