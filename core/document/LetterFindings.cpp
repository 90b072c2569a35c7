#include "core/document/LetterFindings.h"

#include "core/document/FindingWords.h"
#include "core/document/LetterWords.h"
#include "core/examination/ComparingWords.h"
#include "core/examination/RecordWords.h"
#include "core/safety/Under.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace raphe {

namespace {

constexpr std::size_t mostFindings = 8;
constexpr std::size_t mostMovements = 8;
constexpr std::size_t mostTests = 8;
constexpr std::size_t mostNames = 10; // in one line
constexpr double lostFrom = 2; // standard deviations

QString tr(const char *text)
{
    return QCoreApplication::translate("LetterFindings", text);
}

QString q(const std::string &text)
{
    return QString::fromStdString(text);
}

int weightOf(const Finding &f)
{
    constexpr int known = 100; // above any sum of grades
    return (f.familiar ? known : 0) + f.tendernessGrade() + f.restrictionGrade()
        + (f.play ? std::abs(f.play->grade - JointPlay::normal) : 0);
}

// Of the worse of two sides that differ by more than the error of measuring; empty on the other one.
std::string lossInWords(const Movement &movement, const Measure &measure, const std::vector<Measure> &all)
{
    const auto sides = comparedSides(movement, all, measure.mode);
    if (!measure.value || !sides || sides->beyond != Beyond::Beyond || measure.side == Side::Midline)
        return {};
    const bool isLess = (sides->difference < 0) == (measure.side == Side::Right);
    if (isLess == movement.lessIsBetter)
        return {};
    const QString by = q(valueInWords(movement, std::abs(sides->difference)));
    const QString error = q(valueInWords(movement, sides->error->least()));
    const QString source = q(shortNameOf(sides->error->source));
    //: %1: a difference of two sides; %2: an amount; %3: who published it
    return (measure.side == Side::Right
            ? (isLess ? tr(QT_TRANSLATE_NOOP("LetterFindings", "%1 less than left, beyond the error of measuring (%2, %3)"))
                      : tr(QT_TRANSLATE_NOOP("LetterFindings", "%1 more than left, beyond the error of measuring (%2, %3)")))
            : (isLess ? tr(QT_TRANSLATE_NOOP("LetterFindings", "%1 less than right, beyond the error of measuring (%2, %3)"))
                      : tr(QT_TRANSLATE_NOOP("LetterFindings", "%1 more than right, beyond the error of measuring (%2, %3)"))))
        .arg(by, error, source)
        .toStdString();
}

std::string belowNormInWords(const Movement &movement, const Measure &measure, const Reference &reference)
{
    const NormComparison norm = comparedWithNorm(movement, measure, reference);
    const bool isLost = norm.z && (movement.lessIsBetter ? *norm.z >= lostFrom : *norm.z <= -lostFrom);
    return isLost ? inWords(movement, norm) : std::string();
}

bool isNegative(const ExamTest *test, const TestResult &result)
{
    if (result.pain)
        return *result.pain == TestPain::None;
    if (result.present)
        return !*result.present;
    if (!result.grade || !test)
        return false;
    constexpr int usualReflex = 2;
    return *result.grade == (test->kind == TestKind::Reflex ? usualReflex : highestGradeOf(test->kind));
}

std::string nameOf(const Examination &examination, const TestResult &result)
{
    const ExamTest *test = examination.findTest(result.test);
    return inSentence(namedWithSide(test ? test->name : result.test, result.side), result.side);
}

void addNames(std::vector<std::string> &out, const QString &sentence, const std::vector<std::string> &names)
{
    if (!names.empty())
        out.push_back(sentence.arg(q(inOneLine(capped(names, mostNames)))).toStdString());
}

} // namespace

std::vector<Finding> findingsThatMatter(const Visit &visit)
{
    std::vector<Finding> out;
    std::copy_if(
        visit.findings.begin(), visit.findings.end(), std::back_inserter(out), [](const Finding &f) { return f.isFound(); });
    std::stable_sort(out.begin(), out.end(), [](const Finding &a, const Finding &b) { return weightOf(a) > weightOf(b); });
    return out;
}

std::vector<std::string> findingLines(const Atlas &atlas, const Visit &visit)
{
    std::vector<std::string> out;
    for (const Finding &finding : findingsThatMatter(visit)) {
        const QString words = q(findingInWords(atlas, finding));
        out.push_back(
            (words.isEmpty() ? q(atlas.spoken(finding.place))
                             //: %1: a place; %2: what was found there
                             : tr(QT_TRANSLATE_NOOP("LetterFindings", "%1: %2")).arg(q(atlas.spoken(finding.place)), words))
                .toStdString());
    }
    return capped(std::move(out), mostFindings);
}

