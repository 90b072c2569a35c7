#include "app/raphe/examination/PedalsDialog.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QVBoxLayout>

namespace raphe {

namespace {

constexpr Pedal both[] = {Pedal::Clear, Pedal::Sore};

bool isForTheDialog(int key)
{
    return key == Qt::Key_Tab || key == Qt::Key_Backtab || key == Qt::Key_Escape;
}

} // namespace

PedalsDialog::PedalsDialog(Settings &settings, QWidget *parent)
    : QDialog(parent), m_settings(settings), m_message(hint()), m_save(pushButton(tr("Save")))
{
    setWindowTitle(tr("Pedals"));
    setMinimumWidth(400);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    column->setSpacing(10);
    column->addWidget(hint(tr("Choose a field and press its pedal, or a key of the keyboard.")));
    const QString names[] = {tr("Clear pedal"), tr("Sore pedal")};
    for (std::size_t i = 0; i < 2; ++i) {
        m_keys[i] = settings.pedalKey(both[i]);
        m_fields[i] = new QPushButton;
        m_fields[i]->setAutoDefault(false);
        m_fields[i]->installEventFilter(this);
        column->addLayout(labelled(names[i], m_fields[i]));
    }
    column->addWidget(m_message);
    m_touches = new QCheckBox(tr("Touching the treatment screen moves on too"));
    m_touches->setMinimumHeight(touchTarget);
    m_touches->setChecked(settings.touches());
    column->addWidget(m_touches);
    auto *row = new QHBoxLayout;
    row->addStretch(1);
    QPushButton *leave = pushButton(tr("Leave"));
    leave->setAutoDefault(false);
    m_save->setAutoDefault(false);
    connect(leave, &QPushButton::clicked, this, &PedalsDialog::reject);
    connect(m_save, &QPushButton::clicked, this, &PedalsDialog::accept);
    row->addWidget(leave);
    row->addWidget(m_save);
    column->addLayout(row);
    tell();
    m_fields[0]->setFocus();
}

bool PedalsDialog::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() != QEvent::KeyPress)
        return QDialog::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent *>(event)->key();
    if (isForTheDialog(key))
        return QDialog::eventFilter(watched, event);
    for (std::size_t i = 0; i < 2; ++i)
        if (watched == m_fields[i])
            m_keys[i] = key;
    tell();
    return true;
}

void PedalsDialog::tell()
{
    for (std::size_t i = 0; i < 2; ++i)
        m_fields[i]->setText(QKeySequence(m_keys[i]).toString(QKeySequence::NativeText));
    const bool isSame = m_keys[0] == m_keys[1];
    m_message->say(isSame ? tr("Both pedals send the same key. Press another one.") : QString());
    m_save->setEnabled(!isSame);
}

void PedalsDialog::accept()
{
    for (std::size_t i = 0; i < 2; ++i)
        m_settings.setPedalKey(both[i], m_keys[i]);
    m_settings.setTouches(m_touches->isChecked());
    QDialog::accept();
}

} // namespace raphe
