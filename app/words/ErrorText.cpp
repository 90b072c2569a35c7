#include "app/words/ErrorText.h"

#include <QCoreApplication>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ErrorText", text);
}

// %1 is the detail. Each says what is wrong and, after the dash, what to do.
QString pattern(ErrorCode code)
{
    switch (code) {
    case ErrorCode::BadJson: return tr("this is not valid JSON - mend the text at this position");
    case ErrorCode::MissingField: return tr("'%1' is missing - add it");
    case ErrorCode::UnknownField: return tr("the field '%1' is not known here - remove it or correct its name");
    case ErrorCode::WrongType: return tr("expected here: %1 - change the value");
    case ErrorCode::UnknownWord: return tr("the word '%1' is not in the list of allowed words - use one of those in the schema");
    case ErrorCode::OutOfRange: return tr("out of range: %1 - correct the value");
    case ErrorCode::BadId: return tr("'%1' is not an id - use lower case letters, digits and single hyphens");
    case ErrorCode::UnknownId: return tr("'%1' names nothing that is known - correct it or add what it names");
    case ErrorCode::Duplicate: return tr("'%1' stands here a second time - remove one of the two");
    case ErrorCode::WrongFormat: return tr("the format or version is not ours (%1) - choose a file of the right kind");
    case ErrorCode::MissingEnd: return tr("'%1' lacks an origin or an insertion - give it both ends");
    case ErrorCode::SkeletonCycle: return tr("the tree joint '%1' closes a ring - make it a closing joint");
    case ErrorCode::SkeletonGap: return tr("no tree joint reaches the bone '%1' - add one");
    case ErrorCode::GradeTooHigh: return tr("graded '%1', above what its sources support - lower the grade or add a source");
    case ErrorCode::WrongSide: return tr("wrong side for '%1' - use left or right for paired structures, midline for the others");
    case ErrorCode::BadDrawing: return tr("the drawing breaks a rule (%1) - correct it");
    case ErrorCode::Contradiction: return tr("two statements contradict each other (%1) - keep one");
    case ErrorCode::CannotRead: return tr("cannot be read (%1) - check the name and the permissions");
    case ErrorCode::CannotWrite: return tr("cannot be written (%1) - check the folder, its permissions and the free space");
    case ErrorCode::NotAPractice: return tr("this is not a practice file (%1) - choose another file; nothing was changed");
    case ErrorCode::NewerVersion: return tr("made by a later program (version %1) - update the program; nothing was changed");
    case ErrorCode::Storage: return tr("the practice file refused (%1) - check the disk; the last saved state is kept");
    case ErrorCode::WrongPassphrase:
        return tr("sign-in name and passphrase do not belong together - try again; nothing is locked%1");
    case ErrorCode::MistypedKey: return tr("%1 - compare it with the printed recovery key and type this group again");
    case ErrorCode::Tampered:
        return tr("not as it was written: %1 - keep this file as it is, work from a back-up, and ask who had access to it");
    case ErrorCode::NotAllowed: return tr("%1");
    case ErrorCode::NoCrypto: return tr("the cryptographic library does not start (%1) - nothing was opened or written");
    case ErrorCode::OutOfMemory: return tr("not enough memory (%1 bytes) - close other programs and try again");
    case ErrorCode::BadArgument: return tr("%1 - see --help");
    }
    return tr("%1");
}

} // namespace

QString errorText(const Error &error)
{
    QString text = pattern(error.code);
    text.replace(QStringLiteral("%1"), QString::fromStdString(error.detail));
    text.replace(QLatin1Char('\n'), QLatin1Char(' '));
    return error.place.empty() ? text : QString::fromStdString(error.place) + QStringLiteral(": ") + text;
}

} // namespace raphe
