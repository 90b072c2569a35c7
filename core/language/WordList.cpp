#include "core/language/WordList.h"

#include "core/anatomy/AtlasReader.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <map>

namespace raphe {

namespace {

class Reader {
public:
    Reader(const JsonReader &root, const Atlas &atlas) : m_root(root), m_atlas(atlas) { }

    WordList read()
    {
        m_root.expectObject({"format", "version", "language", "source", "words", "textures", "left-out", "joiners", "short-forms",
            "shared", "grade-letters", "spine", "regions", "movements", "devices", "work"});
        if (m_root.string("format") != "raphe-language")
            m_root.field("format").fail(ErrorCode::WrongFormat, m_root.string("format"));
        if (m_root.field("version").asNumber() != 1)
            m_root.field("version").fail(ErrorCode::WrongFormat, std::to_string(m_root.field("version").asNumber()));
        m_out.language = m_root.string("language");
        readWords();
        m_out.textures = phrases(m_root.field("textures"), "texture");
        m_out.leftOut = phrases(m_root.field("left-out"), {});
        m_out.joiners = phrases(m_root.field("joiners"), {});
        for (const JsonReader &at : m_root.field("short-forms").items()) {
            at.expectObject({"says", "structure"});
            m_out.shortForms.push_back({phrases(at.field("says"), "structure"), {readStructure(at.field("structure"))}});
        }
        for (const JsonReader &at : m_root.field("shared").items()) {
            at.expectObject({"says", "structures"});
            m_out.shared.push_back({phrases(at.field("says"), "structure"), readStructures(at.field("structures"))});
        }
        for (const JsonReader &at : m_root.field("grade-letters").items()) {
            at.expectObject({"letter", "grades", "after-structure"});
            m_out.gradeLetters.push_back(
                {at.string("letter"), phrases(at.field("grades"), {}), at.field("after-structure").asBool()});
        }
        for (const JsonReader &at : m_root.field("spine").items()) {
            at.expectObject({"letter", "means"});
            m_out.spine.push_back({at.string("letter"), at.string("means")});
        }
        readRegions();
        for (const JsonReader &at : m_root.field("movements").items())
            readMovement(at);
        for (const JsonReader &at : m_root.field("devices").items()) {
            at.expectObject({"device", "says"});
            m_out.devices.push_back({readWord(deviceWords, at.field("device")), phrases(at.field("says"), "device")});
        }
        readWork(m_root.field("work"));
        return std::move(m_out);
    }

private:
    // Phrases of one kind must differ from those of another kind that could stand in the same place; an empty kind is not held
    // against the others.
    std::vector<std::string> phrases(const JsonReader &at, const std::string &meaning)
    {
        std::vector<std::string> out;
        for (const JsonReader &item : at.items()) {
            std::string phrase = item.asString();
            if (phrase.empty())
                item.fail(ErrorCode::MissingField, "a phrase");
            if (!meaning.empty()) {
                const auto [it, fresh] = m_meanings.emplace(phrase, meaning);
                if (!fresh)
                    item.fail(ErrorCode::Duplicate, phrase);
            }
            out.push_back(std::move(phrase));
        }
        if (out.empty())
            at.fail(ErrorCode::MissingField, "a phrase");
        return out;
    }

    void readWords()
    {
        const JsonReader list = m_root.field("words");
        for (const JsonReader &at : list.items()) {
            at.expectObject({"word", "says"});
            const LineWord word = readWord(lineWordWords, at.field("word"));
            if (hasWord(word))
                at.field("word").fail(ErrorCode::Duplicate, at.string("word"));
            m_out.words.emplace_back(word, phrases(at.field("says"), at.string("word")));
        }
        for (const auto &[word, name] : lineWordWords)
            if (!hasWord(word))
                list.fail(ErrorCode::MissingField, std::string(name));
    }

    bool hasWord(LineWord word) const
    {
        return std::any_of(m_out.words.begin(), m_out.words.end(), [&](const auto &entry) { return entry.first == word; });
    }

