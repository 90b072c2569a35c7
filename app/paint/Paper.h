// The paper that documents are printed on, and how a PDF gets onto the disk. Sizes in millimetres. A file is written beside and
// moved into place, so that a full disk leaves an older one as it was.
#pragma once

#include "core/base/Result.h"
#include "core/base/Words.h"

#include <QPageLayout>
#include <QRectF>
#include <QString>

#include <functional>
#include <string>
#include <vector>

class QByteArray;
class QPainter;

namespace raphe {

enum class Paper { A4, Letter };
inline constexpr WordTable<Paper, 2> paperWords{{{Paper::A4, "a4"}, {Paper::Letter, "letter"}}};

[[nodiscard]] QPageSize pageSize(Paper paper);
/// The whole sheet, from (0, 0).
[[nodiscard]] QRectF sheetOf(Paper paper, QPageLayout::Orientation orientation = QPageLayout::Portrait);

[[nodiscard]] Result<Done> saveAll(const std::string &file, const QByteArray &bytes);

/// Paints one page; the painter's units are millimetres of the sheet.
using PagePainter = std::function<void(QPainter &)>;

/// A document ready for a file, a printer or a preview. What the painters refer to must outlive them.
struct PrintedPages {
    Paper paper{};
    QPageLayout::Orientation orientation = QPageLayout::Portrait;
    QString title;
    std::vector<PagePainter> pages;
};

/// The name must end in .pdf.
[[nodiscard]] Result<Done> writePdf(const std::string &file, const PrintedPages &document);
/// Format by the ending of the name: .pdf, .svg or .png (150 dpi; pages stand below one another). Written beside and moved into
/// place, so that a full disk leaves an older file as it was.
[[nodiscard]] Result<Done> writePages(const std::string &file, const PrintedPages &document);

} // namespace raphe
