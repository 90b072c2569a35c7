// What the dialogs of a practice are put together from, so that they look alike.
#pragma once

#include "core/base/Result.h"

#include <QString>

#include <string>
#include <vector>

class QBoxLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QScrollArea;
class QVBoxLayout;
class QWidget;

namespace raphe {

class WrappedLabel;

/// A field under its name; `field` also takes it as its accessible name and becomes high enough for a finger.
[[nodiscard]] QVBoxLayout *labelled(const QString &name, QWidget *field);
/// The same for a field that is put together of several; `first` is the one that the name stands for.
[[nodiscard]] QVBoxLayout *labelled(const QString &name, QBoxLayout *row, QWidget *first);
[[nodiscard]] QLabel *heading(const QString &text);
/// An explanation that stands back.
[[nodiscard]] WrappedLabel *hint(const QString &text = {});
[[nodiscard]] QPushButton *pushButton(const QString &text);
/// A small button that stays down; `about` names it and is its tip.
[[nodiscard]] QPushButton *toggleButton(const QString &text, const QString &about);
/// What cannot be is shown in the line.
void setWrong(QLineEdit *line, bool isWrong);
[[nodiscard]] bool isWrong(const QLineEdit *line);
/// The page in an area that scrolls up and down when the screen is too small for it. Belongs to the caller's layout.
[[nodiscard]] QScrollArea *scrolled(QWidget *page);
/// The lines of a text that are not blank, without the spaces around them.
[[nodiscard]] std::vector<std::string> linesIn(const QString &text);
/// With a capital first letter.
[[nodiscard]] QString capitalised(QString text);
/// The error as a sentence: with a capital letter and a full stop.
[[nodiscard]] QString sentence(const Error &error);

} // namespace raphe
