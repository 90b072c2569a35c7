#include "core/store/ExportImport.h"

#include "core/anatomy/Atlas.h"
#include "core/base/JsonReader.h"
#include "core/record/PatientRecordJson.h"
#include "core/record/VisitJson.h"

#include <nlohmann/json.hpp>

#include <QCoreApplication>
#include <QDateTime>

#include <algorithm>
#include <cmath>

namespace raphe {

namespace {

using ExportJson = nlohmann::ordered_json; // documents keep the order of their fields

constexpr std::string_view exportFormat = "raphe-export";
constexpr int exportVersion = 1;

constexpr WordTable<VisitState, 4> exportedStates{{{VisitState::Draft, "draft"}, {VisitState::Signed, "signed"},
    {VisitState::Amending, "being amended"}, {VisitState::InError, "entered in error"}}};

// Ours has some ten levels; copying and writing go by recursion. Our choice, no source.
constexpr std::size_t deepestExport = 100;

// Before it is parsed: brackets outside of texts.
bool isTooDeep(std::string_view text)
{
    std::size_t depth = 0;
    bool isInText = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (isInText && c == '\\')
            ++i;
        else if (c == '"')
            isInText = !isInText;
        else if (!isInText && (c == '[' || c == '{')) {
            if (++depth > deepestExport)
                return true;
        } else if (!isInText && (c == ']' || c == '}') && depth > 0)
            --depth;
    }
    return false;
}

// As Practice::addVisit gets it from the program: pretty-printed.
std::string documentText(const ExportJson &json)
{
    return json.dump(2, ' ', false, ExportJson::error_handler_t::replace) + "\n";
}

class ExportReader {
public:
    ExportReader(const ExportJson &json, std::string file, const Atlas &atlas)
        : m_json(json), m_file(std::move(file)), m_atlas(atlas)
    {
    }

    ExportedRecord read(const JsonReader &root) const
    {
        checkFormat(root);
        root.expectObject({"format", "version", "patient", "visits", "accesses"});
        ExportedRecord out;
        static_cast<void>(root.field("patient"));
        out.patient = placed("/patient", readPatient(textAt("/patient"), inner));
        const std::vector<JsonReader> visits = root.field("visits").items();
        for (std::size_t i = 0; i < visits.size(); ++i)
            out.visits.push_back(readOne(visits[i], "/visits/" + std::to_string(i)));
        for (const JsonReader &item : root.field("accesses").items()) {
            item.expectObject({"at", "by", "act"});
            static_cast<void>(readTime(item.field("at")));
            static_cast<void>(item.string("by"));
            static_cast<void>(readWord(entryWords, item.field("act")));
            ++out.accesses;
        }
        return out;
    }

private:
    // The name under which a part of the file is read by itself.
    static constexpr const char *inner = "part";

    // The value, or the error with its place in the whole file.
    template <class T> T placed(const std::string &pointer, Result<T> part) const
    {
        if (part)
            return std::move(part).value();
        Error error = part.error();
        const std::size_t hash = error.place.find('#');
        const std::string within = hash == std::string::npos ? std::string() : error.place.substr(hash + 1);
        error.place = m_file + "#" + pointer + (within == "/" ? std::string() : within);
        throw error;
    }

    [[nodiscard]] std::string textAt(const std::string &pointer) const
    {
        return documentText(m_json.at(ExportJson::json_pointer(pointer)));
    }

    static void checkFormat(const JsonReader &root)
    {
        if (const std::string format = root.string("format"); format != exportFormat)
            root.field("format").fail(ErrorCode::WrongFormat, format);
        const JsonReader at = root.field("version");
        const double version = at.asNumber();
        if (version == exportVersion)
            return;
        const bool newer = version > exportVersion && version == std::floor(version);
        at.fail(newer ? ErrorCode::NewerVersion : ErrorCode::WrongFormat, nlohmann::json(version).dump());
    }

    Visit readDocument(const JsonReader &owner, const std::string &pointer) const
    {
        static_cast<void>(owner.field("document"));
        return placed(pointer + "/document", readVisit(textAt(pointer + "/document"), inner, m_atlas));
    }

    static std::string readTime(const JsonReader &at)
    {
        std::string time = at.asString();
        constexpr std::string_view pattern = "dddd-dd-ddTdd:dd:ddZ";
        const bool shaped = std::equal(time.begin(), time.end(), pattern.begin(), pattern.end(),
            [](char c, char p) { return p == 'd' ? c >= '0' && c <= '9' : c == p; });
        if (!shaped || !QDateTime::fromString(QString::fromStdString(time), Qt::ISODate).isValid())
            at.fail(ErrorCode::OutOfRange, time + ", allowed: a real time, YYYY-MM-DDTHH:MM:SSZ");
        return time;
    }

