#include "app/raphe/help/HelpView.h"

#include <QEvent>
#include <QScrollBar>
#include <QTextBlock>
#include <QTextDocumentFragment>
#include <QTextTable>

#include <algorithm>

namespace raphe {

namespace {

constexpr double lineHeight = 125; // percent
constexpr double cellPadding = 5;
constexpr double typedShare = 0.9; // letters of one width look larger than others

QColor mixed(const QColor &a, const QColor &b, double shareOfA)
{
    const auto mix = [&](int of, int with) { return static_cast<int>(of * shareOfA + with * (1 - shareOfA)); };
    return {mix(a.red(), b.red()), mix(a.green(), b.green()), mix(a.blue(), b.blue())};
}

void dressTable(QTextTable &table, const QPalette &palette)
{
    QTextTableFormat format = table.format();
    format.setBorder(1);
    format.setBorderStyle(QTextFrameFormat::BorderStyle_Solid);
    format.setBorderBrush(palette.color(QPalette::Mid));
    format.setBorderCollapse(true);
    format.setCellPadding(cellPadding);
    format.setCellSpacing(0);
    format.setTopMargin(6);
    format.setBottomMargin(12);
    format.setWidth(QTextLength(QTextLength::PercentageLength, 100));
    table.setFormat(format);
    for (int column = 0; column < table.columns(); ++column) {
        QTextTableCell cell = table.cellAt(0, column);
        QTextCharFormat head = cell.format();
        head.setBackground(palette.color(QPalette::AlternateBase));
        cell.setFormat(head);
    }
}

// Words that lead on, and keys that are typed.
void dressWords(const QTextBlock &block, const QPalette &palette)
{
    for (auto it = block.begin(); !it.atEnd(); ++it) {
        const QTextFragment fragment = it.fragment();
        const QTextCharFormat is = fragment.charFormat();
        QTextCharFormat format;
        if (is.isAnchor()) {
            format.setForeground(palette.color(QPalette::Highlight));
            format.setFontUnderline(true);
        } else if (is.fontFixedPitch()) {
            format.setBackground(palette.color(QPalette::AlternateBase));
            format.setFontPointSize(typedShare * block.document()->defaultFont().pointSizeF());
        } else {
            continue;
        }
        QTextCursor cursor(block);
        cursor.setPosition(fragment.position());
        cursor.setPosition(fragment.position() + fragment.length(), QTextCursor::KeepAnchor);
        cursor.mergeCharFormat(format);
    }
}

} // namespace

HelpView::HelpView(const HelpPages &pages, QWidget *parent) : QTextBrowser(parent), m_pages(pages), m_page(&pages.pages.front())
{
    setOpenExternalLinks(false);
    setUndoRedoEnabled(false);
    document()->setDocumentMargin(12);
    connect(this, &QTextBrowser::sourceChanged, this, &HelpView::takePage);
}

void HelpView::open(const std::string &id)
{
    setSource(QUrl(QString::fromStdString(id + ".md")), QTextDocument::MarkdownResource);
}

QVariant HelpView::loadResource(int type, const QUrl &name)
{
    const HelpPage *page = linkedFrom(m_pages, name.path().toStdString());
    return page && type == QTextDocument::MarkdownResource ? QVariant(QString::fromStdString(page->text)) : QVariant();
}

void HelpView::changeEvent(QEvent *event)
{
    QTextBrowser::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange) {
        dress(*document(), palette());
        showMarks();
    }
}

// The address comes with the signal: source() is still the one before.
void HelpView::takePage(const QUrl &address)
{
    if (const HelpPage *page = linkedFrom(m_pages, address.path().toStdString()))
        m_page = page;
    setAccessibleName(QString::fromStdString(m_page->title));
    dress(*document(), palette());
    lookFor();
}

void HelpView::dress(QTextDocument &document, const QPalette &palette)
{
    QTextCursor all(&document);
    all.beginEditBlock(); // laid out once
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        QTextCursor cursor(block);
        QTextBlockFormat format;
        format.setLineHeight(lineHeight, QTextBlockFormat::ProportionalHeight);
        if (!cursor.currentTable()) {
            const bool isHeading = block.blockFormat().headingLevel() > 0;
            format.setTopMargin(isHeading && block.position() > 0 ? 14 : 2);
            format.setBottomMargin(block.textList() ? 3 : 6);
        }
        cursor.mergeBlockFormat(format);
        dressWords(block, palette);
    }
    for (QTextFrame *frame : document.rootFrame()->childFrames())
        if (auto *table = qobject_cast<QTextTable *>(frame))
            dressTable(*table, palette);
    all.endEditBlock();
}

void HelpView::mark(const QStringList &words)
{
    m_words = words;
    lookFor();
}

std::vector<HelpView::Stretch> HelpView::placesOf(const QStringList &words, const QString &text)
{
    std::vector<Stretch> all;
    for (const QString &word : words)
        for (qsizetype at = text.indexOf(word, 0, Qt::CaseInsensitive); at >= 0;
             at = text.indexOf(word, at + word.size(), Qt::CaseInsensitive))
            all.push_back({static_cast<int>(at), static_cast<int>(at + word.size())});
    std::sort(all.begin(), all.end(), [](const Stretch &a, const Stretch &b) { return a.from < b.from; });
    std::vector<Stretch> out;
    for (const Stretch &next : all) {
        const bool isBeside = !out.empty()
            && (next.from <= out.back().to || (next.from == out.back().to + 1 && text[out.back().to] == QLatin1Char(' ')));
        if (isBeside)
            out.back().to = std::max(out.back().to, next.to);
        else
            out.push_back(next);
    }
    return out;
}

void HelpView::lookFor()
{
    m_found.clear();
    m_at = -1;
    for (const Stretch &stretch : placesOf(m_words, document()->toPlainText())) {
        QTextCursor cursor(document());
        cursor.setPosition(stretch.from);
        cursor.setPosition(stretch.to, QTextCursor::KeepAnchor);
        m_found.push_back(cursor);
    }
    showMarks();
}

void HelpView::showMarks()
{
    const QColor strong = palette().color(QPalette::Highlight);
    const QColor faint = mixed(strong, palette().color(QPalette::Base), 0.3);
    QList<QTextEdit::ExtraSelection> marks;
    for (std::size_t i = 0; i < m_found.size(); ++i) {
        const bool isHere = static_cast<int>(i) == m_at;
        QTextEdit::ExtraSelection mark;
        mark.cursor = m_found[i];
        mark.format.setBackground(isHere ? strong : faint);
        mark.format.setForeground(palette().color(isHere ? QPalette::HighlightedText : QPalette::Text));
        marks.push_back(mark);
    }
    setExtraSelections(marks);
}

void HelpView::showFound(int at)
{
    if (at < 0 || at >= found())
        return;
    m_at = at;
    QTextCursor here = m_found[static_cast<std::size_t>(at)];
    here.setPosition(here.selectionEnd()); // nothing is selected beside what is marked
    setTextCursor(here);
    ensureCursorVisible();
    showMarks();
}

} // namespace raphe
