// Names, joints and movements of a line, and which of them a phrase is when it could be several.
#include "core/language/LineMarker.h"

#include <algorithm>

namespace raphe::language {

using Kind = LineWords::Kind;
using Meaning = LineWords::Meaning;

void LineMarker::addPhraseOrName()
{
    const std::size_t token = m_at;
    const auto &phrase = m_reader.phraseAt(token);
    const auto name = m_reader.nameAt(token);
    const std::size_t phraseEnd = phrase ? phrase->end : token;
    const std::size_t nameEnd = name ? name->end : token;
    const bool isFirmName = name && (name->how == NameHow::Whole || name->how == NameHow::Short);
    if (const Meaning *word = meaningOf(phrase, Kind::Word); word && phraseEnd >= nameEnd)
        return addWord(static_cast<LineWord>(word->index), phraseEnd);
    if (phraseEnd >= nameEnd || !isFirmName) {
        if (const Meaning *movement = meaningOf(phrase, Kind::Movement))
            return addWholeMove(movement->index, phraseEnd);
        if (addMoveOf(phrase))
            return;
        if (const Meaning *texture = meaningOf(phrase, Kind::Texture)) {
            add(MarkKind::Texture, phraseEnd).text = m_words.list().textures[texture->index];
            return;
        }
        if (const Meaning *device = meaningOf(phrase, Kind::Device); device && m_inMeasure) {
            add(MarkKind::Device, phraseEnd).device = m_words.list().devices[device->index].device;
            return;
        }
    }
    if (const Meaning *shared = meaningOf(phrase, Kind::Shared); shared && phraseEnd >= nameEnd)
        return addShared(*shared, phraseEnd);
    if (meaningOf(phrase, Kind::Region) && phraseEnd > token + 1 && !isFirmName)
        return addRegionOfSeveralWords(*phrase);
    const bool isMove = meaningOf(phrase, Kind::Move) || meaningOf(phrase, Kind::UnclearMove);
    if (isMove && !isFirmName)
        return addMove({}, phraseEnd);
    // A name of several words wins over a word of the trade that is as near to the first of them.
    const int asNear = name && name->how == NameHow::Misspelt ? name->edits - (nameEnd > token + 1 ? 1 : 0) : 99;
    if (name && (isFirmName || !misspeltPhrase(token, asNear)))
        return addName(*name);
    if (const Meaning *region = meaningOf(phrase, Kind::Region)) {
        m_region = region->index;
        add(MarkKind::Region, phraseEnd).region = region->index;
        return;
    }
    if (const auto near = misspeltPhrase(token, 99))
        return addMisspelt(*near);
    add(MarkKind::Unknown, token + 1);
}

void LineMarker::addRegionOfSeveralWords(const PhraseFound &phrase)
{
    const auto name = m_reader.nameAt(m_at + 1);
    if (name && name->end > phrase.end && addSide(m_at + 1))
        return;
    m_region = meaningOf(phrase, Kind::Region)->index;
    add(MarkKind::Region, phrase.end).region = m_region;
}

std::optional<Meaning> LineMarker::misspeltPhrase(std::size_t token, int edits) const
{
    if (m_reader.phraseAt(token) || m_words.names().choose(m_tokens[token].text, Freedom::Exact).hasExact)
        return {}; // a word of names is spelt right
    std::optional<Meaning> found;
    for (const LineWords::NearPhrase &near : m_words.nearest(m_tokens[token].text)) {
        if (near.edits > edits)
            return {};
        const Meaning meaning = m_words.meanings(near.key)->front();
        if (found && (found->kind != meaning.kind || found->index != meaning.index))
            return {};
        found = meaning;
    }
    if (found && found->kind == Kind::Word && static_cast<LineWord>(found->index) == LineWord::Filler)
        return {};
    return found;
}

void LineMarker::addMisspelt(const Meaning &meaning)
{
    const std::size_t end = m_at + 1;
    switch (meaning.kind) {
    case Kind::Word: return addWord(static_cast<LineWord>(meaning.index), end);
    case Kind::Texture: add(MarkKind::Texture, end).text = m_words.list().textures[meaning.index]; return;
    case Kind::Device: add(MarkKind::Device, end).device = m_words.list().devices[meaning.index].device; return;
    case Kind::Shared: return addShared(meaning, end);
    case Kind::Region:
        m_region = meaning.index;
        add(MarkKind::Region, end).region = meaning.index;
        return;
    case Kind::Movement: return addWholeMove(meaning.index, end);
    case Kind::Move:
    case Kind::UnclearMove: {
        const auto near = m_words.nearest(m_tokens[m_at].text);
        const PhraseFound phrase{end, m_words.meanings(near.front().key), near.front().key};
        if (!addMoveOf(phrase))
            addMove({}, end);
        return;
    }
    }
}

// Its joint is the one that is spoken of from here on.
void LineMarker::addWholeMove(std::size_t movement, std::size_t end)
{
    const auto &regions = m_words.list().regions;
    const auto joint = std::find_if(regions.begin(), regions.end(),
        [&](const MoveRegion &region) { return region.id == m_words.list().movements[movement].region; });
    m_region.reset();
    if (joint != regions.end())
        m_region = static_cast<std::size_t>(joint - regions.begin());
    addMove({movement}, end);
}

bool LineMarker::addMoveOf(const std::optional<PhraseFound> &phrase)
{
    if (!phrase || !m_region)
        return false;
    const std::string &region = m_words.list().regions[*m_region].id;
    std::vector<std::size_t> movements;
    for (const Meaning &meaning : *phrase->meanings) {
        if (meaning.kind != Kind::Move && meaning.kind != Kind::UnclearMove)
            continue;
        if (m_words.list().movements[meaning.index].isOf(region))
            movements.push_back(meaning.index);
    }
    if (movements.empty())
        return false;
    addMove(std::move(movements), phrase->end);
    return true;
}

void LineMarker::addMove(std::vector<std::size_t> movements, std::size_t end)
{
    add(MarkKind::Move, end).movements = std::move(movements);
    m_inMeasure = true;
    m_before = Before::Grade;
}

void LineMarker::addShared(const Meaning &shared, std::size_t end)
{
    NameFound name{end, NameHow::Begun, {}, false, 0};
    for (const StructureId &id : m_words.list().shared[shared.index].structures)
        name.structures.push_back(static_cast<std::size_t>(m_words.atlas().find(id) - m_words.atlas().structures().data()));
    addName(name);
}

void LineMarker::addName(const NameFound &name)
{
    const std::size_t token = m_at;
    Mark &mark = add(MarkKind::Name, name.end);
    mark.structures = name.structures;
    mark.isSure = name.isSure;
    mark.isShort = name.how == NameHow::Short;
    mark.region = regionOf(token, name);
    m_region = mark.region;
    const auto &atlas = m_words.atlas();
    const bool isOfSpineHere = std::any_of(
        name.structures.begin(), name.structures.end(), [&](std::size_t s) { return isOfSpine(atlas.structures()[s], atlas); });
    m_lineStructure = isOfSpineHere ? Before::Spine : Before::Structure;
    m_before = m_lineStructure;
    m_inMeasure = false;
    m_hasName = true;
}

std::optional<std::size_t> LineMarker::regionOf(std::size_t token, const NameFound &name) const
{
    const auto &regions = m_words.list().regions;
    if (const Meaning *region = meaningOf(m_reader.phraseAt(token), Kind::Region);
        region && name.end == m_reader.phraseAt(token)->end)
        return region->index;
    if (name.isSure)
        for (std::size_t i = 0; i < regions.size(); ++i)
            if (std::find(
                    regions[i].joints.begin(), regions[i].joints.end(), m_words.atlas().structures()[name.structures.front()].id)
                != regions[i].joints.end())
                return i;
    if (name.end != token + 1 || m_tokens[token].text.size() < 3 || m_reader.phraseAt(token))
        return {};
    if (const auto near = misspeltPhrase(token, 1); near && near->kind == Kind::Region)
        return near->index;
    for (std::size_t i = 0; i < regions.size(); ++i)
        for (const std::string &says : regions[i].says)
            if (says.starts_with(m_tokens[token].text))
                return i;
    return {};
}

void LineMarker::addSuperficialFascia(std::size_t end)
{
    const std::size_t begin = m_tokens[m_at].begin;
    while (end < m_tokens.size() && m_words.names().isJoiner(m_tokens[end].text))
        ++end;
    const auto name = end < m_tokens.size() ? m_reader.nameAt(end) : std::nullopt;
    if (!name) {
        add(MarkKind::Unknown, end);
        return;
    }
    NameFound under{name->end, name->how, {}, name->isSure, 0};
    for (const std::size_t s : name->structures)
        if (const Structure *layer = m_words.atlas().find({"sf-" + m_words.atlas().structures()[s].id.value}))
            under.structures.push_back(static_cast<std::size_t>(layer - m_words.atlas().structures().data()));
    if (under.structures.empty()) {
        add(MarkKind::Unknown, name->end);
        return;
    }
    under.isSure = under.structures.size() == 1;
    m_at = end;
    addName(under);
    m_marks.back().begin = begin;
}

} // namespace raphe::language
