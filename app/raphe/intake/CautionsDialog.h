// All that holds everywhere for this patient, gravest first, each with its source; and what the record lets suspect.
#pragma once

#include "app/raphe/practice/WorkDialog.h"
#include "core/record/CautionVerdict.h"
#include "core/safety/CautionFeeds.h"

#include <vector>

namespace raphe {

class CautionsDialog : public WorkDialog {
    Q_OBJECT

public:
    CautionsDialog(
        const std::vector<CautionVerdict> &verdicts, const std::vector<Reminder> &reminders, QWidget *parent = nullptr);
};

} // namespace raphe
