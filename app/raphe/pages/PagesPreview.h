// Pages below one another as they will be printed, as wide as there is room.
#pragma once

#include "app/paint/Paper.h"

#include <QScrollArea>

class QLabel;
class QVBoxLayout;

namespace raphe {

class PagesPreview : public QScrollArea {
    Q_OBJECT

public:
    explicit PagesPreview(QWidget *parent = nullptr);

    void show(PrintedPages pages);

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    void paintPages();

    PrintedPages m_pages;
    QVBoxLayout *m_column;
    std::vector<QLabel *> m_sheets;
    int m_width = 0; // as painted
};

} // namespace raphe
