#include "app/raphe/WrappedLabel.h"

#include <QEvent>
#include <QResizeEvent>

#include <algorithm>

namespace raphe {

WrappedLabel::WrappedLabel(const QString &text, QWidget *parent) : QLabel(text, parent)
{
    setWordWrap(true);
}

void WrappedLabel::say(const QString &text)
{
    setText(text);
    fit();
}

bool WrappedLabel::event(QEvent *event)
{
    const bool done = QLabel::event(event);
    if (event->type() == QEvent::Polish || event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange)
        fit();
    return done;
}

void WrappedLabel::resizeEvent(QResizeEvent *event)
{
    QLabel::resizeEvent(event);
    m_isPlaced = event->size().width() > 0; // a splitter gives nothing to what it has not shown yet
    fit();
}

void WrappedLabel::fit()
{
    QSizePolicy policy = sizePolicy();
    policy.setHeightForWidth(false); // QLabel turns it on again with every text
    setSizePolicy(policy);
    setMinimumHeight(0); // else QLabel never asks for less than before
    // Until it is placed it is as wide as nothing: the height for that would make the window grow for good.
    setFixedHeight(std::max(0, QLabel::heightForWidth(m_isPlaced ? width() : QLabel::sizeHint().width())));
}

} // namespace raphe