std::vector<std::string> movementLines(const Examination &examination, const Reference &reference, const Visit &visit)
{
    std::vector<std::string> out;
    std::vector<std::string> others;
    for (const Measure &measure : visit.measures) {
        const Movement *movement = examination.findMovement(measure.movement);
        std::string line = inSentence(inWords(examination, measure), measure.side);
        bool matters = measure.bringsPain();
        if (movement)
            for (const std::string &words :
                {lossInWords(*movement, measure, visit.measures), belowNormInWords(*movement, measure, reference)})
                if (!words.empty()) {
                    line += "; " + words;
                    matters = true;
                }
        (matters ? out : others).push_back(std::move(line));
    }
    out = capped(std::move(out), mostMovements);
    //: %1: movements
    addNames(out, tr(QT_TRANSLATE_NOOP("LetterFindings", "Others, without pain: %1")), others);
    return out;
}

std::vector<std::string> testLines(const Examination &examination, const Visit &visit)
{
    std::vector<const TestResult *> telling;
    std::vector<std::string> negative;
    std::vector<std::string> unable;
    for (const TestResult &result : visit.tests) {
        if (result.unable)
            //: %1: a test; %2: a reason
            unable.push_back(tr(QT_TRANSLATE_NOOP("LetterFindings", "%1 (%2)"))
                                 .arg(q(nameOf(examination, result)), q(*result.unable))
                                 .toStdString());
        else if (isNegative(examination.findTest(result.test), result))
            negative.push_back(nameOf(examination, result));
        else
            telling.push_back(&result);
    }
    const auto order = [](const TestResult *r) { return r->pain == TestPain::Familiar ? 0 : r->pain == TestPain::Other ? 2 : 1; };
    std::stable_sort(
        telling.begin(), telling.end(), [&](const TestResult *a, const TestResult *b) { return order(a) < order(b); });
    std::vector<std::string> out;
    out.reserve(telling.size());
    for (const TestResult *result : telling)
        out.push_back(inSentence(inWords(examination, *result), result->side));
    out = capped(std::move(out), mostTests);
    //: %1: tests
    addNames(out, tr(QT_TRANSLATE_NOOP("LetterFindings", "Negative: %1")), negative);
    //: %1: tests, with the reasons
    addNames(out, tr(QT_TRANSLATE_NOOP("LetterFindings", "Could not be done: %1")), unable);
    return out;
}

std::vector<std::string> clearLines(const Regions &regions, const Visit &visit)
{
    std::vector<Finding> listed = findingsThatMatter(visit);
    listed.resize(std::min(listed.size(), mostFindings));
    const auto bears = [&](const Place &place) {
        std::vector<StructureId> skin;
        for (const Place &where : visit.complaintAt)
            if (goTogether(where.side, place.side))
                skin.push_back(where.structure);
        return std::any_of(listed.begin(), listed.end(), [&](const Finding &f) {
            return f.place.structure == place.structure && f.place != place;
        }) || isUnder(regions, place.structure, skin);
    };
    std::vector<std::string> clear;
    std::vector<std::string> unable;
    const Atlas &atlas = regions.atlas();
    for (const Finding &f : visit.findings) {
        const QString place = q(atlas.spoken(f.place));
        if (f.isUnable())
            //: %1: a place; %2: a reason
            unable.push_back(tr(QT_TRANSLATE_NOOP("LetterFindings", "%1 (%2)")).arg(place, q(*f.unable)).toStdString());
        else if (!f.isFound() && bears(f.place))
            clear.push_back((f.clear.tenderness && f.clear.motion
                    ? place
                    //: %1: a place; %2: of what it is clear
                    : tr(QT_TRANSLATE_NOOP("LetterFindings", "%1 (%2)")).arg(place, q(findingInWords(atlas, f))))
                                .toStdString());
    }
    std::vector<std::string> out;
    //: %1: places
    addNames(out, tr(QT_TRANSLATE_NOOP("LetterFindings", "Clear: %1")), clear);
    //: %1: places, with the reasons
    addNames(out, tr(QT_TRANSLATE_NOOP("LetterFindings", "Could not be examined: %1")), unable);
    return out;
}

} // namespace raphe
