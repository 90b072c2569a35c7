#include "core/record/PatientLikeness.h"

#include "core/anatomy/NameSearch.h"
#include "core/record/PatientSearch.h"
#include "core/record/Visit.h"

#include <algorithm>
#include <iterator>
#include <set>
#include <tuple>

namespace raphe {

namespace {

constexpr std::size_t mostWords = 8;
constexpr double leastAlike = 0.5; // below it two words are alike by chance
constexpr double furtherWord = 0.5; // of a word that only the longer name has
constexpr double bornUnsure = 0.8;
constexpr double bornOther = 0.3;

double wordLikeness(const std::string &a, const std::string &b)
{
    const std::size_t longer = std::max(a.size(), b.size());
    const double edits = editsBetween(a, b, static_cast<int>(longer)).whole;
    const double alike = 1 - edits / static_cast<double>(longer);
    return alike < leastAlike ? 0 : alike;
}

using Words = std::vector<std::string>;

double nameLikeness(const Words &a, const Words &b)
{
    if (a.empty() || b.empty())
        return 0;
    Words onlyA;
    Words onlyB;
    std::set_difference(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(onlyA));
    std::set_difference(b.begin(), b.end(), a.begin(), a.end(), std::back_inserter(onlyB));
    // Best pair first. Equal ones go by their words, the lesser first, so that the order of a and b does not matter.
    using Pair = std::tuple<double, std::string, std::string, std::size_t, std::size_t>;
    std::vector<Pair> pairs;
    for (std::size_t i = 0; i < onlyA.size(); ++i)
        for (std::size_t j = 0; j < onlyB.size(); ++j)
            if (const double alike = wordLikeness(onlyA[i], onlyB[j]); alike > 0)
                pairs.emplace_back(-alike, std::min(onlyA[i], onlyB[j]), std::max(onlyA[i], onlyB[j]), i, j);
    std::sort(pairs.begin(), pairs.end());
    double sum = static_cast<double>(a.size() - onlyA.size());
    std::set<std::size_t> usedA;
    std::set<std::size_t> usedB;
    for (const auto &[negative, lesser, greater, i, j] : pairs) {
        if (usedA.contains(i) || usedB.contains(j))
            continue;
        usedA.insert(i);
        usedB.insert(j);
        sum -= negative;
    }
    const auto shorter = static_cast<double>(std::min(a.size(), b.size()));
    const auto longer = static_cast<double>(std::max(a.size(), b.size()));
    return sum / (shorter + furtherWord * (longer - shorter));
}

double dateLikeness(const std::string &a, const std::string &b)
{
    if (a == b)
        return 1;
    if (a.size() != b.size() || !isIsoDate(a) || !isIsoDate(b))
        return bornOther;
    const bool swapped = a.substr(0, 4) == b.substr(0, 4) && a.substr(5, 2) == b.substr(8, 2) && a.substr(8, 2) == b.substr(5, 2);
    int different = 0;
    for (std::size_t i = 0; i < a.size(); ++i)
        different += a[i] == b[i] ? 0 : 1;
    return swapped || different == 1 ? bornUnsure : bornOther;
}

Words nameWords(const std::string &name)
{
    Words words = splitWords(foldedWords(name));
    words.resize(std::min(words.size(), mostWords));
    std::sort(words.begin(), words.end());
    words.erase(std::unique(words.begin(), words.end()), words.end());
    return words;
}

} // namespace

LikenessKey likenessKey(const PatientRecord &record)
{
    LikenessKey key;
    key.names.push_back(nameWords(record.name));
    for (const std::string &name : record.otherNames)
        key.names.push_back(nameWords(name));
    if (!record.born.empty())
        key.born.push_back(record.born);
    key.born.insert(key.born.end(), record.otherBorn.begin(), record.otherBorn.end());
    return key;
}

double bornLikeness(const LikenessKey &a, const LikenessKey &b)
{
    if (a.born.empty() || b.born.empty())
        return bornUnsure;
    double best = 0;
    for (const std::string &one : a.born)
        for (const std::string &other : b.born)
            best = std::max(best, dateLikeness(one, other));
    return best;
}

double likeness(const LikenessKey &a, const LikenessKey &b)
{
    double best = 0;
    for (const Words &one : a.names)
        for (const Words &other : b.names)
            best = std::max(best, nameLikeness(one, other));
    return best * bornLikeness(a, b);
}

double likeness(const PatientRecord &a, const PatientRecord &b)
{
    return likeness(likenessKey(a), likenessKey(b));
}

} // namespace raphe
