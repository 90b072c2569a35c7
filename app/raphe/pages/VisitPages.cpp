#include "app/raphe/pages/VisitPages.h"

#include "app/paint/ArrivalFormPages.h"
#include "app/paint/ClinicalNotePages.h"
#include "app/paint/RecordsRequestPages.h"
#include "app/paint/RuleReviewPages.h"
#include "app/paint/VisitMapPages.h"
#include "app/words/StoredNotes.h"
#include "core/document/ArrivalForm.h"
#include "core/document/Completeness.h"
#include "core/document/Deidentified.h"
#include "core/document/FindingsCsv.h"
#include "core/document/MapReading.h"
#include "core/document/NoteText.h"
#include "core/document/RuleReview.h"
#include "core/document/fhir/FhirBundle.h"
#include "core/record/VisitJson.h"

#include <QCoreApplication>
#include <QDateTime>

#include <memory>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("VisitPages", text);
}

QString q(const std::string &text)
{
    return QString::fromStdString(text);
}

NoteKnowledge noteKnowledge(const VisitSession &session)
{
    return {*session.knowledge().regions, session.adviser().rules(), session.examination(), session.handTechniques()};
}

Result<StoredVisit> storedVisit(VisitSession &session)
{
    if (session.visitId() == 0)
        return Error{ErrorCode::NotAllowed, "visit", "none is open"};
    if (const auto saved = session.saveNow(); !saved)
        return saved.error();
    return session.practice().visit(session.visitId());
}

Result<ClinicalNote> noteOf(VisitSession &session)
{
    const auto stored = storedVisit(session);
    if (!stored)
        return stored.error();
    const auto kept = keptVisit(session.practice(), stored.value(), *session.knowledge().atlas);
    if (!kept)
        return kept.error();
    NoteGiven given = noteGiven(kept.value(), session.earlierVisits());
    if (const auto advice = session.adviser().advise(session.visit(), "visit")) {
        given.explain = advice.value().reasons.explain;
        given.unexplained = advice.value().reasons.unexplained;
    }
    return clinicalNote(noteKnowledge(session), session.visit(), given);
}

FhirState fhirStateOf(VisitState state)
{
    switch (state) {
    case VisitState::Draft: return FhirState::Draft;
    case VisitState::Signed: return FhirState::Signed;
    case VisitState::Amending: return FhirState::Amending;
    case VisitState::InError: break;
    }
    return FhirState::InError;
}

std::optional<FhirAct> fhirActOf(EntryKind kind)
{
    switch (kind) {
    case EntryKind::Signed: return FhirAct::Signed;
    case EntryKind::Late: return FhirAct::Late;
    case EntryKind::Amended: return FhirAct::Amended;
    case EntryKind::InError: return FhirAct::InError;
    default: return std::nullopt;
    }
}

Result<std::string> bundleOf(VisitSession &session)
{
    return guarded([&] {
        const StoredVisit stored = valueOrThrow(storedVisit(session));
        const FhirCodes codes = valueOrThrow(readEmbeddedFhirCodes());
        FhirSource source;
        source.atlas = session.knowledge().atlas.get();
        source.codes = &codes;
        source.rules = &session.adviser().rules();
        source.examination = &session.examination();
        source.techniques = &session.handTechniques();
        source.visit = session.visit();
        source.record = &session.record();
        source.practice = valueOrThrow(session.practice().settings()).name;
        source.patientNumber = std::to_string(session.patientId());
        source.visitNumber = std::to_string(session.visitId());
        source.state = fhirStateOf(stored.state);
        for (const VisitVersion &version : valueOrThrow(session.practice().history(stored.id))) {
            const auto act = fhirActOf(version.kind);
            if (!act)
                continue;
            source.entries.push_back({*act, version.author, version.madeAt, version.careAt, version.reason});
            if (!source.asSigned && !version.document.empty())
                source.asSigned = valueOrThrow(readVisit(version.document, "visit", *source.atlas));
        }
        const QDate day = QDate::fromString(q(source.visit.date), Qt::ISODate);
        if (day.isValid())
            source.utcOffset = QDateTime(day, QTime(12, 0)).offsetFromUtc() / 60;
        return valueOrThrow(fhirBundle(source));
    });
}

Result<Done> saved(const std::string &file, const Result<std::string> &text)
{
    return text ? saveAll(file, QByteArray::fromStdString(text.value())) : Result<Done>(text.error());
}

} // namespace

VisitPages::VisitPages(VisitSession &session)
    : m_session(session),
      m_front(*session.knowledge().atlas, session.knowledge().body->of(View::Front)),
      m_back(*session.knowledge().atlas, session.knowledge().body->of(View::Back))
{
}

Language VisitPages::language() const
{
    if (const auto own = fromWord(languageWords, m_session.record().language); own && m_session.visitId() != 0)
        return *own;
    const auto settings = m_session.practice().settings();
    return settings ? fromWord(languageWords, settings.value().language).value_or(Language::English) : Language::English;
}

VisitMap VisitPages::mapIn(Language language) const
{
    const Knowledge &k = m_session.knowledge();
    return visitMap({m_session.adviser().rules(), *k.atlas, *k.body, m_session.examination(), m_session.handTechniques(),
                        m_session.homeAdvice()},
        m_session.visit(), Phrases(language));
}

