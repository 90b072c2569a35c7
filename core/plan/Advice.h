// All that is offered for one visit: what it is tied to, what would explain it, what to check, what to treat and what to leave
// alone, with the caution rules respected throughout. An Adviser is immutable and thread-safe.
#pragma once

#include "core/plan/Treat.h"
#include "core/reasoning/Knowledge.h"
#include "core/safety/Cautions.h"

#include <memory>

namespace raphe {

struct Advice {
    Reasons reasons;
    Treatment treatment;
    std::vector<CautionVerdict> general; // what holds everywhere for this patient, gravest first

    /// A verdict stops everything everywhere: nothing is offered to check or to treat.
    [[nodiscard]] bool isLocked() const;
};

class Adviser {
public:
    /// Reads the caution rules that are built in; the tables are made here. Keeps references to the knowledge.
    [[nodiscard]] static Result<Adviser> of(const Knowledge &knowledge);

    Adviser(std::unique_ptr<const Reasoner> reasoner, std::unique_ptr<const SafetyRules> rules, const Regions &regions)
        : m_reasoner(std::move(reasoner)), m_rules(std::move(rules)), m_regions(&regions)
    {
    }

    [[nodiscard]] const Reasoner &reasoner() const { return *m_reasoner; }
    [[nodiscard]] const SafetyRules &rules() const { return *m_rules; }
    /// Fails when the visit names a condition that the rules do not know; `file` is used in the message.
    [[nodiscard]] Result<Advice> advise(const Visit &visit, const std::string &file, const Preferences &preferences = {}) const;

private:
    std::unique_ptr<const Reasoner> m_reasoner;
    std::unique_ptr<const SafetyRules> m_rules;
    const Regions *m_regions;
};

} // namespace raphe
