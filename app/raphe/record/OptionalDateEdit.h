// A day that may be left out, typed as people write it: 1980-03-05, 5.3.1980, and with slashes where day and month can be told
// apart. What was understood stands under it in words; nothing is guessed.
#pragma once

#include "app/raphe/record/RecordField.h"

#include <functional>
#include <string>

namespace raphe {

class OptionalDateEdit : public RecordField {
    Q_OBJECT

public:
    /// Says what was understood, for an ISO 8601 date.
    using Words = std::function<QString(const std::string &)>;
    OptionalDateEdit(const QString &name, Words words, QWidget *parent = nullptr);

    /// An ISO 8601 date, or empty.
    void give(const std::string &isoDate);
    /// The same; what cannot be read is empty, and a mistake.
    [[nodiscard]] std::string value() const;
    [[nodiscard]] bool isBlank() const;
    [[nodiscard]] TextLine *line() { return m_line; }
    [[nodiscard]] const TextLine *line() const { return m_line; }

protected:
    [[nodiscard]] std::optional<Mistake> ownMistake() const override;
    [[nodiscard]] QString understood() const override;

private:
    TextLine *m_line;
    Words m_words;
};

} // namespace raphe
