#include "app/paint/ClinicalNotePages.h"

#include "app/paint/NoteSheets.h"

namespace raphe {

PrintedPages clinicalNotePages(Paper paper, const ClinicalNote &note)
{
    NoteSheets sheets(paper, QString::fromStdString(note.title), QString::fromStdString(note.limits));
    sheets.add(note);
    return sheets.take();
}

} // namespace raphe
