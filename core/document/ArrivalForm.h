// What stands on the form that a patient fills in at home, with a pen. Content only, of texts by id; app/paint draws it. Plain
// values; any thread.
#pragma once

#include "core/base/Result.h"
#include "core/document/PatientTexts.h"

#include <string>
#include <vector>

namespace raphe {

struct FormItem {
    enum class Kind {
        Words, // to be read
        Signs, // options that are read as a list
        Choices, // options with a box each
        Scale, // boxes from 0 to 10
        Table, // rows of text, with a box for each option
        Lines, // room to write
        Figures // front and back of the body, to draw on
    };
    Kind kind{};
    std::string text; // may be empty
    std::vector<std::string> options;
    std::vector<std::string> rows; // of a table
    int lines = 0; // to write on; one of them beside a short text
};

struct FormSection {
    std::string title;
    std::vector<FormItem> items;
    bool startsPage = false;
    bool isUrgent = false; // framed, before everything else
};

struct ArrivalForm {
    std::string title; // of the file
    std::string nameLabel; // for the top of every page
    std::string pageText; // with {page} and {pages}
    // On the figures; the side words stand beside the letters.
    std::string frontTitle, frontWords, backTitle, backWords, left, right, leftLetter, rightLetter;
    std::vector<FormSection> sections;
};

/// Fails when a text is missing.
[[nodiscard]] Result<ArrivalForm> arrivalForm(const PatientTexts &texts);

} // namespace raphe
