#include "core/anatomy/AtlasReader.h"

#include "core/anatomy/Skeleton.h"
#include "core/anatomy/SpinalRoot.h"
#include "core/base/JsonReader.h"

#include <nlohmann/json.hpp>

#include <QDir>
#include <QFile>

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <unordered_map>
#include <utility>

namespace raphe {

bool isWellFormed(const StructureId &id)
{
    const std::string &v = id.value;
    if (v.empty() || v.front() == '-' || v.back() == '-' || v.find("--") != std::string::npos) // "--" numbers pieces in drawings
        return false;
    return std::all_of(v.begin(), v.end(), [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; });
}

namespace {

constexpr int atlasVersion = 1;

// A word that must name something, checked once all files are read.
struct Reference {
    std::string id;
    std::string place;
};

class Reader {
public:
    void readFile(const nlohmann::json &json, const std::string &file)
    {
        const JsonReader root(json, file);
        root.expectObject({"format", "version", "structures", "joints", "continuities", "seats", "sources"});
        if (root.string("format") != "raphe-atlas")
            root.field("format").fail(ErrorCode::WrongFormat, root.string("format"));
        if (root.field("version").asNumber() != atlasVersion)
            root.field("version").fail(ErrorCode::WrongFormat, std::to_string(root.field("version").asNumber()));
        forEach(root, "structures", [this](const JsonReader &at) { readStructure(at); });
        forEach(root, "joints", [this](const JsonReader &at) { readJoint(at); });
        forEach(root, "continuities", [this](const JsonReader &at) { readContinuity(at); });
        forEach(root, "seats", [this](const JsonReader &at) { readSeat(at); });
        forEach(root, "sources", [this](const JsonReader &at) { readSource(at); });
    }

    Atlas finish()
    {
        checkReferences();
        placeSeats();
        checkDerivedIds();
        checkParts();
        checkLandmarks();
        checkAttachments();
        checkGrades();
        checkMuscles();
        checkSkeleton();
        return {std::move(m_structures), std::move(m_joints), std::move(m_continuities), std::move(m_sources)};
    }

private:
    template <class F> static void forEach(const JsonReader &root, std::string_view field, F read)
    {
        if (root.has(field))
            for (const JsonReader &item : root.field(field).items())
                read(item);
    }

    StructureId readReference(const JsonReader &at)
    {
        StructureId id{at.asString()};
        if (!isWellFormed(id))
            at.fail(ErrorCode::BadId, id.value);
        m_references.push_back({id.value, at.place()});
        return id;
    }

    std::vector<StructureId> readReferences(const JsonReader &at)
    {
        std::vector<StructureId> out;
        for (const JsonReader &item : at.items()) {
            StructureId id = readReference(item);
            if (std::find(out.begin(), out.end(), id) != out.end())
                item.fail(ErrorCode::Duplicate, id.value);
            out.push_back(std::move(id));
        }
        return out;
    }

    std::vector<std::string> readSources(const JsonReader &owner)
    {
        const JsonReader at = owner.field("sources");
        std::vector<std::string> out;
        for (const JsonReader &item : at.items()) {
            out.push_back(item.asString());
            m_sourceReferences.push_back({out.back(), item.place()});
        }
        if (out.empty())
            at.fail(ErrorCode::MissingField, "a source");
        return out;
    }

    static Names readNames(const JsonReader &at)
    {
        at.expectObject({"latin", "english", "plain", "synonyms"});
        Names names{at.string("latin"), at.string("english"), {}, at.stringsOr("synonyms")};
        const JsonReader plain = at.field("plain");
        plain.expectObject({"en", "de", "es"});
        for (const char *language : {"en", "de", "es"})
            names.plain[language] = plain.string(language);
        return names;
    }

    Grade readGrade(const JsonReader &owner, const std::vector<std::string> &sources)
    {
        const Grade grade = readWord(gradeWords, owner.field("evidence"));
        m_graded.push_back({grade, sources, owner.place()});
        return grade;
    }

