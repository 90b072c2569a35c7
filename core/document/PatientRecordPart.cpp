#include "core/document/PatientRecordPart.h"

#include <QCoreApplication>
#include <QStringList>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("PatientRecordPart", text);
}

QString q(const std::string &text)
{
    return QString::fromStdString(text);
}

class RecordWriter {
public:
    RecordWriter(const SafetyRules &rules, const PatientRecord &record)
        : m_rules(rules),
          m_record(record),
          m_part(tr(QT_TRANSLATE_NOOP("PatientRecordPart", "Record of the patient")).toStdString())
    {
    }

    NotePart write()
    {
        person();
        reach();
        health();
        complaints();
        return m_part.take();
    }

private:
    void section(const char *title) { m_part.section(tr(title).toStdString()); }
    void line(const char *label, const QString &text) { m_part.line(tr(label).toStdString(), text.toStdString()); }
    void lines(const char *label, const std::vector<std::string> &texts)
    {
        for (const std::string &text : texts)
            line(label, q(text));
    }

    void person()
    {
        section(QT_TRANSLATE_NOOP("PatientRecordPart", "Person"));
        line(QT_TRANSLATE_NOOP("PatientRecordPart", "Name"), q(m_record.name));
        lines(QT_TRANSLATE_NOOP("PatientRecordPart", "Also known as"), m_record.otherNames);
        line(QT_TRANSLATE_NOOP("PatientRecordPart", "Born"), q(m_record.born));
        lines(QT_TRANSLATE_NOOP("PatientRecordPart", "Another birth date on record"), m_record.otherBorn);
        if (m_record.sex)
            line(QT_TRANSLATE_NOOP("PatientRecordPart", "Sex, for reference values"),
                *m_record.sex == Sex::Female ? tr(QT_TRANSLATE_NOOP("PatientRecordPart", "female"))
                                             : tr(QT_TRANSLATE_NOOP("PatientRecordPart", "male")));
        if (m_record.height)
            line(QT_TRANSLATE_NOOP("PatientRecordPart", "Height"),
                tr(QT_TRANSLATE_NOOP("PatientRecordPart", "%1 cm")).arg(*m_record.height));
        line(QT_TRANSLATE_NOOP("PatientRecordPart", "Recognised by"), q(m_record.mark));
        line(QT_TRANSLATE_NOOP("PatientRecordPart", "Language"), q(m_record.language));
        line(QT_TRANSLATE_NOOP("PatientRecordPart", "Interpreter"), q(m_record.interpreter));
    }

    void contact(const char *label, const std::optional<Contact> &contact)
    {
        if (!contact)
            return;
        QStringList out;
        for (const std::string &text : {contact->name, contact->phone})
            if (!text.empty())
                out << q(text);
        line(label, out.join(QStringLiteral(", ")));
    }

    void reach()
    {
        section(QT_TRANSLATE_NOOP("PatientRecordPart", "How to reach"));
        line(QT_TRANSLATE_NOOP("PatientRecordPart", "Telephone"), q(m_record.phone));
        line(QT_TRANSLATE_NOOP("PatientRecordPart", "E-mail"), q(m_record.email));
        line(QT_TRANSLATE_NOOP("PatientRecordPart", "Address"), q(m_record.address));
        contact(QT_TRANSLATE_NOOP("PatientRecordPart", "Doctor"), m_record.doctor);
        contact(QT_TRANSLATE_NOOP("PatientRecordPart", "In an emergency"), m_record.emergency);
        contact(QT_TRANSLATE_NOOP("PatientRecordPart", "Parent or guardian"), m_record.guardian);
    }

    [[nodiscard]] QString conditionName(const std::string &id) const
    {
        const ConditionKind *kind = m_rules.findCondition(id);
        return q(kind ? kind->name : id);
    }

