#include "core/reasoning/Position.h"

#include <QCoreApplication>

namespace raphe {

namespace {

double shown(const Drawing &drawing, const StructureId &id)
{
    double area = 0;
    for (const std::size_t index : drawing.shapesOf(id))
        area += areaOf(drawing.shapes()[index].polygons);
    return area / (drawing.scale() * drawing.scale());
}

std::optional<View> viewOf(const Body &body, const StructureId &id)
{
    if (const double back = shown(body.of(View::Back), id), front = shown(body.of(View::Front), id); back > 0 || front > 0)
        return back >= front ? View::Back : View::Front;
    for (const View view : {View::Side, View::Sole, View::Palm, View::Head})
        if (body.of(view).shows(id))
            return view;
    return std::nullopt;
}

} // namespace

std::optional<Position> positionFor(const Body &body, const Place &place)
{
    const auto view = viewOf(body, place.structure);
    if (!view)
        return std::nullopt;
    switch (*view) {
    case View::Back:
    case View::Sole: return Position::Prone;
    case View::Front:
    case View::Palm:
    case View::Head: return Position::Supine;
    case View::Side: break;
    }
    return place.side == Side::Left ? Position::OnRightSide : Position::OnLeftSide;
}

std::string positionInWords(Position position)
{
    const auto words = [position] {
        switch (position) {
        case Position::Prone: return QT_TRANSLATE_NOOP("Position", "lying face down");
        case Position::Supine: return QT_TRANSLATE_NOOP("Position", "lying face up");
        case Position::OnLeftSide: return QT_TRANSLATE_NOOP("Position", "lying on the left side, right side up");
        case Position::Seated: return QT_TRANSLATE_NOOP("Position", "seated");
        case Position::OnRightSide: break;
        }
        return QT_TRANSLATE_NOOP("Position", "lying on the right side, left side up");
    };
    return QCoreApplication::translate("Position", words()).toStdString();
}

} // namespace raphe
