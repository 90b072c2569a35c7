// Reads resources/examination strictly.
#include "core/examination/Examination.h"

#include "core/anatomy/Atlas.h"
#include "core/anatomy/AtlasReader.h"
#include "core/anatomy/SpinalRoot.h"
#include "core/safety/ContentReading.h"
#include "core/safety/SafetyRules.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <set>

namespace raphe {

using namespace content;

namespace {

constexpr const char *sourcesFile = "examination/sources.json";
constexpr const char *movementsFile = "examination/movements.json";
constexpr const char *testsFile = "examination/tests.json";
constexpr const char *sheetsFile = "examination/sheets.json";
constexpr int oldest = 130; // years; only catches slips of the pen
constexpr int mostPatients = 1'000'000;

class Reader {
public:
    Reader(const Atlas &atlas, const SafetyRules &rules) : m_atlas(atlas), m_rules(rules) { }

    void readSources(const JsonReader &root)
    {
        root.expectObject({"format", "version", "sources"});
        expectFormat(root, "raphe-examination-sources");
        for (const JsonReader &at : root.field("sources").items()) {
            at.expectObject({"id", "citation", "doi", "read"});
            m_out.sources.push_back({readNewId(at, m_out.sources), readText(at, "citation"), at.stringOr("doi", {}),
                readWord(readingWords, at.field("read"))});
            m_sourcePlaces.push_back(at.place());
        }
    }

    void readMovements(const JsonReader &root)
    {
        root.expectObject({"format", "version", "movements"});
        expectFormat(root, "raphe-movements");
        for (const JsonReader &at : root.field("movements").items()) {
            m_out.movements.push_back(readMovement(at));
            m_places[m_out.movements.back().id] = at.place();
        }
    }

    void readTests(const JsonReader &root)
    {
        root.expectObject({"format", "version", "tests", "clusters"});
        expectFormat(root, "raphe-examination-tests");
        for (const JsonReader &at : root.field("tests").items()) {
            m_out.tests.push_back(readTest(at));
            m_places[m_out.tests.back().id] = at.place();
        }
        for (const JsonReader &at : root.field("clusters").items())
            m_out.clusters.push_back(readCluster(at));
    }

    void readSheets(const JsonReader &root)
    {
        root.expectObject({"format", "version", "sheets"});
        expectFormat(root, "raphe-sheets");
        for (const JsonReader &at : root.field("sheets").items())
            m_out.sheets.push_back(readSheet(at));
    }

    Examination finish()
    {
        for (std::size_t i = 0; i < m_out.sources.size(); ++i)
            if (!m_named.contains(m_out.sources[i].id))
                throw Error{ErrorCode::MissingField, m_sourcePlaces[i], "a figure from " + m_out.sources[i].id};
        std::set<std::string> used;
        for (const Sheet &sheet : m_out.sheets)
            for (const auto *list : {&sheet.movements, &sheet.tests, &sheet.nerves, &sheet.cord})
                used.insert(list->begin(), list->end());
        for (const auto &[id, place] : m_places)
            if (!used.contains(id))
                throw Error{ErrorCode::MissingField, place, "a sheet for " + id};
        return std::move(m_out);
    }

private:
    std::string readSource(const JsonReader &at)
    {
        std::string id = readKnownId(at.field("source"), m_out.sources);
        m_named.insert(id);
        return id;
    }

    std::vector<StructureId> readStructures(const JsonReader &at, std::string_view name, std::optional<Kind> kind) const
    {
        return readChoice(at, name, [&](const JsonReader &item) {
            StructureId id{item.asString()};
            const Structure *structure = m_atlas.find(id);
            if (!structure)
                item.fail(ErrorCode::UnknownId, id.value);
            if (kind && structure->kind != *kind)
                item.fail(ErrorCode::OutOfRange, id.value + ", allowed: " + std::string(wordOf(kindWords, *kind)));
            return id;
        });
    }

    std::vector<std::string> readActions(const JsonReader &at) const
    {
        return readChoice(at, "actions", [&](const JsonReader &item) { return readKnownId(item, m_rules.actions()); });
    }

    static std::optional<int> readPeople(const JsonReader &at)
    {
        return at.has("n") ? std::optional(at.field("n").asInt(1, mostPatients)) : std::nullopt;
    }

    Norm readNorm(const JsonReader &at, const Movement &movement)
    {
        at.expectObject({"mode", "device", "sex", "from", "to", "mean", "sd", "n", "source", "read"});
        Norm norm;
        norm.mode = readWord(moveModeWords, at.field("mode"));
        norm.device = readWord(deviceWords, at.field("device"));
        norm.sex = readWordOr(at, "sex", sexWords);
        norm.from = at.field("from").asInt(0, oldest);
        norm.to = at.field("to").asInt(norm.from, oldest);
        norm.mean = at.field("mean").asNumber(movement.least, movement.furthest);
        if (at.has("sd"))
            norm.sd = at.field("sd").asNumber(0.1, movement.furthest);
        norm.people = readPeople(at);
        norm.source = readSource(at);
        norm.read = readWord(readingWords, at.field("read"));
        return norm;
    }

