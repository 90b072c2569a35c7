// The paper that documents are printed on, and how a PDF gets onto the disk. Sizes in millimetres. A file is written beside and
// moved into place, so that a full disk leaves an older one as it was.
#pragma once

#include "core/base/Result.h"
#include "core/base/Words.h"

#include <QPageLayout>
#include <QRectF>

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

/// A page for each painter. The name must end in .pdf.
[[nodiscard]] Result<Done> writePdf(const std::string &file, Paper paper, QPageLayout::Orientation orientation,
    const QString &title, const std::vector<PagePainter> &pages);

} // namespace raphe
