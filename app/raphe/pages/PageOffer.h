// A document that the window offers: how its pages are made, and what else it can be written as. Plain values; what the functions
// refer to must outlive them.
#pragma once

#include "app/paint/Paper.h"
#include "core/base/Phrases.h"

#include <QStringList>

#include <functional>
#include <vector>

namespace raphe {

/// How the practitioner wants it. What an offer does not have is not asked.
struct PageChoice {
    Paper paper{};
    Language language{};
    bool isLarge = false;
    bool isGrey = false;
};

/// A file beside the PDF.
struct PageFormat {
    QString filter; // as a file dialog wants it: 'Plain text (*.txt)'
    std::function<Result<Done>(const std::string &file, const PageChoice &choice)> write;
};

struct PageOffer {
    QString name;
    QString about; // for whom it is
    QString file; // proposed, without its ending
    bool hasLanguages = false; // and large print, and greys: what patients read
    std::function<Result<PrintedPages>(const PageChoice &choice)> make;
    std::function<QStringList(const PageChoice &choice)> remarks; // beside the preview; empty: none
    std::vector<PageFormat> formats;
};

} // namespace raphe