    void readStructure(const JsonReader &at)
    {
        at.expectObject({"id", "kind", "layer", "paired", "part_of", "names", "ids", "nerves", "roots", "attachments", "actions",
            "spans", "beside", "border", "caution", "sources"});
        Structure s;
        s.id.value = at.string("id");
        if (!isWellFormed(s.id))
            at.field("id").fail(ErrorCode::BadId, s.id.value);
        if (!m_places.emplace(s.id.value, at.place()).second)
            at.field("id").fail(ErrorCode::Duplicate, s.id.value);
        s.kind = readWord(kindWords, at.field("kind"));
        s.layer = readWord(layerWords, at.field("layer"));
        s.paired = at.field("paired").asBool();
        if (at.has("part_of"))
            s.partOf = readReference(at.field("part_of"));
        s.names = readNames(at.field("names"));
        if (at.has("ids")) {
            at.field("ids").expectObject({"uberon", "fma"});
            s.uberon = at.field("ids").stringsOr("uberon");
            s.fma = at.field("ids").stringsOr("fma");
        }
        if (at.has("nerves"))
            s.nerves = readReferences(at.field("nerves"));
        forEach(at, "roots", [&](const JsonReader &root) {
            if (!isSpinalRoot(root.asString()))
                root.fail(ErrorCode::UnknownWord, root.asString());
            s.roots.push_back(root.asString());
        });
        s.sources = readSources(at);
        forEach(at, "attachments", [&](const JsonReader &head) { s.attachments.push_back(readAttachment(head, s.id)); });
        forEach(at, "actions", [&](const JsonReader &action) { s.actions.push_back(readAction(action)); });
        forEach(at, "spans", [&](const JsonReader &span) {
            span.expectObject({"joint", "sources"});
            s.spans.push_back({readJointReference(span.field("joint")), readSources(span)});
        });
        if (at.has("beside"))
            s.beside = readReferences(at.field("beside"));
        if (at.has("border"))
            s.border = readBorder(at.field("border"), s);
        if (at.has("caution"))
            s.caution = readCaution(at.field("caution"), s);
        else if (s.kind == Kind::CautionArea)
            at.fail(ErrorCode::MissingField, "caution");
        m_index.emplace(s.id.value, m_structures.size());
        m_structures.push_back(std::move(s));
    }

    StructureId readJointReference(const JsonReader &at)
    {
        m_jointReferences.push_back({at.asString(), at.place()});
        return readReference(at);
    }

    Attachment readAttachment(const JsonReader &head, const StructureId &owner)
    {
        head.expectObject({"head", "origins", "insertions", "along", "evidence", "sources"});
        Attachment a;
        a.head = head.stringOr("head", {});
        a.origins = readReferences(head.field("origins"));
        a.insertions = readReferences(head.field("insertions"));
        if (a.origins.empty() || a.insertions.empty())
            head.fail(ErrorCode::MissingEnd, owner.value);
        forEach(head, "along", [&](const JsonReader &at) {
            at.expectObject({"end", "from", "to"});
            Along along{{at.string("end")}, at.field("from").asNumber(), at.field("to").asNumber()};
            if (std::find(a.origins.begin(), a.origins.end(), along.end) == a.origins.end()
                && std::find(a.insertions.begin(), a.insertions.end(), along.end) == a.insertions.end())
                at.field("end").fail(ErrorCode::UnknownId, along.end.value);
            if (!(along.from >= 0 && along.from < along.to && along.to <= 1))
                at.fail(ErrorCode::OutOfRange, "from and to; allowed: 0 to 1, the smaller first");
            m_alongs.push_back({along.end.value, at.place()});
            a.along.push_back(std::move(along));
        });
        a.sources = readSources(head);
        a.evidence = readGrade(head, a.sources);
        return a;
    }

