// A dialog that does something slow: a form, a line for what went wrong, a sign that it is busy, and buttons. While it works the
// form rests and the dialog cannot be left; that takes seconds.
#pragma once

#include "app/raphe/InBackground.h"
#include "core/base/Result.h"

#include <QDialog>
#include <QPointer>

class QHBoxLayout;
class QLabel;
class QProgressBar;
class QPushButton;
class QVBoxLayout;

namespace raphe {

class WrappedLabel;

class WorkDialog : public QDialog {
    Q_OBJECT

public:
    [[nodiscard]] bool isWorking() const { return m_isWorking; }
    void reject() override;

protected:
    WorkDialog(const QString &title, QWidget *parent);

    /// From now on Enter presses the button that has the focus and no other, for a dialog in which a list is worked through.
    void keepEnterToFocus() { m_keepsEnterToFocus = true; }
    void keyPressEvent(QKeyEvent *event) override;

    [[nodiscard]] QVBoxLayout &form() { return *m_form; }
    void setTitle(const QString &title);
    /// Beside the title.
    [[nodiscard]] QHBoxLayout &titleRow() { return *m_titleRow; }
    /// From left to right; a stretch comes with addGap().
    QPushButton *addButton(const QString &text);
    void addGap();

    /// Below the form; an empty text takes it away.
    void say(const QString &text);
    /// The same for words that only go on from what was said, as a count: a screen reader does not read them out anew.
    void amend(const QString &text);
    void complain(const Error &error);
    /// For the line edits that the form has by now: what is being mended is not complained of any longer.
    void forgetNoticeWhenTyping();

    /// Runs `work` in the background and then `then` with its outcome, as inBackground(). `words` say what is being done.
    template <class Work, class Then> void workOn(const QString &words, Work work, Then then)
    {
        begin(words);
        inBackground(this, std::move(work), [this, then = std::move(then)](auto outcome) mutable {
            end();
            then(std::move(outcome));
        });
    }

private:
    void begin(const QString &words);
    void end();

    WrappedLabel *m_title;
    QHBoxLayout *m_titleRow;
    QWidget *m_rest; // these two rest while it works
    QWidget *m_bar;
    QVBoxLayout *m_form;
    QHBoxLayout *m_buttons;
    QWidget *m_notice;
    WrappedLabel *m_message;
    QWidget *m_busy;
    QLabel *m_busyWords;
    QPointer<QWidget> m_focus; // before the work
    bool m_isWorking = false;
    bool m_keepsEnterToFocus = false;
};

} // namespace raphe
