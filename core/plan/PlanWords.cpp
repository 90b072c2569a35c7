#include "core/plan/PlanWords.h"

#include <QCoreApplication>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Plan", text);
}

} // namespace

std::string pinnedDoNotFitInWords()
{
    return tr(QT_TRANSLATE_NOOP("Plan",
                  "What is pinned does not fit into the time and the positions that are left; the plan is made without pins."))
        .toStdString();
}

std::string droppedInWords()
{
    return tr(QT_TRANSLATE_NOOP("Plan", "Taken out of the plan by hand.")).toStdString();
}

std::string notReachedInWords()
{
    return tr(QT_TRANSLATE_NOOP("Plan", "Not reached from a position that is open today.")).toStdString();
}

std::string noTimeInWords()
{
    return tr(QT_TRANSLATE_NOOP("Plan", "No time left for it today.")).toStdString();
}

std::string beforeInWords(OrderReason reason, const std::string &later)
{
    const auto words = [reason] {
        switch (reason) {
        case OrderReason::ByHand: return QT_TRANSLATE_NOOP("Plan", "Before %1: you put it there.");
        case OrderReason::SkinFirst: return QT_TRANSLATE_NOOP("Plan", "Before %1: the skin before what lies deeper.");
        case OrderReason::JointFirst:
            return QT_TRANSLATE_NOOP("Plan", "Before %1: the joint before the muscle across it is lengthened.");
        case OrderReason::ComplaintFirst: break;
        }
        return QT_TRANSLATE_NOOP("Plan", "Before %1: where it hurts comes first.");
    };
    return tr(words()).arg(QString::fromStdString(later)).toStdString();
}

std::string minutesInWords(int seconds)
{
    constexpr int minute = 60;
    if (seconds % minute == 0)
        return tr(QT_TRANSLATE_NOOP("Plan", "%1 min")).arg(seconds / minute).toStdString();
    if (seconds < minute)
        return tr(QT_TRANSLATE_NOOP("Plan", "%1 s")).arg(seconds).toStdString();
    return tr(QT_TRANSLATE_NOOP("Plan", "%1 min %2 s")).arg(seconds / minute).arg(seconds % minute).toStdString();
}

} // namespace raphe