    Action readAction(const JsonReader &at)
    {
        at.expectObject({"at", "motions"});
        Action action;
        if (const auto complex = fromWord(complexWords, at.string("at")))
            action.at = *complex;
        else
            action.at = readJointReference(at.field("at"));
        for (const JsonReader &motion : at.field("motions").items())
            action.motions.push_back(readWord(motionWords, motion));
        if (action.motions.empty())
            at.field("motions").fail(ErrorCode::MissingField, "a motion");
        return action;
    }

    Border readBorder(const JsonReader &at, const Structure &owner)
    {
        if (owner.kind != Kind::Landmark)
            at.fail(ErrorCode::WrongType, "field of a landmark, not of a " + std::string(wordOf(kindWords, owner.kind)));
        at.expectObject({"from", "to", "length_over_stature", "sources", "note"});
        Border border{at.string("from"), at.string("to"), at.field("length_over_stature").asNumber(), readSources(at),
            at.stringOr("note", {})};
        if (!(border.lengthOverStature > 0 && border.lengthOverStature < 1))
            at.field("length_over_stature").fail(ErrorCode::OutOfRange, "a fraction of stature; allowed: between 0 and 1");
        return border;
    }

    Caution readCaution(const JsonReader &at, const Structure &owner)
    {
        if (owner.kind != Kind::CautionArea)
            at.fail(ErrorCode::WrongType, "field of a caution-area, not of a " + std::string(wordOf(kindWords, owner.kind)));
        at.expectObject({"runs", "risk", "work"});
        return {readReferences(at.field("runs")), at.string("risk"), at.string("work")};
    }

    void readJoint(const JsonReader &at)
    {
        at.expectObject({"id", "bones", "role", "complex"});
        const auto bones = at.field("bones").items();
        if (bones.size() != 2)
            at.field("bones").fail(ErrorCode::OutOfRange, std::to_string(bones.size()) + ", allowed: two bones");
        Joint joint{readReference(at.field("id")), {readReference(bones[0]), readReference(bones[1])},
            readWord(jointRoleWords, at.field("role")), readWord(complexWords, at.field("complex"))};
        if (!m_jointPlaces.emplace(joint.id.value, at.place()).second)
            at.field("id").fail(ErrorCode::Duplicate, joint.id.value);
        m_joints.push_back(std::move(joint));
    }

    void readContinuity(const JsonReader &at)
    {
        at.expectObject({"from", "to", "changes_side", "evidence", "force", "sources", "note", "transition"});
        Continuity c;
        c.from = readReference(at.field("from"));
        c.to = readReference(at.field("to"));
        c.changesSide = at.field("changes_side").asBool();
        c.sources = readSources(at);
        c.evidence = readGrade(at, c.sources);
        c.force = readWord(forceWords, at.field("force"));
        c.note = at.stringOr("note", {});
        c.transition = at.stringOr("transition", {});
        const auto key = std::make_tuple(std::min(c.from, c.to), std::max(c.from, c.to), c.changesSide);
        if (!m_pairs.insert(key).second)
            at.fail(ErrorCode::Duplicate, c.from.value + " ~ " + c.to.value);
        m_continuities.push_back(std::move(c));
    }

    void readSeat(const JsonReader &at)
    {
        at.expectObject({"structure", "how_often", "felt_at", "evidence", "sources"});
        Seat seat;
        const StructureId structure = readReference(at.field("structure"));
        seat.howOften = readWord(howOftenWords, at.field("how_often"));
        seat.feltAt = readReferences(at.field("felt_at"));
        if (seat.feltAt.empty())
            at.field("felt_at").fail(ErrorCode::MissingField, "a surface-region");
        seat.sources = readSources(at);
        seat.evidence = readGrade(at, seat.sources);
        if (!m_seats.emplace(structure, std::pair(std::move(seat), at.place())).second)
            at.field("structure").fail(ErrorCode::Duplicate, structure.value);
    }

