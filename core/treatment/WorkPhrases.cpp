#include "core/treatment/WorkPhrases.h"

#include <algorithm>
#include <optional>

namespace raphe {

namespace {

using language::Token;
using language::TokenKind;
using Tokens = std::vector<Token>;

bool isJoin(const Token &token)
{
    return token.kind == TokenKind::Dash || token.kind == TokenKind::Slash;
}

// The token after the phrase, where it stands at `from`. Hyphens do not count; stops within it may be left out.
std::optional<std::size_t> phraseEnd(const Tokens &line, std::size_t from, const Tokens &phrase)
{
    std::size_t at = from;
    for (const Token &token : phrase) {
        if (isJoin(token))
            continue;
        while (at > from && at < line.size() && isJoin(line[at]))
            ++at;
        if (at < line.size() && line[at].kind == token.kind && line[at].text == token.text)
            ++at;
        else if (!isStop(token))
            return {};
    }
    return at > from ? std::optional(at) : std::nullopt;
}

// The practitioner's own have the phrases of the one that they are like, and are not said by them.
template <class F> void forEachPhrase(const Technique &technique, F use)
{
    use(technique.name, true);
    if (!technique.isOwn)
        for (const std::string &phrase : technique.says)
            use(phrase, false);
}

bool givesWay(const NamedTechnique &named, const NamedTechnique &other)
{
    const bool isWithin = other.begin <= named.begin && named.end <= other.end;
    return isWithin && (other.size() > named.size() || (other.isName && !named.isName));
}

} // namespace

bool isStop(const Token &token)
{
    return token.kind == TokenKind::Comma || token.kind == TokenKind::Colon || token.text == ".";
}

std::size_t workBeginning(const Tokens &line, const WordList::Work &words)
{
    std::size_t longest = 0;
    for (const std::string &says : words.begins)
        longest = std::max(longest, phraseEnd(line, 0, language::tokensOf(says)).value_or(0));
    return longest;
}

std::vector<NamedTechnique> namedTechniques(const Tokens &line, std::size_t from, const Techniques &techniques)
{
    std::vector<NamedTechnique> all;
    for (const Technique &technique : techniques.all)
        forEachPhrase(technique, [&](const std::string &phrase, bool isName) {
            const Tokens tokens = language::tokensOf(phrase);
            for (std::size_t i = from; i < line.size(); ++i)
                if (const auto end = phraseEnd(line, i, tokens))
                    all.push_back({i, *end, &technique, isName});
        });
    std::vector<NamedTechnique> out;
    std::copy_if(all.begin(), all.end(), std::back_inserter(out), [&](const NamedTechnique &named) {
        return std::none_of(all.begin(), all.end(), [&](const NamedTechnique &other) { return givesWay(named, other); });
    });
    return out;
}

std::vector<const Technique *> techniquesWith(const std::string &word, const Techniques &techniques)
{
    const Tokens wanted = language::tokensOf(word);
    std::vector<const Technique *> out;
    for (const Technique &technique : techniques.all)
        forEachPhrase(technique, [&](const std::string &phrase, bool) {
            const Tokens tokens = language::tokensOf(phrase);
            for (std::size_t i = 0; i < tokens.size(); ++i)
                if (phraseEnd(tokens, i, wanted) && (out.empty() || out.back() != &technique))
                    out.push_back(&technique);
        });
    return out;
}

} // namespace raphe
