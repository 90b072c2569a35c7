#include "core/record/PatientSearch.h"

#include "core/anatomy/NameSearch.h"
#include "core/record/Visit.h"

#include <QString>
#include <QStringList>

#include <algorithm>
#include <array>

namespace raphe {

namespace {

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

} // namespace

std::string foldedWords(std::string_view text)
{
    std::string out;
    const QStringList words = QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()))
                                  .simplified()
                                  .split(QLatin1Char(' '), Qt::SkipEmptyParts);
    for (QString word : words) {
        if (isDateInDigits(word))
            append(out, word.replace(QLatin1Char('/'), QLatin1Char('.')).toStdString());
        else
            append(out, foldedName(withPlainLetters(word).toStdString()));
    }
    return out;
}

std::vector<std::string> splitWords(std::string_view folded)
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

bool PatientQuery::matches(std::string_view folded) const
{
    return std::all_of(
        m_words.begin(), m_words.end(), [&](const std::string &word) { return folded.find(word) != std::string_view::npos; });
}

} // namespace raphe