    ExportedAct readAct(const JsonReader &at, const std::string &pointer) const
    {
        at.expectObject({"act", "author", "entered_at", "care_at", "reason", "document"});
        ExportedAct act;
        act.kind = readWord(entryWords, at.field("act"));
        act.author = at.string("author");
        act.enteredAt = readTime(at.field("entered_at"));
        act.careAt = at.stringOr("care_at", {});
        act.reason = at.stringOr("reason", {});
        switch (act.kind) {
        case EntryKind::Signed:
        case EntryKind::Late:
        case EntryKind::Amended:
        case EntryKind::InError:
            static_cast<void>(readDocument(at, pointer));
            act.document = textAt(pointer + "/document");
            break;
        case EntryKind::Moved:
            if (at.has("document"))
                at.fail(ErrorCode::Contradiction, "moved, document");
            break;
        default:
            at.field("act").fail(ErrorCode::OutOfRange,
                std::string(wordOf(entryWords, act.kind)) + ", allowed: signed, late, amended, in-error, moved");
        }
        return act;
    }

    ExportedVisit readOne(const JsonReader &at, const std::string &pointer) const
    {
        at.expectObject({"state", "document", "history"});
        ExportedVisit out;
        out.state = readWord(exportedStates, at.field("state"));
        out.visit = readDocument(at, pointer);
        out.document = textAt(pointer + "/document");
        if (at.has("history")) {
            const std::vector<JsonReader> acts = at.field("history").items();
            for (std::size_t i = 0; i < acts.size(); ++i)
                out.history.push_back(readAct(acts[i], pointer + "/history/" + std::to_string(i)));
            if (!acts.empty())
                checkHistory(acts, out);
        }
        if (out.history.empty() && out.state != VisitState::Draft)
            at.fail(ErrorCode::MissingField, "history");
        return out;
    }

    // That acts follow one another as in a practice, and lead to the state and, unless it is being written, the document.
    static void checkHistory(const std::vector<JsonReader> &acts, const ExportedVisit &visit)
    {
        VisitState state = VisitState::Draft;
        std::string document = visit.document;
        for (std::size_t i = 0; i < acts.size(); ++i) {
            const ExportedAct &act = visit.history[i];
            const bool isForDraft = act.kind == EntryKind::Signed || act.kind == EntryKind::Late || act.kind == EntryKind::Moved;
            const bool fits = act.kind == EntryKind::InError ? state != VisitState::InError
                : isForDraft                                 ? state == VisitState::Draft
                                                             : state == VisitState::Signed;
            if (!fits)
                acts[i].field("act").fail(ErrorCode::Contradiction,
                    std::string(wordOf(entryWords, act.kind)) + ", " + std::string(wordOf(exportedStates, state)));
            if (act.kind == EntryKind::Moved)
                continue;
            state = act.kind == EntryKind::InError ? VisitState::InError : VisitState::Signed;
            document = act.document;
        }
        const bool follows = visit.state == state || (visit.state == VisitState::Amending && state == VisitState::Signed);
        if (!follows)
            acts.back().fail(ErrorCode::Contradiction,
                std::string(wordOf(exportedStates, visit.state)) + ", " + std::string(wordOf(exportedStates, state)));
        if (visit.state != VisitState::Amending && visit.document != document)
            acts.back().fail(ErrorCode::Contradiction, "document, and the one before");
    }

    const ExportJson &m_json;
    std::string m_file;
    const Atlas &m_atlas;
};

QString takenOver(const char *words)
{
    return QCoreApplication::translate("ExportImport", words);
}

// "Signed there by ...", and why, if they said so.
QString actInWords(const ExportedAct &act)
{
    const auto what = [&] {
        switch (act.kind) {
        //: %1: a name, %2: a time
        case EntryKind::Late: return takenOver(QT_TRANSLATE_NOOP("ExportImport", "entered late there by %1 on %2"));
        case EntryKind::Amended: return takenOver(QT_TRANSLATE_NOOP("ExportImport", "amended there by %1 on %2"));
        case EntryKind::InError:
            return takenOver(QT_TRANSLATE_NOOP("ExportImport", "marked there as entered in error by %1 on %2"));
        case EntryKind::Moved:
            return takenOver(QT_TRANSLATE_NOOP("ExportImport", "moved there from another patient by %1 on %2"));
        default: return takenOver(QT_TRANSLATE_NOOP("ExportImport", "signed there by %1 on %2"));
        }
    }();
    const QString said = what.arg(act.author.empty() ? takenOver(QT_TRANSLATE_NOOP("ExportImport", "somebody without a name"))
                                                     : QString::fromStdString(act.author),
        QString::fromStdString(act.enteredAt));
    return act.reason.empty() ? said : said + QStringLiteral(": ") + QString::fromStdString(act.reason);
}

// Throws Error.
class VisitTaker {
public:
    VisitTaker(Practice &practice, std::int64_t patient) : m_practice(practice), m_patient(patient) { }

