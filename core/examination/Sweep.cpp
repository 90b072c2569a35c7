#include "core/examination/Sweep.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <cmath>
#include <map>

namespace raphe {

namespace {

constexpr double least = 0.02; // of a step, for what only just reaches into it

using Marks = std::vector<std::optional<int>>;

QString rounded(Millimetres length)
{
    return QString::number(std::lround(length.value));
}

// All that the steps of one structure say.
struct Felt {
    int worst = 0;
    bool isWhole = true; // every step was felt
};

// The heads and fascicles of one structure that meet or overlap are one stretch.
std::vector<Stretch> joined(const std::vector<Stretch> &stretches)
{
    std::vector<Stretch> out; // by their start, as given
    for (const Stretch &stretch : stretches) {
        const auto before = std::find_if(out.begin(), out.end(), [&](const Stretch &s) {
            return s.structure == stretch.structure && s.origin == stretch.origin && stretch.along.from <= s.along.to;
        });
        if (before == out.end())
            out.push_back(stretch);
        else
            before->along.to = std::max(before->along.to, stretch.along.to);
    }
    return out;
}

} // namespace

std::optional<Sweep> sweepOf(const Atlas &atlas, const Place &place, Millimetres stature)
{
    auto edge = edgeOf(atlas, place.structure);
    if (!edge)
        return std::nullopt;
    edge->stretches = joined(edge->stretches);
    const Millimetres length = lengthOf(edge->border, 0, 1, stature);
    const int count = stepsOver(length);
    Sweep out{place, std::move(*edge), length, {}, {}};
    for (const Stretch &stretch : out.edge.stretches)
        if (!atlas.at(stretch.structure).paired)
            out.midline.push_back(stretch.structure);
    const double step = 1.0 / count; // of the edge
    for (int i = 0; i < count; ++i) {
        const double from = i * step;
        const double to = from + step;
        SweepStep one{{from * length.value}, {to * length.value}, {}};
        for (std::size_t s = 0; s < out.edge.stretches.size(); ++s) {
            const Along &along = out.edge.stretches[s].along;
            if (std::min(along.to, to) - std::max(along.from, from) > least * step)
                one.stretches.push_back(s);
        }
        out.steps.push_back(std::move(one));
    }
    return out;
}

namespace {

// The sore ones of the steps that `counts` lets through.
template <class F> std::string whereSoreAmong(const Sweep &sweep, const Marks &marks, F counts)
{
    const auto isSore = [&](std::size_t i) { return marks[i].value_or(0) > 0 && counts(sweep.steps[i]); };
    const std::size_t count = std::min(marks.size(), sweep.steps.size());
    QStringList parts;
    for (std::size_t i = 0; i < count; ++i) {
        if (!isSore(i))
            continue;
        std::size_t last = i;
        while (last + 1 < count && isSore(last + 1))
            ++last;
        parts << QStringLiteral("%1-%2").arg(rounded(sweep.steps[i].from), rounded(sweep.steps[last].to));
        i = last;
    }
    if (parts.isEmpty())
        return {};
    //: %1: stretches in mm, as 75-125; %2: an end of the edge
    return QCoreApplication::translate("Sweep", "tender at %1 mm from the %2")
        .arg(parts.join(QStringLiteral(", ")), QString::fromStdString(sweep.edge.border.from))
        .toStdString();
}

} // namespace

std::string whereSore(const Sweep &sweep, const Marks &marks)
{
    return whereSoreAmong(sweep, marks, [](const SweepStep &) { return true; });
}

std::vector<Finding> findingsOf(const Sweep &sweep, const Marks &given)
{
    Marks marks = given;
    marks.resize(sweep.steps.size()); // a step without a mark was not felt
    std::map<std::pair<StructureId, bool>, Felt> felt; // by structure, and whether it begins here
    int ofEdge = 0;
    const bool isMidline = sweep.place.side == Side::Midline;
    for (std::size_t i = 0; i < marks.size(); ++i) {
        const SweepStep &step = sweep.steps[i];
        for (const std::size_t s : step.stretches) {
            Felt &one = felt[{sweep.edge.stretches[s].structure, sweep.edge.stretches[s].origin}];
            one.worst = std::max(one.worst, marks[i].value_or(0));
            one.isWhole = one.isWhole && marks[i];
        }
        if (step.stretches.empty() || isMidline)
            ofEdge = std::max(ofEdge, marks[i].value_or(0));
    }
    std::vector<Finding> out;
    const auto add = [&](Finding finding, int worst, auto isOfIt) {
        if (worst > 0) {
            finding.tenderness = Tenderness{worst};
            finding.note = whereSoreAmong(sweep, marks, isOfIt);
        } else {
            finding.clear.tenderness = true;
        }
        out.push_back(std::move(finding));
    };
    if (!isMidline)
        for (const auto &[key, one] : felt) {
            const auto &what = key;
            if (one.worst == 0 && !one.isWhole)
                continue;
            Finding finding;
            finding.place = {what.first, sweep.isMidline(what.first) ? Side::Midline : sweep.place.side};
            finding.spot = what.second ? Spot::Origin : Spot::Insertion;
            finding.at = sweep.place.structure;
            add(std::move(finding), one.worst, [&](const SweepStep &step) {
                return std::any_of(step.stretches.begin(), step.stretches.end(), [&](std::size_t at) {
                    const Stretch &stretch = sweep.edge.stretches[at];
                    return std::pair(stretch.structure, stretch.origin) == what;
                });
            });
        }
    const bool isAllClear =
        !marks.empty() && std::all_of(marks.begin(), marks.end(), [](const std::optional<int> &mark) { return mark == 0; });
    if (ofEdge > 0 || isAllClear) {
        Finding finding;
        finding.place = sweep.place;
        add(std::move(finding), ofEdge, [&](const SweepStep &step) { return isMidline || step.stretches.empty(); });
    }
    return out;
}

} // namespace raphe