    ReadingError readError(const JsonReader &at, const Movement &movement)
    {
        at.expectObject({"mode", "device", "kind", "value", "source", "read"});
        ReadingError error;
        error.mode = readWordOr(at, "mode", moveModeWords);
        error.device = readWord(deviceWords, at.field("device"));
        error.kind = readWord(errorKindWords, at.field("kind"));
        error.value = at.field("value").asNumber(0.1, movement.furthest);
        error.source = readSource(at);
        error.read = readWord(readingWords, at.field("read"));
        return error;
    }

    Movement readMovement(const JsonReader &at)
    {
        at.expectObject({"id", "name", "plain", "group", "paired", "unit", "least", "furthest", "less_is_better", "joints",
            "position", "actions", "norms", "errors"});
        Movement out;
        out.id = readNewId(at, m_out.movements);
        out.name = readText(at, "name");
        out.plain = readText(at, "plain");
        out.group = readText(at, "group");
        out.isPaired = at.field("paired").asBool();
        out.unit = readWord(unitWords, at.field("unit"));
        if (at.has("least"))
            out.least = at.field("least").asNumber(-Measure::furthest, 0);
        out.furthest = at.field("furthest").asNumber(1, Measure::furthest);
        out.lessIsBetter = at.has("less_is_better") && at.field("less_is_better").asBool();
        out.joints = readStructures(at, "joints", Kind::Joint);
        out.position = readText(at, "position");
        out.actions = readActions(at);
        if (out.actions.empty()) // nothing could ever bar it
            at.fail(ErrorCode::MissingField, "actions");
        if (at.has("norms"))
            for (const JsonReader &item : at.field("norms").items())
                out.norms.push_back(readNorm(item, out));
        if (at.has("errors"))
            for (const JsonReader &item : at.field("errors").items())
                out.errors.push_back(readError(item, out));
        return out;
    }

    Accuracy readAccuracy(const JsonReader &at)
    {
        at.expectObject({"against", "setting", "tp", "fn", "fp", "tn", "sensitivity", "specificity", "n", "source", "read"});
        Accuracy out;
        out.against = at.stringOr("against", {});
        out.setting = readText(at, "setting");
        if (at.has("tp")) {
            const auto count = [&](const char *name) { return at.field(name).asInt(0, mostPatients); };
            out.table = TwoByTwo{count("tp"), count("fn"), count("fp"), count("tn")};
            if (out.table->truePositives + out.table->falseNegatives == 0
                || out.table->falsePositives + out.table->trueNegatives == 0)
                at.fail(ErrorCode::OutOfRange, "nobody, allowed: patients with and without it");
            if (at.has("sensitivity") || at.has("specificity"))
                at.fail(ErrorCode::Contradiction, "tp, sensitivity"); // they follow from the table
        } else {
            const auto share = [&](const char *name) { return at.field(name).asNumber(0, 1); };
            out.sensitivity = share("sensitivity");
            out.specificity = share("specificity");
        }
        out.people = readPeople(at);
        out.source = readSource(at);
        out.read = readWord(readingWords, at.field("read"));
        return out;
    }

    static VitalForm readVital(const JsonReader &at)
    {
        at.expectObject({"unit", "fields", "least", "most"});
        VitalForm out{readText(at, "unit"), at.field("fields").asStrings(), {}, {}};
        const std::size_t count = out.fields.size();
        if (count < 1 || count > 2)
            at.field("fields").fail(ErrorCode::OutOfRange, "allowed: 1 or 2");
        for (const JsonReader &item : at.field("least").items(count, count))
            out.least.push_back(item.asNumber(0, TestResult::furthest));
        std::size_t i = 0;
        for (const JsonReader &item : at.field("most").items(count, count))
            out.most.push_back(item.asNumber(out.least[i++], TestResult::furthest));
        return out;
    }

    RaisedSign readRaised(const JsonReader &at, const ExamTest &test) const
    {
        at.expectObject({"sign", "from", "source"});
        RaisedSign out{readKnownId(at.field("sign"), m_rules.signs().signs), {}, {}};
        const AnswerForm form = answerFormOf(test.kind);
        if (form == AnswerForm::Pain || form == AnswerForm::Grade)
            at.fail(ErrorCode::OutOfRange, "allowed: tests that are answered as present or by values");
        if (at.has("from") != (form == AnswerForm::Values))
            at.fail(at.has("from") ? ErrorCode::UnknownField : ErrorCode::MissingField, "from");
        if (!at.has("from"))
            return out;
        std::size_t i = 0;
        for (const JsonReader &item : at.field("from").items(test.vital->fields.size(), test.vital->fields.size())) {
            out.from.push_back(item.asNumber(test.vital->least[i], test.vital->most[i]));
            ++i;
        }
        out.source = readText(at, "source");
        return out;
    }

