// The documents of a visit: which, on what paper, in which language, as they will look; to be printed or saved.
#pragma once

#include "app/raphe/pages/PageOffer.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QListWidget;
class QPushButton;

namespace raphe {

class PagesPreview;
class WrappedLabel;

class PagesDialog : public QDialog {
    Q_OBJECT

public:
    /// `offers` is not empty; `choice` is what is proposed.
    PagesDialog(std::vector<PageOffer> offers, const PageChoice &choice, QWidget *parent = nullptr);

    void choose(std::size_t offer);
    [[nodiscard]] const PageChoice &choice() const { return m_choice; }
    /// What stands in the preview; nothing where it could not be made.
    [[nodiscard]] const PrintedPages &pages() const { return m_pages; }
    /// As the file's ending says: PDF or one of the offer's other formats. Says what happened.
    bool saveAs(const QString &file);

Q_SIGNALS:
    void paperChanged(raphe::Paper paper);

private:
    [[nodiscard]] const PageOffer &offer() const;
    void make();
    void print();
    void save();
    void say(const QString &text);

    const std::vector<PageOffer> m_offers;
    PageChoice m_choice;
    PrintedPages m_pages;
    QListWidget *m_list;
    WrappedLabel *m_about;
    QComboBox *m_paper;
    QComboBox *m_language;
    QComboBox *m_look;
    QWidget *m_forPatients;
    WrappedLabel *m_remarks;
    WrappedLabel *m_said;
    PagesPreview *m_preview;
    QPushButton *m_print;
    QPushButton *m_save;
};

} // namespace raphe
