// raphe-batch letter: about the warning signs of a visit, to the licensed clinician who takes over.
#include "app/batch/Commands.h"
#include "app/batch/PaperSize.h"
#include "app/batch/VisitFile.h"

#include "app/paint/ReferralLetterPage.h"
#include "core/anatomy/AtlasReader.h"

namespace raphe::batch {

Result<Done> writeLetter(const std::string &visitFile, const std::string &out, const std::string &paper)
{
    const auto size = paperOf(paper);
    if (!size)
        return size.error();
    const auto atlas = readEmbeddedAtlas();
    if (!atlas)
        return atlas.error();
    const auto visit = readVisitFile(visitFile, atlas.value());
    if (!visit)
        return visit.error();
    const auto rules = readEmbeddedSafetyRules(atlas.value());
    if (!rules)
        return rules.error();
    const auto letter = referralLetter(rules.value(), atlas.value(), visit.value(), visitFile);
    if (!letter)
        return letter.error();
    return writeReferralLetter(out, size.value(), letter.value());
}

} // namespace raphe::batch
