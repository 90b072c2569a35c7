// A complaint of which only the words are told.
#pragma once

#include "core/record/Complaint.h"

#include <string>

namespace raphe::test {

[[nodiscard]] inline Complaint complaintOf(const std::string &text)
{
    Complaint complaint;
    complaint.text = text;
    return complaint;
}

} // namespace raphe::test
