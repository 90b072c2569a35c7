#include "core/record/PatientMerge.h"

#include <algorithm>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

namespace {

template <class T> bool contains(const std::vector<T> &list, const T &value)
{
    return std::find(list.begin(), list.end(), value) != list.end();
}

constexpr std::string_view between = "; ";

// Whether the text is one of those that were joined, or empty.
bool hasPart(const std::string &whole, const std::string &part)
{
    const std::string bound(between);
    return part.empty() || (bound + whole + bound).find(bound + part + bound) != std::string::npos;
}

std::string joined(const std::string &keep, const std::string &other)
{
    if (hasPart(keep, other))
        return keep;
    return keep.empty() ? other : keep + std::string(between) + other;
}

// The phone of a second person stands beside that person's name: in the phone field it would be taken for the first one's.
std::optional<Contact> joined(const std::optional<Contact> &keep, const std::optional<Contact> &other)
{
    if (!keep || !other)
        return keep ? keep : other;
    if (hasPart(keep->name, other->name) && hasPart(keep->phone, other->phone))
        return keep;
    if (keep->name == other->name)
        return Contact{keep->name, joined(keep->phone, other->phone)};
    const bool swap = keep->name.empty();
    const Contact &first = swap ? *other : *keep;
    const Contact &second = swap ? *keep : *other;
    const char *gap = second.name.empty() || second.phone.empty() ? "" : " ";
    return Contact{joined(first.name, second.name + gap + second.phone), first.phone};
}

template <class T> void unite(std::vector<T> &list, const std::vector<T> &more)
{
    for (const T &value : more)
        if (!contains(list, value))
            list.push_back(value);
}

// The single value stays; others that differ go into the list.
template <class T>
void uniteSingle(std::optional<T> &single, std::vector<T> &list, const std::optional<T> &other, const std::vector<T> &more)
{
    if (!single)
        single = other;
    else if (other && other != single)
        unite(list, {*other});
    for (const T &value : more)
        if (value != single)
            unite(list, {value});
}

void uniteConditions(std::vector<StandingCondition> &list, const std::vector<StandingCondition> &more)
{
    for (const StandingCondition &condition : more) {
        const auto same =
            std::find_if(list.begin(), list.end(), [&](const StandingCondition &c) { return c.id == condition.id; });
        if (same == list.end())
            list.push_back(condition);
        else
            same->note = joined(same->note, condition.note);
    }
}

// Each complaint of the first list stands for one of the second at most, so that two of the second stay two.
std::map<int, int> uniteComplaints(std::vector<PatientComplaint> &list, const std::vector<PatientComplaint> &more)
{
    const std::size_t ownCount = list.size();
    int highest = 0;
    for (const PatientComplaint &complaint : list)
        highest = std::max(highest, complaint.id);
    std::map<int, int> ids;
    std::set<std::size_t> taken;
    for (const PatientComplaint &complaint : more) {
        std::size_t i = 0;
        for (; i < ownCount; ++i) {
            PatientComplaint same = complaint;
            same.id = list[i].id;
            if (!taken.contains(i) && same == list[i])
                break;
        }
        if (i == ownCount) {
            i = list.size();
            list.push_back(complaint);
            list.back().id = ++highest;
        }
        taken.insert(i);
        ids[complaint.id] = list[i].id;
    }
    return ids;
}

// One of the two is wrong: both are to be clarified.
template <class T, class InWords>
void uniteOrAsk(std::optional<T> &single, const std::optional<T> &other, std::vector<std::string> &unclear, InWords inWords)
{
    if (!single)
        single = other;
    else if (other && *other != *single)
        unite(unclear, {inWords(*single) + between.data() + inWords(*other)});
}

std::optional<std::string> given(const std::string &text)
{
    return text.empty() ? std::nullopt : std::optional(text);
}

} // namespace

Result<MergedPatient> merged(const PatientRecord &keep, const PatientRecord &other)
{
    MergedPatient out{keep, {}};
    PatientRecord &r = out.record;
    std::optional<std::string> name = r.name;
    uniteSingle(name, r.otherNames, given(other.name), other.otherNames);
    std::optional<std::string> born = given(r.born);
    uniteSingle(born, r.otherBorn, given(other.born), other.otherBorn);
    r.born = born.value_or(std::string());
    uniteOrAsk(r.sex, other.sex, r.unclear, [](Sex sex) { return "sex " + std::string(wordOf(sexWords, sex)); });
    uniteOrAsk(r.height, other.height, r.unclear, [](int height) { return std::to_string(height) + " cm"; });
    r.mark = joined(r.mark, other.mark);
    r.language = joined(r.language, other.language);
    r.interpreter = joined(r.interpreter, other.interpreter);
    r.phone = joined(r.phone, other.phone);
    r.email = joined(r.email, other.email);
    r.address = joined(r.address, other.address);
    r.doctor = joined(r.doctor, other.doctor);
    r.emergency = joined(r.emergency, other.emergency);
    r.guardian = joined(r.guardian, other.guardian);
    unite(r.medicines, other.medicines);
    unite(r.allergies, other.allergies);
    unite(r.surgery, other.surgery);
    unite(r.implants, other.implants);
    uniteConditions(r.conditions, other.conditions);
    unite(r.ruledOut, other.ruledOut);
    uniteSingle(r.pregnancy, r.otherPregnancies, other.pregnancy, other.otherPregnancies);
    uniteSingle(r.bloodPressure, r.otherBloodPressures, other.bloodPressure, other.otherBloodPressures);
    unite(r.unclear, other.unclear);
    out.complaintIds = uniteComplaints(r.complaints, other.complaints);
    if (const auto sound = checkPatient(r, "merged"); !sound)
        return sound.error();
    return out;
}

} // namespace raphe
