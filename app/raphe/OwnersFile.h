// Files with a person's words or keys outside of the sealed one: only their owner may read them.
#pragma once

#include "core/base/Result.h"

#include <QByteArray>
#include <QString>

namespace raphe {

/// Writes the whole file, or none: fails with CannotWrite and leaves what was there before.
[[nodiscard]] Result<Done> saveForOwner(const QString &file, const QByteArray &bytes);

} // namespace raphe
