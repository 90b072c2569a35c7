// A page of the help: shows Markdown in the colours of the palette and the program's type, follows links from page to page, and
// marks the words that were looked for. Keeps a reference to the pages, which must outlive it.
#pragma once

#include "core/document/HelpPages.h"

#include <QTextBrowser>

#include <vector>

namespace raphe {

class HelpView : public QTextBrowser {
    Q_OBJECT

public:
    explicit HelpView(const HelpPages &pages, QWidget *parent = nullptr);

    /// A page of this id must be there.
    void open(const std::string &id);
    /// The page that is shown.
    [[nodiscard]] const HelpPage &page() const { return *m_page; }

    /// A stretch of a text, from a position to the one after its end.
    struct Stretch {
        int from = 0;
        int to = 0;
    };
    /// Where the words stand in a text, in whatever case and in its order; words side by side are one stretch.
    [[nodiscard]] static std::vector<Stretch> placesOf(const QStringList &words, const QString &text);
    /// Marks the words wherever they stand, on later pages too; none: nothing is marked.
    void mark(const QStringList &words);
    [[nodiscard]] int found() const { return static_cast<int>(m_found.size()); }
    /// Number of the place that is shown, from 0; -1: none.
    [[nodiscard]] int foundAt() const { return m_at; }
    void showFound(int at);

    /// Links and headings in the colours of this palette, tables with lines; for a document that is not on a screen as well.
    static void dress(QTextDocument &document, const QPalette &palette);

protected:
    QVariant loadResource(int type, const QUrl &name) override;
    void changeEvent(QEvent *event) override;

private:
    void takePage(const QUrl &address);
    void lookFor();
    void showMarks();

    const HelpPages &m_pages;
    const HelpPage *m_page;
    QStringList m_words;
    std::vector<QTextCursor> m_found; // in the order of the page
    int m_at = -1;
};

} // namespace raphe