    void readSource(const JsonReader &at)
    {
        at.expectObject({"id", "citation", "doi", "supports", "read"});
        Source source;
        source.id = at.string("id");
        source.citation = at.string("citation");
        if (!at.field("doi").isNull())
            source.doi = at.field("doi").asString();
        source.supports = readWord(gradeWords, at.field("supports"));
        source.read = readWord(readingWords, at.field("read"));
        if (!m_supports.emplace(source.id, source.supports).second)
            at.field("id").fail(ErrorCode::Duplicate, source.id);
        m_sources.push_back(std::move(source));
    }

    void checkReferences() const
    {
        for (const Reference &r : m_references)
            if (!m_places.contains(r.id))
                throw Error{ErrorCode::UnknownId, r.place, r.id};
        for (const Reference &r : m_sourceReferences)
            if (!m_supports.contains(r.id))
                throw Error{ErrorCode::UnknownId, r.place, r.id};
        for (const Reference &r : m_jointReferences)
            if (!m_jointPlaces.contains(r.id))
                throw Error{ErrorCode::UnknownId, r.place, r.id};
        for (const Reference &r : m_alongs)
            if (!structure({r.id}).border)
                throw Error{ErrorCode::WrongType, r.place + "/end", "id of a landmark with a border, not " + r.id};
    }

    const Structure &structure(const StructureId &id) const { return m_structures[m_index.at(id.value)]; }

    // A file may say of a structure in another file what kind of seat it is.
    void placeSeats()
    {
        for (auto &[id, entry] : m_seats) {
            for (const StructureId &region : entry.first.feltAt)
                if (structure(region).kind != Kind::SurfaceRegion)
                    throw Error{ErrorCode::WrongType, entry.second + "/felt_at", "id of a surface-region, not " + region.value};
            m_structures[m_index.at(id.value)].seat = std::move(entry.first);
        }
    }

    // The atlas derives one structure from each surface region; no other may have that id.
    void checkDerivedIds() const
    {
        for (const Structure &s : m_structures)
            if (s.kind == Kind::SurfaceRegion)
                if (const auto taken = m_places.find("sf-" + s.id.value); taken != m_places.end())
                    throw Error{ErrorCode::Duplicate, taken->second, taken->first};
    }

    void checkParts() const
    {
        for (const Structure &s : m_structures) {
            std::set<std::string> above{s.id.value};
            for (auto whole = s.partOf; whole; whole = structure(*whole).partOf)
                if (!above.insert(whole->value).second)
                    throw Error{
                        ErrorCode::Contradiction, m_places.at(s.id.value) + "/part_of", s.id.value + " would be part of itself"};
        }
    }

    void checkAttachments() const
    {
        constexpr std::array allowed{Kind::Landmark, Kind::Bone, Kind::Fascia, Kind::Ligament, Kind::Tendon, Kind::SurfaceRegion};
        for (const Structure &s : m_structures)
            for (const Attachment &head : s.attachments)
                for (const auto *ends : {&head.origins, &head.insertions})
                    for (const StructureId &end : *ends)
                        if (std::find(allowed.begin(), allowed.end(), structure(end).kind) == allowed.end())
                            throw Error{ErrorCode::WrongType, m_places.at(s.id.value) + "/attachments",
                                "id of a landmark, bone, fascia, ligament, tendon or surface-region, not " + end.value};
    }

    void checkLandmarks() const
    {
        for (const Structure &s : m_structures) {
            if (s.kind != Kind::Landmark)
                continue;
            if (!s.partOf || structure(*s.partOf).kind != Kind::Bone)
                throw Error{ErrorCode::MissingField, m_places.at(s.id.value), "part_of a bone"};
        }
        for (const Structure &s : m_structures)
            for (const StructureId &nerve : s.nerves)
                if (structure(nerve).kind != Kind::Nerve)
                    throw Error{ErrorCode::WrongType, m_places.at(s.id.value) + "/nerves", "id of a nerve, not " + nerve.value};
    }

    // A continuity is an extension of evidence about two structures; its sources must be able to carry the grade.
    void checkGrades() const
    {
        for (const Graded &g : m_graded) {
            Grade best = Grade::Convention;
            for (const auto &id : g.sources)
                best = std::min(best, m_supports.at(id));
            if (g.grade < best)
                throw Error{ErrorCode::GradeTooHigh, g.place, std::string(wordOf(gradeWords, g.grade))};
        }
    }

