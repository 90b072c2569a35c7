#include "app/paint/Theme.h"

#include <QFontInfo>

#include <algorithm>
#include <cmath>

namespace raphe {

namespace {

const QString family = QStringLiteral("Lato");

QColor greyOf(const QColor &c)
{
    const int grey = qGray(c.rgb());
    return {grey, grey, grey};
}

double luminance(const QColor &c)
{
    const auto linear = [](double v) { return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); };
    return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

} // namespace

QColor Theme::layer(Layer layer) const
{
    if (grey) {
        Theme coloured = *this;
        coloured.grey = false;
        return greyOf(coloured.layer(layer));
    }
    if (pale) {
        Theme full = *this;
        full.pale = false;
        const QColor c = full.layer(layer);
        return QColor::fromRgbF(0.5F + c.redF() / 2, 0.5F + c.greenF() / 2, 0.5F + c.blueF() / 2);
    }
    switch (layer) {
    case Layer::Skin: return skin;
    case Layer::SuperficialFascia: return dark ? QColor(0x5e, 0x57, 0x3f) : QColor(0xee, 0xe0, 0xb4);
    case Layer::DeepFascia: return dark ? QColor(0x4d, 0x5d, 0x69) : QColor(0xcf, 0xdb, 0xe0);
    case Layer::SuperficialMuscle: return dark ? QColor(0x8f, 0x5f, 0x5a) : QColor(0xd3, 0x9c, 0x8f);
    case Layer::IntermediateMuscle: return dark ? QColor(0x7d, 0x52, 0x55) : QColor(0xc0, 0x86, 0x80);
    case Layer::DeepMuscle: return dark ? QColor(0x6c, 0x48, 0x52) : QColor(0xab, 0x74, 0x75);
    case Layer::Bone: break;
    }
    return dark ? QColor(0x9b, 0x93, 0x7d) : QColor(0xf1, 0xe9, 0xd2);
}

Theme Theme::light()
{
    return {false, false, QColor(0xf4, 0xf2, 0xed), QColor(0xfc, 0xfb, 0xf8), QColor(0x22, 0x28, 0x2c), QColor(0x58, 0x60, 0x65),
        QColor(0x6a, 0x5b, 0x52), QColor(0xf3, 0xe6, 0xd8), QColor(0x0b, 0x5c, 0x6b), QColor(0xd9, 0xa4, 0x1c),
        QColor(0xb3, 0x2d, 0x17), QColor(0x34, 0x3f, 0x96), QColor(0x0d, 0x66, 0x52), QColor(0xff, 0xff, 0xff)};
}

Theme Theme::night()
{
    return {true, false, QColor(0x17, 0x1b, 0x1e), QColor(0x20, 0x25, 0x29), QColor(0xec, 0xea, 0xe4), QColor(0xb0, 0xb4, 0xb3),
        QColor(0xb9, 0xa7, 0x97), QColor(0x3a, 0x36, 0x33), QColor(0x6f, 0xcb, 0xd8), QColor(0xe8, 0xbd, 0x4d),
        QColor(0xf2, 0x85, 0x6d), QColor(0xa3, 0xae, 0xf5), QColor(0x6c, 0xd0, 0xb0), QColor(0x17, 0x1b, 0x1e)};
}

Theme Theme::paper()
{
    Theme t = light();
    t.pale = true;
    t.ground = t.panel = QColor(0xff, 0xff, 0xff);
    t.skin = QColor(0xfa, 0xf3, 0xea);
    return t;
}

Theme Theme::greyPaper()
{
    Theme t = paper();
    t.grey = true;
    for (QColor *c : {&t.ground, &t.panel, &t.ink, &t.quiet, &t.line, &t.skin, &t.accent, &t.lit, &t.tender, &t.restricted,
             &t.clear, &t.onMark})
        *c = greyOf(*c);
    return t;
}

namespace {

// Ligatures would be single signs in a PDF, and 'buttock' could no longer be searched or read aloud; Qt leaves them out
// of spaced text, and the least spacing is invisible.
void withoutLigatures(QFont &font)
{
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.02);
}

} // namespace

QFont typeface(double points, int weight)
{
    QFont font(family);
    font.setPointSizeF(points);
    font.setWeight(static_cast<QFont::Weight>(weight));
    withoutLigatures(font);
    return font;
}

QFont typefaceInUnits(double pixels, int weight)
{
    QFont font(family);
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(pixels))));
    font.setWeight(static_cast<QFont::Weight>(weight));
    withoutLigatures(font);
    return font;
}

bool typefaceIsInstalled()
{
    return QFontInfo(QFont(family)).family() == family;
}

double contrast(const QColor &a, const QColor &b)
{
    const double x = luminance(a) + 0.05;
    const double y = luminance(b) + 0.05;
    return std::max(x, y) / std::min(x, y);
}

} // namespace raphe
