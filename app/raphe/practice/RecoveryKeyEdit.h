// The nine groups of a recovery key to be typed from paper, in fields that stand as they are printed. A full field leads on to
// the next; a whole key that is pasted spreads over them.
#pragma once

#include "core/store/crypto/RecoveryKey.h"

#include <QWidget>

#include <array>

class QLineEdit;

namespace raphe {

class RecoveryKeyEdit : public QWidget {
    Q_OBJECT

public:
    explicit RecoveryKeyEdit(QWidget *parent = nullptr);
    ~RecoveryKeyEdit() override;

    /// Fails with MistypedKey, place: the group, where typing then goes on.
    [[nodiscard]] Result<RecoveryKey> read();

private:
    void spread(std::size_t from);

    std::array<QLineEdit *, RecoveryKey::groupCount> m_groups{};
};

} // namespace raphe
