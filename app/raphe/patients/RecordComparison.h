// Two records line by line, each field as a person reads it, with what differs said in a word. Plain functions; no window.
#pragma once

#include "core/record/PatientRecord.h"

#include <QString>

#include <vector>

namespace raphe {

struct ComparedLine {
    QString field;
    QString first;
    QString second;
    bool operator==(const ComparedLine &) const = default;

    [[nodiscard]] bool differs() const { return first != second; }
    /// "same", "differs", "only first" or "only second".
    [[nodiscard]] QString inAWord() const;
};

/// In the order of the record; a field that is empty in both is left out. Entries of a list stand in lines of their own.
[[nodiscard]] std::vector<ComparedLine> compareRecords(const PatientRecord &first, const PatientRecord &second);

} // namespace raphe
