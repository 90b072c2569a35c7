#include "app/raphe/practice/EntryWords.h"

#include "app/raphe/patients/PersonWords.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("EntryWords", text);
}

QString momentWords(const QDateTime &moment)
{
    return QLocale().toString(moment.toLocalTime(), QStringLiteral("d MMMM yyyy, HH:mm"));
}

} // namespace

QString actWords(EntryKind kind)
{
    switch (kind) {
    case EntryKind::FileMade: return tr("made the practice file");
    case EntryKind::Opened: return tr("opened the record");
    case EntryKind::Signed: return tr("signed a visit");
    case EntryKind::Amended: return tr("signed an amendment of a visit");
    case EntryKind::Late: return tr("signed a visit as a late entry");
    case EntryKind::InError: return tr("marked a visit as entered in error");
    case EntryKind::Moved: return tr("moved a visit to this record");
    case EntryKind::Merged: return tr("joined another record to this one");
    case EntryKind::Erased: return tr("erased the record");
    case EntryKind::Exported: return tr("exported the record");
    case EntryKind::AccountAdded: return tr("added a user");
    case EntryKind::AccountRemoved: return tr("removed a user");
    case EntryKind::PassphraseChanged: return tr("changed the passphrase");
    case EntryKind::ScopeChanged: return tr("changed the techniques of a user");
    case EntryKind::Recovered: return tr("came in with the recovery key");
    case EntryKind::RecoveryKeyChanged: return tr("made a new recovery key");
    case EntryKind::Restored: return tr("restored the file from a back-up");
    }
    return {};
}

QString momentWords(std::int64_t milliseconds)
{
    return momentWords(QDateTime::fromMSecsSinceEpoch(milliseconds));
}

QString careWords(const std::string &isoTime)
{
    if (QString day = dayWords(isoTime); !day.isEmpty() && isoTime.find('T') == std::string::npos)
        return day;
    const QString text = QString::fromStdString(isoTime);
    const QDateTime moment = QDateTime::fromString(text, Qt::ISODate);
    return moment.isValid() ? momentWords(moment) : text;
}

} // namespace raphe
