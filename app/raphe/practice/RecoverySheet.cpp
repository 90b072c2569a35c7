#include "app/raphe/practice/RecoverySheet.h"

#include "app/paint/Theme.h"
#include "app/raphe/OwnersFile.h"

#include <QCoreApplication>
#include <QLocale>
#include <QPainter>

namespace raphe {

namespace {

constexpr double margin = 64; // points
constexpr qsizetype lineLength = 72; // characters

QString tr(const char *text)
{
    return QCoreApplication::translate("RecoverySheet", text);
}

QString madeOn(const RecoverySheet &sheet)
{
    return tr("Made on %1").arg(QLocale().toString(sheet.made, QStringLiteral("d MMMM yyyy")));
}

struct Part {
    QString head;
    QString words;
};

QList<Part> parts()
{
    return {
        {tr("What it is for"),
            tr("If a passphrase of this practice is lost, this key lets its owner set a new one. Whoever has both this key and "
               "the practice file, or a back-up of it, can read every record.")},
        {tr("Where to keep it"),
            tr("On paper, locked away, and not beside the computer: a safe, or a sealed envelope with somebody you trust. Do not "
               "photograph it, and do not keep it in mail or on the computer itself.")},
        {tr("How to use it"),
            tr("Start the program, choose 'I have lost the passphrase' and type the nine groups. Capital or small letters are "
               "the "
               "same. The letters B, I, L, O, S, U and Z do not occur.")}};
}

// Paints words and gives the y below them.
double put(QPainter &painter, const QRectF &box, const QFont &font, const QString &words)
{
    painter.setFont(font);
    QRectF used;
    painter.drawText(box, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, words, &used);
    return used.bottom();
}

QString wrapped(const QString &words)
{
    QString out;
    QString line;
    for (const QString &word : words.split(QLatin1Char(' '))) {
        if (!line.isEmpty() && line.size() + 1 + word.size() > lineLength) {
            out += line + QLatin1Char('\n');
            line.clear();
        }
        line += (line.isEmpty() ? QString() : QStringLiteral(" ")) + word;
    }
    return out + line + QLatin1Char('\n');
}

} // namespace

void paintRecoverySheet(QPainter &painter, const RecoverySheet &sheet, double width, double height)
{
    painter.fillRect(QRectF(0, 0, width, height), Qt::white);
    painter.setPen(Qt::black);
    const double across = width - 2 * margin;
    const auto rest = [&](double from) { return QRectF(margin, from, across, height - margin - from); };
    double y = put(painter, rest(margin), typefaceInUnits(13), tr("Recovery key of the practice"));
    y = put(painter, rest(y + 4), typefaceInUnits(24, QFont::Bold), sheet.practice);
    y = put(painter, rest(y + 4), typefaceInUnits(12), madeOn(sheet));

    constexpr double pad = 14;
    constexpr double rowHeight = 46;
    const int rows = static_cast<int>(RecoveryKey::groupCount) / keyGroupsInRow;
    const QRectF frame(margin, y + 24, across, rows * rowHeight + 2 * pad);
    painter.setPen(QPen(Qt::black, 1));
    painter.drawRoundedRect(frame, 8, 8);
    const double column = (across - 2 * pad) / keyGroupsInRow;
    for (int i = 0; i < static_cast<int>(RecoveryKey::groupCount); ++i) {
        const int row = i / keyGroupsInRow;
        const QRectF cell(
            frame.left() + pad + (i % keyGroupsInRow) * column, frame.top() + pad + row * rowHeight, column, rowHeight);
        painter.setFont(typefaceInUnits(10));
        painter.drawText(
            QRectF(cell.left(), cell.top(), 18, rowHeight), Qt::AlignVCenter | Qt::AlignRight, QString::number(i + 1));
        QFont large = typefaceInUnits(24, QFont::DemiBold);
        large.setLetterSpacing(QFont::AbsoluteSpacing, 2.5);
        painter.setFont(large);
        painter.drawText(cell.adjusted(28, 0, 0, 0), Qt::AlignVCenter | Qt::AlignLeft,
            QString::fromStdString(sheet.key.group(static_cast<std::size_t>(i) + 1)));
    }
    y = frame.bottom() + 14;
    for (const Part &part : parts()) {
        y = put(painter, rest(y + 14), typefaceInUnits(12, QFont::Bold), part.head);
        y = put(painter, rest(y + 3), typefaceInUnits(12), part.words);
    }
}

QString recoveryText(const RecoverySheet &sheet)
{
    QString out = tr("Recovery key of the practice") + QLatin1Char('\n') + sheet.practice + QLatin1Char('\n') + madeOn(sheet)
        + QStringLiteral("\n\n");
    for (std::size_t number = 1; number <= RecoveryKey::groupCount; ++number) {
        out += QString::number(number) + QStringLiteral("  ") + QString::fromStdString(sheet.key.group(number));
        out += number % keyGroupsInRow == 0 ? QStringLiteral("\n") : QStringLiteral("    ");
    }
    for (const Part &part : parts())
        out += QLatin1Char('\n') + part.head + QLatin1Char('\n') + wrapped(part.words);
    return out;
}

Result<Done> saveRecoveryText(const RecoverySheet &sheet, const QString &file)
{
    return saveForOwner(file, recoveryText(sheet).toUtf8());
}

} // namespace raphe
