// Letters to other professionals that were kept with the visit.
#include "core/document/NoteSource.h"

#include "core/document/LetterWords.h"

#include <QCoreApplication>
#include <QStringList>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ClinicalNote", text);
}

QString q(const std::string &text)
{
    return QString::fromStdString(text);
}

QString addresseeWords(const Addressee &to)
{
    QStringList out;
    for (const std::string &text : {to.name, to.role})
        if (!text.empty())
            out << q(text);
    for (const std::string &text : to.lines)
        out << q(text);
    return out.isEmpty() ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "to whoever takes over"))
                         //: %1: a name and an address
                         : tr(QT_TRANSLATE_NOOP("ClinicalNote", "to %1")).arg(out.join(QStringLiteral(", ")));
}

} // namespace

NotePart lettersPart(const NoteSource &source)
{
    NotePartWriter part(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Letters")).toStdString());
    const auto line = [&](const QString &label, const QString &text) { part.line(label.toStdString(), text.toStdString()); };
    for (const Letter &letter : source.visit.letters) {
        part.section(letter.title);
        line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Written")), q(letter.written));
        line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Addressed")), addresseeWords(letter.to));
        line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Urgency")), q(urgencyInWords(letter.urgency)));
        line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Reason of the letter")), q(letter.reason.text));
        line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Question asked")), q(letter.question.text));
        if (source.given.lettersInFull)
            for (const LetterPart &one : letter.parts)
                line(q(one.title), q(one.words.text));
        line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Handed over")),
            letter.sent.empty() ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "not yet")) : q(letter.sent));
    }
    return part.take();
}

} // namespace raphe
