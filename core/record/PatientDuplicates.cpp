#include "core/record/PatientDuplicates.h"

#include "core/record/PatientLikeness.h"

#include <optional>
#include <set>
#include <string>
#include <unordered_map>
#include <utility>

namespace raphe {

namespace {

// People who can be found again by what they share with another: a date of birth or a word of a name.
class FoundAgain {
public:
    void add(LikenessKey key)
    {
        for (const std::string &sign : signsOf(key))
            m_bySign[sign].push_back(m_keys.size());
        m_keys.push_back(std::move(key));
        m_seen.push_back(0);
    }

    struct Best {
        std::size_t person = 0;
        double likeness = 0;
    };

    /// The one most like it, if like enough. Each comparison takes one from `left`; at 0 the search ends.
    std::optional<Best> best(const LikenessKey &key, std::size_t &left)
    {
        ++m_search;
        Best found;
        const double utmost = key.born.empty() ? bornLikeness(key, key) : 1; // no other can be more like it
        for (const std::string &sign : signsOf(key)) {
            const auto others = m_bySign.find(sign);
            if (others == m_bySign.end())
                continue;
            for (const std::size_t person : others->second) {
                if (found.likeness >= utmost || left == 0)
                    break;
                if (std::exchange(m_seen[person], m_search) == m_search)
                    continue;
                if (bornLikeness(key, m_keys[person]) < duplicateLikeness)
                    continue;
                --left;
                const double now = likeness(key, m_keys[person]);
                if (now > found.likeness || (now == found.likeness && person < found.person))
                    found = {person, now};
            }
        }
        return found.likeness >= duplicateLikeness ? std::optional(found) : std::nullopt;
    }

private:
    // Words hold no hyphen, so that a date cannot be taken for one.
    static std::set<std::string> signsOf(const LikenessKey &key)
    {
        std::set<std::string> signs(key.born.begin(), key.born.end());
        for (const std::vector<std::string> &name : key.names)
            signs.insert(name.begin(), name.end());
        return signs;
    }

    std::vector<LikenessKey> m_keys;
    std::vector<std::size_t> m_seen; // the search that looked at it last
    std::size_t m_search = 0;
    std::unordered_map<std::string, std::vector<std::size_t>> m_bySign;
};

} // namespace

CsvDuplicates findDuplicates(std::span<const CsvRow> rows, std::span<const PatientRecord> existing, std::size_t mostComparisons)
{
    CsvDuplicates out;
    std::size_t left = mostComparisons;
    FoundAgain known;
    for (const PatientRecord &record : existing)
        known.add(likenessKey(record));
    FoundAgain earlier;
    std::vector<std::size_t> rowOf; // of each in `earlier`
    for (std::size_t row = 0; row < rows.size(); ++row) {
        if (!rows[row].ok())
            continue;
        LikenessKey key = likenessKey(rows[row].record());
        if (const auto best = known.best(key, left))
            out.found.push_back({row, CsvDuplicate::Among::Existing, best->person, best->likeness});
        if (const auto best = earlier.best(key, left))
            out.found.push_back({row, CsvDuplicate::Among::Rows, rowOf[best->person], best->likeness});
        earlier.add(std::move(key));
        rowOf.push_back(row);
    }
    out.comparedAll = left > 0;
    return out;
}

} // namespace raphe
