// The help in a window beside the work: all pages and a field that finds words in them at the left, a page at the right. It holds
// nothing of patients and remembers nothing. Deletes itself when it is closed; the pages must outlive it.
#pragma once

#include "core/document/HelpPages.h"

#include <QWidget>

#include <vector>

class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace raphe {

class HelpView;

class HelpWindow : public QWidget {
    Q_OBJECT

public:
    /// `beside`: the window that it goes away with.
    HelpWindow(const HelpPages &pages, QWidget *beside);

    /// Shows this page, or where to begin when there is none of this id. What was looked for is forgotten.
    void openAt(const QString &topic);
    [[nodiscard]] HelpView &view() { return *m_view; }
    [[nodiscard]] QLineEdit &find() { return *m_find; }
    [[nodiscard]] QListWidget &contents() { return *m_contents; }
    [[nodiscard]] QString said() const;

Q_SIGNALS:
    void lockWanted();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    QWidget *makeLeft();
    QWidget *makeRight();
    void makeKeys();
    void lookFor();
    [[nodiscard]] bool isOn(std::size_t page, const QStringList &words) const;
    [[nodiscard]] std::size_t pageAt() const;
    void showPage();
    void step(int by);
    void tell();

    const HelpPages &m_pages;
    std::vector<QString> m_texts; // of the pages as they are read, made when first looked for
    std::vector<bool> m_isOn; // whether all that is looked for stands on the page or in its title
    std::vector<int> m_found; // in how many places, on each page
    QLineEdit *m_find = nullptr;
    QLabel *m_said = nullptr;
    QListWidget *m_contents = nullptr;
    HelpView *m_view = nullptr;
    QPushButton *m_back = nullptr;
    QPushButton *m_forward = nullptr;
    QPushButton *m_before = nullptr;
    QPushButton *m_next = nullptr;
};

} // namespace raphe
