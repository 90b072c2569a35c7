#include "app/raphe/OwnersFile.h"

#include <QSaveFile>

namespace raphe {

Result<Done> saveForOwner(const QString &name, const QByteArray &bytes)
{
    QSaveFile file(name);
    const auto failed = [&] { return Error{ErrorCode::CannotWrite, name.toStdString(), file.errorString().toStdString()}; };
    if (!file.open(QIODevice::WriteOnly))
        return failed();
    if (!file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner) || file.write(bytes) != bytes.size()
        || !file.flush()) {
        file.cancelWriting();
        return failed();
    }
    if (!file.commit())
        return failed();
    return Done{};
}

} // namespace raphe
