// What was counted or measured, on which day: numbers, a date, and a button for today.
#pragma once

#include <vector>

class QHBoxLayout;
class QWidget;

namespace raphe {

class OptionalDateEdit;

[[nodiscard]] QHBoxLayout *dayRow(const std::vector<QWidget *> &numbers, OptionalDateEdit *date);

} // namespace raphe
