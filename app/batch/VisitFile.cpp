#include "app/batch/VisitFile.h"

#include "core/examination/KnownContent.h"
#include "core/record/VisitJson.h"

#include <QFile>

namespace raphe::batch {

Result<Visit> readVisitFile(const std::string &file, const Atlas &atlas)
{
    QFile in(QString::fromStdString(file));
    if (!in.open(QIODevice::ReadOnly))
        return Error{ErrorCode::CannotRead, file, in.errorString().toStdString()};
    auto visit = readVisit(in.readAll().toStdString(), file, atlas);
    if (!visit)
        return visit;
    const auto rules = readEmbeddedSafetyRules(atlas);
    if (!rules)
        return rules.error();
    const auto examination = readEmbeddedExamination(atlas, rules.value());
    if (!examination)
        return examination.error();
    if (const auto checked = checkKnownContent(rules.value(), examination.value(), visit.value(), file); !checked)
        return checked.error();
    return visit;
}

Result<std::vector<Visit>> readVisitFiles(const std::vector<DocumentTask> &tasks, const Atlas &atlas)
{
    std::vector<Visit> out;
    for (const DocumentTask &task : tasks) {
        auto visit = readVisitFile(task.visit, atlas);
        if (!visit)
            return visit.error();
        out.push_back(std::move(visit).value());
    }
    return out;
}

Result<KnownVisit> readKnownVisit(const std::string &file)
{
    auto knowledge = readKnowledge();
    if (!knowledge)
        return knowledge.error();
    auto visit = readVisitFile(file, *knowledge.value().atlas);
    if (!visit)
        return visit.error();
    return KnownVisit{std::move(knowledge).value(), std::move(visit).value()};
}

Result<AdvisedVisit> readAdvisedVisit(const std::string &file)
{
    auto known = readKnownVisit(file);
    if (!known)
        return known.error();
    auto adviser = Adviser::of(known.value().knowledge);
    if (!adviser)
        return adviser.error();
    return AdvisedVisit{std::move(known).value(), std::move(adviser).value()};
}

} // namespace raphe::batch
