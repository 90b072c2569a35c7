#include "core/document/Readability.h"

#include "core/safety/ContentReading.h"

#include <QFile>
#include <QRegularExpression>
#include <QStringList>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>

namespace raphe {

namespace {

constexpr const char *readabilityFile = "readability.json";
constexpr int mostSyllables = 20;

constexpr std::array ones{"zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven",
    "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"};
constexpr std::array tens{"", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"};

QStringList spoken(qlonglong n)
{
    if (n < 20)
        return {QString::fromLatin1(ones[static_cast<std::size_t>(n)])};
    if (n < 100) {
        QStringList out{QString::fromLatin1(tens[static_cast<std::size_t>(n / 10)])};
        return n % 10 == 0 ? out : out + spoken(n % 10);
    }
    for (const auto &[size, name] :
        {std::pair(1'000'000LL, "million"), std::pair(1'000LL, "thousand"), std::pair(100LL, "hundred")})
        if (n >= size) {
            const QStringList out = spoken(n / size) + QStringList(QString::fromLatin1(name));
            return n % size == 0 ? out : out + spoken(n % size);
        }
    return {};
}

bool has(const QString &text, const char *pattern)
{
    return QRegularExpression(QString::fromLatin1(pattern)).match(text).hasMatch();
}

int countOf(const QString &text, const char *pattern)
{
    int count = 0;
    for (auto it = QRegularExpression(QString::fromLatin1(pattern)).globalMatch(text); it.hasNext(); it.next())
        ++count;
    return count;
}

// Groups of vowels, less the silent ones, and those that are two.
int byRule(const QString &word)
{
    int n = countOf(word, "[aeiouy]+");
    const bool isSilent = (has(word, "[^aeiouy]e$") && !has(word, "[^aeiouyrw]le$")) // tape, but not: table
        || (has(word, "[^aeiouy]es$") && !has(word, "(s|x|z|ch|sh|c|g|[^aeiouyrw]l)es$")) // tapes, but not: places, tables
        || (has(word, "[^aeiouytd]ed$") && !has(word, "[^aeiouyrlw]led$")) // moved, but not: wanted
        || has(word, "[^aeiouyrlw]led$"); // tingled: two
    if (isSilent)
        --n;
    if (word.size() > 3)
        n += countOf(
            word, "(?<![tscgx])(?!(?<=l)ia[nr]$)i[ao](?!u)|ier$|iest$|eous$|yi|ua[tl]|uo"); // two in trial, one in civilian
    return std::max(n, 1);
}

void readCounts(const JsonReader &at, const nlohmann::json &counts, std::map<std::string, int> &into)
{
    for (const auto &item : counts.items())
        into[item.key()] = at.field(item.key()).asInt(1, mostSyllables);
}

} // namespace

int Readability::syllablesOf(const std::string &text) const
{
    QString word = QString::fromStdString(text).toLower().replace(QChar(0x2019), QLatin1Char('\''));
    while (word.startsWith(QLatin1Char('\'')))
        word.remove(0, 1);
    while (word.endsWith(QLatin1Char('\'')))
        word.chop(1);
    const auto known = [&](const QString &w) {
        const auto it = m_odd.find(w.toStdString());
        return it == m_odd.end() ? 0 : it->second;
    };
    if (has(word, "^[\\d,]+$")) {
        int sum = 0;
        for (const QString &part : spoken(QString(word).remove(QLatin1Char(',')).left(9).toLongLong())) {
            const auto it = m_numberWords.find(part.toStdString());
            sum += it == m_numberWords.end() ? syllablesOf(part.toStdString()) : it->second;
        }
        return std::max(sum, 1);
    }
    if (const int count = known(word); count > 0)
        return count;
    if (word.contains(QLatin1Char('-'))) {
        int sum = 0;
        for (const QString &part : word.split(QLatin1Char('-'), Qt::SkipEmptyParts))
            sum += syllablesOf(part.toStdString());
        return std::max(sum, 1);
    }
    word.replace(QRegularExpression(QStringLiteral("'t$")), QStringLiteral("t"));
    word.remove(QRegularExpression(QStringLiteral("'(s|re|ve|ll|d|m)$")));
    word.remove(QRegularExpression(QStringLiteral("[^a-z]")));
    if (word.isEmpty())
        return 1;
    const int count = known(word);
    return count > 0 ? count : byRule(word);
}

ReadingGrade Readability::gradeOf(const std::vector<std::string> &texts, const std::vector<std::string> &names) const
{
    static const QRegularExpression end(QStringLiteral("(?<=[.!?])(\\s+|$)"));
    static const QRegularExpression aWord(QStringLiteral("[\\p{L}\\p{N}](?:[\\p{L}\\p{N},'\\x{2019}-]*[\\p{L}\\p{N}])?"));
    std::vector<std::string> all = m_names;
    all.insert(all.end(), names.begin(), names.end());
    std::sort(all.begin(), all.end(), [](const auto &a, const auto &b) { return a.size() > b.size(); }); // the longer first
    all.erase(std::unique(all.begin(), all.end()), all.end());

    ReadingGrade out;
    for (const std::string &text : texts) {
        QString counted = QString::fromStdString(text);
        for (const std::string &each : all) {
            const QString name = QString::fromStdString(each);
            const QRegularExpression there(QStringLiteral("\\b%1\\b").arg(QRegularExpression::escape(name)),
                QRegularExpression::CaseInsensitiveOption | QRegularExpression::UseUnicodePropertiesOption);
            if (name.isEmpty() || !counted.contains(there))
                continue;
            counted.replace(there, QStringLiteral("part"));
            if (std::find(out.excepted.begin(), out.excepted.end(), each) == out.excepted.end())
                out.excepted.push_back(each);
        }
        for (const QString &sentence : counted.split(end, Qt::SkipEmptyParts)) {
            int words = 0;
            for (auto it = aWord.globalMatch(sentence); it.hasNext();) {
                out.syllables += syllablesOf(it.next().captured().toStdString());
                ++words;
            }
            if (words == 0)
                continue;
            ++out.sentences;
            out.words += words;
            if (words > out.longest) {
                out.longest = words;
                out.longestSentence = sentence.trimmed().toStdString();
            }
        }
    }
    if (out.words > 0)
        out.grade = 0.39 * out.words / out.sentences + 11.8 * out.syllables / out.words - 15.59;
    return out;
}

Result<Readability> readReadability(std::string_view text)
{
    return guarded([&] {
        const auto json = valueOrThrow(parseJson(text, readabilityFile));
        const JsonReader root(json, readabilityFile);
        root.expectObject({"format", "version", "read", "limit", "longest_sentence", "names", "number_words", "odd"});
        content::expectFormat(root, "raphe-readability");
        Readability out;
        out.limit = root.field("limit").asNumber(0, 20);
        out.longestSentence = root.field("longest_sentence").asInt(1, 100);
        for (const JsonReader &name : root.field("names").items())
            out.m_names.push_back(name.asString());
        for (const auto &[field, into] : {std::pair("number_words", &out.m_numberWords), std::pair("odd", &out.m_odd)})
            readCounts(root.field(field), json.at(field), *into);
        return out;
    });
}

Result<Readability> readEmbeddedReadability()
{
    QFile file(QStringLiteral(":/readability.json"));
    if (!file.open(QIODevice::ReadOnly))
        return Error{ErrorCode::CannotRead, readabilityFile, "not built in"};
    return readReadability(file.readAll().toStdString());
}

} // namespace raphe
