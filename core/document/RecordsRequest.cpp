#include "core/document/RecordsRequest.h"

#include "core/document/PatientRecordPart.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("RecordsRequest", text);
}

std::string said(const char *text)
{
    return tr(text).toStdString();
}

QString q(const std::string &text)
{
    return QString::fromStdString(text);
}

QString stateWords(NoteState state)
{
    switch (state) {
    case NoteState::Draft: return tr(QT_TRANSLATE_NOOP("RecordsRequest", "draft, not signed"));
    case NoteState::Signed: return tr(QT_TRANSLATE_NOOP("RecordsRequest", "signed"));
    case NoteState::Amending:
        return tr(QT_TRANSLATE_NOOP("RecordsRequest", "signed; an amendment is being written and is not signed"));
    case NoteState::InError: break;
    }
    return tr(QT_TRANSLATE_NOOP("RecordsRequest", "entered in error"));
}

class RequestMaker {
public:
    RequestMaker(const NoteKnowledge &known, const RecordContent &kept, NoteFor readers)
        : m_known(known), m_kept(kept), m_readers(readers)
    {
    }

    RecordsRequest make()
    {
        m_out.title = said(QT_TRANSLATE_NOOP("RecordsRequest", "Copy of a patient's record"));
        m_out.patient = m_kept.patient.name;
        m_out.born = m_kept.patient.born;
        m_out.limits = recordLimits();
        heads();
        words();
        m_out.record = patientRecordPart(m_known.rules, m_kept.patient);
        NotePartWriter contents(said(QT_TRANSLATE_NOOP("RecordsRequest", "Visits in this copy")));
        for (std::size_t i = 0; i < m_kept.visits.size(); ++i)
            visit(i, contents);
        m_out.contents = contents.take();
        accesses();
        return std::move(m_out);
    }

private:
    void heads()
    {
        NotePartWriter heads({});
        const auto add = [&](const char *label, std::string text) { heads.line(said(label), std::move(text)); };
        add(QT_TRANSLATE_NOOP("RecordsRequest", "Patient"), m_kept.patient.name);
        add(QT_TRANSLATE_NOOP("RecordsRequest", "Born"), m_kept.patient.born);
        if (m_kept.number > 0)
            add(QT_TRANSLATE_NOOP("RecordsRequest", "Number in the practice"), std::to_string(m_kept.number));
        add(QT_TRANSLATE_NOOP("RecordsRequest", "Practice"), m_kept.practice);
        if (m_kept.madeAt != 0)
            add(QT_TRANSLATE_NOOP("RecordsRequest", "Made"), momentInRecord(m_kept.madeAt));
        add(QT_TRANSLATE_NOOP("RecordsRequest", "Made by"), m_kept.madeBy);
        add(QT_TRANSLATE_NOOP("RecordsRequest", "Visits"), std::to_string(m_kept.visits.size()));
        m_out.heads = std::move(heads.take().sections.front().lines);
    }

    void words()
    {
        m_out.words.push_back(said(QT_TRANSLATE_NOOP("RecordsRequest",
            "This is what the practice file holds on this patient: the patient's record, every visit as it stands with its "
            "earlier versions and amendments, and who used the record when.")));
        m_out.words.push_back(m_readers == NoteFor::Others
                ? said(QT_TRANSLATE_NOOP("RecordsRequest",
                    "Questions that are asked only when nobody else can hear, and their answers, are left out of this copy."))
                : said(QT_TRANSLATE_NOOP("RecordsRequest",
                    "It may hold answers that were given when nobody else could hear: hand it to the patient alone.")));
        m_out.words.push_back(said(QT_TRANSLATE_NOOP("RecordsRequest",
            "The order of possible sources, which the program reckons anew each time, is no part of what is kept and not in it. "
            "Drawings of the pain stand in it as places in words; the practice can give them as data.")));
    }

    // Newest first, as a note wants it.
    [[nodiscard]] std::vector<EarlierVisit> before(std::size_t index) const
    {
        std::vector<EarlierVisit> out;
        for (std::size_t i = index; i-- > 0;)
            if (const KeptVisit &kept = m_kept.visits[i]; kept.visit)
                out.push_back({*kept.visit, kept.state == NoteState::InError});
        return out;
    }

