#include "app/raphe/practice/Passphrase.h"

#include <QLineEdit>

namespace raphe {

namespace {

// Through a volatile pointer, so that the writing is not left out because nobody reads it.
template <class T> void overwrite(T *first, std::size_t count)
{
    volatile auto *bytes = reinterpret_cast<volatile unsigned char *>(first);
    for (std::size_t i = 0; i < count * sizeof(T); ++i)
        bytes[i] = 0;
}

void overwrite(const QString &text)
{
    if (text.capacity() > 0) // else the text is empty, or a literal of the program
        overwrite(const_cast<QChar *>(text.constData()), static_cast<std::size_t>(text.size()));
}

} // namespace

void wipe(std::string &text)
{
    overwrite(text.data(), text.size());
    text.clear();
}

void wipe(QLineEdit &field)
{
    overwrite(field.text()); // which shares the field's buffer
    field.clear();
}

Passphrase::Passphrase(const QString &typed)
{
    const QString composed = typed.normalized(QString::NormalizationForm_C);
    QByteArray bytes = composed.toUtf8();
    m_bytes.assign(bytes.cbegin(), bytes.cend());
    overwrite(bytes.data(), static_cast<std::size_t>(bytes.size()));
    if (!composed.isSharedWith(typed))
        overwrite(composed);
}

Passphrase::~Passphrase()
{
    overwrite(m_bytes.data(), m_bytes.size());
}

WipedAccount::WipedAccount(const std::string &whoSignsIn, const std::string &whoseName, const Passphrase &typed,
    const DerivationCost &work, const std::vector<std::string> &mayUse)
{
    signIn = whoSignsIn;
    name = whoseName;
    passphrase.assign(typed.characters().begin(), typed.characters().end());
    cost = work;
    scope = mayUse;
}

WipedAccount::~WipedAccount()
{
    wipe(passphrase);
}

std::string storedName(const QString &typed)
{
    return typed.trimmed().normalized(QString::NormalizationForm_C).toStdString();
}

} // namespace raphe
