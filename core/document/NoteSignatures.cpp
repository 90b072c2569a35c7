// Who signed what when: each with the time of care and the time of entry, and what an amendment changed.
#include "core/document/NoteSource.h"

#include <QCoreApplication>
#include <QStringList>

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

QString q(const std::string &text)
{
    return QString::fromStdString(text);
}

class SignaturesWriter {
public:
    explicit SignaturesWriter(const NoteSource &source)
        : m_source(source), m_part(said(QT_TRANSLATE_NOOP("ClinicalNote", "Signatures")))
    {
    }

    NotePart write()
    {
        for (const NoteVersion &version : m_source.given.versions)
            act(version);
        if (m_source.given.state == NoteState::Draft) {
            m_part.section(said(QT_TRANSLATE_NOOP("ClinicalNote", "Not signed")));
            m_part.line({}, said(QT_TRANSLATE_NOOP("ClinicalNote", "This is a draft. It can still be changed.")));
        } else if (m_source.given.state == NoteState::Amending) {
            m_part.section(said(QT_TRANSLATE_NOOP("ClinicalNote", "Amendment being written, not signed")));
            if (m_signed)
                changes(visitFor(m_source.given.readers, m_source.known.rules, *m_signed), m_source.visit);
        }
        return m_part.take();
    }

private:
    void line(const char *label, std::string text) { m_part.line(said(label), std::move(text)); }

    QString title(const NoteVersion &version)
    {
        switch (version.act) {
        case RecordAct::Signed: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "Signed"));
        case RecordAct::Late: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "Signed as a late entry"));
        case RecordAct::Amended: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "Amendment %1")).arg(++m_amendments);
        case RecordAct::InError: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "Marked as entered in error"));
        case RecordAct::Moved: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "Moved to this record"));
        case RecordAct::Opened:
        case RecordAct::Merged:
        case RecordAct::Erased:
        case RecordAct::Exported:
        case RecordAct::Restored:
        case RecordAct::Other: break;
        }
        return q(recordActInWords(version.act));
    }

    void act(const NoteVersion &version)
    {
        m_part.section(title(version).toStdString());
        line(QT_TRANSLATE_NOOP("ClinicalNote", "By"),
            version.author.empty() ? said(QT_TRANSLATE_NOOP("ClinicalNote", "unknown user")) : version.author);
        const bool isOfCare =
            version.act == RecordAct::Signed || version.act == RecordAct::Late || version.act == RecordAct::Amended;
        if (isOfCare)
            line(QT_TRANSLATE_NOOP("ClinicalNote", "Care given"), careOf(version));
        line(QT_TRANSLATE_NOOP("ClinicalNote", "Entered"), momentInRecord(version.enteredAt));
        line(QT_TRANSLATE_NOOP("ClinicalNote", "Reason"), version.reason);
        if (version.entry > 0)
            line(QT_TRANSLATE_NOOP("ClinicalNote", "Entry in the history"), std::to_string(version.entry));
        if (version.act == RecordAct::Amended && version.visit && m_signed)
            changes(*m_signed, *version.visit);
        if (version.visit)
            m_signed = &*version.visit;
    }

    // As given; the day of the visit with the times of what was done.
    [[nodiscard]] std::string careOf(const NoteVersion &version) const
    {
        const Visit &visit = version.visit ? *version.visit : m_source.visit;
        if (!version.careAt.empty() && version.careAt != visit.date)
            return version.careAt;
        QStringList out;
        for (const std::string &words : {visit.date, timesOfExamination(visit), timesOfTreatment(visit)})
            if (!words.empty())
                out << q(words);
        return out.join(QStringLiteral(", ")).toStdString();
    }

    void changes(const Visit &before, const Visit &now)
    {
        for (std::string &change : noteChanges(m_source.known, before, now, m_source.given.readers))
            line(QT_TRANSLATE_NOOP("ClinicalNote", "Changed"), std::move(change));
    }

    const NoteSource &m_source;
    NotePartWriter m_part;
    const Visit *m_signed = nullptr; // by the act before
    int m_amendments = 0;
};

} // namespace

NotePart signaturesPart(const NoteSource &source)
{
    return SignaturesWriter(source).write();
}

} // namespace raphe
