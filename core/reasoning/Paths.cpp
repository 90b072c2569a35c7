#include "core/reasoning/Paths.h"

#include <QCoreApplication>

namespace raphe {

namespace {

std::string tr(const char *text)
{
    return QCoreApplication::translate("Paths", text).toStdString();
}

} // namespace

PathStep stepOver(const Linkage &linkage, const Link &link, std::size_t from)
{
    return {linkage.places()[from], linkage.places()[link.other(from)], link.kind, link.evidence, link.basis, link.force,
        link.sources, link.note};
}

std::vector<PathStep> stepsOf(const Linkage &linkage, const Way &way)
{
    std::vector<PathStep> steps;
    steps.reserve(way.links.size());
    std::size_t node = way.start;
    for (const std::size_t index : way.links) {
        const Link &link = linkage.links()[index];
        steps.push_back(stepOver(linkage, link, node));
        node = link.other(node);
    }
    return steps;
}

std::vector<PathStep> mirrored(std::vector<PathStep> path)
{
    for (PathStep &step : path) {
        step.from = mirrored(step.from);
        step.to = mirrored(step.to);
    }
    return path;
}

Grade weakestOf(const std::vector<PathStep> &path)
{
    Grade grade = Grade::Verified;
    for (const PathStep &step : path)
        grade = weaker(grade, step.evidence);
    return grade;
}

std::string pathInWords(const Atlas &atlas, const std::vector<PathStep> &path)
{
    if (path.empty())
        return {};
    std::string words = atlas.spoken(path.front().from);
    for (const PathStep &step : path) {
        const QString name = QString::fromStdString(atlas.spoken(step.to));
        const char *pattern =
            step.changesSide() ? QT_TRANSLATE_NOOP("Paths", ", to the other side to %1") : QT_TRANSLATE_NOOP("Paths", ", to %1");
        words += QCoreApplication::translate("Paths", pattern).arg(name).toStdString();
    }
    return words;
}

std::string gradeInWords(Grade grade)
{
    switch (grade) {
    case Grade::Verified: return tr(QT_TRANSLATE_NOOP("Paths", "continuity seen in dissection"));
    case Grade::Supported: return tr(QT_TRANSLATE_NOOP("Paths", "one study supports it"));
    case Grade::Described: return tr(QT_TRANSLATE_NOOP("Paths", "described in textbooks"));
    case Grade::Convention: break;
    }
    return tr(QT_TRANSLATE_NOOP("Paths", "taught in the trade; no source"));
}

std::string evidenceInWords(const PathStep &step)
{
    const QString grade = QString::fromUtf8(wordOf(gradeWords, step.evidence).data());
    const QString meaning = QString::fromStdString(gradeInWords(step.evidence));
    if (step.link != LinkKind::Continues) {
        const char *pattern = step.basis == Basis::Computed ? QT_TRANSLATE_NOOP("Paths", "%1: %2; computed by the program")
                                                            : QT_TRANSLATE_NOOP("Paths", "%1: %2");
        return QCoreApplication::translate("Paths", pattern).arg(grade, meaning).toStdString();
    }
    QString force;
    switch (step.force.value_or(Force::Unknown)) {
    case Force::Yes: force = QCoreApplication::translate("Paths", "yes"); break;
    case Force::Partly: force = QCoreApplication::translate("Paths", "partly"); break;
    case Force::No: force = QCoreApplication::translate("Paths", "no"); break;
    case Force::Unknown: force = QCoreApplication::translate("Paths", "unknown"); break;
    }
    return QCoreApplication::translate("Paths", "%1: %2; force transfer: %3; that treating one end helps the other: not shown")
        .arg(grade, meaning, force)
        .toStdString();
}

std::vector<std::string> sourcesInWords(const Atlas &atlas, const std::vector<std::string> &sources)
{
    std::vector<std::string> out;
    for (const std::string &id : sources) {
        const Source &source = *atlas.findSource(id);
        std::string words = source.citation;
        if (source.doi)
            words += " doi:" + *source.doi;
        switch (source.read) {
        case Reading::Page: break;
        case Reading::Abstract: words += tr(QT_TRANSLATE_NOOP("Paths", " (read in the abstract)")); break;
        case Reading::Memory: words += tr(QT_TRANSLATE_NOOP("Paths", " (from memory; not yet read again)")); break;
        }
        out.push_back(std::move(words));
    }
    return out;
}

} // namespace raphe
