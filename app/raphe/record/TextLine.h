// Where a person types a text of a record: one line, or several. What nobody typed in comes back exactly as it was given, with
// its spaces and line ends; what was typed comes back without the spaces around it.
#pragma once

#include <QLineEdit>
#include <QPlainTextEdit>

#include <optional>
#include <string>

namespace raphe {

/// One line.
class TextLine : public QLineEdit {
    Q_OBJECT

public:
    explicit TextLine(const QString &name, QWidget *parent = nullptr);

    void give(const std::string &text);
    [[nodiscard]] std::string value() const;
    /// As a whole number; nothing when it is none.
    [[nodiscard]] std::optional<int> number() const;
    [[nodiscard]] bool isBlank() const { return text().trimmed().isEmpty(); }
    [[nodiscard]] bool isChanged() const { return text() != m_shown; }

private:
    std::string m_given;
    QString m_shown; // what the given text looks like in the line
};

/// Several lines. Tab leaves it.
class TextBlock : public QPlainTextEdit {
    Q_OBJECT

public:
    TextBlock(const QString &name, int lines, QWidget *parent = nullptr);

    void give(const std::string &text);
    [[nodiscard]] std::string value() const;
    [[nodiscard]] bool isBlank() const { return toPlainText().trimmed().isEmpty(); }
    [[nodiscard]] bool isChanged() const { return toPlainText() != m_shown; }

protected:
    void changeEvent(QEvent *event) override;

private:
    void fit();

    int m_lines;
    std::string m_given;
    QString m_shown;
};

} // namespace raphe
