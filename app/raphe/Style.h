// Dresses Qt's widgets in a Theme: palette and style sheet. Light or dark follows the system unless told otherwise.
#pragma once

#include "app/paint/Theme.h"

class QApplication;

namespace raphe {

enum class Appearance { System, Light, Dark };
inline constexpr WordTable<Appearance, 3> appearanceWords{
    {{Appearance::System, "system"}, {Appearance::Light, "light"}, {Appearance::Dark, "dark"}}};

/// System: dark when the palette's window is darker than its text.
[[nodiscard]] Theme themeFor(Appearance appearance);
void dress(QApplication &application, const Theme &theme);

/// Height and width of what a hand with a pen or finger must hit: 9 mm at 96 dpi, rounded up.
inline constexpr int touchTarget = 36;

} // namespace raphe
