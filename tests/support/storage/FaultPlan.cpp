#include "tests/support/storage/FaultPlan.h"

namespace raphe::test {

void FaultPlan::arm(const Fault &fault)
{
    restart(fault);
}

void FaultPlan::disarm()
{
    restart(std::nullopt);
}

void FaultPlan::restart(std::optional<Fault> fault)
{
    const std::lock_guard lock(m_mutex);
    m_fault = fault;
    m_counts = {};
    m_failures = 0;
}

std::size_t FaultPlan::count(Operation operation) const
{
    const std::lock_guard lock(m_mutex);
    return m_counts.at(static_cast<std::size_t>(operation));
}

std::size_t FaultPlan::failures() const
{
    const std::lock_guard lock(m_mutex);
    return m_failures;
}

std::optional<Failure> FaultPlan::next(Operation operation)
{
    const std::lock_guard lock(m_mutex);
    const std::size_t number = ++m_counts.at(static_cast<std::size_t>(operation));
    if (!m_fault || m_fault->operation != operation)
        return std::nullopt;
    if (number < m_fault->number || (number > m_fault->number && !m_fault->lasting))
        return std::nullopt;
    ++m_failures;
    return m_fault->failure;
}

} // namespace raphe::test
