#include "core/document/NoteText.h"

#include <QString>
#include <QStringList>

#include <algorithm>

namespace raphe {

namespace {

constexpr int noteLabelWidth = 24;
constexpr int noteGap = 2;

using NoteCodes = QList<uint>; // code points

// Marks and overrides of the Unicode bidirectional algorithm (UAX #9, section 2), and controls that a terminal would obey.
bool isUnseenInText(uint code)
{
    return code == 0x061C || code == 0x200E || code == 0x200F || (code >= 0x202A && code <= 0x202E)
        || (code >= 0x2066 && code <= 0x2069) || QChar::category(code) == QChar::Other_Control;
}

QString codesShown(const NoteCodes &codes, qsizetype first, qsizetype count)
{
    return QString::fromUcs4(reinterpret_cast<const char32_t *>(codes.constData()) + first, count);
}

NoteCodes codesOfLine(const QString &line)
{
    NoteCodes codes = line.toUcs4();
    for (uint &code : codes)
        if (code == '\t')
            code = ' ';
        else if (isUnseenInText(code))
            code = QChar::ReplacementCharacter;
    return codes;
}

// Breaks at blanks, and within a word that is wider than all.
QStringList wrappedNote(const std::string &text, int width)
{
    QStringList out;
    for (const QString &line : QString::fromStdString(text).split(QLatin1Char('\n'))) {
        const NoteCodes codes = codesOfLine(line);
        qsizetype first = 0;
        while (codes.size() - first > width) {
            qsizetype end = first + width; // where the line ends
            while (end > first && codes[end] != ' ')
                --end;
            const bool isBroken = end == first;
            if (isBroken)
                end = first + width;
            out << codesShown(codes, first, end - first);
            first = isBroken ? end : end + 1;
        }
        out << codesShown(codes, first, codes.size() - first);
    }
    return out;
}

class NoteTextWriter {
public:
    std::string write(const ClinicalNote &note)
    {
        paragraph(note.title);
        state(note);
        blank();
        lines(note.heads);
        for (const NotePart &part : note.parts)
            add(part, note);
        add(note.signatures, note);
        blank();
        state(note);
        paragraph(note.limits);
        return m_out.toStdString();
    }

private:
    void put(const QString &line)
    {
        QString out = line;
        while (out.endsWith(QLatin1Char(' ')))
            out.chop(1);
        m_out += out + QLatin1Char('\n');
    }
    void blank() { put({}); }
    void paragraph(const std::string &text)
    {
        for (const QString &line : wrappedNote(text, noteTextWidth))
            put(line);
    }
    // Beside each part, so that no screenful is without it.
    void state(const ClinicalNote &note)
    {
        if (!note.state.empty())
            paragraph("*** " + note.state + " ***");
    }

    void add(const NotePart &part, const ClinicalNote &note)
    {
        if (part.sections.empty())
            return;
        blank();
        put(QString(noteTextWidth, QLatin1Char('=')));
        for (const QString &line : wrappedNote(part.title, noteTextWidth))
            put(line.toUpper());
        state(note);
        put(QString(noteTextWidth, QLatin1Char('=')));
        for (const NoteSection &section : part.sections) {
            if (&section != &part.sections.front())
                blank();
            if (!section.title.empty())
                under(section.title);
            lines(section.lines);
        }
    }

    void under(const std::string &title)
    {
        qsizetype width = 0;
        for (const QString &line : wrappedNote(title, noteTextWidth)) {
            put(line);
            width = std::max(width, line.toUcs4().size());
        }
        put(QString(width, QLatin1Char('-')));
    }

    void lines(const std::vector<NoteLine> &lines)
    {
        for (const NoteLine &line : lines) {
            const std::string text = line.asOf.empty() ? line.text : line.text + " [" + line.asOf + "]";
            if (line.label.empty()) {
                paragraph(text);
                continue;
            }
            const QStringList labels = wrappedNote(line.label, noteLabelWidth);
            const QStringList texts = wrappedNote(text, noteTextWidth - noteLabelWidth - noteGap);
            for (qsizetype i = 0; i < std::max(labels.size(), texts.size()); ++i) {
                const QString label = i < labels.size() ? labels[i] : QString();
                const auto room = noteLabelWidth + noteGap - label.toUcs4().size();
                put(label + QString(room, QLatin1Char(' ')) + (i < texts.size() ? texts[i] : QString()));
            }
        }
    }

    QString m_out;
};

} // namespace

std::string noteText(const ClinicalNote &note)
{
    return NoteTextWriter().write(note);
}

} // namespace raphe
