#include "app/batch/VisitFile.h"

#include "core/record/VisitJson.h"

#include <QFile>

namespace raphe::batch {

Result<Visit> readVisitFile(const std::string &file, const Atlas &atlas)
{
    QFile in(QString::fromStdString(file));
    if (!in.open(QIODevice::ReadOnly))
        return Error{ErrorCode::CannotRead, file, in.errorString().toStdString()};
    return readVisit(in.readAll().toStdString(), file, atlas);
}

} // namespace raphe::batch
