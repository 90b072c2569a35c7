#include "app/raphe/intake/PlaceWords.h"

#include <QCoreApplication>
#include <QStringList>

namespace raphe {

namespace {

QString tr(const char *text, const char *comment = nullptr)
{
    return QCoreApplication::translate("PlaceWords", text, comment);
}

} // namespace

QString plainWords(const Atlas &atlas, const Place &place)
{
    const QString name = QString::fromStdString(atlas.plainName(place.structure, "en"));
    switch (place.side) {
    case Side::Left: return tr("LEFT %1", "side of the patient, then a part of the body").arg(name);
    case Side::Right: return tr("RIGHT %1", "side of the patient, then a part of the body").arg(name);
    case Side::Midline: break;
    }
    return tr("middle of: %1", "a part of the body on the midline").arg(name);
}

QString plainWords(const Atlas &atlas, const std::vector<PaintedPlace> &places)
{
    QStringList words;
    for (const PaintedPlace &painted : places)
        words << plainWords(atlas, painted.place);
    return words.isEmpty() ? tr("beside the body") : words.join(tr("; ", "between parts of the body"));
}

} // namespace raphe
