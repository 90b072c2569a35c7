// A tab of the record's form: fields with their names on the left, as high as they need; the page scrolls to where the keyboard
// is.
#pragma once

#include "app/raphe/record/RecordField.h"

#include <QScrollArea>

class QGridLayout;

namespace raphe {

class RecordPage : public QScrollArea {
    Q_OBJECT

public:
    explicit RecordPage(QWidget *parent = nullptr);

    /// In line with the fields above; `name` may be empty.
    void add(const QString &name, QWidget *field);
    /// Without a name on its left: it takes the whole width.
    void addWide(QWidget *wide);
    /// Space for fields stays at the top.
    void close();

    /// How many fields show a mistake.
    [[nodiscard]] int mistakesShown() const;
    /// Shows every mistake; the first, if there is one.
    std::optional<Mistake> insist();
    /// Whether anything was typed that is not as it was given.
    [[nodiscard]] bool isChanged() const;

Q_SIGNALS:
    void edited();

private:
    void hear(QWidget *field);

    QGridLayout *m_grid;
    ScopedConnection m_focusWatch;
};

} // namespace raphe
