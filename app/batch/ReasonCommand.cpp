// raphe-batch reason: what a visit is tied to, what would explain it, what to check, to treat and to leave alone
// (resources/schema/reason.schema.json).
#include "app/batch/Commands.h"

#include "app/batch/Output.h"
#include "app/batch/VisitFile.h"
#include "core/plan/Advice.h"
#include "core/reasoning/ReasonWords.h"
#include "core/safety/Warnings.h"

#include <QCoreApplication>

#include <iostream>

namespace raphe::batch {

namespace {

Json listJson(const std::vector<Suggestion> &list)
{
    Json out = Json::array();
    for (const Suggestion &s : list) {
        Json terms = Json::array();
        for (const Term &term : s.terms) {
            terms.push_back({{"name", term.name}, {"value", term.value}});
            if (term.at)
                terms.back().update(placeJson(*term.at));
        }
        Json path = Json::array();
        for (const PathStep &step : s.path)
            path.push_back({{"from", placeJson(step.from)}, {"to", placeJson(step.to)}, {"link", wordOf(linkWords, step.link)},
                {"evidence", wordOf(gradeWords, step.evidence)}, {"sources", step.sources},
                {"basis", wordOf(basisWords, step.basis)}});
        Json entry = placeJson(s.place);
        entry["score"] = s.score;
        entry["rank"] = s.rank;
        entry["terms"] = std::move(terms);
        entry["why"] = s.why;
        entry["path"] = std::move(path);
        if (s.position)
            entry["position"] = wordOf(positionWords, *s.position);
        if (!s.cautions.empty())
            entry["cautions"] = verdictsJson(s.cautions);
        out.push_back(std::move(entry));
    }
    return out;
}

} // namespace

Result<Done> printReasons(const std::string &visitFile)
{
    const auto read = readAdvisedVisit(visitFile);
    if (!read)
        return read.error();
    const auto &[known, adviser] = read.value();
    const auto &[knowledge, visit] = known;
    const auto advised = adviser.advise(visit, visitFile);
    if (!advised)
        return advised.error();
    Advice advice = advised.value();
    for (auto *list : {&advice.reasons.tied, &advice.reasons.explain, &advice.reasons.check, &advice.treatment.treat})
        for (Suggestion &s : *list) // only the first rows bring their path along
            if (s.path.empty())
                if (auto ways = adviser.reasoner().ways(visit, s.place, 1); !ways.empty())
                    s.path = std::move(ways.front());
    for (Suggestion &s : advice.reasons.tied) // its reason is its path; only what was found alone has none
        s.why = s.path.empty()
            ? QCoreApplication::translate("Reason", "Found here; there is no other finding to be tied to.").toStdString()
            : linkedInWords(*knowledge.atlas, s.path);
    const WarningSigns &signs = adviser.rules().signs();
    Json toAsk = Json::array(); // what is not answered is not 'no'
    for (const WarningSign *sign : dueSigns(signs, askedOf(signs, *knowledge.regions, visit), visit.warnings, visit.date))
        toAsk.push_back(sign->id);
    const Json out{{"tied", listJson(advice.reasons.tied)}, {"explain", listJson(advice.reasons.explain)},
        {"unexplained", advice.reasons.unexplained}, {"check", listJson(advice.reasons.check)},
        {"treat", listJson(advice.treatment.treat)}, {"leave", listJson(advice.treatment.leave)},
        {"cautions", verdictsJson(advice.general)}, {"warnings_to_ask", std::move(toAsk)}};
    std::cout << out.dump(1) << '\n';
    return Done{};
}

} // namespace raphe::batch
