#include "core/record/PatientPairs.h"

#include "core/record/PatientLikeness.h"

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <tuple>

namespace raphe {

namespace {

using People = std::vector<std::size_t>; // indices into the records, rising

// Words hold no hyphen, so that a date cannot be taken for one.
std::set<std::string> signsOf(const LikenessKey &key)
{
    std::set<std::string> signs(key.born.begin(), key.born.end());
    for (const std::vector<std::string> &name : key.names)
        signs.insert(name.begin(), name.end());
    return signs;
}

// Who shares a sign, the smallest groups first.
std::vector<People> groupsOf(const std::vector<LikenessKey> &keys)
{
    std::map<std::string, People> bySign;
    for (std::size_t i = 0; i < keys.size(); ++i)
        for (const std::string &sign : signsOf(keys[i]))
            bySign[sign].push_back(i);
    std::vector<People> groups;
    for (auto &[sign, people] : bySign)
        if (people.size() > 1)
            groups.push_back(std::move(people));
    std::stable_sort(groups.begin(), groups.end(), [](const People &a, const People &b) { return a.size() < b.size(); });
    return groups;
}

// Compares all of a group with one another. False when `left` did not suffice.
bool compareGroup(const People &people, const std::vector<LikenessKey> &keys, std::size_t &left, std::vector<PatientPair> &found)
{
    for (std::size_t i = 1; i < people.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            if (left == 0)
                return false;
            --left;
            const LikenessKey &one = keys[people[j]];
            const LikenessKey &other = keys[people[i]];
            if (bornLikeness(one, other) < duplicateLikeness) // the names cannot make up for it
                continue;
            if (const double alike = likeness(one, other); alike >= duplicateLikeness)
                found.push_back({people[j], people[i], alike});
        }
    }
    return true;
}

} // namespace

PatientPairs findPatientPairs(std::span<const PatientRecord> records, const PairLimits &limits)
{
    std::vector<LikenessKey> keys;
    keys.reserve(records.size());
    for (const PatientRecord &record : records)
        keys.push_back(likenessKey(record));
    PatientPairs out;
    std::size_t left = limits.comparisons;
    for (const People &people : groupsOf(keys)) {
        out.isAll = compareGroup(people, keys, left, out.found);
        if (!out.isAll)
            break;
    }
    std::sort(out.found.begin(), out.found.end(), [](const PatientPair &a, const PatientPair &b) {
        return std::tuple(-a.likeness, a.one, a.other) < std::tuple(-b.likeness, b.one, b.other);
    });
    out.found.erase(std::unique(out.found.begin(), out.found.end()), out.found.end()); // who shares two signs is found twice
    if (out.found.size() > limits.pairs) {
        out.found.resize(limits.pairs);
        out.isAll = false;
    }
    return out;
}

} // namespace raphe
