// The letters that are kept with a visit.
#include "app/raphe/VisitSession.h"

namespace raphe {

void VisitSession::setLetters(const std::vector<Letter> &letters)
{
    if (letters == m_visit.letters || !mayChange())
        return;
    m_visit.letters = letters;
    save();
}

} // namespace raphe
