// What the tests of patient lists share. All people here are invented.
#pragma once

#include "core/record/PatientCsv.h"
#include "tests/core/record/PatientTesting.h"

#include <gtest/gtest.h>

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace raphe::test {

inline CsvOptions with(std::optional<DateOrder> order)
{
    CsvOptions options;
    options.file = "list.csv";
    options.dateOrder = order;
    return options;
}

inline const CsvOptions plain = with({});

/// The preview of a text that must not be refused as a whole.
inline CsvPreview preview(
    const std::string &text, const CsvOptions &options = plain, const std::vector<PatientRecord> &existing = {})
{
    auto result = previewCsv(text, options, existing);
    if (result)
        return std::move(result).value();
    ADD_FAILURE() << testing::PrintToString(result.error()) << "\n" << text;
    return {};
}

/// The record of a row that must have no mistake.
inline PatientRecord recordAt(const CsvPreview &seen, std::size_t row)
{
    if (row >= seen.rows.size()) {
        ADD_FAILURE() << "no row " << row;
        return {};
    }
    if (!seen.rows[row].ok()) {
        const RowError &error = seen.rows[row].error();
        ADD_FAILURE() << "row " << row << ", column " << error.column << ": " << error.detail;
        return {};
    }
    return seen.rows[row].record();
}

inline void expectRowError(const CsvPreview &seen, std::size_t row, std::size_t line, const std::string &column, ErrorCode code,
    const std::string &detail)
{
    ASSERT_LT(row, seen.rows.size());
    ASSERT_FALSE(seen.rows[row].ok()) << "row " << row << " was accepted: " << seen.rows[row].record().name;
    const RowError &error = seen.rows[row].error();
    EXPECT_EQ(error.line, line) << error.detail;
    EXPECT_EQ(seen.rows[row].line, line);
    EXPECT_EQ(error.column, column) << error.detail;
    EXPECT_EQ(error.code, code) << error.detail;
    EXPECT_NE(error.detail.find(detail), std::string::npos) << error.detail << " lacks " << detail;
}

} // namespace raphe::test
