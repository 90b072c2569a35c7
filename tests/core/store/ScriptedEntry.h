// One practitioner at work, step by step, for the tests that stop it somewhere; and what a reader of the file then sees. Each
// step is one call of Practice, and durable when it returns.
#pragma once

#include "core/store/Practice.h"

#include <functional>
#include <string>
#include <vector>

namespace raphe::test {

using Step = std::function<Result<Done>(Practice &)>;

template <class T> Result<Done> doneOr(const Result<T> &result)
{
    return result ? Result<Done>(Done{}) : Result<Done>(result.error());
}

/// Two patients, a visit written, signed and amended, another moved, one record erased.
inline std::vector<Step> scriptedEntry()
{
    const auto named = [](const char *name) {
        PatientRecord record;
        record.name = name;
        return record;
    };
    return {
        [named](Practice &p) { return doneOr(p.addPatient(named("Ada Quill"))); },
        [](Practice &p) { return doneOr(p.addVisit(1, "one")); },
        [](Practice &p) { return p.saveVisit(1, std::string(3000, 'x') + " two"); },
        [](Practice &p) { return p.saveVisit(1, "three"); },
        [](Practice &p) { return p.sign(1); },
        [named](Practice &p) { return doneOr(p.addPatient(named("Bo Stone"))); },
        [](Practice &p) { return doneOr(p.addVisit(1, "four")); },
        [](Practice &p) { return p.move(2, 2, "wrong patient"); },
        [](Practice &p) { return p.beginAmendment(1); },
        [](Practice &p) { return p.saveVisit(1, "three, and more"); },
        [](Practice &p) { return p.signAmendment(1, "forgotten"); },
        [](Practice &p) { return p.noteOpened(2); },
        [](Practice &p) { return doneOr(p.erase(2, "asked for it")); },
    };
}

/// What comes less often, after the scripted entry: settings, two records joined, users, a new file key and recovery key, a visit
/// in error.
inline std::vector<Step> rarerActs(const std::string &passphrase, const std::string &nextPassphrase)
{
    return {
        [](Practice &p) {
            PracticeSettings settings;
            settings.name = "Brook and Stone";
            return p.saveSettings(settings);
        },
        [](Practice &p) {
            PatientRecord twin;
            twin.name = "Quill Ada";
            return doneOr(p.addPatient(twin));
        },
        [](Practice &p) { return doneOr(p.addVisit(3, "five")); },
        [](Practice &p) { return p.sign(3, "2026-11-20T10:00", "power was out"); },
        [](Practice &p) { return p.merge(1, 3); },
        [](Practice &p) {
            return doneOr(p.addAccount({"bo", "Bo Stone", "second of them", leastCost}));
        },
        [=](Practice &p) { return p.changePassphrase(passphrase, nextPassphrase, leastCost); },
        [](Practice &p) { return p.saveScope(2, {"thrust"}); },
        [](Practice &p) { return p.removeAccount(2); },
        [](Practice &p) { return p.changeRecoveryKey(RecoveryKey::random()); },
        [](Practice &p) { return p.markInError(1, "another patient"); },
    };
}

/// Settings, users, patients, visits and their history, in words; or the error that a reader meets.
inline std::string stateOf(const Practice &practice)
{
    const auto failed = [](const char *what, const Error &error) {
        return std::string(what) + ": " + error.place + ": " + error.detail;
    };
    const auto settings = practice.settings();
    if (!settings)
        return failed("settings", settings.error());
    std::string out = settings.value().name + (settings.value().isRecoveryOnPaper ? ", key on paper\n" : "\n");
    const auto accounts = practice.accounts();
    if (!accounts)
        return failed("accounts", accounts.error());
    for (const AccountCard &account : accounts.value()) {
        out += account.name + (account.isRemoved ? " removed" : "");
        for (const std::string &group : account.scope)
            out += " " + group;
        out += "\n";
    }
    const auto patients = practice.patients();
    if (!patients)
        return failed("patients", patients.error());
    for (const PatientCard &card : patients.value()) {
        out += card.name + "\n";
        const auto visits = practice.visits(card.id);
        if (!visits)
            return failed("visits", visits.error());
        for (const StoredVisit &visit : visits.value()) {
            out += "  " + visit.document + " state " + std::to_string(static_cast<int>(visit.state)) + "\n";
            const auto history = practice.history(visit.id);
            if (!history)
                return failed("history", history.error());
            for (const VisitVersion &v : history.value())
                out += "    " + std::string(wordOf(entryWords, v.kind)) + " " + v.reason + " " + v.document + "\n";
        }
    }
    return out;
}

} // namespace raphe::test
