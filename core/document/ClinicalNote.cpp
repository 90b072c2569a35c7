#include "core/document/ClinicalNote.h"

#include "core/document/Completeness.h"
#include "core/document/NoteSource.h"

#include <QCoreApplication>
#include <QDateTime>

#include <algorithm>
#include <cstdlib>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ClinicalNote", text);
}

std::string said(const char *text)
{
    return tr(text).toStdString();
}

std::string stateInWords(NoteState state)
{
    switch (state) {
    case NoteState::Draft: return said(QT_TRANSLATE_NOOP("ClinicalNote", "DRAFT: NOT SIGNED"));
    case NoteState::Amending: return said(QT_TRANSLATE_NOOP("ClinicalNote", "AMENDMENT BEING WRITTEN: NOT SIGNED"));
    case NoteState::InError: return said(QT_TRANSLATE_NOOP("ClinicalNote", "ENTERED IN ERROR"));
    case NoteState::Signed: break;
    }
    return {};
}

const Visit *previousOf(const Visit &visit, const std::vector<EarlierVisit> &earlier)
{
    const auto it = std::find_if(earlier.begin(), earlier.end(),
        [&](const EarlierVisit &other) { return !other.isInError && other.visit.date <= visit.date; });
    return it == earlier.end() ? nullptr : &it->visit;
}

std::vector<NoteLine> headsOf(const Visit &visit, NoteFor readers)
{
    NotePartWriter heads({});
    if (visit.patient) {
        heads.line(said(QT_TRANSLATE_NOOP("ClinicalNote", "Patient")), visit.patient->name);
        heads.line(said(QT_TRANSLATE_NOOP("ClinicalNote", "Born")), visit.patient->born);
    }
    heads.line(said(QT_TRANSLATE_NOOP("ClinicalNote", "Date of the visit")), visit.date);
    heads.line(said(QT_TRANSLATE_NOOP("ClinicalNote", "Examined")), timesOfExamination(visit));
    heads.line(said(QT_TRANSLATE_NOOP("ClinicalNote", "Treated")), timesOfTreatment(visit));
    heads.line(said(QT_TRANSLATE_NOOP("ClinicalNote", "Practitioner")), visit.practitioner);
    if (readers == NoteFor::Others)
        heads.line(said(QT_TRANSLATE_NOOP("ClinicalNote", "Copy for others")),
            said(QT_TRANSLATE_NOOP("ClinicalNote",
                "Questions that are asked only when nobody else can hear, and their answers, are left out of every copy.")));
    NotePart part = heads.take();
    return part.sections.empty() ? std::vector<NoteLine>{} : std::move(part.sections.front().lines);
}

NotePart openPart(const NoteKnowledge &known, const Visit &visit, const std::vector<EarlierVisit> &earlier)
{
    NotePartWriter part(said(QT_TRANSLATE_NOOP("ClinicalNote", "Not complete yet")));
    for (const MissingItem &missing : completenessOf(known, visit, earlier))
        part.line(stationInWords(missing.where), missing.text);
    return part.take();
}

} // namespace

ClinicalNote clinicalNote(const NoteKnowledge &known, const Visit &visit, const NoteGiven &given)
{
    const Visit shown = visitFor(given.readers, known.rules, visit);
    const NoteSource source{known, shown, given, previousOf(shown, given.earlier)};
    ClinicalNote note;
    note.title = said(QT_TRANSLATE_NOOP("ClinicalNote", "Clinical note"));
    note.patient = shown.patient ? shown.patient->name : std::string();
    note.born = shown.patient ? shown.patient->born : std::string();
    note.date = shown.date;
    note.state = stateInWords(given.state);
    note.heads = headsOf(shown, given.readers);
    for (NotePart part : {subjectivePart(source), objectivePart(source), assessmentPart(source), planPart(source),
             goalsPart(source), lettersPart(source)})
        note.parts.push_back(std::move(part));
    const bool isOpen = given.state == NoteState::Draft || given.state == NoteState::Amending;
    if (isOpen && given.readers == NoteFor::Record)
        note.parts.push_back(openPart(known, visit, given.earlier));
    std::erase_if(note.parts, [](const NotePart &part) { return part.sections.empty(); });
    note.signatures = signaturesPart(source);
    note.limits = recordLimits();
    return note;
}

std::string recordActInWords(RecordAct act)
{
    switch (act) {
    case RecordAct::Opened: return said(QT_TRANSLATE_NOOP("ClinicalNote", "opened the record"));
    case RecordAct::Signed: return said(QT_TRANSLATE_NOOP("ClinicalNote", "signed a visit"));
    case RecordAct::Late: return said(QT_TRANSLATE_NOOP("ClinicalNote", "signed a visit as a late entry"));
    case RecordAct::Amended: return said(QT_TRANSLATE_NOOP("ClinicalNote", "signed an amendment of a visit"));
    case RecordAct::InError: return said(QT_TRANSLATE_NOOP("ClinicalNote", "marked a visit as entered in error"));
    case RecordAct::Moved: return said(QT_TRANSLATE_NOOP("ClinicalNote", "moved a visit to this record"));
    case RecordAct::Merged: return said(QT_TRANSLATE_NOOP("ClinicalNote", "joined another record to this one"));
    case RecordAct::Erased: return said(QT_TRANSLATE_NOOP("ClinicalNote", "erased the record"));
    case RecordAct::Exported: return said(QT_TRANSLATE_NOOP("ClinicalNote", "exported the record"));
    case RecordAct::Restored: return said(QT_TRANSLATE_NOOP("ClinicalNote", "restored the file from a back-up"));
    case RecordAct::Other: break;
    }
    return said(QT_TRANSLATE_NOOP("ClinicalNote", "changed the practice file"));
}

std::string momentInRecord(std::int64_t milliseconds)
{
    constexpr int minute = 60;
    const QDateTime moment = QDateTime::fromMSecsSinceEpoch(milliseconds);
    const int offset = moment.offsetFromUtc() / minute;
    const auto two = [](int number) { return QStringLiteral("%1").arg(number, 2, 10, QLatin1Char('0')); };
    //: %1: date and time; %2: + or -, hours and minutes
    return tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1 (UTC%2)"))
        .arg(moment.toString(QStringLiteral("yyyy-MM-dd HH:mm")),
            (offset < 0 ? QStringLiteral("-") : QStringLiteral("+")) + two(std::abs(offset) / minute) + QLatin1Char(':')
                + two(std::abs(offset) % minute))
        .toStdString();
}

std::string recordLimits()
{
    return said(QT_TRANSLATE_NOOP(
        "ClinicalNote", "Assists a trained practitioner; follow local law, scope of practice and licensed care."));
}

} // namespace raphe
