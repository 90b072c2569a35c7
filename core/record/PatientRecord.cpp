// Checking, searching, likeness and merging of patients' records.
#include "core/record/PatientRecord.h"

#include "core/anatomy/NameSearch.h"
#include "core/base/JsonReader.h"
#include "core/record/Visit.h"

#include <QString>
#include <QStringDecoder>
#include <QStringList>

#include <algorithm>
#include <array>
#include <set>
#include <tuple>
#include <utility>

namespace raphe {

namespace {

QString toQt(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

// Throws Error at the first rule that is broken.
class Check {
public:
    explicit Check(std::string file) : m_file(std::move(file)) { }

    void record(const PatientRecord &r) const
    {
        needed("/name", r.name);
        list("/other_names", r.otherNames, &Check::needed);
        if (!r.born.empty())
            date("/born", r.born);
        list("/other_born", r.otherBorn, &Check::date);
        text("/mark", r.mark);
        text("/language", r.language);
        text("/interpreter", r.interpreter);
        text("/phone", r.phone);
        text("/email", r.email);
        text("/address", r.address);
        optional("/doctor", r.doctor, &Check::contact);
        optional("/emergency", r.emergency, &Check::contact);
        optional("/guardian", r.guardian, &Check::contact);
        list("/medicines", r.medicines, &Check::needed);
        list("/allergies", r.allergies, &Check::needed);
        list("/surgery", r.surgery, &Check::surgery);
        list("/implants", r.implants, &Check::implant);
        list("/conditions", r.conditions, &Check::condition);
        once("/conditions", r.conditions, &StandingCondition::id);
        optional("/pregnancy", r.pregnancy, &Check::pregnancy);
        list("/other_pregnancies", r.otherPregnancies, &Check::pregnancy);
        optional("/blood_pressure", r.bloodPressure, &Check::bloodPressure);
        list("/other_blood_pressures", r.otherBloodPressures, &Check::bloodPressure);
        list("/complaints", r.complaints, &Check::complaint);
        once("/complaints", r.complaints, &PatientComplaint::id);
    }

private:
    [[noreturn]] void fail(ErrorCode code, const std::string &pointer, std::string detail) const
    {
        throw Error{code, m_file + "#" + pointer, std::move(detail)};
    }

    void text(const std::string &pointer, const std::string &value) const
    {
        if (!isUtf8(value))
            fail(ErrorCode::WrongType, pointer, "UTF-8 text");
        const std::size_t length = characterCount(value);
        if (length > PatientRecord::longestText)
            fail(ErrorCode::OutOfRange, pointer,
                std::to_string(length) + " characters, allowed: at most " + std::to_string(PatientRecord::longestText));
    }

    void needed(const std::string &pointer, const std::string &value) const
    {
        text(pointer, value);
        if (toQt(value).trimmed().isEmpty())
            fail(ErrorCode::OutOfRange, pointer, "empty, allowed: a text");
    }

    void date(const std::string &pointer, const std::string &value) const
    {
        if (!isIsoDate(value))
            fail(ErrorCode::OutOfRange, pointer, value + std::string(dateAllowed));
    }

    void number(const std::string &pointer, int value, int low, int high) const
    {
        if (value < low || value > high)
            fail(ErrorCode::OutOfRange, pointer,
                std::to_string(value) + ", allowed: whole number " + std::to_string(low) + " to " + std::to_string(high));
    }

    void contact(const std::string &pointer, const Contact &value) const
    {
        text(pointer + "/name", value.name);
        text(pointer + "/phone", value.phone);
        if (toQt(value.name).trimmed().isEmpty() && toQt(value.phone).trimmed().isEmpty())
            fail(ErrorCode::MissingField, pointer, "name or phone");
    }

    void surgery(const std::string &pointer, const Surgery &value) const
    {
        needed(pointer + "/text", value.text);
        if (value.year)
            number(pointer + "/year", *value.year, Surgery::firstYear, Surgery::lastYear);
    }

    void implant(const std::string &pointer, const Implant &value) const
    {
        needed(pointer + "/text", value.text);
        text(pointer + "/place", value.place);
    }

    void condition(const std::string &pointer, const StandingCondition &value) const
    {
        text(pointer + "/condition", value.id);
        if (!isWellFormed(StructureId{value.id}))
            fail(ErrorCode::BadId, pointer + "/condition", value.id);
        text(pointer + "/note", value.note);
    }

    void pregnancy(const std::string &pointer, const Pregnancy &value) const
    {
        number(pointer + "/week", value.week, Pregnancy::firstWeek, Pregnancy::lastWeek);
        date(pointer + "/date", value.date);
    }

    void bloodPressure(const std::string &pointer, const BloodPressure &value) const
    {
        using P = BloodPressure;
        number(pointer + "/systolic", value.systolic, P::lowestSystolic, P::highestSystolic);
        number(pointer + "/diastolic", value.diastolic, P::lowestDiastolic, P::highestDiastolic);
        if (value.systolic <= value.diastolic)
            fail(ErrorCode::Contradiction, pointer, "systolic, diastolic");
        date(pointer + "/date", value.date);
    }

    void complaint(const std::string &pointer, const PatientComplaint &value) const
    {
        number(pointer + "/id", value.id, 1, PatientComplaint::highestId);
        needed(pointer + "/text", value.text);
        text(pointer + "/since", value.since);
    }

    template <class T>
    void optional(const std::string &pointer, const std::optional<T> &value,
        void (Check::*check)(const std::string &, const T &) const) const
    {
        if (value)
            (this->*check)(pointer, *value);
    }

    template <class T>
    void list(const std::string &pointer, const std::vector<T> &values,
        void (Check::*check)(const std::string &, const T &) const) const
    {
        if (values.size() > PatientRecord::longestList)
            fail(ErrorCode::OutOfRange, pointer,
                std::to_string(values.size()) + " entries, allowed: at most " + std::to_string(PatientRecord::longestList));
        for (std::size_t i = 0; i < values.size(); ++i)
            (this->*check)(pointer + "/" + std::to_string(i), values[i]);
    }

    template <class T, class Id> void once(const std::string &pointer, const std::vector<T> &values, Id T::*id) const
    {
        std::set<Id> seen;
        for (std::size_t i = 0; i < values.size(); ++i)
            if (!seen.insert(values[i].*id).second)
                fail(ErrorCode::Duplicate, pointer + "/" + std::to_string(i), inWords(values[i].*id));
    }

    static std::string inWords(const std::string &id) { return id; }
    static std::string inWords(int id) { return std::to_string(id); }

    std::string m_file;
};

// Two separators, or a year beside one: what a person types for a date or a part of it.
bool isDateInDigits(const QString &word)
{
    qsizetype separators = 0;
    qsizetype run = 0;
    qsizetype longestRun = 0;
    for (const QChar c : word) {
        const bool isDigit = c >= QLatin1Char('0') && c <= QLatin1Char('9');
        if (!isDigit && c != QLatin1Char('.') && c != QLatin1Char('/') && c != QLatin1Char('-'))
            return false;
        run = isDigit ? run + 1 : 0;
        longestRun = std::max(longestRun, run);
        separators += isDigit ? 0 : 1;
    }
    return (separators == 2 && longestRun > 0) || (separators == 1 && longestRun == 4);
}

// Letters that Unicode does not take apart into a plain letter and a mark, and the apostrophes of typesetters.
QString withPlainLetters(const QString &word)
{
    struct Plain {
        char16_t letter;
        const char *plain;
    };
    static constexpr std::array<Plain, 11> table{{{u'ø', "o"}, {u'ł', "l"}, {u'đ', "d"}, {u'ð', "d"}, {u'þ', "th"}, {u'æ', "ae"},
        {u'œ', "oe"}, {u'ħ', "h"}, {u'ı', "i"}, {u'’', "'"}, {u'ʼ', "'"}}};
    QString out;
    for (const QChar c : word.toLower()) {
        const auto *found = std::find_if(table.begin(), table.end(), [c](const Plain &p) { return c == p.letter; });
        if (found == table.end())
            out += c;
        else
            out += QLatin1String(found->plain);
    }
    return out;
}

std::vector<std::string> split(std::string_view folded)
{
    std::vector<std::string> words;
    while (!folded.empty()) {
        const std::size_t end = std::min(folded.find(' '), folded.size());
        if (end > 0)
            words.emplace_back(folded.substr(0, end));
        folded.remove_prefix(std::min(end + 1, folded.size()));
    }
    return words;
}

// 1980-03-05 and what a person writes for it in the order day, month, year.
std::string datesToSearch(const std::string &iso)
{
    if (!isIsoDate(iso))
        return {};
    const std::string year = iso.substr(0, 4);
    const std::string month = iso.substr(5, 2);
    const std::string day = iso.substr(8, 2);
    const auto plain = [](const std::string &two) { return two.front() == '0' ? two.substr(1) : two; };
    std::string out = iso;
    out += " " + day + "." + month + "." + year;
    out += " " + plain(day) + "." + plain(month) + "." + year;
    out += " " + day + month + year;
    return out;
}

void append(std::string &folded, const std::string &more)
{
    if (!folded.empty() && !more.empty())
        folded += ' ';
    folded += more;
}

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
    Words words = split(foldedWords(name));
    words.resize(std::min(words.size(), mostWords));
    std::sort(words.begin(), words.end());
    words.erase(std::unique(words.begin(), words.end()), words.end());
    return words;
}

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
    std::string more = second.name;
    append(more, second.phone);
    return Contact{joined(first.name, more), first.phone};
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

std::optional<std::string> given(const std::string &text)
{
    return text.empty() ? std::nullopt : std::optional(text);
}

} // namespace

Result<Done> checkPatient(const PatientRecord &record, const std::string &file)
{
    return guarded([&] {
        Check(file).record(record);
        return Done{};
    });
}

bool isUtf8(std::string_view text)
{
    QStringDecoder decoder(QStringDecoder::Utf8, QStringDecoder::Flag::Stateless);
    const QString decoded = decoder(QByteArrayView(text.data(), static_cast<qsizetype>(text.size())));
    return !decoder.hasError();
}

std::size_t characterCount(std::string_view text)
{
    return static_cast<std::size_t>(
        std::count_if(text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

std::string foldedWords(std::string_view text)
{
    std::string out;
    const QStringList words = toQt(text).simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    for (QString word : words) {
        if (isDateInDigits(word))
            append(out, word.replace(QLatin1Char('/'), QLatin1Char('.')).toStdString());
        else
            append(out, foldedName(withPlainLetters(word).toStdString()));
    }
    return out;
}

std::string searchText(const PatientRecord &record)
{
    std::string out = foldedWords(record.name);
    for (const std::string &name : record.otherNames)
        append(out, foldedWords(name));
    append(out, datesToSearch(record.born));
    for (const std::string &date : record.otherBorn)
        append(out, datesToSearch(date));
    for (const PatientComplaint &complaint : record.complaints)
        append(out, foldedWords(complaint.text));
    return out;
}

bool matches(std::string_view folded, std::string_view query)
{
    const std::vector<std::string> words = split(foldedWords(query));
    return std::all_of(
        words.begin(), words.end(), [&](const std::string &word) { return folded.find(word) != std::string_view::npos; });
}

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

Result<MergedPatient> merged(const PatientRecord &keep, const PatientRecord &other)
{
    MergedPatient out{keep, {}};
    PatientRecord &r = out.record;
    std::optional<std::string> name = r.name;
    uniteSingle(name, r.otherNames, given(other.name), other.otherNames);
    std::optional<std::string> born = given(r.born);
    uniteSingle(born, r.otherBorn, given(other.born), other.otherBorn);
    r.born = born.value_or(std::string());
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
    uniteSingle(r.pregnancy, r.otherPregnancies, other.pregnancy, other.otherPregnancies);
    uniteSingle(r.bloodPressure, r.otherBloodPressures, other.bloodPressure, other.otherBloodPressures);
    out.complaintIds = uniteComplaints(r.complaints, other.complaints);
    if (const auto sound = checkPatient(r, "merged"); !sound)
        return sound.error();
    return out;
}

} // namespace raphe