    ExamTest readTest(const JsonReader &at)
    {
        at.expectObject({"id", "name", "kind", "group", "paired", "position", "how", "positive", "loads", "loads-other-side",
            "actions", "roots", "vital", "raises", "accuracy"});
        ExamTest out;
        out.id = readNewId(at, m_out.tests);
        if (findById(m_out.movements, out.id))
            at.field("id").fail(ErrorCode::Duplicate, out.id);
        out.name = readText(at, "name");
        out.kind = readWord(testKindWords, at.field("kind"));
        out.group = readText(at, "group");
        out.isPaired = at.field("paired").asBool();
        out.position = readText(at, "position");
        out.how = readText(at, "how");
        out.positive = readText(at, "positive");
        out.loads = readStructures(at, "loads", std::nullopt);
        out.loadsOtherSide = readStructures(at, "loads-other-side", std::nullopt);
        out.actions = readActions(at);
        out.roots = readChoice(at, "roots", [](const JsonReader &item) {
            std::string root = item.asString();
            if (!isSpinalRoot(root))
                item.fail(ErrorCode::UnknownWord, root);
            return root;
        });
        const bool isVital = out.kind == TestKind::Vital;
        if (at.has("vital") != isVital)
            at.fail(isVital ? ErrorCode::MissingField : ErrorCode::UnknownField, "vital");
        if (isVital)
            out.vital = readVital(at.field("vital"));
        if (at.has("raises"))
            out.raises = readRaised(at.field("raises"), out);
        if (at.has("accuracy"))
            for (const JsonReader &item : at.field("accuracy").items())
                out.accuracy.push_back(readAccuracy(item));
        return out;
    }

    Cluster readCluster(const JsonReader &at)
    {
        at.expectObject({"id", "name", "tests", "threshold", "studies"});
        Cluster out{readNewId(at, m_out.clusters), readText(at, "name"), {}, 0, {}};
        for (const JsonReader &item : at.field("tests").items()) {
            item.expectObject({"test", "side"});
            Cluster::Part part{readKnownId(item.field("test"), m_out.tests), readWordOr(item, "side", sideWords)};
            const ExamTest &test = *m_out.findTest(part.test);
            if (answerFormOf(test.kind) != AnswerForm::Pain)
                item.field("test").fail(ErrorCode::OutOfRange, part.test + ", allowed: tests that bring pain");
            out.parts.push_back(std::move(part));
        }
        out.threshold = at.field("threshold").asInt(1, static_cast<int>(out.parts.size()));
        for (const JsonReader &item : at.field("studies").items())
            out.studies.push_back(readAccuracy(item));
        return out;
    }

    Sheet readSheet(const JsonReader &at)
    {
        at.expectObject({"id", "name", "regions", "movements", "segments", "tests", "called", "retest"});
        Sheet out;
        out.id = readNewId(at, m_out.sheets);
        out.name = readText(at, "name");
        out.regions = readChoice(at, "regions", [&](const JsonReader &item) { return readRegion(item, m_atlas); });
        const auto known = [](const auto &list) { return [&list](const JsonReader &item) { return readKnownId(item, list); }; };
        out.movements = readChoice(at, "movements", known(m_out.movements));
        out.segments = readStructures(at, "segments", Kind::Joint);
        out.tests = readChoice(at, "tests", known(m_out.tests));
        if (at.has("called")) {
            const JsonReader called = at.field("called");
            called.expectObject({"nerves", "upper-motor-neurone"});
            out.nerves = readChoice(called, "nerves", known(m_out.tests));
            out.cord = readChoice(called, "upper-motor-neurone", known(m_out.tests));
        }
        out.retest = readChoice(at, "retest", [&](const JsonReader &item) {
            std::string id = item.asString();
            if (!m_out.findMovement(id) && !m_out.findTest(id))
                item.fail(ErrorCode::UnknownId, id);
            return id;
        });
        return out;
    }

    const Atlas &m_atlas;
    const SafetyRules &m_rules;
    Examination m_out;
    std::vector<std::string> m_sourcePlaces; // of each, for messages
    std::map<std::string, std::string> m_places; // of movements and tests
    std::set<std::string> m_named; // sources
};

} // namespace

Result<Examination> readExamination(const ExaminationTexts &texts, const Atlas &atlas, const SafetyRules &rules)
{
    return guarded([&] {
        const auto json = [](std::string_view text, const char *file) { return valueOrThrow(parseJson(text, file)); };
        Reader reader(atlas, rules);
        reader.readSources(JsonReader(json(texts.sources, sourcesFile), sourcesFile));
        reader.readMovements(JsonReader(json(texts.movements, movementsFile), movementsFile));
        reader.readTests(JsonReader(json(texts.tests, testsFile), testsFile));
        reader.readSheets(JsonReader(json(texts.sheets, sheetsFile), sheetsFile));
        return reader.finish();
    });
}

Result<Examination> readEmbeddedExamination(const Atlas &atlas, const SafetyRules &rules)
{
    const auto files = embeddedFiles("examination");
    if (!files)
        return files.error();
    const auto textOf = [&](std::string_view name) -> std::string_view {
        for (const NamedText &file : files.value())
            if ("examination/" + file.name == name)
                return file.text;
        return {};
    };
    return readExamination({textOf(sourcesFile), textOf(movementsFile), textOf(testsFile), textOf(sheetsFile)}, atlas, rules);
}

} // namespace raphe
