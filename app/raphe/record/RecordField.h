// One field of a patient's record on the form: what is typed, and under it words about it: what was understood, or what there is
// to correct. While somebody types, a mistake is a quiet hint; when they leave the field, or want to save, it is shown as one.
// Fields may hold fields; each speaks for itself.
#pragma once

#include "app/raphe/ScopedConnection.h"

#include <QString>
#include <QWidget>

#include <optional>
#include <vector>

class QPushButton;
class QVBoxLayout;

namespace raphe {

class TextBlock;
class TextLine;
class WrappedLabel;

struct Mistake {
    QString words; // what to do about it
    QWidget *at; // where to type
};

class RecordField : public QWidget {
    Q_OBJECT

public:
    explicit RecordField(QWidget *parent = nullptr);

    [[nodiscard]] std::optional<Mistake> mistake() const;
    [[nodiscard]] bool showsMistake() const { return m_insists && mistake(); }
    /// From now on a mistake is shown as one.
    void insist();

Q_SIGNALS:
    /// What is written here cannot be, and is to be kept as it is; the field is empty then.
    void isUnclear(const QString &written);
    /// Something was typed, or the words under it have changed.
    void edited();

protected:
    /// To what is typed; the words stand under it.
    [[nodiscard]] QVBoxLayout &column() { return *m_column; }
    /// What stands under the words.
    [[nodiscard]] QVBoxLayout &below() { return *m_below; }
    /// The field hears of typing in there.
    void watch(TextLine *line);
    void watch(TextBlock *block);
    /// A field that stands within this one; its own words stand under it.
    void watch(RecordField *inner);
    /// Finds the words anew.
    void tell();

    /// Offers, beside a mistake that is shown, to keep what is written as unclear.
    void offerToKeep();
    /// For offerToKeep().
    [[nodiscard]] virtual QString asWritten() const { return {}; }
    virtual void empty() { }

    /// Too long texts are found without it.
    [[nodiscard]] virtual std::optional<Mistake> ownMistake() const { return std::nullopt; }
    /// Where nothing is to be corrected.
    [[nodiscard]] virtual QString understood() const { return {}; }

private:
    void focusMoved(const QWidget *from, const QWidget *to);
    void typed();

    QVBoxLayout *m_column;
    QVBoxLayout *m_below;
    WrappedLabel *m_words;
    QPushButton *m_keep = nullptr;
    std::vector<TextLine *> m_lines;
    std::vector<TextBlock *> m_blocks;
    ScopedConnection m_focusWatch;
    bool m_wasTyped = false;
    bool m_insists = false;
};

} // namespace raphe
