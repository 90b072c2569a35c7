// The recovery key on paper: one plain page that says what it is, what it is for and where to keep it. The same words as text.
#pragma once

#include "core/store/crypto/RecoveryKey.h"

#include <QDate>
#include <QString>

class QPainter;

namespace raphe {

inline constexpr int keyGroupsInRow = 3; // on paper as on the screen

struct RecoverySheet {
    QString practice; // its name
    QDate made;
    RecoveryKey key;
};

/// Paints the page into `width` x `height` units of 1/72 inch; the painter is black on white.
void paintRecoverySheet(QPainter &painter, const RecoverySheet &sheet, double width, double height);

/// Lines of at most 72 characters, but for a longer name of the practice.
[[nodiscard]] QString recoveryText(const RecoverySheet &sheet);

/// Writes that text into a file that only its owner may read. Fails with CannotWrite; then there is no new file.
[[nodiscard]] Result<Done> saveRecoveryText(const RecoverySheet &sheet, const QString &file);

} // namespace raphe
