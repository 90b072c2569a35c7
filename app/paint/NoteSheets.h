// Pages of written records: labelled lines in two columns under the headings of their parts, with whose record it is, of which
// visit and in what state at the head of every page. Several documents may follow one another with one count of pages. Used by
// one thread; what it makes is plain.
#pragma once

#include "app/paint/Flow.h"
#include "core/document/ClinicalNote.h"

#include <functional>
#include <memory>
#include <vector>

namespace raphe {

/// What follows one another down the pages of one document.
class NoteBlocks {
public:
    /// The room for blocks on a page, in millimetres.
    explicit NoteBlocks(const QSizeF &room) : m_room(room) { }

    void gap(double height) { m_blocks.push_back({height, {}}); } // mm
    void title(const QString &words);
    void paragraph(const QString &words);
    void lines(const std::vector<NoteLine> &lines);
    /// Where the part goes on on another page its title stands there again.
    void part(const NotePart &part);
    [[nodiscard]] std::vector<Block> take() { return std::move(m_blocks); }

private:
    using Head = std::shared_ptr<const Block>;

    void line(const NoteLine &line, const Head &head);

    QSizeF m_room;
    std::vector<Block> m_blocks;
};

/// What stands at the head of every page of a document.
struct SheetHead {
    QString title;
    QString who;
    QString state; // in big words; may be empty
};

class NoteSheets {
public:
    /// `limits` stands at the foot of every page.
    NoteSheets(Paper paper, const QString &title, QString limits);

    /// Begins on a page of its own.
    void add(const SheetHead &head, const std::function<void(NoteBlocks &)> &fill);
    void add(const ClinicalNote &note);
    [[nodiscard]] PrintedPages take();

private:
    Paper m_paper;
    QString m_limits;
    PrintedPages m_pages;
    std::shared_ptr<int> m_count; // of all pages, known in the end
};

/// Whose record: name and birth date, with the visit's date where there is one. Very long names are cut; they stand in full under
/// the title.
[[nodiscard]] QString sheetOwner(const std::string &name, const std::string &born, const std::string &visitDate = {});

} // namespace raphe
