#include "app/raphe/practice/PassphraseEdit.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "core/base/Utf8.h"
#include "core/store/AccountRow.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

PassphraseLine::PassphraseLine(QWidget *parent) : QLineEdit(parent)
{
    setEchoMode(Password);
    // Qt sets these for a hidden field; they must also hold while it shows what is typed.
    setInputMethodHints(Qt::ImhSensitiveData | Qt::ImhNoPredictiveText | Qt::ImhNoAutoUppercase);
}

PassphraseLine::~PassphraseLine()
{
    blockSignals(true); // who listens may be half gone
    wipe(*this);
}

QPushButton *PassphraseLine::showButton(const QList<PassphraseLine *> &lines)
{
    QPushButton *button = pushButton(tr("Show"));
    button->setAccessibleName(tr("Show what is typed"));
    button->setCheckable(true);
    connect(button, &QPushButton::toggled, button, [lines](bool isShown) {
        for (PassphraseLine *line : lines)
            line->setEchoMode(isShown ? Normal : Password);
    });
    return button;
}

PassphraseEdit::PassphraseEdit(const QString &name, QWidget *parent)
    : QWidget(parent), m_first(new PassphraseLine), m_second(new PassphraseLine), m_words(hint())
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    auto *row = new QHBoxLayout;
    row->setSpacing(8);
    row->addLayout(labelled(name, m_first), 1);
    row->addLayout(labelled(tr("The same once more"), m_second), 1);
    row->addWidget(PassphraseLine::showButton({m_first, m_second}), 0, Qt::AlignBottom);
    column->addLayout(row);
    column->addWidget(m_words);
    for (const PassphraseLine *line : {m_first, m_second})
        connect(line, &QLineEdit::textChanged, this, &PassphraseEdit::tell);
    tell();
}

QString PassphraseEdit::trouble() const
{
    const Passphrase first = m_first->passphrase();
    const auto count = characterCount({first.characters().data(), first.characters().size()});
    if (count == 0)
        return tr("At least %1 characters. Several words make a good one.").arg(shortestPassphrase);
    if (count + 1 == shortestPassphrase)
        return tr("One character more. Several words make a good one.");
    if (count < shortestPassphrase)
        return tr("%1 characters more. Several words make a good one.").arg(shortestPassphrase - count);
    const Passphrase second = m_second->passphrase();
    if (second.characters().empty())
        return tr("Long enough. Type it once more.");
    if (!std::ranges::equal(first.characters(), second.characters()))
        return tr("The two differ. Type the second one again.");
    return {};
}

void PassphraseEdit::tell()
{
    const QString words = trouble();
    m_words->say(words.isEmpty() ? tr("Both are the same.") : words);
}

void PassphraseEdit::wipeBoth()
{
    wipe(*m_first);
    wipe(*m_second);
}

void PassphraseEdit::focusTrouble()
{
    const Passphrase first = m_first->passphrase();
    const bool isLongEnough = characterCount({first.characters().data(), first.characters().size()}) >= shortestPassphrase;
    (isLongEnough ? m_second : m_first)->setFocus();
}

} // namespace raphe
