#include "app/words/StoredNotes.h"

#include "core/base/JsonReader.h"
#include "core/record/VisitJson.h"

#include <QDateTime>

#include <algorithm>

namespace raphe {

namespace {

NoteState noteStateOf(VisitState state)
{
    switch (state) {
    case VisitState::Draft: return NoteState::Draft;
    case VisitState::Signed: return NoteState::Signed;
    case VisitState::Amending: return NoteState::Amending;
    case VisitState::InError: break;
    }
    return NoteState::InError;
}

RecordAct recordActOf(EntryKind kind)
{
    switch (kind) {
    case EntryKind::Opened: return RecordAct::Opened;
    case EntryKind::Signed: return RecordAct::Signed;
    case EntryKind::Amended: return RecordAct::Amended;
    case EntryKind::Late: return RecordAct::Late;
    case EntryKind::InError: return RecordAct::InError;
    case EntryKind::Moved: return RecordAct::Moved;
    case EntryKind::Merged: return RecordAct::Merged;
    case EntryKind::Erased: return RecordAct::Erased;
    case EntryKind::Exported: return RecordAct::Exported;
    case EntryKind::Restored: return RecordAct::Restored;
    case EntryKind::FileMade:
    case EntryKind::AccountAdded:
    case EntryKind::AccountRemoved:
    case EntryKind::PassphraseChanged:
    case EntryKind::ScopeChanged:
    case EntryKind::Recovered:
    case EntryKind::RecoveryKeyChanged: break;
    }
    return RecordAct::Other;
}

std::optional<Visit> visitIn(const std::string &document, const Atlas &atlas)
{
    if (document.empty())
        return std::nullopt;
    auto visit = readVisit(document, "visit", atlas);
    return visit ? std::optional(std::move(visit).value()) : std::nullopt;
}

std::string nameOfAccount(const Practice &practice)
{
    const auto accounts = valueOrThrow(practice.accounts());
    const auto it = std::find_if(
        accounts.begin(), accounts.end(), [&](const AccountCard &card) { return card.id == practice.keys()->account; });
    return it == accounts.end() ? std::string() : it->name;
}

} // namespace

Result<KeptVisit> keptVisit(const Practice &practice, const StoredVisit &stored, const Atlas &atlas)
{
    return guarded([&] {
        KeptVisit out{noteStateOf(stored.state), stored.document, visitIn(stored.document, atlas), {}, {}};
        for (const VisitVersion &version : valueOrThrow(practice.history(stored.id))) {
            out.versions.push_back({version.entry, recordActOf(version.kind), version.author, version.madeAt, version.careAt,
                version.reason, visitIn(version.document, atlas)});
            out.documents.push_back(version.document);
        }
        return out;
    });
}

NoteGiven noteGiven(const KeptVisit &kept, const std::vector<EarlierVisit> &earlier)
{
    NoteGiven out;
    out.state = kept.state;
    out.versions = kept.versions;
    for (const EarlierVisit &other : earlier)
        if (!kept.visit || other.visit.date <= kept.visit->date)
            out.earlier.push_back(other);
    return out;
}

Result<RecordContent> recordContent(Practice &practice, std::int64_t patient, const Atlas &atlas)
{
    return guarded([&] {
        RecordContent out;
        out.patient = valueOrThrow(practice.patient(patient));
        out.number = patient;
        const auto visits = valueOrThrow(practice.visits(patient));
        static_cast<void>(valueOrThrow(practice.noteExported(patient)));
        for (auto visit = visits.rbegin(); visit != visits.rend(); ++visit)
            out.visits.push_back(valueOrThrow(keptVisit(practice, *visit, atlas)));
        const auto dateOf = [](const KeptVisit &kept) { return kept.visit ? kept.visit->date : std::string(); };
        std::stable_sort(out.visits.begin(), out.visits.end(), // oldest first, also of what was written down later
            [&](const KeptVisit &a, const KeptVisit &b) { return dateOf(a) < dateOf(b); });
        for (const AccessRow &access : valueOrThrow(practice.accesses(patient)))
            out.accesses.push_back({access.madeAt, access.account, recordActOf(access.kind)});
        out.practice = valueOrThrow(practice.settings()).name;
        out.madeBy = nameOfAccount(practice);
        out.madeAt = QDateTime::currentMSecsSinceEpoch();
        return out;
    });
}

} // namespace raphe
