#include "app/raphe/pages/PagesPreview.h"

#include <QLabel>
#include <QPainter>
#include <QPixmap>
#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace raphe {

namespace {

constexpr int widest = 900; // pixels of a sheet; a larger one is no easier to judge
constexpr int gap = 14;

} // namespace

PagesPreview::PagesPreview(QWidget *parent) : QScrollArea(parent)
{
    auto *sheets = new QWidget;
    m_column = new QVBoxLayout(sheets);
    m_column->setContentsMargins(gap, gap, gap, gap);
    m_column->setSpacing(gap);
    m_column->addStretch(1);
    setWidget(sheets);
    setWidgetResizable(true);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn); // else its coming would change the width
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setAccessibleName(tr("Preview"));
    setMinimumSize(360, 300);
}

void PagesPreview::show(PrintedPages pages)
{
    m_pages = std::move(pages);
    m_width = 0;
    paintPages();
    verticalScrollBar()->setValue(0);
    QScrollArea::show();
}

void PagesPreview::resizeEvent(QResizeEvent *event)
{
    QScrollArea::resizeEvent(event);
    paintPages();
}

void PagesPreview::paintPages()
{
    const int width = std::min(viewport()->width() - 2 * gap, widest);
    if (width == m_width || width < 100)
        return;
    m_width = width;
    for (QLabel *sheet : m_sheets)
        delete sheet;
    m_sheets.clear();
    const QSizeF millimetres = sheetOf(m_pages.paper, m_pages.orientation).size();
    const double scale = width / millimetres.width();
    const double ratio = devicePixelRatioF();
    for (std::size_t i = 0; i < m_pages.pages.size(); ++i) {
        QPixmap picture((millimetres * scale * ratio).toSize());
        picture.setDevicePixelRatio(ratio);
        picture.fill(Qt::white);
        QPainter painter(&picture);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.scale(scale, scale);
        m_pages.pages[i](painter);
        painter.end();
        auto *sheet = new QLabel;
        sheet->setPixmap(picture);
        sheet->setFrameShape(QFrame::Box);
        sheet->setFixedSize(picture.deviceIndependentSize().toSize() + QSize(2, 2) * sheet->frameWidth());
        sheet->setAccessibleName(tr("Page %1 of %2").arg(i + 1).arg(m_pages.pages.size()));
        m_column->insertWidget(static_cast<int>(i), sheet, 0, Qt::AlignHCenter);
        m_sheets.push_back(sheet);
    }
}

} // namespace raphe
