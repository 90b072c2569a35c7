#include "core/document/fhir/FhirThemes.h"

#include <QDateTime>

namespace raphe::fhir {

namespace {

const char *operationOf(FhirAct act)
{
    switch (act) {
    case FhirAct::Signed:
    case FhirAct::Late: return "CREATE";
    case FhirAct::Amended: return "UPDATE";
    case FhirAct::InError: break;
    }
    return "NULLIFY";
}

// As the author gave it; with a time of day only where the zone is told, as FHIR has it.
std::string careTime(const Making &making, const std::string &careAt)
{
    const QString text = QString::fromStdString(careAt);
    const QDateTime time = QDateTime::fromString(text, Qt::ISODate);
    const QString day = text.left(10);
    if (!QDate::fromString(day, Qt::ISODate).isValid())
        return making.moment({});
    if (text.size() <= 10 || !time.isValid())
        return day.toStdString();
    if (time.timeSpec() != Qt::LocalTime) // it names its zone
        return time.toUTC().toString(QStringLiteral("yyyy-MM-ddTHH:mm:ss'Z'")).toStdString();
    return day.toStdString();
}

} // namespace

void addSignatures(Making &making)
{
    const std::vector<Json> targets = making.targets();
    const auto &entries = making.source().entries;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const FhirEntry &entry = entries[i];
        Json out{{"resourceType", "Provenance"}, {"id", ""}};
        out["target"] = targets;
        put(out, "occurredDateTime", careTime(making, entry.careAt));
        out["recorded"] = QDateTime::fromMSecsSinceEpoch(entry.madeAt, Qt::UTC)
                              .toString(QStringLiteral("yyyy-MM-ddTHH:mm:ss'Z'"))
                              .toStdString();
        if (Json reason = textOnly(entry.reason); !reason.empty())
            append(out, "reason", std::move(reason));
        const char *operation = operationOf(entry.act);
        Json activity = coded(coding(making.codes().uri("data-operation"), operation, spelt(operation)));
        append(activity, "coding", ownCoding("act", wordOf(fhirActWords, entry.act)));
        out["activity"] = std::move(activity);
        Json agent{{"type", coded(coding(making.codes().uri("provenance-participant"), "author", "Author"))}};
        agent["who"] = making.practitioner(entry.author).value_or(Json{{"display", "unnamed"}});
        append(out, "agent", std::move(agent));
        making.addLasting(making.lastingId(making.idOf("encounter") + "\nentry\n" + std::to_string(i)), std::move(out));
    }
}

} // namespace raphe::fhir
