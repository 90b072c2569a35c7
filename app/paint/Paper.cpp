#include "app/paint/Paper.h"

#include <QBuffer>
#include <QImage>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QSvgGenerator>

namespace raphe {

QPageSize pageSize(Paper paper)
{
    return QPageSize(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter);
}

QRectF sheetOf(Paper paper, QPageLayout::Orientation orientation)
{
    const QSizeF upright = pageSize(paper).size(QPageSize::Millimeter);
    return {QPointF(0, 0), orientation == QPageLayout::Portrait ? upright : upright.transposed()};
}

Result<Done> saveAll(const std::string &file, const QByteArray &bytes)
{
    QSaveFile out(QString::fromStdString(file));
    if (!out.open(QIODevice::WriteOnly))
        return Error{ErrorCode::CannotWrite, file, out.errorString().toStdString()};
    if (out.write(bytes) != bytes.size()) {
        const auto reason = out.errorString().toStdString();
        out.cancelWriting();
        return Error{ErrorCode::CannotWrite, file, reason};
    }
    if (!out.commit())
        return Error{ErrorCode::CannotWrite, file, out.errorString().toStdString()};
    return Done{};
}

Result<Done> writePdf(const std::string &file, const PrintedPages &document)
{
    constexpr int dotsPerInch = 1200;
    if (!file.ends_with(".pdf"))
        return Error{ErrorCode::BadArgument, file, "the name must end in .pdf"};
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter pdf(&buffer);
        pdf.setPageSize(pageSize(document.paper));
        pdf.setPageOrientation(document.orientation);
        pdf.setPageMargins(QMarginsF(0, 0, 0, 0));
        pdf.setResolution(dotsPerInch);
        pdf.setTitle(document.title);
        pdf.setCreator(QStringLiteral("Raphe"));
        QPainter painter;
        bool isPainted = painter.begin(&pdf);
        for (std::size_t i = 0; isPainted && i < document.pages.size(); ++i) {
            isPainted = i == 0 || pdf.newPage();
            painter.save();
            painter.scale(dotsPerInch / 25.4, dotsPerInch / 25.4);
            document.pages[i](painter);
            painter.restore();
        }
        if (!isPainted || !painter.end())
            return Error{ErrorCode::CannotWrite, file, "the pages could not be painted"};
    }
    return saveAll(file, bytes);
}

namespace {

constexpr double imageDots = 150; // per inch

} // namespace

Result<Done> writePages(const std::string &file, const PrintedPages &document)
{
    if (file.ends_with(".pdf"))
        return writePdf(file, document);
    const QSizeF sheet = sheetOf(document.paper, document.orientation).size();
    const QSizeF all(sheet.width(), sheet.height() * static_cast<double>(document.pages.size()));
    const auto paint = [&](QPaintDevice *device, double unitsPerMillimetre) {
        QPainter painter;
        if (!painter.begin(device))
            return false;
        painter.scale(unitsPerMillimetre, unitsPerMillimetre);
        for (const PagePainter &page : document.pages) {
            painter.save();
            page(painter);
            painter.restore();
            painter.translate(0, sheet.height());
        }
        return painter.end();
    };
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    bool isPainted = false;
    if (file.ends_with(".svg")) {
        QSvgGenerator svg;
        svg.setOutputDevice(&buffer);
        svg.setResolution(254); // ten units a millimetre
        svg.setSize((all * 10).toSize());
        svg.setViewBox(QRectF(0, 0, all.width() * 10, all.height() * 10));
        svg.setTitle(document.title);
        isPainted = paint(&svg, 10);
    } else if (file.ends_with(".png")) {
        QImage image((all * (imageDots / 25.4)).toSize(), QImage::Format_ARGB32_Premultiplied);
        image.fill(Qt::white);
        isPainted = paint(&image, imageDots / 25.4) && image.save(&buffer, "PNG");
    } else {
        return Error{ErrorCode::BadArgument, file, "the name must end in .pdf, .svg or .png"};
    }
    if (!isPainted)
        return Error{ErrorCode::CannotWrite, file, "the page could not be painted"};
    return saveAll(file, bytes);
}

} // namespace raphe
