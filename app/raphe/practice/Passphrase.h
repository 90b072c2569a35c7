// Passphrases between the field in which they are typed and the work that needs them, and the wiping of what held them.
// What cannot be wiped: Qt makes a new, larger buffer now and then while somebody types and gives the old one back as it is; a
// field keeps single characters for undoing; the input method, the clipboard, the glyphs on the screen and a screen reader have
// copies of their own; and where the two forms of Unicode differ, Qt's conversion works in buffers that nobody else sees.
#pragma once

#include "core/store/Practice.h"

#include <QString>

#include <span>
#include <vector>

class QLineEdit;

namespace raphe {

void wipe(std::string &text);
/// Overwrites the field's own buffer before it is emptied.
void wipe(QLineEdit &field);

/// What was typed, in Unicode's composed form (NFC) since keyboards differ, as UTF-8. In ordinary memory; wiped when it goes.
class Passphrase {
public:
    explicit Passphrase(const QString &typed);
    ~Passphrase();
    Passphrase(Passphrase &&) noexcept = default;
    Passphrase(const Passphrase &) = delete;
    Passphrase &operator=(const Passphrase &) = delete;
    Passphrase &operator=(Passphrase &&) = delete;

    [[nodiscard]] std::span<const char> characters() const { return m_bytes; }

private:
    std::vector<char> m_bytes;
};

/// A new account as Practice takes it, whose copy of the passphrase is wiped when it goes.
struct WipedAccount : NewAccount {
    WipedAccount(const std::string &whoSignsIn, const std::string &whoseName, const Passphrase &typed, const DerivationCost &work,
        const std::vector<std::string> &mayUse = {});
    ~WipedAccount();
    WipedAccount(const WipedAccount &) = delete;
    WipedAccount &operator=(const WipedAccount &) = delete;
};

/// A sign-in or other name as it is stored: without spaces at its ends, and in Unicode's composed form.
[[nodiscard]] std::string storedName(const QString &typed);

} // namespace raphe
