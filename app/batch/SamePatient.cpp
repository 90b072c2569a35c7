#include "app/batch/SamePatient.h"

#include <algorithm>

namespace raphe::batch {

std::vector<int> patientNumbers(const std::vector<Visit> &visits)
{
    std::vector<int> numbers;
    int highest = 0;
    for (const Visit &visit : visits) {
        const auto same = std::find_if(visits.begin(), visits.begin() + static_cast<std::ptrdiff_t>(numbers.size()),
            [&](const Visit &other) { return visit.patient && !visit.patient->name.empty() && other.patient == visit.patient; });
        const auto index = static_cast<std::size_t>(same - visits.begin());
        numbers.push_back(index < numbers.size() ? numbers[index] : ++highest);
    }
    return numbers;
}

} // namespace raphe::batch
