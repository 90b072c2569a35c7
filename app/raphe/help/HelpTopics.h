// Which page of the help fits where somebody is. Plain functions.
#pragma once

#include <QString>

#include <optional>

class QWidget;

namespace raphe {

/// The id of the page for a dialog; nothing for one that has none.
[[nodiscard]] std::optional<QString> topicOfDialog(const QWidget &dialog);

/// Hands or the patient have the screen: the treatment, or the patient's own screen. There is no help then.
[[nodiscard]] bool isScreenTaken();

} // namespace raphe