    StructureId readStructure(const JsonReader &at) const
    {
        StructureId id{at.asString()};
        if (!m_atlas.find(id))
            at.fail(ErrorCode::UnknownId, id.value);
        return id;
    }

    std::vector<StructureId> readStructures(const JsonReader &at) const
    {
        std::vector<StructureId> out;
        for (const JsonReader &item : at.items())
            out.push_back(readStructure(item));
        if (out.empty())
            at.fail(ErrorCode::MissingField, "a structure");
        return out;
    }

    void readRegions()
    {
        for (const JsonReader &at : m_root.field("regions").items()) {
            at.expectObject({"id", "says", "joints"});
            MoveRegion region{at.string("id"), phrases(at.field("says"), {}), {}};
            if (hasRegion(region.id))
                at.field("id").fail(ErrorCode::Duplicate, region.id);
            for (const JsonReader &joint : at.field("joints").items())
                region.joints.push_back(readStructure(joint));
            m_out.regions.push_back(std::move(region));
        }
    }

    bool hasRegion(const std::string &id) const
    {
        return std::any_of(m_out.regions.begin(), m_out.regions.end(), [&](const MoveRegion &r) { return r.id == id; });
    }

    std::string readRegion(const JsonReader &at) const
    {
        std::string id = at.asString();
        if (!hasRegion(id))
            at.fail(ErrorCode::UnknownId, id);
        return id;
    }

    void readMovement(const JsonReader &at)
    {
        at.expectObject({"id", "region", "also", "says", "unclear", "alone", "sides", "least", "most", "unit", "unit-said"});
        LineMovement out;
        out.id = at.string("id");
        if (!isWellFormed(StructureId{out.id}))
            at.field("id").fail(ErrorCode::BadId, out.id);
        for (const LineMovement &earlier : m_out.movements)
            if (earlier.id == out.id)
                at.field("id").fail(ErrorCode::Duplicate, out.id);
        out.region = readRegion(at.field("region"));
        if (at.has("also"))
            for (const JsonReader &region : at.field("also").items())
                out.also.push_back(readRegion(region));
        out.says = phrases(at.field("says"), {});
        if (at.has("unclear"))
            out.unclear = phrases(at.field("unclear"), {});
        out.alone = phrases(at.field("alone"), "movement");
        out.hasSides = at.field("sides").asBool();
        out.least = at.field("least").asNumber();
        out.most = at.field("most").asNumber(out.least, 10000);
        out.unit = readWord(moveUnitWords, at.field("unit"));
        out.needsUnit = at.has("unit-said") && at.field("unit-said").asBool();
        m_out.movements.push_back(std::move(out));
    }

    void readWork(const JsonReader &at)
    {
        at.expectObject({"begins", "leads", "seconds", "minutes", "kilopascals"});
        const auto read = [&](const char *field) { return phrases(at.field(field), field); };
        m_out.work = {read("begins"), read("leads"), read("seconds"), read("minutes"), read("kilopascals")};
    }

    const JsonReader &m_root;
    const Atlas &m_atlas;
    WordList m_out;
    std::map<std::string, std::string> m_meanings;
};

} // namespace

Result<WordList> readWordList(std::string_view text, const std::string &file, const Atlas &atlas)
{
    return guarded([&] {
        const auto json = valueOrThrow(parseJson(text, file));
        const JsonReader root(json, file);
        return Reader(root, atlas).read();
    });
}

Result<WordList> readEmbeddedWordList(const std::string &language, const Atlas &atlas)
{
    const auto files = embeddedFiles("language");
    if (!files)
        return files.error();
    for (const NamedText &file : files.value())
        if (file.name == language + ".json")
            return readWordList(file.text, "language/" + file.name, atlas);
    return Error{ErrorCode::CannotRead, "language/" + language + ".json", "there is no such list of words"};
}

} // namespace raphe
