// The structure card: what stands on it, that its links lead somewhere, and that right and left never swap.
#include "core/document/StructureCard.h"

#include "tests/support/Content.h"

#include <gtest/gtest.h>

namespace raphe::test {

namespace {

StructureCard cardOf(
    const std::string &id, Side side, const std::vector<Finding> &now = {}, const std::vector<PastFinding> &before = {})
{
    return structureCard(linkage(), {{id}, side}, "en", now, before);
}

std::string wordsOf(const CardLine &line)
{
    std::string words;
    for (const CardText &part : line.parts)
        words += part.text;
    return words;
}

const CardSection *sectionOf(const StructureCard &card, const std::string &title)
{
    for (const CardSection &section : card.sections)
        if (section.title == title)
            return &section;
    return nullptr;
}

const CardLine *lineWith(const StructureCard &card, const std::string &title, const std::string &words)
{
    if (const CardSection *section = sectionOf(card, title))
        for (const CardLine &line : section->lines)
            if (wordsOf(line).find(words) != std::string::npos)
                return &line;
    return nullptr;
}

TEST(StructureCard, SaysAllThatTheAtlasKnowsOfAMuscle)
{
    const StructureCard card = cardOf("gluteus-maximus", Side::Right);
    EXPECT_EQ(card.title, "right gluteus maximus");
    EXPECT_EQ(card.plain, "main buttock muscle, right side");
    EXPECT_TRUE(lineWith(card, "Attachments", "to right gluteal tuberosity"));
    EXPECT_TRUE(lineWith(card, "Action", "extension"));
    EXPECT_TRUE(lineWith(card, "Nerve", "right inferior gluteal nerve; roots L5, S1, S2"));
    EXPECT_TRUE(lineWith(card, "Joints it crosses", "right hip joint"));
    EXPECT_TRUE(lineWith(card, "Layers", "over it: "));
    EXPECT_TRUE(lineWith(card, "Layers", "under it: "));
    EXPECT_TRUE(lineWith(card, "Names", "Latin: Musculus gluteus maximus"));
    EXPECT_TRUE(lineWith(card, "Names", "glute max"));
    EXPECT_TRUE(lineWith(card, "Names", "UBERON:0001370"));
    const CardLine *felt = lineWith(card, "Its trouble is often felt at", "right sacroiliac region");
    ASSERT_TRUE(felt);
    EXPECT_EQ(wordsOf(*felt).find("left"), std::string::npos) << "on its own side";
    EXPECT_TRUE(sectionOf(card, "Caution")) << "the sciatic nerve runs under it";
}

TEST(StructureCard, AContinuitySaysHowWellItIsKnownAndWhereThatComesFrom)
{
    const StructureCard card = cardOf("gluteus-maximus", Side::Right);
    const CardLine *line = lineWith(card, "Continuous with", "left thoracolumbar fascia, on the other side");
    ASSERT_TRUE(line);
    EXPECT_EQ(line->evidence.rfind("verified: continuity seen in dissection; force transfer:", 0), 0U) << line->evidence;
    EXPECT_NE(line->evidence.find("that treating one end helps the other: not shown"), std::string::npos) << line->evidence;
    const auto bracket = line->evidence.find('[');
    ASSERT_NE(bracket, std::string::npos);
    const auto number = static_cast<std::size_t>(std::stoi(line->evidence.substr(bracket + 1)));
    ASSERT_LE(number, card.sources.size());
    EXPECT_NE(card.sources[number - 1].find("Wilke"), std::string::npos);
    EXPECT_NE(card.sources[number - 1].find("from memory"), std::string::npos);
}

TEST(StructureCard, AnEdgeListsWhoAttachesInOrder)
{
    const StructureCard card = cardOf("iliac-crest", Side::Left);
    const CardSection *section = sectionOf(card, "Attached here");
    ASSERT_TRUE(section);
    EXPECT_NE(wordsOf(section->lines.front()).find("steps of 25 mm"), std::string::npos);
    int last = 0;
    int stretches = 0;
    for (const CardLine &line : section->lines) {
        const std::string words = wordsOf(line);
        if (words.find("% of its length: ") == std::string::npos)
            continue;
        const int from = std::stoi(words);
        EXPECT_GE(from, last) << words;
        last = from;
        ++stretches;
        EXPECT_NE(words.find("left "), std::string::npos) << words;
    }
    EXPECT_GE(stretches, 8);
}

TEST(StructureCard, AJointListsItsBonesAndTheMusclesThatCrossIt)
{
    const StructureCard card = cardOf("hip-joint", Side::Left);
    EXPECT_TRUE(lineWith(card, "Between", "left hip bone, left femur"));
    EXPECT_TRUE(lineWith(card, "Muscles that cross it", "left piriformis"));
    EXPECT_FALSE(lineWith(card, "Muscles that cross it", "left vastus lateralis"));
}

TEST(StructureCard, AMidlineSegmentNamesBothSidesOfAPairedMuscle)
{
    const StructureCard card = cardOf("l4-l5", Side::Midline);
    const CardLine *line = lineWith(card, "Muscles that cross it", "psoas major: left, right");
    ASSERT_TRUE(line);
    int links = 0;
    for (const CardText &part : line->parts)
        if (part.leadsTo && part.leadsTo->structure.value == "psoas-major")
            ++links;
    EXPECT_EQ(links, 2);
}

TEST(StructureCard, ShowsThisPatientsFindingsOnThisSideOnly)
{
    Finding now;
    now.place = {{"gluteus-maximus"}, Side::Right};
    now.tenderness = Tenderness{3};
    Finding then = now;
    then.tenderness = Tenderness{4};
    const StructureCard right = cardOf("gluteus-maximus", Side::Right, {now}, {{"2026-10-01", then}});
    EXPECT_TRUE(lineWith(right, "Found here in this patient", "this visit: right gluteus maximus, tenderness 3"));
    EXPECT_TRUE(lineWith(right, "Found here in this patient", "2026-10-01: right gluteus maximus, tenderness 4"));
    EXPECT_FALSE(sectionOf(cardOf("gluteus-maximus", Side::Left, {now}, {{"2026-10-01", then}}), "Found here in this patient"));
}

TEST(StructureCard, AWholeShowsWhatWasFoundOnItsParts)
{
    Finding now;
    now.place = {{"biceps-femoris-long-head"}, Side::Left};
    now.tenderness = Tenderness{2};
    EXPECT_TRUE(lineWith(cardOf("biceps-femoris", Side::Left, {now}), "Found here in this patient", "long head"));
}

TEST(StructureCard, EveryPlaceHasACardWhoseLinksLeadSomewhere)
{
    for (const Structure &s : atlas().structures())
        for (const Side side : atlas().sides(s)) {
            const StructureCard card = cardOf(s.id.value, side);
            ASSERT_FALSE(card.sections.empty()) << s.id;
            for (const CardSection &section : card.sections) {
                EXPECT_FALSE(section.lines.empty()) << s.id << ": " << section.title;
                for (const CardLine &line : section.lines)
                    for (const CardText &part : line.parts) {
                        EXPECT_FALSE(part.text.empty()) << s.id << ": " << section.title;
                        if (!part.leadsTo)
                            continue;
                        const Structure *target = atlas().find(part.leadsTo->structure);
                        ASSERT_TRUE(target) << s.id;
                        const auto sides = atlas().sides(*target);
                        EXPECT_NE(std::find(sides.begin(), sides.end(), part.leadsTo->side), sides.end())
                            << s.id << " leads to " << *part.leadsTo;
                    }
            }
        }
}

// Left and right in words, swapped.
std::string swapped(std::string words)
{
    for (std::size_t i = 0; i < words.size(); ++i)
        if (words.compare(i, 5, "right") == 0) {
            words.replace(i, 5, "left");
            i += 3;
        } else if (words.compare(i, 4, "left") == 0) {
            words.replace(i, 4, "right");
            i += 4;
        }
    return words;
}

TEST(StructureCard, TheOtherSidesCardIsItsMirrorImage)
{
    for (const Structure &s : atlas().structures()) {
        if (!s.paired)
            continue;
        const StructureCard left = cardOf(s.id.value, Side::Left);
        const StructureCard right = cardOf(s.id.value, Side::Right);
        ASSERT_EQ(left.sections.size(), right.sections.size()) << s.id;
        for (std::size_t i = 0; i < left.sections.size(); ++i) {
            ASSERT_EQ(left.sections[i].lines.size(), right.sections[i].lines.size()) << s.id << ": " << left.sections[i].title;
            for (std::size_t k = 0; k < left.sections[i].lines.size(); ++k) {
                const auto &parts = left.sections[i].lines[k].parts;
                const auto &others = right.sections[i].lines[k].parts;
                ASSERT_EQ(parts.size(), others.size()) << s.id << ": " << left.sections[i].title;
                for (std::size_t p = 0; p < parts.size(); ++p) {
                    ASSERT_EQ(parts[p].leadsTo.has_value(), others[p].leadsTo.has_value());
                    if (parts[p].leadsTo) {
                        EXPECT_EQ(mirrored(*parts[p].leadsTo), *others[p].leadsTo) << s.id << ": " << left.sections[i].title;
                        EXPECT_EQ(swapped(parts[p].text), others[p].text) << s.id;
                    }
                }
            }
        }
    }
}

} // namespace

} // namespace raphe::test
