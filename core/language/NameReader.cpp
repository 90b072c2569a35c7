#include "core/language/NameReader.h"

#include <algorithm>
#include <set>

namespace raphe::language {

namespace {

constexpr std::size_t mostNameWords = 8; // in a typed name
constexpr std::size_t mostChoices = 12; // in a question; there are twelve ribs
constexpr std::size_t leastAlone = 6; // letters of the only word of a longer name that was typed
constexpr std::size_t fewLetters = 4;
constexpr double clearlyNearer = 0.05; // in units of a typing error

using Kind = LineWords::Kind;

bool hasKind(const std::optional<PhraseFound> &phrase, Kind kind)
{
    return phrase
        && std::any_of(phrase->meanings->begin(), phrase->meanings->end(), [&](const auto &m) { return m.kind == kind; });
}

// Words that are also the beginnings of names: 'ext' of 'ext oblique'.
bool isOnlyMove(const PhraseFound &phrase)
{
    return std::all_of(phrase.meanings->begin(), phrase.meanings->end(), [](const LineWords::Meaning &m) {
        return m.kind == Kind::Move || m.kind == Kind::UnclearMove || m.kind == Kind::Region || m.kind == Kind::Shared;
    });
}

} // namespace

NameReader::NameReader(const std::vector<Token> &tokens, const LineWords &words)
    : m_tokens(tokens), m_words(words), m_choices(tokens.size())
{
    for (std::size_t i = 0; i < tokens.size(); ++i)
        m_phrases.push_back(findPhrase(i));
}

std::optional<PhraseFound> NameReader::findPhrase(std::size_t token) const
{
    std::optional<PhraseFound> found;
    std::string key;
    std::size_t count = 0;
    for (std::size_t i = token; i < m_tokens.size() && count < m_words.longestPhrase(); ++i) {
        const Token &t = m_tokens[i];
        if (t.kind == TokenKind::Comma || t.kind == TokenKind::Colon)
            break;
        if (t.kind == TokenKind::Dash) {
            if (i == token || !t.glued)
                break;
            continue;
        }
        key.append(key.empty() ? "" : " ").append(t.text);
        ++count;
        if (const auto *meanings = m_words.meanings(key))
            found = PhraseFound{i + 1, meanings, key};
    }
    return found;
}

NameReader::Window NameReader::windowAt(std::size_t token) const
{
    Window window;
    for (std::size_t i = token; i < m_tokens.size() && window.tokens.size() < mostNameWords; ++i) {
        const Token &t = m_tokens[i];
        const bool isInside = i > token && t.glued && i + 1 < m_tokens.size() && m_tokens[i + 1].glued;
        if ((t.kind == TokenKind::Dash || t.kind == TokenKind::Slash) && isInside)
            continue;
        if (t.kind != TokenKind::Word && t.kind != TokenKind::Number)
            break;
        if (m_words.names().isJoiner(t.text)) {
            if (i == token)
                break;
            continue;
        }
        // 'l 5' is not the vertebra, and '5' of 'rib 5 2' is not the start of '52'.
        const bool isLooseNumber = t.kind == TokenKind::Number && !t.glued && i > token && m_tokens[i - 1].text.size() == 1;
        if (isLooseNumber && (hasKind(m_phrases[i - 1], Kind::Word) || m_tokens[i - 1].kind == TokenKind::Number))
            break;
        // Two levels side by side ('t2 t3') are no segment.
        const bool isNextLevel = t.kind == TokenKind::Word && !t.glued && i > token && m_tokens[i - 1].kind == TokenKind::Number
            && i + 1 < m_tokens.size() && m_tokens[i + 1].kind == TokenKind::Number && m_tokens[i + 1].glued;
        if (isNextLevel)
            break;
        window.tokens.push_back(i);
        window.ends.push_back(i + 1);
    }
    return window;
}

std::optional<NameFound> NameReader::nameAt(std::size_t token) const
{
    const Window window = windowAt(token);
    if (window.tokens.empty())
        return {};
    std::optional<NameFound> best = whole(window);
    const auto isLonger = [&](const std::optional<NameFound> &other) { return other && (!best || other->end > best->end); };
    if (auto found = shortened(window, best ? best->end : token); isLonger(found))
        best = std::move(found);
    if (auto found = misspelt(window, best ? best->end : token); isLonger(found))
        best = std::move(found);
    // What the words of the trade say by themselves is not the beginning of a name.
    if (!best && (!m_phrases[token] || isOnlyMove(*m_phrases[token])))
        best = begun(window);
    return best;
}

std::optional<NameFound> NameReader::whole(const Window &window) const
{
    std::vector<std::string_view> typed;
    for (const std::size_t token : window.tokens)
        typed.push_back(m_tokens[token].text);
    for (std::size_t n = typed.size(); n > 0; --n) {
        typed.resize(n);
        auto structures = m_words.names().whole(typed);
        if (!structures.empty()) {
            const bool isSure = structures.size() == 1;
            return NameFound{window.ends[n - 1], NameHow::Whole, std::move(structures), isSure, 0};
        }
    }
    return {};
}

const WordChoice &NameReader::choice(std::size_t token, Freedom freedom) const
{
    auto &kept = m_choices[token][static_cast<std::size_t>(freedom)];
    if (!kept)
        kept = m_words.names().choose(m_tokens[token].text, freedom);
    return *kept;
}

bool NameReader::mayBeCut(std::size_t token, const Window &window) const
{
    const auto &phrase = m_phrases[token];
    if (!phrase)
        return true;
    if (!isOnlyMove(*phrase))
        return false;
    // After a joint's name it is a movement: 'hip flex'.
    return token == window.tokens.front() || !hasKind(m_phrases[window.tokens.front()], Kind::Region);
}

std::optional<NameFound> NameReader::shortened(const Window &window, std::size_t longerThan) const
{
    for (std::size_t n = window.tokens.size(); n > 0 && window.ends[n - 1] > longerThan; --n) {
        std::vector<const WordChoice *> choices;
        for (std::size_t i = 0; i < n; ++i)
            choices.push_back(&choice(window.tokens[i], mayBeCut(window.tokens[i], window) ? Freedom::Cut : Freedom::Exact));
        if (std::any_of(choices.begin(), choices.end(), [](const WordChoice *c) { return c->none(); }))
            continue;
        const auto fits = m_words.names().fits(choices);
        if (fits.empty() || fits.front().missing > 0 || fits.front().leftOut)
            continue;
        NameFound found{window.ends[n - 1], NameHow::Short, {}, false, 0};
        for (const NameFit &fit : fits)
            if (fit.missing == 0 && !fit.leftOut && found.structures.size() < mostChoices)
                found.structures.push_back(fit.structure);
        found.isSure =
            found.structures.size() == 1 || (fits[1].cost - fits[0].cost > clearlyNearer && fits[1].word == fits[0].word);
        // A few letters of what hands seldom mean ('scar' of a fascia named after Scarpa) are no name yet.
        if (n == 1 && m_tokens[window.tokens.front()].text.size() <= fewLetters && !isTechnical(found.structures.front()))
            found.isSure = false;
        // One cut word that begins other words of names too ('occip') names none of them.
        if (n == 1)
            for (const NameFit &fit : fits)
                if (fit.word != fits.front().word && isTechnical(fit.structure)) {
                    found.isSure = false;
                    if (fit.missing > 0 && found.structures.size() < mostChoices)
                        found.structures.push_back(fit.structure);
                }
        return found;
    }
    return {};
}

std::optional<NameFound> NameReader::misspelt(const Window &window, std::size_t longerThan) const
{
    for (std::size_t n = window.tokens.size(); n > 0 && window.ends[n - 1] > longerThan; --n) {
        std::vector<const WordChoice *> choices;
        bool hasSlip = false;
        for (std::size_t i = 0; i < n; ++i) {
            const std::size_t token = window.tokens[i];
            const bool isSlip = !m_phrases[token] && !choice(token, Freedom::Exact).hasExact;
            hasSlip = hasSlip || isSlip;
            choices.push_back(&choice(token,
                isSlip                        ? Freedom::Misspelt
                    : mayBeCut(token, window) ? Freedom::Cut
                                              : Freedom::Exact));
        }
        if (!hasSlip || std::any_of(choices.begin(), choices.end(), [](const WordChoice *c) { return c->none(); }))
            continue;
        auto fits = m_words.names().fits(choices);
        std::erase_if(fits, [](const NameFit &fit) { return fit.missing > 0 || fit.edits == 0; });
        if (fits.empty() || fits.front().leftOut)
            continue;
        NameFound found{window.ends[n - 1], NameHow::Misspelt, {}, true, fits.front().edits};
        for (const NameFit &fit : fits)
            if (found.structures.size() < mostChoices && !fit.leftOut
                && fit.edits + fit.cost < fits.front().edits + fits.front().cost + clearlyNearer)
                found.structures.push_back(fit.structure);
        found.isSure = found.structures.size() == 1;
        return found;
    }
    return {};
}

bool NameReader::isTechnical(std::size_t structure) const
{
    switch (m_words.atlas().structures()[structure].kind) {
    case raphe::Kind::Nerve:
    case raphe::Kind::Vessel:
    case raphe::Kind::Bursa:
    case raphe::Kind::SurfaceRegion:
    case raphe::Kind::SuperficialFascia:
    case raphe::Kind::CautionArea: return false;
    default: return true;
    }
}

// A name without its general noun ('iliolumbar') is the structure where one remains; with other words missing it is asked.
std::optional<NameFound> NameReader::begun(const Window &window) const
{
    for (std::size_t n = window.tokens.size(); n > 0; --n) {
        std::vector<const WordChoice *> choices;
        for (std::size_t i = 0; i < n; ++i)
            choices.push_back(&choice(window.tokens[i], mayBeCut(window.tokens[i], window) ? Freedom::Cut : Freedom::Exact));
        if (std::any_of(choices.begin(), choices.end(), [](const WordChoice *c) { return c->none(); }))
            continue;
        const auto fits = m_words.names().fits(choices);
        if (fits.empty())
            continue;
        NameFound found{window.ends[n - 1], NameHow::Begun, {}, false, 0};
        const int least = fits.front().missing;
        std::size_t others = 0;
        for (const NameFit &fit : fits) {
            if (fit.missing > std::max(least, 1))
                break;
            if (fit.missing > least && isTechnical(fit.structure))
                ++others;
            if (found.structures.size() < mostChoices && (fit.missing == least || isTechnical(fit.structure)))
                found.structures.push_back(fit.structure);
        }
        const bool isOne = fits.size() == 1 || fits[1].missing > least;
        if (least == 0)
            found.isSure =
                isOne && (others == 0 || m_words.atlas().structures()[fits.front().structure].kind == raphe::Kind::Joint);
        else
            found.isSure = n == 1 && fits.size() == 1 && least == 1 && fits.front().fromStart
                && m_tokens[window.tokens.front()].text.size() >= leastAlone;
        if (found.isSure)
            found.structures.resize(1);
        return found;
    }
    return {};
}

} // namespace raphe::language
