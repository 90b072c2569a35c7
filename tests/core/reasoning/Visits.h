// Visits for the reasoning tests: short ways to write one, and seeded random ones over the whole atlas.
#pragma once

#include "tests/support/Cases.h"
#include "tests/support/Content.h"

#include "core/record/Visit.h"

#include <algorithm>
#include <random>
#include <string>
#include <vector>

namespace raphe::test {

inline Finding tender(const std::string &structure, Side side, int grade)
{
    Finding f;
    f.place = {{structure}, side};
    f.tenderness = Tenderness{grade};
    return f;
}

inline Finding stiff(const std::string &structure, Side side, int grade)
{
    Finding f;
    f.place = {{structure}, side};
    f.restriction = Restriction{grade};
    return f;
}

inline Finding clearOf(const Place &place)
{
    Finding f;
    f.place = place;
    f.clear = {true, true};
    return f;
}

inline Visit visitOf(std::vector<Finding> findings)
{
    Visit visit;
    visit.findings = std::move(findings);
    return visit;
}

/// Lift at every node for these findings, by the solver alone.
inline std::vector<double> liftOf(const std::vector<Finding> &findings)
{
    static const WalkSolver solver(linkage().graph(), constants()["restart"], linkage().mirror());
    const auto clear = clearNodes(linkage(), findings);
    return solver.lift(startOf(linkage(), findings, constants()), {clear.begin(), clear.end()});
}

/// All places at which hands can find something.
inline const std::vector<Place> &examinablePlaces()
{
    static const std::vector<Place> all = [] {
        std::vector<Place> places;
        for (const Structure &s : atlas().structures())
            if (s.kind != Kind::Nerve && s.kind != Kind::Bone)
                for (const Side side : atlas().sides(s))
                    places.push_back({s.id, side});
        return places;
    }();
    return all;
}

class RandomVisits {
public:
    explicit RandomVisits(unsigned seed) : m_engine(seed) { }

    /// One to eight findings at different places; about one visit in five is its own mirror image.
    Visit next()
    {
        Visit visit;
        const int count = 1 + below(8);
        for (int i = 0; i < count; ++i) {
            const Place place = examinablePlaces()[static_cast<std::size_t>(below(static_cast<int>(examinablePlaces().size())))];
            const bool seen =
                std::any_of(visit.findings.begin(), visit.findings.end(), [&](const Finding &f) { return f.place == place; });
            if (!seen)
                visit.findings.push_back(findingAt(place));
        }
        if (below(5) == 0)
            addMirrorImages(visit);
        return visit;
    }

    int below(int limit) { return static_cast<int>(m_engine() % static_cast<unsigned>(limit)); } // the same on every platform

private:
    Finding findingAt(const Place &place)
    {
        Finding f;
        f.place = place;
        switch (below(6)) {
        case 0: f.clear = {true, true}; break;
        case 1: f.clear = {false, true}; break;
        case 2: f.unable = "dressing"; break;
        default:
            if (below(4) > 0)
                f.tenderness = Tenderness{1 + below(Tenderness::highest)};
            if (below(2) > 0)
                f.restriction = Restriction{1 + below(Restriction::highest)};
            f.familiar = below(3) == 0;
            f.clear.motion = !f.restriction && f.tenderness && below(4) == 0;
            break;
        }
        return f;
    }

    static void addMirrorImages(Visit &visit)
    {
        std::vector<Finding> images;
        for (const Finding &f : visit.findings) {
            const Finding image = mirrored(f);
            const auto at = [&](const Finding &other) { return other.place == image.place; };
            if (f.place.side != Side::Midline && std::none_of(visit.findings.begin(), visit.findings.end(), at))
                images.push_back(image);
        }
        visit.findings.insert(visit.findings.end(), images.begin(), images.end());
    }

    std::mt19937 m_engine;
};

} // namespace raphe::test
