// What is explained to the patient and asked before hands-on work: content of resources/safety/consent.json, read strictly. Plain
// values, immutable after reading; thread-safe.
#pragma once

#include "core/anatomy/Structure.h"
#include "core/base/Result.h"

#include <string>
#include <string_view>
#include <vector>

namespace raphe {

class Atlas;
struct HandsAction;

/// What a yes allows, and a no stops. Techniques alone: these everywhere. Regions and structures alone: every action there. Both:
/// these techniques there.
struct ConsentScope {
    bool examination = false; // without it nothing is done
    bool record = false;
    bool pictures = false;
    bool guardian = false; // that somebody else consents for the patient
    std::vector<std::string> techniques; // ids of actions that are techniques
    std::vector<StructureId> regions; // surface regions
    std::vector<StructureId> structures;
    bool elsewhere = false; // wherever no other item with one of these techniques has its regions
    bool inside = false; // reached from inside the body

    [[nodiscard]] bool isOfPlace() const { return elsewhere || !regions.empty() || !structures.empty(); }
};

/// In the plain words that the patient hears or reads.
struct ConsentItem {
    std::string id;
    ConsentScope covers;
    std::string title;
    std::string explain; // "{time}": how long the practice keeps a record
    std::string benefits;
    std::string risks;
    std::string alternatives; // doing nothing is one of them
    std::string withdraw; // how to say stop
    bool chaperone = false; // somebody else in the room is offered
    bool marks = false; // can be seen on the skin for a while
    bool adultsOnly = false; // not done with those for whom a guardian consents
    bool together = false; // plain enough to be agreed to in one stroke with the others that are
    int renewDays = 0; // how many days a yes holds; 0: on its own day
    std::string source;
    Reading read{}; // how we read the source

    /// About techniques that not every visit uses, such as cups or a thrust.
    [[nodiscard]] bool isForSome() const { return !covers.techniques.empty() && !together; }
};

struct ConsentItems {
    /// Years of age below which a guardian consents too. The true age is for local law; this one is common practice, no source.
    int guardianBelow = 18;
    std::vector<ConsentItem> items;

    /// nullptr when there is no such item.
    [[nodiscard]] const ConsentItem *find(std::string_view id) const;
};

/// Unknown fields, words and ids, duplicates, empty lists and texts, an item that covers nothing, and a technique that no item
/// covers are errors with file and JSON pointer.
[[nodiscard]] Result<ConsentItems> readConsentItems(
    std::string_view text, const std::vector<HandsAction> &actions, const Atlas &atlas);

} // namespace raphe
