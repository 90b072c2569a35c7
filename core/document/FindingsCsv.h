// Findings of visits as a table (CSV) for analysis with other programs. One row is one quality of one finding, measure, test or
// scale. Content only; nothing is written to disk here. Plain functions of plain values; any thread.
//
// The table is as RFC 4180 says: a comma between cells, CRLF at the end of every row, a header row; a cell with a comma, a quote
// or a line break stands in double quotes, quotes inside are doubled. UTF-8, no byte order mark.
//
// A spreadsheet takes a cell that begins with = + - @ for a formula, and drops a tab or line break before it. So a text that
// begins with one of = + - @, tab, CR or LF gets an apostrophe before it; so does one that begins with apostrophes and then one
// of these. Whoever reads the table with a program takes one apostrophe away where one of these follows the apostrophes at the
// beginning, and has each text as it was. Numbers are never changed: -5 stays -5. A spreadsheet that takes another separator for
// granted cuts the rows elsewhere: open the table as comma separated.
//
// Notes, reasons and the names of activities are in the words of patient and practitioner and can name people: a number in the
// place of the patient's name does not make the table anonymous. Deidentified.h takes the words away first.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/examination/Examination.h"
#include "core/record/Visit.h"

#include <string>
#include <string_view>
#include <vector>

namespace raphe {

/// A visit of the table, and whose it is, as the rows shall say it: a number or another word, at best not the name.
struct ListedVisit {
    std::string patient;
    Visit visit;
};

/// The columns, in their order.
///   patient, visit (1 for the first in the list), visit_date (ISO 8601)
///   when: 'before' or 'retest', of the same visit
///   kind: 'finding', 'measure', 'test' or 'scale'
///   id, name: of the structure, movement or test; of scales 'pain-now', 'pain-worst', 'pain-best' (numeric rating, 0-10) and
///     'activity' (Patient-Specific Functional Scale, 0-10, its name in the patient's words)
///   complaint: which one a scale is of, from 1
///   side: left, right or midline; spot, at: where on the structure
///   quality: of a finding tenderness, restriction, play, end_feel, texture, refers_to, familiar, note, unable; of a measure
///     range ('watched' where nothing was measured), pain_from, pain, familiar; of a test pain, changes, grade, present, unable,
///     or the name of a vital sign; of a scale score
///   value: a number, empty where there is none; answer: what was said in words ('sore' and 'stiff': without a grade)
///   scale: the lowest and highest number, as '0-4'; unit: degrees, mm or that of the vital sign
///   mode, device: of a measure; familiar, certain, after_comparing, clear: 'yes' or empty
///   to, to_side: the place where it is felt as well, of refers_to
///   unable: why it could not be examined; note
/// A quality that was checked and clear has its row, with the answer 'clear' where it has no grade. Familiar and note stand in
/// all rows of the finding or measure, and have one of their own where nothing else was said.
[[nodiscard]] const std::vector<std::string_view> &findingsCsvColumns();

/// The pain drawing, conditions, warning signs and treatment are not in the table. A movement or test that is not known has its
/// id for a name. The mirrored visit has the same rows with sides swapped.
[[nodiscard]] std::string findingsCsv(const std::vector<ListedVisit> &visits, const Atlas &atlas, const Examination &examination);

} // namespace raphe