    void checkMuscles() const
    {
        std::set<std::string> wholes;
        for (const Structure &s : m_structures)
            if (s.kind == Kind::Muscle && s.partOf)
                wholes.insert(s.partOf->value);
        for (const Structure &s : m_structures)
            if (s.kind == Kind::Muscle && s.attachments.empty() && !wholes.contains(s.id.value))
                throw Error{ErrorCode::MissingEnd, m_places.at(s.id.value), s.id.value};
    }

    void checkSkeleton() const
    {
        std::vector<StructureId> bones;
        for (const Structure &s : m_structures) {
            if (s.kind == Kind::Bone)
                bones.push_back(s.id);
            if (s.kind == Kind::Joint && !m_jointPlaces.contains(s.id.value))
                throw Error{ErrorCode::MissingField, m_places.at(s.id.value), "an entry in joints"};
        }
        for (const Joint &joint : m_joints) {
            if (structure(joint.id).kind != Kind::Joint)
                throw Error{
                    ErrorCode::WrongType, m_jointPlaces.at(joint.id.value) + "/id", "id of a joint, not " + joint.id.value};
            for (const StructureId &bone : joint.bones)
                if (structure(bone).kind != Kind::Bone)
                    throw Error{
                        ErrorCode::WrongType, m_jointPlaces.at(joint.id.value) + "/bones", "id of a bone, not " + bone.value};
        }
        const Skeleton skeleton(m_joints);
        if (const auto joint = skeleton.cycle())
            throw Error{ErrorCode::SkeletonCycle, m_jointPlaces.at(joint->value), joint->value};
        if (const auto bone = skeleton.gap(bones))
            throw Error{ErrorCode::SkeletonGap, m_places.at(bone->value), bone->value};
    }

    struct Graded {
        Grade grade;
        std::vector<std::string> sources;
        std::string place;
    };

    std::vector<Structure> m_structures;
    std::vector<Joint> m_joints;
    std::vector<Continuity> m_continuities;
    std::vector<Source> m_sources;
    std::unordered_map<std::string, std::size_t> m_index;
    std::unordered_map<std::string, Grade> m_supports; // what each source can carry
    std::unordered_map<std::string, std::string> m_places;
    std::unordered_map<std::string, std::string> m_jointPlaces;
    std::set<std::tuple<StructureId, StructureId, bool>> m_pairs;
    std::map<StructureId, std::pair<Seat, std::string>> m_seats; // with the place of the entry
    std::vector<Reference> m_references;
    std::vector<Reference> m_sourceReferences;
    std::vector<Reference> m_jointReferences;
    std::vector<Reference> m_alongs;
    std::vector<Graded> m_graded;
};

} // namespace

Result<Atlas> readAtlas(const std::vector<NamedText> &files)
{
    return guarded([&]() -> Atlas {
        Reader reader;
        for (const NamedText &file : files) {
            auto json = parseJson(file.text, file.name);
            if (!json)
                throw Error(json.error());
            reader.readFile(json.value(), file.name);
        }
        return reader.finish();
    });
}

Result<std::vector<NamedText>> embeddedFiles(const std::string &folder)
{
    const QDir dir(QStringLiteral(":/") + QString::fromStdString(folder));
    std::vector<NamedText> files;
    for (const QString &name : dir.entryList(QDir::Files, QDir::Name)) {
        QFile file(dir.filePath(name));
        if (!file.open(QIODevice::ReadOnly))
            return Error{ErrorCode::CannotRead, name.toStdString(), file.errorString().toStdString()};
        files.push_back({name.toStdString(), file.readAll().toStdString()});
    }
    return files;
}

Result<Atlas> readEmbeddedAtlas()
{
    auto files = embeddedFiles("atlas");
    if (!files)
        return files.error();
    return readAtlas(files.value());
}

} // namespace raphe
