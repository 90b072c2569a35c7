#include "core/reasoning/Paths.h"

#include <QCoreApplication>

#include <algorithm>
#include <limits>
#include <queue>

namespace raphe {

namespace {

constexpr std::size_t none = std::numeric_limits<std::size_t>::max();

std::string tr(const char *text)
{
    return QCoreApplication::translate("Paths", text).toStdString();
}

} // namespace

PathTree::PathTree(const Linkage &linkage, const std::vector<std::size_t> &starts)
    : m_linkage(&linkage),
      m_length(linkage.places().size(), std::numeric_limits<double>::infinity()),
      m_via(linkage.places().size(), none)
{
    using Entry = std::pair<double, std::size_t>;
    std::priority_queue<Entry, std::vector<Entry>, std::greater<>> queue;
    for (const std::size_t start : starts) {
        m_length[start] = 0;
        queue.emplace(0.0, start);
    }
    while (!queue.empty()) {
        const auto [length, node] = queue.top();
        queue.pop();
        if (length > m_length[node])
            continue;
        for (const std::size_t index : linkage.linksAt(node)) {
            const Link &link = linkage.links()[index];
            const std::size_t next = link.other(node);
            const double through = length + 1 / link.weight;
            if (through < m_length[next]) {
                m_length[next] = through;
                m_via[next] = index;
                queue.emplace(through, next);
            }
        }
    }
}

bool PathTree::reaches(std::size_t node) const
{
    return m_length[node] < std::numeric_limits<double>::infinity();
}

std::vector<PathStep> PathTree::to(std::size_t node) const
{
    std::vector<PathStep> steps;
    while (m_via[node] != none) {
        const Link &link = m_linkage->links()[m_via[node]];
        const std::size_t from = link.other(node);
        steps.push_back(stepOver(*m_linkage, link, from));
        node = from;
    }
    std::reverse(steps.begin(), steps.end());
    return steps;
}

PathStep stepOver(const Linkage &linkage, const Link &link, std::size_t from)
{
    return {linkage.places()[from], linkage.places()[link.other(from)], link.kind, link.evidence, link.basis, link.force,
        link.sources, link.note};
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
