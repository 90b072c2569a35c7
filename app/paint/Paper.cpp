#include "app/paint/Paper.h"

#include <QBuffer>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

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

Result<Done> writePdf(const std::string &file, Paper paper, QPageLayout::Orientation orientation, const QString &title,
    const std::vector<PagePainter> &pages)
{
    constexpr int dotsPerInch = 1200;
    if (!file.ends_with(".pdf"))
        return Error{ErrorCode::BadArgument, file, "the name must end in .pdf"};
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter pdf(&buffer);
        pdf.setPageSize(pageSize(paper));
        pdf.setPageOrientation(orientation);
        pdf.setPageMargins(QMarginsF(0, 0, 0, 0));
        pdf.setResolution(dotsPerInch);
        pdf.setTitle(title);
        pdf.setCreator(QStringLiteral("Raphe"));
        QPainter painter;
        bool isPainted = painter.begin(&pdf);
        for (std::size_t i = 0; isPainted && i < pages.size(); ++i) {
            isPainted = i == 0 || pdf.newPage();
            painter.save();
            painter.scale(dotsPerInch / 25.4, dotsPerInch / 25.4);
            pages[i](painter);
            painter.restore();
        }
        if (!isPainted || !painter.end())
            return Error{ErrorCode::CannotWrite, file, "the pages could not be painted"};
    }
    return saveAll(file, bytes);
}

} // namespace raphe
