// A single text of a record.
#pragma once

#include "app/raphe/record/RecordField.h"

#include <string>

namespace raphe {

class TextField : public RecordField {
    Q_OBJECT

public:
    /// `needed`: what to do when nothing is written; empty when it may be left out.
    explicit TextField(const QString &name, const QString &needed = {}, QWidget *parent = nullptr);

    void give(const std::string &text);
    [[nodiscard]] std::string value() const;
    [[nodiscard]] TextLine &line() { return *m_line; }

protected:
    [[nodiscard]] std::optional<Mistake> ownMistake() const override;

private:
    TextLine *m_line;
    QString m_needed;
};

/// A text of several lines, as an address.
class TextBlockField : public RecordField {
    Q_OBJECT

public:
    TextBlockField(const QString &name, int lines, QWidget *parent = nullptr);

    void give(const std::string &text);
    [[nodiscard]] std::string value() const;

private:
    TextBlock *m_block;
};

} // namespace raphe
