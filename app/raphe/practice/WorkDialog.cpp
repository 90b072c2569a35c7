#include "app/raphe/practice/WorkDialog.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QStyle>
#include <QVBoxLayout>

namespace raphe {

namespace {

constexpr int signSize = 20; // pixels

} // namespace

WorkDialog::WorkDialog(const QString &title, QWidget *parent)
    : QDialog(parent),
      m_title(new WrappedLabel(title)),
      m_rest(new QWidget),
      m_bar(new QWidget),
      m_notice(new QWidget),
      m_message(new WrappedLabel),
      m_busy(new QWidget),
      m_busyWords(new QLabel)
{
    setWindowTitle(title);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(24, 20, 24, 20);
    column->setSpacing(14);
    m_title->setProperty("role", QStringLiteral("title"));
    m_titleRow = new QHBoxLayout;
    m_titleRow->setSpacing(12);
    m_titleRow->addWidget(m_title, 1);
    column->addLayout(m_titleRow);
    auto *rest = new QVBoxLayout(m_rest);
    rest->setContentsMargins(0, 0, 0, 0);
    rest->setSpacing(14);
    m_form = new QVBoxLayout;
    m_form->setSpacing(12);
    rest->addLayout(m_form, 1);

    auto *notice = new QHBoxLayout(m_notice);
    notice->setContentsMargins(0, 0, 0, 0);
    notice->setSpacing(10);
    auto *sign = new QLabel;
    sign->setPixmap(style()->standardIcon(QStyle::SP_MessageBoxWarning).pixmap(signSize));
    notice->addWidget(sign, 0, Qt::AlignTop);
    m_message->setObjectName(QStringLiteral("notice"));
    notice->addWidget(m_message, 1);
    m_notice->hide();
    rest->addWidget(m_notice);
    column->addWidget(m_rest, 1);

    auto *busy = new QHBoxLayout(m_busy);
    busy->setContentsMargins(0, 0, 0, 0);
    busy->setSpacing(10);
    auto *bar = new QProgressBar;
    bar->setRange(0, 0);
    bar->setFixedSize(120, 10);
    bar->setTextVisible(false);
    busy->addWidget(bar);
    busy->addWidget(m_busyWords, 1);
    QSizePolicy policy = m_busy->sizePolicy();
    policy.setRetainSizeWhenHidden(true); // so that nothing moves
    m_busy->setSizePolicy(policy);
    m_busy->hide();
    column->addWidget(m_busy);

    m_buttons = new QHBoxLayout(m_bar);
    m_buttons->setContentsMargins(0, 0, 0, 0);
    m_buttons->setSpacing(8);
    column->addWidget(m_bar);
}

void WorkDialog::setTitle(const QString &title)
{
    m_title->say(title);
}

QPushButton *WorkDialog::addButton(const QString &text)
{
    QPushButton *button = pushButton(text);
    m_buttons->addWidget(button);
    return button;
}

void WorkDialog::addGap()
{
    m_buttons->addStretch(1);
}

void WorkDialog::say(const QString &text)
{
    amend(text);
    if (text.isEmpty())
        return;
    QAccessibleEvent event(m_message, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
}

void WorkDialog::amend(const QString &text)
{
    m_message->say(text);
    m_notice->setVisible(!text.isEmpty());
}

void WorkDialog::complain(const Error &error)
{
    say(sentence(error));
}

void WorkDialog::forgetNoticeWhenTyping()
{
    for (const QLineEdit *field : m_rest->findChildren<QLineEdit *>())
        connect(field, &QLineEdit::textEdited, this, [this] { say({}); });
}

void WorkDialog::begin(const QString &words)
{
    say({});
    m_focus = focusWidget();
    m_isWorking = true;
    m_busyWords->setText(words);
    m_busy->show();
    m_busy->setAccessibleName(words);
    m_rest->setEnabled(false);
    m_bar->setEnabled(false);
}

void WorkDialog::end()
{
    m_isWorking = false;
    m_busy->hide();
    m_rest->setEnabled(true);
    m_bar->setEnabled(true);
    if (m_focus)
        m_focus->setFocus();
}

void WorkDialog::keyPressEvent(QKeyEvent *event)
{
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (!isEnter || !m_keepsEnterToFocus)
        QDialog::keyPressEvent(event);
}

void WorkDialog::reject()
{
    if (!m_isWorking)
        QDialog::reject();
}

} // namespace raphe
