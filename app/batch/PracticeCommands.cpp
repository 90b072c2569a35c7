// raphe-batch verify, backup, restore, export: the practice file without a window.
#include "app/batch/Commands.h"
#include "app/batch/Output.h"
#include "app/batch/Passphrase.h"
#include "app/batch/Unlocked.h"
#include "core/store/Backup.h"
#include "core/store/Export.h"
#include "core/store/PracticeInUse.h"

#include <filesystem>
#include <iostream>

namespace raphe::batch {

Result<std::unique_ptr<Practice>> unlocked(const std::string &practiceFile, const Key &key)
{
    const auto words = passphrase(key.descriptor);
    if (!words)
        return words.error();
    return Practice::unlock(practiceFile, key.signIn, words.value());
}

Result<Done> makePractice(const std::string &practiceFile, const std::string &name, const std::string &userName, const Key &key)
{
    if (std::filesystem::exists(practiceFile))
        return Error{ErrorCode::CannotWrite, practiceFile, "exists already"};
    const auto words = passphrase(key.descriptor);
    if (!words)
        return words.error();
    PracticeSettings settings;
    settings.name = name;
    settings.isRecoveryOnPaper = true; // the caller has it in writing
    const auto made = Practice::make(practiceFile, settings, {key.signIn, userName, words.value()});
    if (!made)
        return made.error();
    std::cout << Json{{"practice", practiceFile}, {"recovery_key", made.value().recovery.text()}}.dump(1) << '\n';
    return Done{};
}

Result<Done> verifyPractice(const std::string &practiceFile, const Key &key)
{
    if (key.signIn.empty()) {
        const auto entries = checkWithoutKey(practiceFile);
        if (!entries)
            return entries.error();
        std::cout << Json{{"entries", entries.value()}, {"checked", "chain"}}.dump(1) << '\n';
        return Done{};
    }
    const auto practice = unlocked(practiceFile, key);
    if (!practice)
        return practice.error();
    std::int64_t entries = 0;
    const auto verified = practice.value()->verify([&](std::int64_t number) {
        entries = number;
        return true;
    });
    if (!verified)
        return verified.error();
    const auto patients = practice.value()->patients();
    if (!patients)
        return patients.error();
    std::cout << Json{{"entries", entries}, {"checked", "all"}, {"patients", patients.value().size()}}.dump(1) << '\n';
    return Done{};
}

Result<Done> backUpPractice(const std::string &practiceFile, const std::string &out)
{
    const auto done = backUp(practiceFile, out);
    if (!done)
        return done.error();
    std::cout << Json{{"backup", out}, {"bytes", std::filesystem::file_size(out)}}.dump(1) << '\n';
    return Done{};
}

Result<Done> restorePractice(const std::string &backup, const std::string &practiceFile, const Key &key)
{
    const auto held = PracticeInUse::hold(practiceFile); // not under a window that has it open
    if (!held)
        return held.error();
    const auto gap = gapOf(backup, practiceFile); // not when there is no file, or none that can be read
    const auto erased = restore(backup, practiceFile);
    if (!erased)
        return erased.error();
    if (!erased.value().empty()) { // the back-up still holds patients that were erased since
        if (key.signIn.empty())
            return Error{ErrorCode::NotAllowed, practiceFile,
                "restored, but it holds patients again that were erased since: run restore again with --sign-in to erase them"};
        const auto practice = unlocked(practiceFile, key);
        if (!practice)
            return practice.error();
        for (const std::int64_t patient : erased.value())
            if (const auto done = practice.value()->erase(patient, "erased before the restore"); !done)
                return done.error();
    }
    Json out{{"practice", practiceFile}, {"erased_again", erased.value()}};
    if (gap && !gap.value().isOfAnother)
        out["lacks"] = {{"entries", gap.value().entries}, {"visits", gap.value().visits}};
    std::cout << out.dump(1) << '\n';
    return Done{};
}

Result<Done> exportFrom(const std::string &practiceFile, const Key &key, std::int64_t patient, const std::string &form)
{
    if (form != "json" && form != "text")
        return Error{ErrorCode::BadArgument, "--form", form + ", allowed: json, text, pdf"};
    const auto practice = unlocked(practiceFile, key);
    if (!practice)
        return practice.error();
    const auto exported = exportPatient(*practice.value(), patient);
    if (!exported)
        return exported.error();
    std::cout << (form == "json" ? exported.value().json : exported.value().text);
    return Done{};
}

} // namespace raphe::batch
