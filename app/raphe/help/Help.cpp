#include "app/raphe/help/Help.h"

#include "app/raphe/Settings.h"
#include "app/raphe/help/HelpTopics.h"
#include "app/raphe/help/HelpWindow.h"
#include "app/words/ErrorText.h"

#include <QApplication>
#include <QKeyEvent>

namespace raphe {

namespace {

// A pedal may send any key, this one too.
bool isHelpKey(const QKeyEvent &key)
{
    const Settings settings;
    return key.key() == Qt::Key_F1 && key.modifiers() == Qt::NoModifier && settings.pedalKey(Pedal::Clear) != Qt::Key_F1
        && settings.pedalKey(Pedal::Sore) != Qt::Key_F1;
}

} // namespace

Help::Help(QObject *parent) : QObject(parent), m_pages(readEmbeddedHelpPages())
{
    qApp->installEventFilter(this);
}

Help::~Help()
{
    delete m_window; // it shows our pages
}

void Help::openAt(const QString &topic, QWidget &beside)
{
    if (isScreenTaken())
        return;
    if (!m_pages) {
        Q_EMIT failed(errorText(m_pages.error()));
        return;
    }
    if (m_window && m_window->parentWidget() != &beside)
        delete m_window;
    if (!m_window) {
        m_window = new HelpWindow(m_pages.value(), &beside);
        connect(m_window, &HelpWindow::lockWanted, this, &Help::lockWanted);
    }
    m_window->openAt(topic);
}

HelpWindow *Help::window() const
{
    return m_window;
}

void Help::close()
{
    delete m_window;
}

// The window's own key is a shortcut of it, and rests while a dialog is open.
bool Help::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() != QEvent::KeyPress || !isHelpKey(*static_cast<QKeyEvent *>(event)))
        return QObject::eventFilter(watched, event);
    const auto *widget = qobject_cast<QWidget *>(watched);
    QWidget *dialog = QApplication::activeModalWidget();
    if (!widget || !dialog || widget->window() != dialog)
        return QObject::eventFilter(watched, event);
    const auto topic = topicOfDialog(*dialog);
    if (!topic)
        return QObject::eventFilter(watched, event);
    openAt(*topic, *dialog);
    return true;
}

} // namespace raphe
