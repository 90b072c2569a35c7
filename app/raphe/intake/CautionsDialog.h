// All that holds everywhere for this patient, gravest first, each with its source.
#pragma once

#include "app/raphe/practice/WorkDialog.h"
#include "core/record/CautionVerdict.h"

#include <vector>

namespace raphe {

class CautionsDialog : public WorkDialog {
    Q_OBJECT

public:
    explicit CautionsDialog(const std::vector<CautionVerdict> &verdicts, QWidget *parent = nullptr);
};

} // namespace raphe
