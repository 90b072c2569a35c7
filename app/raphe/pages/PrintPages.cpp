#include "app/raphe/pages/PrintPages.h"

#include <QCoreApplication>
#include <QPageSize>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>

#include <algorithm>

namespace raphe {

Result<bool> printThroughDialog(const PrintedPages &document, QWidget *parent)
{
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(document.title);
    printer.setCreator(QStringLiteral("Raphe"));
    printer.setPageSize(pageSize(document.paper));
    printer.setPageOrientation(document.orientation);
    QPrintDialog dialog(&printer, parent);
    dialog.setMinMax(1, static_cast<int>(document.pages.size()));
    if (dialog.exec() != QDialog::Accepted)
        return false;
    printer.setFullPage(true);
    const std::size_t first = printer.fromPage() > 0 ? static_cast<std::size_t>(printer.fromPage()) - 1 : 0;
    const std::size_t last = printer.toPage() > 0 ? std::min(static_cast<std::size_t>(printer.toPage()), document.pages.size())
                                                  : document.pages.size();
    QPainter painter;
    const Error failed{
        ErrorCode::CannotWrite, printer.printerName().toStdString(), "the printer gave up; look at it, and print again"};
    if (!painter.begin(&printer))
        return failed;
    for (std::size_t i = first; i < last; ++i) {
        if (i > first && !printer.newPage())
            return failed;
        painter.save();
        painter.scale(printer.logicalDpiX() / 25.4, printer.logicalDpiY() / 25.4);
        document.pages[i](painter);
        painter.restore();
    }
    if (!painter.end() || printer.printerState() == QPrinter::Error)
        return failed;
    return true;
}

} // namespace raphe
