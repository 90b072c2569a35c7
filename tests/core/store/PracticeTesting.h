// A practice file in a folder of its own, with a cheap derivation of keys.
#pragma once

#include "core/store/Practice.h"
#include "tests/core/store/StoreTesting.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>

#include <filesystem>

namespace raphe::test {

inline constexpr DerivationCost cheap = leastCost; // tests make hundreds of files

class PracticeFileTest : public testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(m_folder.isValid()); }

    [[nodiscard]] std::string folder() const { return m_folder.path().toStdString(); }
    [[nodiscard]] std::string file() const { return folder() + "/test.raphe"; }
    [[nodiscard]] static PracticeSettings settings()
    {
        PracticeSettings s;
        s.name = "Brook and Brook";
        return s;
    }
    [[nodiscard]] static NewAccount owner() { return {"ada", "Ada Brook", "right words here", cheap}; }
    [[nodiscard]] static PatientRecord person(const std::string &name, const std::string &born)
    {
        PatientRecord record;
        record.name = name;
        record.born = born;
        return record;
    }
    [[nodiscard]] std::unique_ptr<Practice> made()
    {
        auto made = Practice::make(file(), settings(), owner());
        if (!made.ok()) {
            ADD_FAILURE() << inWords(made.error());
            return nullptr;
        }
        m_recovery = made.value().recovery.text();
        return std::move(made.value().practice);
    }
    /// Null when the passphrase does not open it.
    [[nodiscard]] std::unique_ptr<Practice> unlocked() const
    {
        auto practice = Practice::unlock(file(), "ada", std::string_view("right words here"));
        return practice.ok() ? std::move(practice).value() : nullptr;
    }
    [[nodiscard]] const std::string &recovery() const { return m_recovery; }

private:
    QTemporaryDir m_folder;
    std::string m_recovery;
};

} // namespace raphe::test
