#include "app/paint/RecordsRequestPages.h"

#include "app/paint/NoteSheets.h"

namespace raphe {

PrintedPages recordsRequestPages(Paper paper, const RecordsRequest &request)
{
    const QString title = QString::fromStdString(request.title);
    const SheetHead head{title, sheetOwner(request.patient, request.born), {}};
    NoteSheets sheets(paper, title, QString::fromStdString(request.limits));
    sheets.add(head, [&](NoteBlocks &blocks) {
        blocks.title(title);
        blocks.lines(request.heads);
        blocks.gap(4);
        for (const std::string &words : request.words)
            blocks.paragraph(QString::fromStdString(words));
        blocks.part(request.contents);
    });
    sheets.add(head, [&](NoteBlocks &blocks) { blocks.part(request.record); });
    for (const ClinicalNote &note : request.notes)
        sheets.add(note);
    if (!request.accesses.sections.empty())
        sheets.add(head, [&](NoteBlocks &blocks) { blocks.part(request.accesses); });
    return sheets.take();
}

} // namespace raphe
