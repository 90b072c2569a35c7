// The documents that the window offers of the open visit and of the practice. Refers to the session and keeps the two figures
// that the pages paint.
#pragma once

#include "app/paint/BodyArt.h"
#include "app/raphe/VisitSession.h"
#include "app/raphe/pages/PageOffer.h"
#include "core/document/VisitMap.h"

namespace raphe {

class VisitPages {
public:
    explicit VisitPages(VisitSession &session);

    /// For the patient and for the record.
    [[nodiscard]] PageOffer map() const;
    [[nodiscard]] PageOffer note() const;
    /// All that the practice holds on the patient; that it was made is noted in the record.
    [[nodiscard]] PageOffer record() const;
    [[nodiscard]] PageOffer form() const;
    [[nodiscard]] PageOffer rules() const;
    /// As the patient's record has it, or else the practice's settings.
    [[nodiscard]] Language language() const;

    [[nodiscard]] VisitMap mapIn(Language language) const;
    /// Files for other programs: FHIR, the visit's own form, findings as a table, and a copy for teaching.
    [[nodiscard]] std::vector<PageFormat> exchange() const;

private:
    VisitSession &m_session;
    BodyArt m_front;
    BodyArt m_back;
};

} // namespace raphe
