// Opens the help, one window at a time: by F1 in a dialog that has a page of its own, and wherever else it is asked for. It stays
// away while hands or the patient have the screen.
#pragma once

#include "core/document/HelpPages.h"

#include <QObject>
#include <QPointer>

class QWidget;

namespace raphe {

class HelpWindow;

class Help : public QObject {
    Q_OBJECT

public:
    explicit Help(QObject *parent = nullptr);
    ~Help() override;

    /// At the page of this id, beside that window and gone with it.
    void openAt(const QString &topic, QWidget &beside);
    void close();
    /// nullptr when it is not open.
    [[nodiscard]] HelpWindow *window() const;

Q_SIGNALS:
    void failed(const QString &words);
    void lockWanted();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    Result<HelpPages> m_pages;
    QPointer<HelpWindow> m_window;
};

} // namespace raphe
