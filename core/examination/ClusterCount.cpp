#include "core/examination/ClusterCount.h"

#include "core/examination/AccuracyWords.h"

#include <QCoreApplication>

#include <algorithm>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ClusterCount", text);
}

enum class State { NotDone, Done, Familiar, Unable };

State stateOf(const Cluster::Part &part, const std::vector<TestResult> &results)
{
    bool done[2] = {false, false}; // right, left; one without sides counts for both
    bool unable = false;
    for (const TestResult &result : results) {
        if (result.test != part.test || (part.side && !goTogether(result.side, *part.side)))
            continue;
        if (result.pain == TestPain::Familiar)
            return State::Familiar;
        unable = unable || result.unable;
        if (result.pain && result.side != Side::Left)
            done[0] = true;
        if (result.pain && result.side != Side::Right)
            done[1] = true;
    }
    if (part.side ? done[0] || done[1] : done[0] && done[1])
        return State::Done;
    return unable ? State::Unable : State::NotDone;
}

} // namespace

ClusterCount countOf(const Cluster &cluster, const std::vector<TestResult> &results)
{
    ClusterCount out{&cluster, 0, 0, 0};
    for (const Cluster::Part &part : cluster.parts) {
        const State state = stateOf(part, results);
        out.familiar += state == State::Familiar ? 1 : 0;
        out.done += state == State::Familiar || state == State::Done ? 1 : 0;
        out.unable += state == State::Unable ? 1 : 0;
    }
    return out;
}

namespace {

// Of the first study's patients with such a count: who responded.
QString responded(const ClusterCount &count)
{
    const auto &studies = count.cluster->studies;
    if (studies.empty() || !studies.front().table)
        return {};
    const TwoByTwo &t = *studies.front().table;
    const int yes = count.reaches() ? t.truePositives : t.falseNegatives;
    const int no = count.reaches() ? t.falsePositives : t.trueNegatives;
    //: %1: a setting; %2 of %3: counts of patients; %4: so many tests; %5: a reference standard
    const QString words = count.reaches()
        ? tr(QT_TRANSLATE_NOOP("ClusterCount", "; in %1 %2 of %3 such patients, with %4 or more, responded to %5"))
        : tr(QT_TRANSLATE_NOOP("ClusterCount", "; in %1 %2 of %3 such patients, with fewer than %4, responded to %5"));
    return words.arg(QString::fromStdString(studies.front().setting), QString::number(yes), QString::number(yes + no),
        QString::number(count.cluster->threshold), QString::fromStdString(studies.front().against));
}

} // namespace

std::string inWords(const ClusterCount &count)
{
    //: %1: name of a cluster of tests
    QString words =
        tr(QT_TRANSLATE_NOOP("ClusterCount", "%1: %2 of %3 reproduced the familiar pain"))
            .arg(QString::fromStdString(count.cluster->name), QString::number(count.familiar), QString::number(count.parts()));
    if (const int left = count.parts() - count.done - count.unable; left > 0)
        words += tr(QT_TRANSLATE_NOOP("ClusterCount", "; %1 not done")).arg(left);
    if (count.unable > 0)
        words += tr(QT_TRANSLATE_NOOP("ClusterCount", "; %1 could not be done")).arg(count.unable);
    if (!count.isOpen())
        words += responded(count);
    return words.toStdString();
}

std::vector<std::string> studiesInWords(const ClusterCount &count, const Examination &examination)
{
    std::vector<std::string> out;
    for (const Accuracy &study : count.cluster->studies) {
        if (!study.table)
            continue;
        const TwoByTwo &t = *study.table;
        const auto with = positiveValue(t);
        const auto without = negativeValue(t);
        if (!with || !without)
            continue;
        const auto words = [](const auto &figure) { return QString::fromStdString(inWords(figure)); };
        //: %1: whose patients; %2: so many tests; %3 and %5: counts with 95 % intervals; %4: the reference standard
        QString line = tr(QT_TRANSLATE_NOOP("ClusterCount", "In %1, with %2 or more %3 responded to %4, with fewer %5."))
                           .arg(QString::fromStdString(study.setting), QString::number(count.cluster->threshold), words(*with),
                               QString::fromStdString(study.against), words(Share{t.falseNegatives, without->of}));
        line += QLatin1Char(' ')
            + tr(
                QT_TRANSLATE_NOOP("ClusterCount", "Sensitivity %1, specificity %2, likelihood ratio of so many %3, of fewer %4."))
                  .arg(words(sensitivity(t)), words(specificity(t)), words(positiveRatio(t)), words(negativeRatio(t)));
        line += QLatin1Char(' ') + QString::fromStdString(sourceInWords(examination, study.source, study.read));
        out.push_back(line.toStdString());
    }
    return out;
}

} // namespace raphe
