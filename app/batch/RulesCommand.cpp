// raphe-batch rules: all rules as tables for a clinician's review.
#include "app/batch/Commands.h"
#include "app/batch/PaperSize.h"

#include "app/paint/RuleReviewPages.h"
#include "core/anatomy/AtlasReader.h"

namespace raphe::batch {

Result<Done> writeRules(const std::string &out, const std::string &paper)
{
    const auto size = paperOf(paper);
    if (!size)
        return size.error();
    const auto atlas = readEmbeddedAtlas();
    if (!atlas)
        return atlas.error();
    const auto rules = readEmbeddedSafetyRules(atlas.value());
    if (!rules)
        return rules.error();
    return writePdf(out, ruleReviewPages(size.value(), ruleReview(rules.value(), atlas.value())));
}

} // namespace raphe::batch