    void visit(std::size_t index, NotePartWriter &contents)
    {
        const KeptVisit &kept = m_kept.visits[index];
        const std::string date =
            kept.visit && !kept.visit->date.empty() ? kept.visit->date : said(QT_TRANSLATE_NOOP("RecordsRequest", "no date"));
        QStringList line{stateWords(kept.state)};
        NoteGiven given;
        given.state = kept.state;
        given.readers = m_readers;
        given.lettersInFull = true;
        given.versions = kept.versions;
        given.earlier = before(index);
        m_out.notes.push_back(kept.visit ? clinicalNote(m_known, *kept.visit, given) : unread(kept.document, given));
        const std::size_t asItStands = m_out.notes.size();
        earlierVersions(kept, given);
        if (const std::size_t others = m_out.notes.size() - asItStands; others > 0)
            line << tr(QT_TRANSLATE_NOOP("RecordsRequest", "earlier versions: %1")).arg(others);
        contents.line(date, line.join(QStringLiteral("; ")).toStdString());
    }

    // What was signed and replaced.
    void earlierVersions(const KeptVisit &kept, const NoteGiven &given)
    {
        std::vector<ClinicalNote> notes;
        for (std::size_t i = 0; i < kept.versions.size(); ++i) {
            const NoteVersion &version = kept.versions[i];
            const std::string document = i < kept.documents.size() ? kept.documents[i] : std::string();
            const bool isAsItStands = version.visit ? version.visit == kept.visit : document == kept.document;
            const bool isKept = version.visit || !document.empty();
            if (!isKept || isAsItStands || isAmongLater(kept, i))
                continue;
            NoteGiven then = given;
            then.state = NoteState::Signed;
            then.versions.assign(kept.versions.begin(), kept.versions.begin() + static_cast<std::ptrdiff_t>(i) + 1);
            ClinicalNote note = version.visit ? clinicalNote(m_known, *version.visit, then) : unread(document, then);
            //: %1: date and time
            note.state = (kept.state == NoteState::InError
                    ? tr(QT_TRANSLATE_NOOP("RecordsRequest", "ENTERED IN ERROR, EARLIER VERSION OF %1"))
                    : tr(QT_TRANSLATE_NOOP("RecordsRequest", "EARLIER VERSION OF %1")))
                             .arg(q(momentInRecord(version.enteredAt)))
                             .toStdString();
            notes.push_back(std::move(note));
        }
        m_out.notes.insert(m_out.notes.end(), std::make_move_iterator(notes.rbegin()), std::make_move_iterator(notes.rend()));
    }

    static bool isAmongLater(const KeptVisit &kept, std::size_t index)
    {
        const NoteVersion &version = kept.versions[index];
        return version.visit
            && std::any_of(kept.versions.begin() + static_cast<std::ptrdiff_t>(index) + 1, kept.versions.end(),
                [&](const NoteVersion &later) { return later.visit == version.visit; });
    }

    // A document that is no visit stands as it is kept.
    [[nodiscard]] ClinicalNote unread(const std::string &document, const NoteGiven &given) const
    {
        Visit nobody;
        nobody.patient = Patient{m_kept.patient.name, m_kept.patient.born};
        NoteGiven plain = given;
        plain.readers = NoteFor::Record;
        plain.versions = given.versions;
        ClinicalNote note = clinicalNote(m_known, nobody, plain);
        note.parts.clear();
        NotePartWriter part(said(QT_TRANSLATE_NOOP("RecordsRequest", "As it is kept")));
        part.line({}, said(QT_TRANSLATE_NOOP("RecordsRequest", "This visit cannot be read as a visit by this program.")));
        if (m_readers == NoteFor::Record)
            part.line({}, document);
        else
            part.line({},
                said(QT_TRANSLATE_NOOP("RecordsRequest",
                    "Its text is left out of a copy for others: what was answered alone cannot be told from the rest.")));
        note.parts.push_back(part.take());
        return note;
    }

    void accesses()
    {
        NotePartWriter part(said(QT_TRANSLATE_NOOP("RecordsRequest", "Who used this record")));
        for (const RecordAccess &access : m_kept.accesses)
            part.line(momentInRecord(access.madeAt),
                //: %1: a name; %2: what was done
                tr(QT_TRANSLATE_NOOP("RecordsRequest", "%1: %2"))
                    .arg(access.by.empty() ? tr(QT_TRANSLATE_NOOP("RecordsRequest", "unknown user")) : q(access.by),
                        q(recordActInWords(access.act)))
                    .toStdString());
        m_out.accesses = part.take();
    }

    const NoteKnowledge &m_known;
    const RecordContent &m_kept;
    NoteFor m_readers;
    RecordsRequest m_out;
};

} // namespace

RecordsRequest recordsRequest(const NoteKnowledge &known, const RecordContent &kept, NoteFor readers)
{
    return RequestMaker(known, kept, readers).make();
}

} // namespace raphe
