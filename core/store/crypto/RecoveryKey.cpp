#include "core/store/crypto/RecoveryKey.h"

#include "core/base/JsonReader.h"
#include "core/store/crypto/Bytes.h"

#include <sodium.h>

#include <algorithm>
#include <array>
#include <numeric>
#include <utility>
#include <vector>

namespace raphe {

namespace {

constexpr std::size_t keySize = 32;
constexpr std::string_view useName = "raphe recovery key, form 1"; // changing it, or the form, orphans printed keys
static_assert(useName.size() >= crypto_generichash_KEYBYTES_MIN && useName.size() <= crypto_generichash_KEYBYTES_MAX);

constexpr std::size_t checkPosition = RecoveryKey::groupSize - 1;
constexpr std::array<std::size_t, RecoveryKey::groupSize> factors{2, 3, 4, 5, 1}; // the check character's is 1
constexpr std::size_t modulus = RecoveryKey::alphabet.size();
static_assert(modulus == 29 && RecoveryKey::groupCount < modulus);

// What a typed character means; anything unknown stays as it is.
char meantBy(char typed)
{
    const char capital = typed >= 'a' && typed <= 'z' ? static_cast<char>(typed - 'a' + 'A') : typed;
    switch (capital) {
    case 'O': return '0';
    case 'I':
    case 'L': return '1';
    case 'Z': return '2';
    case 'S': return '5';
    case 'B': return '8';
    case 'U': return 'V';
    default: return capital;
    }
}

bool isSeparator(char c)
{
    return std::string_view(" -\t\r\n").find(c) != std::string_view::npos;
}

// What was meant, in the groups as they were typed.
std::vector<std::string> typedGroups(std::string_view typed)
{
    std::vector<std::string> groups;
    bool apart = true;
    for (const char c : typed) {
        if (isSeparator(c)) {
            apart = true;
        } else {
            if (apart)
                groups.emplace_back();
            groups.back() += meantBy(c);
            apart = false;
        }
    }
    return groups;
}

std::string joined(const std::vector<std::string> &groups)
{
    return std::accumulate(groups.begin(), groups.end(), std::string());
}

// In groups of the right size; the last may be shorter.
std::vector<std::string> cut(const std::string &characters)
{
    std::vector<std::string> groups;
    for (std::size_t at = 0; at < characters.size(); at += RecoveryKey::groupSize)
        groups.push_back(characters.substr(at, RecoveryKey::groupSize));
    return groups;
}

// 0 for a group that holds, when the check character is in place; what is missing to it, when that one is still 0.
std::size_t shortOf(std::size_t number, std::string_view group)
{
    std::size_t sum = 0;
    for (std::size_t i = 0; i < group.size(); ++i)
        sum += factors[i] * RecoveryKey::alphabet.find(group[i]);
    return (number + modulus - sum % modulus) % modulus;
}

void expectGroup(std::size_t number, std::string_view group)
{
    const auto fail = [&](std::string detail) {
        throw Error{ErrorCode::MistypedKey, "group " + std::to_string(number), std::move(detail)};
    };
    if (number > RecoveryKey::groupCount)
        fail("more than " + std::to_string(RecoveryKey::groupCount) + " groups");
    const auto unknown = group.find_first_not_of(RecoveryKey::alphabet);
    if (unknown != std::string_view::npos) {
        const char c = group[unknown];
        fail(c > ' ' && c < '\x7f' ? "character " + std::string(1, c) : "character outside A to Z and 0 to 9");
    }
    if (group.size() != RecoveryKey::groupSize)
        fail(std::to_string(group.size()) + " characters, allowed: " + std::to_string(RecoveryKey::groupSize));
    if (shortOf(number, group) != 0)
        fail("check character");
}

} // namespace

RecoveryKey::RecoveryKey(std::string characters) : m_characters(std::move(characters)) { }

RecoveryKey RecoveryKey::random()
{
    initialiseCrypto();
    std::string characters;
    for (std::size_t number = 1; number <= groupCount; ++number) {
        std::string group;
        while (group.size() < checkPosition)
            group += alphabet[randombytes_uniform(static_cast<std::uint32_t>(modulus))];
        group += alphabet[shortOf(number, group)];
        characters += group;
    }
    return RecoveryKey(std::move(characters));
}

Result<RecoveryKey> RecoveryKey::parse(std::string_view typed)
{
    return guarded([&] {
        const auto asTyped = typedGroups(typed);
        std::string characters = joined(asTyped);
        const bool fits = characters.size() == groupCount * groupSize;
        const auto groups = !fits && asTyped.size() == groupCount ? asTyped : cut(characters);
        for (std::size_t number = 1; number <= std::max(groupCount, groups.size()); ++number)
            expectGroup(number, number <= groups.size() ? groups[number - 1] : std::string());
        return RecoveryKey(std::move(characters));
    });
}

std::string RecoveryKey::text() const
{
    std::string text;
    for (const auto &group : cut(m_characters))
        text += (text.empty() ? "" : "-") + group;
    return text;
}

std::string RecoveryKey::group(std::size_t number) const
{
    if (number < 1 || number > groupCount)
        throw Error{ErrorCode::OutOfRange, "group", std::to_string(number) + ", allowed: 1 to " + std::to_string(groupCount)};
    return m_characters.substr((number - 1) * groupSize, groupSize);
}

bool RecoveryKey::isGroup(std::size_t number, std::string_view typed) const
{
    return joined(typedGroups(typed)) == group(number);
}

SecretBytes RecoveryKey::key() const
{
    SecretBytes key(keySize);
    const auto text = bytesOf(m_characters);
    const auto use = bytesOf(useName);
    crypto_generichash(key.span().data(), key.size(), text.data(), text.size(), use.data(), use.size());
    return key;
}

} // namespace raphe