PageOffer VisitPages::map() const
{
    PageOffer out{tr("Visit map"),
        tr("For the patient to take home: what was found, done and changed, and what to look out for."), tr("visit-map"), true,
        {}, {}, {}};
    const auto pages = [this](const PageChoice &choice) {
        return visitMapPages({choice.paper, choice.isLarge, choice.isGrey}, mapIn(choice.language), m_front, m_back);
    };
    out.make = [pages](const PageChoice &choice) -> Result<PrintedPages> { return pages(choice); };
    out.remarks = [this](const PageChoice &choice) {
        const auto readability = readEmbeddedReadability();
        const ReadingGrade grade = readability ? gradeOf(readability.value(), mapIn(choice.language)) : ReadingGrade{};
        if (grade.words == 0)
            return QStringList{tr("The reading grade is measured in English only.")};
        QStringList remarks{
            tr("Reading grade %1 (Flesch-Kincaid); the aim is %2 or below. Names of places and the legal line are not "
               "counted.")
                .arg(grade.grade, 0, 'f', 1)
                .arg(readability.value().limit)};
        if (grade.longest > readability.value().longestSentence)
            remarks << tr("A sentence of %1 words: '%2'").arg(grade.longest).arg(q(grade.longestSentence));
        return remarks;
    };
    for (const QString &filter : {tr("SVG (*.svg)"), tr("PNG (*.png)")})
        out.formats.push_back(
            {filter, [pages](const std::string &file, const PageChoice &choice) { return writePages(file, pages(choice)); }});
    return out;
}

PageOffer VisitPages::note() const
{
    PageOffer out{tr("Note"), tr("The clinical note, from the record alone."), tr("note"), false, {}, {}, {}};
    out.make = [this](const PageChoice &choice) -> Result<PrintedPages> {
        const auto note = noteOf(m_session);
        if (!note)
            return note.error();
        return clinicalNotePages(choice.paper, note.value());
    };
    out.remarks = [this](const PageChoice &) {
        QStringList missing;
        if (m_session.visitId() != 0)
            for (const MissingItem &item : completenessOf(noteKnowledge(m_session), m_session.visit(), m_session.earlierVisits()))
                missing << q(item.text);
        return missing.isEmpty() ? QStringList{tr("Nothing is missing.")} : QStringList{tr("Missing:")} + missing;
    };
    out.formats.push_back({tr("Plain text (*.txt)"), [this](const std::string &file, const PageChoice &) {
                               const auto note = noteOf(m_session);
                               return saved(file, note ? Result<std::string>(noteText(note.value())) : note.error());
                           }});
    return out;
}

PageOffer VisitPages::record() const
{
    PageOffer out{tr("Whole record"),
        tr("All that is held on this patient, for a request of records. That it was made is written into the history."),
        tr("record"), false, {}, {}, {}};
    const auto made = std::make_shared<std::optional<RecordsRequest>>(); // once, so that it is noted once
    out.make = [this, made](const PageChoice &choice) -> Result<PrintedPages> {
        if (const auto open = storedVisit(m_session); !open)
            return open.error();
        if (!*made) {
            const auto kept = recordContent(m_session.practice(), m_session.patientId(), *m_session.knowledge().atlas);
            if (!kept)
                return kept.error();
            *made = recordsRequest(noteKnowledge(m_session), kept.value(), NoteFor::Record);
        }
        return recordsRequestPages(choice.paper, **made);
    };
    return out;
}

PageOffer VisitPages::form() const
{
    PageOffer out{tr("Form before arrival"), tr("For the patient to fill in at home, with a pen."), tr("before-your-visit"), true,
        {}, {}, {}};
    out.make = [this](const PageChoice &choice) -> Result<PrintedPages> {
        const auto texts = readEmbeddedPatientTexts();
        if (!texts)
            return texts.error();
        const auto form = arrivalForm(inLanguage(texts.value(), Phrases(choice.language)));
        if (!form)
            return form.error();
        return arrivalFormPages(choice.paper, form.value(), m_front, m_back);
    };
    return out;
}

PageOffer VisitPages::rules() const
{
    PageOffer out{tr("Rules for review"),
        tr("All cautions, warning signs and reminders as tables, for a clinician to read and sign."), tr("rules-for-review"),
        false, {}, {}, {}};
    out.make = [this](const PageChoice &choice) -> Result<PrintedPages> {
        return ruleReviewPages(choice.paper, ruleReview(m_session.adviser().rules(), *m_session.knowledge().atlas));
    };
    return out;
}

std::vector<PageFormat> VisitPages::exchange() const
{
    std::vector<PageFormat> out;
    out.push_back({tr("For another clinician's program, HL7 FHIR R4 (*.json)"),
        [this](const std::string &file, const PageChoice &) { return saved(file, bundleOf(m_session)); }});
    out.push_back({tr("Visit file (*.json)"),
        [this](const std::string &file, const PageChoice &) { return saved(file, writeVisit(m_session.visit())); }});
    out.push_back({tr("Findings as a table (*.csv)"), [this](const std::string &file, const PageChoice &) {
                       return saved(file,
                           findingsCsv({{std::to_string(m_session.patientId()), m_session.visit()}}, *m_session.knowledge().atlas,
                               m_session.examination()));
                   }});
    out.push_back({tr("Copy for teaching, without names (*.json)"), [this](const std::string &file, const PageChoice &) {
                       const auto copies = deidentified({m_session.visit()}, "Patient 1",
                           {*m_session.knowledge().atlas, m_session.adviser().rules(), m_session.examination(),
                               m_session.programTechniques(), m_session.programAdvice(), m_session.lineWords().list().textures});
                       return saved(file, writeVisit(copies.front()));
                   }});
    return out;
}

} // namespace raphe
