// The recovery key: what is printed is read back, however it is typed, and slips are found and their group named.
#include "core/store/crypto/RecoveryKey.h"

#include "core/store/crypto/Bytes.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace raphe::test {
namespace {

constexpr std::size_t groupWithHyphen = RecoveryKey::groupSize + 1;

// A key of fixed text, so that keys which are printed today open files for ever. Its check characters and its 32 bytes
// were reckoned in Python (hashlib.blake2b) after the rules of the header.
constexpr std::string_view fixedText = "01234-45677-89ACA-DEFGE-HJKMH-NPQRM-TVWXQ-Y012V-5V808";
constexpr std::string_view fixedKey = "37eaf028fab344449face6409f51e60347829c33f4c3ef612db812a732a82fcb";

// The text of the key that was read, or "group 3: check character".
std::string readAs(std::string_view typed)
{
    const auto key = RecoveryKey::parse(typed);
    if (key)
        return key.value().text();
    EXPECT_EQ(key.error().code, ErrorCode::MistypedKey);
    return key.error().place + ": " + key.error().detail;
}

std::string nameOf(std::size_t number)
{
    return "group " + std::to_string(number);
}

std::string placeOfSlip(std::string_view typed)
{
    const auto key = RecoveryKey::parse(typed);
    return key ? "none" : key.error().place;
}

std::string without(std::string text, std::string_view unwanted)
{
    std::erase_if(text, [&](char c) { return unwanted.find(c) != std::string_view::npos; });
    return text;
}

std::string lower(std::string text)
{
    for (char &c : text)
        c = static_cast<char>(std::tolower(c));
    return text;
}

TEST(RecoveryKey, TheAlphabetHasNoLookAlikes)
{
    const std::set<char> letters(RecoveryKey::alphabet.begin(), RecoveryKey::alphabet.end());
    EXPECT_EQ(letters.size(), 29U);
    EXPECT_EQ(RecoveryKey::alphabet.size(), 29U);
    for (const char c : std::string("OILZSBU"))
        EXPECT_FALSE(letters.contains(c)) << c;
    for (const char c : letters)
        EXPECT_TRUE((c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z')) << c;
}

TEST(RecoveryKey, IsWrittenInNineGroupsOfFive)
{
    const std::string text = RecoveryKey::random().text();
    ASSERT_EQ(text.size(), 9U * 5U + 8U);
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (i % groupWithHyphen == RecoveryKey::groupSize)
            EXPECT_EQ(text[i], '-') << text;
        else
            EXPECT_NE(RecoveryKey::alphabet.find(text[i]), std::string_view::npos) << text;
    }
}

TEST(RecoveryKey, IsReadBack)
{
    std::set<std::string> keys;
    std::map<char, int> seen;
    for (int i = 0; i < 500; ++i) {
        const auto key = RecoveryKey::random();
        const auto again = RecoveryKey::parse(key.text());
        ASSERT_TRUE(again) << key.text() << ", " << again.error().place;
        ASSERT_EQ(again.value().text(), key.text());
        ASSERT_TRUE(again.value().key() == key.key()) << key.text();
        keys.insert(toHex(key.key().span()));
        for (std::size_t number = 1; number <= RecoveryKey::groupCount; ++number)
            for (const char c : key.group(number).substr(0, 4))
                ++seen[c];
    }
    EXPECT_EQ(keys.size(), 500U) << "a key came twice";
    // 18000 random characters: 621 expected of each, with a standard deviation of 24.5; six of those as margin.
    for (const char c : RecoveryKey::alphabet)
        EXPECT_NEAR(seen[c], 18000.0 / 29, 147) << c;
}

TEST(RecoveryKey, AFixedTextGivesAFixedKey)
{
    const auto key = RecoveryKey::parse(fixedText);
    ASSERT_TRUE(key) << key.error().place;
    EXPECT_EQ(toHex(key.value().key().span()), fixedKey);
}

TEST(RecoveryKey, MayBeTypedInManyWays)
{
    const std::string text(fixedText);
    const std::string plain = without(text, "-");
    std::string spaced = text;
    std::ranges::replace(spaced, '-', ' ');
    std::string moved = text; // still nine parts
    std::swap(moved[5], moved[6]);
    std::string spelled;
    for (const char c : plain)
        spelled += std::string(1, c) + " ";
    std::string pairs;
    for (std::size_t i = 0; i < plain.size(); i += 2)
        pairs += plain.substr(i, 2) + "-";
    for (const std::string &typed : {lower(text), plain, lower(plain), spaced, moved, spelled, pairs, "  " + text + " \r\n",
             text.substr(0, 24) + "\n\t" + text.substr(24)})
        EXPECT_EQ(readAs(typed), text) << typed;
}

TEST(RecoveryKey, LookAlikesMeanWhatTheyLookLike)
{
    const std::string text(fixedText);
    const std::vector<std::pair<char, char>> alike{
        {'O', '0'}, {'I', '1'}, {'L', '1'}, {'Z', '2'}, {'S', '5'}, {'B', '8'}, {'U', 'V'}};
    for (const auto &[typed, meant] : alike) {
        ASSERT_NE(text.find(meant), std::string::npos) << meant;
        std::string other = text;
        std::ranges::replace(other, meant, typed);
        EXPECT_EQ(readAs(other), text) << other;
        EXPECT_EQ(readAs(lower(other)), text) << lower(other);
    }
}

TEST(RecoveryKey, EveryWrongCharacterIsFoundInItsGroup)
{
    for (int i = 0; i < 3; ++i) {
        const std::string text = RecoveryKey::random().text();
        for (std::size_t at = 0; at < text.size(); ++at) {
            if (text[at] == '-')
                continue;
            for (int code = '!'; code <= '~'; ++code) {
                std::string typed = text;
                typed[at] = static_cast<char>(code);
                if (code == '-') // leaves a character out
                    continue;
                const std::string read = readAs(typed);
                if (read == text)
                    EXPECT_NE(std::string("OILZSBU").find(static_cast<char>(std::toupper(code))) == std::string::npos,
                        std::toupper(code) != text[at])
                        << typed << " is taken for " << text;
                else
                    EXPECT_EQ(placeOfSlip(typed), nameOf(at / groupWithHyphen + 1)) << typed << " for " << text;
            }
        }
    }
}

TEST(RecoveryKey, EveryExchangeWithinAGroupIsFound)
{
    for (int i = 0; i < 200; ++i) {
        const std::string text = RecoveryKey::random().text();
        for (std::size_t number = 1; number <= RecoveryKey::groupCount; ++number) {
            const std::size_t start = (number - 1) * groupWithHyphen;
            for (std::size_t a = start; a < start + RecoveryKey::groupSize; ++a) {
                for (std::size_t b = a + 1; b < start + RecoveryKey::groupSize; ++b) { // neighbours and all others
                    std::string typed = text;
                    std::swap(typed[a], typed[b]);
                    EXPECT_EQ(placeOfSlip(typed), text[a] == text[b] ? "none" : nameOf(number)) << typed << " for " << text;
                }
            }
        }
    }
}

TEST(RecoveryKey, GroupsInTheWrongPlaceAreFound)
{
    const std::string text = RecoveryKey::random().text();
    for (std::size_t a = 0; a < RecoveryKey::groupCount; ++a) {
        for (std::size_t b = a + 1; b < RecoveryKey::groupCount; ++b) {
            std::string typed = text;
            std::swap_ranges(typed.begin() + static_cast<long>(a * groupWithHyphen),
                typed.begin() + static_cast<long>(a * groupWithHyphen + RecoveryKey::groupSize),
                typed.begin() + static_cast<long>(b * groupWithHyphen));
            EXPECT_EQ(placeOfSlip(typed), nameOf(a + 1)) << typed;
        }
    }
}

TEST(RecoveryKey, ALostOrAddedCharacterIsNamedByItsGroup)
{
    const std::string text = RecoveryKey::random().text();
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (text[at] == '-')
            continue;
        const std::size_t number = at / groupWithHyphen + 1;
        EXPECT_EQ(readAs(std::string(text).erase(at, 1)), nameOf(number) + ": 4 characters, allowed: 5");
        EXPECT_EQ(readAs(std::string(text).insert(at, 1, 'X')), nameOf(number) + ": 6 characters, allowed: 5");
    }
}

TEST(RecoveryKey, AnUnfinishedOrTooLongKeyIsNamedToo)
{
    const std::string text(fixedText);
    const std::string plain = without(text, "-");
    EXPECT_EQ(readAs(""), "group 1: 0 characters, allowed: 5");
    EXPECT_EQ(readAs(" - "), "group 1: 0 characters, allowed: 5");
    EXPECT_EQ(readAs(text.substr(0, 2 * groupWithHyphen)), "group 3: 0 characters, allowed: 5");
    EXPECT_EQ(readAs(plain.substr(0, 44)), "group 9: 4 characters, allowed: 5");
    EXPECT_EQ(readAs(plain + "X"), "group 10: more than 9 groups");
    EXPECT_EQ(readAs(text + "-" + text), "group 10: more than 9 groups");
}

TEST(RecoveryKey, CharactersThatNoKeyHasAreNamed)
{
    const std::string text(fixedText);
    const auto second = [&](const std::string &character) { return std::string(text).replace(groupWithHyphen, 1, character); };
    EXPECT_EQ(readAs(second("?")), "group 2: character ?");
    const std::string outside = "group 2: character outside A to Z and 0 to 9";
    EXPECT_EQ(readAs(second("\xc3\xb6")), outside);
    EXPECT_EQ(readAs(second("\xf0\x9d\x84\x9e")), outside);
    EXPECT_EQ(readAs(second("\x01")), outside);
    EXPECT_EQ(readAs(second(std::string(1, '\0'))), outside);
    EXPECT_EQ(readAs(second("\xff")), outside);
}

TEST(RecoveryKey, AGroupCanBeAskedFor)
{
    const auto key = RecoveryKey::parse(fixedText).value();
    for (std::size_t number = 1; number <= RecoveryKey::groupCount; ++number) {
        const std::string group = key.group(number);
        EXPECT_EQ(group, fixedText.substr((number - 1) * groupWithHyphen, RecoveryKey::groupSize));
        EXPECT_TRUE(key.isGroup(number, " " + lower(group) + "-"));
        EXPECT_FALSE(key.isGroup(number, group.substr(1)));
        EXPECT_FALSE(key.isGroup(number, ""));
        EXPECT_FALSE(key.isGroup(number % RecoveryKey::groupCount + 1, group));
    }
    EXPECT_THROW(static_cast<void>(key.group(0)), Error);
    EXPECT_THROW(static_cast<void>(key.group(10)), Error);
}

} // namespace
} // namespace raphe::test