    std::int64_t take(const ExportedVisit &visit)
    {
        const auto first = std::find_if(
            visit.history.begin(), visit.history.end(), [](const ExportedAct &act) { return !act.document.empty(); });
        m_document = first == visit.history.end() ? visit.document : first->document;
        m_isSigned = false;
        m_moves.clear();
        m_id = valueOrThrow(m_practice.addVisit(m_patient, m_document));
        for (const ExportedAct &act : visit.history)
            redo(act);
        if (visit.state == VisitState::Amending)
            amendWith(visit.document);
        return m_id;
    }

private:
    void redo(const ExportedAct &act)
    {
        const std::string care = act.careAt.empty() ? act.enteredAt : act.careAt;
        switch (act.kind) {
        case EntryKind::Moved: m_moves << actInWords(act); return; // told with what is signed next
        case EntryKind::InError:
            if (m_isSigned && act.document != m_document)
                amendWith(act.document); // it was being amended
            static_cast<void>(valueOrThrow(m_practice.markInError(m_id, reasonOf(act))));
            return;
        case EntryKind::Amended:
            amendWith(act.document);
            static_cast<void>(valueOrThrow(m_practice.signAmendment(m_id, reasonOf(act), care)));
            return;
        default: static_cast<void>(valueOrThrow(m_practice.sign(m_id, care, reasonOf(act)))); m_isSigned = true;
        }
    }

    void amendWith(const std::string &document)
    {
        static_cast<void>(valueOrThrow(m_practice.beginAmendment(m_id)));
        if (document != m_document)
            static_cast<void>(valueOrThrow(m_practice.saveVisit(m_id, document)));
        m_document = document;
    }

    std::string reasonOf(const ExportedAct &act)
    {
        m_moves << actInWords(act);
        const QString words = takenOver(QT_TRANSLATE_NOOP("ExportImport", "Taken over from the export of another practice: %1"))
                                  .arg(m_moves.join(QStringLiteral("; ")));
        m_moves.clear();
        return words.toStdString();
    }

    Practice &m_practice;
    std::int64_t m_patient;
    std::int64_t m_id = 0;
    std::string m_document; // as it stands
    bool m_isSigned = false;
    QStringList m_moves; // not told yet
};

} // namespace

Result<ExportedRecord> readExport(std::string_view text, const std::string &file, const Atlas &atlas)
{
    if (isTooDeep(text))
        return Error{ErrorCode::OutOfRange, file, "nested deeper than " + std::to_string(deepestExport) + " levels"};
    if (const auto parsed = parseJson(text, file); !parsed)
        return parsed.error();
    const ExportJson json = ExportJson::parse(text);
    const nlohmann::json unordered(json); // of what was read, so that both say the same of a field that is there twice
    return guarded([&] { return ExportReader(json, file, atlas).read(JsonReader(unordered, file)); });
}

Result<Done> checkKnownContent(
    const SafetyRules &rules, const Examination &examination, const ExportedRecord &record, const std::string &file)
{
    for (std::size_t i = 0; i < record.visits.size(); ++i)
        if (const auto checked = checkKnownContent(rules, examination, record.visits[i].visit, {}); !checked)
            return Error{checked.error().code, // its place is "#/pointer"
                file + "#/visits/" + std::to_string(i) + "/document" + checked.error().place.substr(1), checked.error().detail};
    return Done{};
}

Result<ImportedPatient> importPatient(Practice &practice, const ExportedRecord &record)
{
    const auto patient = practice.addPatient(record.patient);
    if (!patient)
        return patient.error();
    ImportedPatient out{patient.value(), {}};
    const auto taken = guarded([&]() -> Done {
        VisitTaker taker(practice, patient.value());
        for (const ExportedVisit &visit : record.visits)
            out.visits.push_back(taker.take(visit));
        return {};
    });
    if (taken)
        return out;
    if (const auto erased = practice.erase(patient.value(), "the import did not succeed"); !erased)
        return Error{taken.error().code, taken.error().place,
            taken.error().detail + "; patient " + std::to_string(patient.value()) + " is there in part"};
    return taken.error();
}

} // namespace raphe
