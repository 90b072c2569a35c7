#include "core/language/Places.h"

#include "core/language/Clause.h"
#include "core/language/Ends.h"
#include "core/language/Levels.h"
#include "core/record/VisitJson.h"

#include <algorithm>

namespace raphe::language {

namespace {

const Structure &structureAt(std::size_t index, const LineWords &words)
{
    return words.atlas().structures()[index];
}

LineChoice choiceOf(std::size_t index, const LineWords &words, const std::string &before = {})
{
    return {before + words.names().sureName(words.atlas(), index), structureAt(index, words).id};
}

bool isOneSide(const std::optional<SideSaid> &side)
{
    return side && side->side != SideWord::Midline;
}

// The clause may leave one structure of several: by a side that only it has, or by an end that only it has.
std::vector<std::size_t> narrowed(const Mark &name, const std::optional<SideSaid> &side, const Said &said, const LineWords &words)
{
    std::vector<std::size_t> left = name.structures;
    const auto keep = [&](auto fits) {
        std::vector<std::size_t> kept;
        std::copy_if(left.begin(), left.end(), std::back_inserter(kept), fits);
        if (!kept.empty())
            left = std::move(kept);
    };
    for (const Mark &at : said.at)
        keep([&](std::size_t s) { return !endsAt(structureAt(s, words), at.parts.front(), words).empty(); });
    const bool isNarrowedByEnd = left.size() < name.structures.size();
    if (isOneSide(side) && (isNarrowedByEnd || name.isShort))
        keep([&](std::size_t s) { return words.atlas().sides(structureAt(s, words)).size() > 1; });
    return left;
}

// Right of a vertebra is one of its segments or a part of it that has sides.
void askVertebra(std::size_t structure, const Mark &name, const SideSaid &side, const LineWords &words, Issues &issues)
{
    const Structure &bone = structureAt(structure, words);
    const Stretch at = side.at ? spanOf(*side.at, stretchOf(name)) : stretchOf(name);
    const std::string before = side.at ? phraseOf(side.side, words) + " " : std::string();
    LineQuestion &question = issues.ask(AskAbout::Structure, Doubt::SideOfVertebra, at);
    for (const std::size_t segment : segmentsOf(bone.id, words))
        question.choices.push_back(choiceOf(segment, words, before));
    for (std::size_t i = 0; i < words.atlas().structures().size(); ++i)
        if (structureAt(i, words).partOf == bone.id && structureAt(i, words).paired)
            question.choices.push_back(choiceOf(i, words, before));
}

} // namespace

const std::string &phraseOf(SideWord side, const LineWords &words)
{
    const LineWord word = side == SideWord::Left ? LineWord::Left
        : side == SideWord::Right                ? LineWord::Right
        : side == SideWord::Both                 ? LineWord::Both
                                                 : LineWord::Midline;
    return words.firstPhrase(word);
}

std::optional<std::size_t> structureOf(
    const Mark &name, const std::optional<SideSaid> &side, const Said &said, const LineWords &words, Issues &issues)
{
    if (name.kind == MarkKind::NoLevel) {
        issues.fault(AskAbout::Structure, LineFault::NoSuchLevel, stretchOf(name));
        return {};
    }
    if (name.structures.empty()) {
        issues.fault(AskAbout::Structure, LineFault::UnknownWords, stretchOf(name));
        return {};
    }
    if (name.isSure)
        return name.structures.front();
    const auto left = narrowed(name, side, said, words);
    if (left.size() == 1 && name.structures.size() > 1)
        return left.front();
    LineQuestion &question = issues.ask(AskAbout::Structure, Doubt::NameOfSeveral, stretchOf(name));
    for (const std::size_t s : left)
        question.choices.push_back(choiceOf(s, words));
    return {};
}

std::vector<Side> sidesOf(
    std::size_t structure, const Mark &name, const std::optional<SideSaid> &side, const LineWords &words, Issues &issues)
{
    const Structure &s = structureAt(structure, words);
    const bool isSegment = words.atlas().isSpinalSegment(s.id);
    if (!s.paired && !isSegment) {
        if (!isOneSide(side))
            return {Side::Midline};
        if (isVertebra(s)) {
            askVertebra(structure, name, *side, words, issues);
        } else if (side->at) {
            const Stretch at = spanOf(*side->at, stretchOf(name));
            issues.ask(AskAbout::Side, Doubt::OnlyMidline, at).choices = {
                {words.names().sureName(words.atlas(), structure), s.id}};
        } else {
            return {Side::Midline}; // a heading's side is of what has sides
        }
        return {};
    }
    if (!side || (side->side == SideWord::Midline && !isSegment)) {
        if (isSegment)
            return {Side::Midline};
        const Stretch at = side && side->at ? spanOf(*side->at, stretchOf(name)) : stretchOf(name);
        LineQuestion &question = issues.ask(AskAbout::Side, Doubt::SideMissing, at);
        for (const SideWord word : {SideWord::Left, SideWord::Right})
            question.choices.push_back({phraseOf(word, words) + " " + issues.textOf(stretchOf(name)), {}});
        return {};
    }
    switch (side->side) {
    case SideWord::Left: return {Side::Left};
    case SideWord::Right: return {Side::Right};
    case SideWord::Both: return {Side::Right, Side::Left};
    case SideWord::Midline: break;
    }
    return {Side::Midline};
}

void placeSpot(std::size_t structure, const Said &said, Finding &finding, const LineWords &words, Issues &issues)
{
    const Structure &s = structureAt(structure, words);
    if (said.spot && !hasSpots(s.kind))
        issues.ask(AskAbout::Spot, Doubt::NoSpotThere, *said.spot);
    for (const Mark &at : said.at) {
        const Mark &landmark = at.parts.front();
        auto ends = endsAt(s, landmark, words);
        if (finding.spot)
            std::erase_if(ends, [&](const End &end) { return end.spot != *finding.spot; });
        if (ends.empty() || !hasSpots(s.kind)) {
            LineQuestion &question = issues.ask(AskAbout::Spot, Doubt::NoSuchEnd, stretchOf(landmark));
            for (const End &end : endsOf(s, words))
                if (question.choices.size() < 12)
                    question.choices.push_back(choiceOf(end.structure, words));
            continue;
        }
        const Spot spot = ends.front().spot;
        if (std::any_of(ends.begin(), ends.end(), [&](const End &end) { return end.spot != spot; })) {
            LineQuestion &question = issues.ask(AskAbout::Spot, Doubt::EitherEnd, stretchOf(landmark));
            for (const LineWord word : {LineWord::Origin, LineWord::Insertion})
                for (const auto &[w, says] : words.list().words)
                    if (w == word)
                        question.choices.push_back({issues.textOf(stretchOf(landmark)) + " " + says.front(), {}});
            continue;
        }
        finding.spot = spot;
        if (std::all_of(ends.begin(), ends.end(), [&](const End &end) { return end.structure == ends.front().structure; }))
            finding.at = structureAt(ends.front().structure, words).id;
    }
}

void checkJoint(std::size_t structure, const Mark &name, const Said &said, const LineWords &words, Issues &issues)
{
    const Structure &s = structureAt(structure, words);
    const auto of = said.play ? said.play : said.endFeel;
    if (!of || s.kind == raphe::Kind::Joint)
        return;
    const auto bones = words.atlas().bonesOf(s.id);
    if (bones.empty())
        return issues.fault(AskAbout::Structure, LineFault::PlayOfSoftTissue, spanOf(stretchOf(name), *of));
    LineQuestion &question = issues.ask(AskAbout::Structure, Doubt::PlayOfBone, stretchOf(name));
    for (const Joint &joint : words.atlas().joints())
        if (std::any_of(joint.bones.begin(), joint.bones.end(),
                [&](const StructureId &bone) { return std::find(bones.begin(), bones.end(), bone) != bones.end(); }))
            if (const Structure *found = words.atlas().find(joint.id); found && question.choices.size() < 12)
                question.choices.push_back(choiceOf(static_cast<std::size_t>(found - words.atlas().structures().data()), words));
}

std::vector<Place> targetsOf(const Said &said, const LineWords &words, Issues &issues)
{
    std::vector<Place> out;
    for (const Mark &refers : said.refersTo) {
        std::optional<SideSaid> side;
        const Mark *name = nullptr;
        const auto take = [&] {
            if (!name)
                return;
            if (const auto structure = structureOf(*name, side, {}, words, issues))
                for (const Side s : sidesOf(*structure, *name, side, words, issues))
                    out.push_back({structureAt(*structure, words).id, s});
            name = nullptr;
            side.reset();
        };
        bool hasTarget = false;
        for (const Mark &part : refers.parts) {
            if (part.kind == MarkKind::Side) {
                if (side)
                    take();
                side = SideSaid{part.side, stretchOf(part)};
            } else {
                if (name)
                    take();
                name = &part;
                hasTarget = true;
            }
        }
        take();
        if (!hasTarget)
            issues.fault(AskAbout::Structure, LineFault::UnknownWords, stretchOf(refers));
    }
    return out;
}

} // namespace raphe::language
