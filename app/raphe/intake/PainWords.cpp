#include "app/raphe/intake/PainWords.h"

#include "core/record/PainDrawing.h"

#include <QCoreApplication>

namespace raphe {

QStringList painQualityNames()
{
    const auto tr = [](const char *text) { return QCoreApplication::translate("PainQuality", text); };
    QStringList names{tr("Aching"), tr("Burning"), tr("Shooting"), tr("Stabbing"), tr("Tingling"), tr("Numb"), tr("Stiff"),
        tr("Throbbing"), tr("Pressing"), tr("Other")};
    Q_ASSERT(static_cast<std::size_t>(names.size()) == painQualityWords.size());
    return names;
}

} // namespace raphe