    void health()
    {
        section(QT_TRANSLATE_NOOP("PatientRecordPart", "Health"));
        lines(QT_TRANSLATE_NOOP("PatientRecordPart", "Medicine"), m_record.medicines);
        lines(QT_TRANSLATE_NOOP("PatientRecordPart", "Allergy"), m_record.allergies);
        for (const Surgery &surgery : m_record.surgery)
            line(QT_TRANSLATE_NOOP("PatientRecordPart", "Operation"),
                //: %1: an operation; %2: its year
                surgery.year
                    ? tr(QT_TRANSLATE_NOOP("PatientRecordPart", "%1 (%2)")).arg(q(surgery.text), QString::number(*surgery.year))
                    : q(surgery.text));
        for (const Implant &implant : m_record.implants)
            line(QT_TRANSLATE_NOOP("PatientRecordPart", "Implant"),
                //: %1: an implant; %2: where it is
                implant.place.empty()
                    ? q(implant.text)
                    : tr(QT_TRANSLATE_NOOP("PatientRecordPart", "%1 (%2)")).arg(q(implant.text), q(implant.place)));
        for (const StandingCondition &condition : m_record.conditions)
            line(QT_TRANSLATE_NOOP("PatientRecordPart", "Standing condition"),
                //: %1: a condition; %2: what was written beside it
                condition.note.empty()
                    ? conditionName(condition.id)
                    : tr(QT_TRANSLATE_NOOP("PatientRecordPart", "%1: %2")).arg(conditionName(condition.id), q(condition.note)));
        for (const RuledOut &ruledOut : m_record.ruledOut)
            line(QT_TRANSLATE_NOOP("PatientRecordPart", "Said not to be so"),
                //: %1: a condition; %2: what speaks for it
                ruledOut.because.empty() ? conditionName(ruledOut.id)
                                         : tr(QT_TRANSLATE_NOOP("PatientRecordPart", "%1 (the record says '%2')"))
                                               .arg(conditionName(ruledOut.id), q(ruledOut.because)));
        if (m_record.pregnancy)
            pregnancy(QT_TRANSLATE_NOOP("PatientRecordPart", "Pregnancy"), *m_record.pregnancy);
        for (const Pregnancy &other : m_record.otherPregnancies)
            pregnancy(QT_TRANSLATE_NOOP("PatientRecordPart", "Another week of pregnancy on record"), other);
        if (m_record.bloodPressure)
            pressure(QT_TRANSLATE_NOOP("PatientRecordPart", "Blood pressure"), *m_record.bloodPressure);
        for (const BloodPressure &other : m_record.otherBloodPressures)
            pressure(QT_TRANSLATE_NOOP("PatientRecordPart", "Another blood pressure on record"), other);
        lines(QT_TRANSLATE_NOOP("PatientRecordPart", "To clarify"), m_record.unclear);
    }

    void pregnancy(const char *label, const Pregnancy &pregnancy)
    {
        line(label,
            //: %1: a number; %2: a date
            tr(QT_TRANSLATE_NOOP("PatientRecordPart", "week %1 on %2")).arg(QString::number(pregnancy.week), q(pregnancy.date)));
    }

    void pressure(const char *label, const BloodPressure &pressure)
    {
        line(label,
            //: %1 and %2: systolic and diastolic; %3: a date
            tr(QT_TRANSLATE_NOOP("PatientRecordPart", "%1/%2 mmHg on %3"))
                .arg(QString::number(pressure.systolic), QString::number(pressure.diastolic), q(pressure.date)));
    }

    void complaints()
    {
        section(QT_TRANSLATE_NOOP("PatientRecordPart", "Complaints"));
        for (const PatientComplaint &complaint : m_record.complaints) {
            QStringList out{q(complaint.text)};
            if (!complaint.since.empty())
                out << tr(QT_TRANSLATE_NOOP("PatientRecordPart", "since: %1")).arg(q(complaint.since));
            if (complaint.closed)
                out << tr(QT_TRANSLATE_NOOP("PatientRecordPart", "closed"));
            m_part.line(tr(QT_TRANSLATE_NOOP("PatientRecordPart", "Number %1")).arg(complaint.id).toStdString(),
                out.join(QStringLiteral("; ")).toStdString());
        }
    }

    const SafetyRules &m_rules;
    const PatientRecord &m_record;
    NotePartWriter m_part;
};

} // namespace

NotePart patientRecordPart(const SafetyRules &rules, const PatientRecord &record)
{
    return RecordWriter(rules, record).write();
}

} // namespace raphe
