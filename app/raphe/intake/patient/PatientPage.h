// One page of the screen that the patient is given: a title, one question, large things to touch. What a page asks goes into
// PatientAnswers; the page does not know the visit, the others, or how the patient moves on.
#pragma once

#include "app/raphe/intake/patient/PatientAnswers.h"
#include "app/raphe/intake/patient/PatientWords.h"

#include <QWidget>

#include <vector>

class QPushButton;
class QVBoxLayout;

namespace raphe {

class ChoiceRow;
class TextBlock;
class WrappedLabel;

class PatientPage : public QWidget {
    Q_OBJECT

public:
    PatientPage(const PatientWords &words, const char *titleId, QWidget *parent = nullptr);

    [[nodiscard]] QString title() const;
    /// Shows what is answered so far; `patch` is the one that it is about, or -1. Comes before the page is seen.
    virtual void give(const PatientAnswers &answers, int patch);
    /// Puts what stands on the page into the answers.
    virtual void take(PatientAnswers &answers) const;
    /// Whether there is something to answer, and so to skip.
    [[nodiscard]] virtual bool asks() const { return true; }
    [[nodiscard]] virtual bool isAnswered() const;
    /// Said once to who goes on without an answer.
    [[nodiscard]] virtual const char *missingId() const { return "move-missing"; }
    /// What is to be said of the answers as they stand; empty: nothing.
    [[nodiscard]] virtual QString note() const { return {}; }
    /// Whether 'Go on' leads on from here; else the page itself does.
    [[nodiscard]] virtual bool goesOn() const { return true; }
    /// What was answered, for a last look; empty: nothing.
    [[nodiscard]] virtual QString answerWords(const PatientAnswers &answers, int patch) const;
    /// Where the keys begin; nullptr: at 'Go on'.
    [[nodiscard]] virtual QWidget *firstField() const;
    /// Sizes follow the window: 1 at 1280 x 800.
    virtual void setScale(double scale);

Q_SIGNALS:
    void changed();
    void onward();

protected:
    [[nodiscard]] const PatientWords &words() const { return m_words; }
    [[nodiscard]] QString say(const char *id) const { return m_words.say(id); }
    [[nodiscard]] QVBoxLayout &column() { return *m_column; }
    [[nodiscard]] double scale() const { return m_scale; }
    [[nodiscard]] int patch() const { return m_patch; }
    WrappedLabel *tell(const QString &text, QVBoxLayout *into = nullptr);
    /// For words on which all depends.
    WrappedLabel *tellLarge(QVBoxLayout *into = nullptr);
    /// One of several; as many beside each other as `columns`. Without a question, the title is what is asked.
    ChoiceRow *ask(const QString &question, const QStringList &answers, int columns, bool besideQuestion = false);
    ChoiceRow *askNumber(const QString &question);
    TextBlock *askWords(const QString &question, int lines);
    [[nodiscard]] QPushButton *largeButton(const QString &text);
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void addRow(ChoiceRow *row, const QString &question, bool besideQuestion);

    const PatientWords &m_words;
    QVBoxLayout *m_column;
    WrappedLabel *m_title;
    std::vector<WrappedLabel *> m_large;
    std::vector<ChoiceRow *> m_rows;
    std::vector<WrappedLabel *> m_besideRows;
    std::vector<TextBlock *> m_texts;
    double m_scale = 1;
    int m_patch = -1;
};

/// Text for a button, in two lines when it is long.
[[nodiscard]] QString inTwoLines(const QString &text);

} // namespace raphe
