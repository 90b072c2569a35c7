// All that holds everywhere for this patient, gravest first, each with its source; and what the record lets suspect.
#pragma once

#include "app/raphe/practice/WorkDialog.h"
#include "core/record/CautionVerdict.h"
#include "core/safety/CautionFeeds.h"

#include <vector>

namespace raphe {

/// What speaks for it: what the record says, the age, the week of pregnancy or the blood pressure.
[[nodiscard]] QString causeWords(const Reminder &reminder);

class CautionsDialog : public WorkDialog {
    Q_OBJECT

public:
    CautionsDialog(
        const std::vector<CautionVerdict> &verdicts, const std::vector<Reminder> &reminders, QWidget *parent = nullptr);
};

} // namespace raphe
