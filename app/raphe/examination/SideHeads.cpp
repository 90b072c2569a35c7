#include "app/raphe/examination/SideHeads.h"

#include "app/raphe/practice/FormParts.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>

namespace raphe {

SideHeads::SideHeads() : m_right(heading(tr("RIGHT"))), m_left(heading(tr("LEFT")))
{
    for (QLabel *label : {m_right, m_left})
        label->setParent(this);
    setFixedHeight(m_right->sizeHint().height());
}

void SideHeads::follow(QGridLayout &grid, QWidget &page)
{
    m_grid = &grid;
    m_page = &page;
    page.installEventFilter(this);
    connect(&page, &QObject::destroyed, this, [this, gone = &page] {
        if (m_page == gone)
            m_page = nullptr;
    });
    place();
}

void SideHeads::place()
{
    if (!m_page)
        return;
    m_page->layout()->activate(); // else the cells stand where they were
    const int row = m_grid->rowCount() - 1; // any: columns are as wide in all
    const auto put = [&](QLabel *label, int column) {
        const QPoint at = m_page->mapToGlobal(QPoint(m_grid->cellRect(row, column).x(), 0));
        label->setGeometry(QRect(QPoint(mapFromGlobal(at).x(), 0), label->sizeHint()));
    };
    put(m_right, 1);
    put(m_left, 2);
}

void SideHeads::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    place();
}

bool SideHeads::eventFilter(QObject *watched, QEvent *event)
{
    const bool done = QWidget::eventFilter(watched, event);
    if (event->type() == QEvent::Resize || event->type() == QEvent::Show || event->type() == QEvent::LayoutRequest)
        QMetaObject::invokeMethod(this, &SideHeads::place, Qt::QueuedConnection); // once the page is laid out
    return done;
}

} // namespace raphe
