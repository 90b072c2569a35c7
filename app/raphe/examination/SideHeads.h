// RIGHT and LEFT above the columns of a sheet. They stay while the sheet scrolls under them.
#pragma once

#include <QWidget>

class QGridLayout;
class QLabel;

namespace raphe {

class SideHeads : public QWidget {
    Q_OBJECT

public:
    SideHeads();
    /// Stands over columns 1 and 2 of this grid, which lies on that page, from now on.
    void follow(QGridLayout &grid, QWidget &page);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    void place();

    QLabel *m_right;
    QLabel *m_left;
    QGridLayout *m_grid = nullptr; // goes with its page, which is watched
    QWidget *m_page = nullptr;
};

} // namespace raphe
