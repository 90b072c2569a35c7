// What would explain the findings, what to check next and what to treat first: three lists, made anew after each finding.
// A row under the mouse or chosen draws its path on the body; a chosen one is aimed at, so that the next grade is recorded
// there; it can be pinned, or dismissed with a reason.
#pragma once

#include "app/paint/BodyArt.h"
#include "app/raphe/CardDelegate.h"
#include "app/raphe/ReasonModel.h"
#include "app/raphe/Settings.h"
#include "app/raphe/VisitSession.h"

#include <QWidget>

#include <array>

class QLabel;
class QListView;
class QPushButton;

namespace raphe {

class WrappedLabel;

class ReasonPanel : public QWidget {
    Q_OBJECT

public:
    ReasonPanel(VisitSession &session, Settings &settings, QWidget *parent = nullptr);

    void setTheme(const Theme &theme);
    [[nodiscard]] QListView &view(AdviceList list) { return *m_lists[static_cast<std::size_t>(list)].view; }
    void pin();
    /// Asks for the reason.
    void dismiss();
    /// The list of checks, in its order.
    [[nodiscard]] std::vector<Place> placesToCheck() const;

Q_SIGNALS:
    /// A row is looked at: what to light up and where to look.
    void shown(const raphe::Place &place, const std::vector<raphe::LitPlace> &lit, const std::vector<raphe::PathStep> &path);
    /// No row is looked at any more.
    void left();
    /// A row was chosen.
    void chosen(const raphe::Place &place);
    /// Hands go over the list of checks with two pedals.
    void passWanted(const std::vector<raphe::Place> &places);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    struct List {
        ReasonModel *model = nullptr;
        QListView *view = nullptr;
        QLabel *heading = nullptr;
    };
    List makeList(AdviceList list, const QString &title, const QString &name);
    void refresh();
    void look(const List &list, int row);
    void choose(const List &list, int row);
    void tellButtons();

    VisitSession &m_session;
    Settings &m_settings;
    std::array<List, 3> m_lists;
    CardDelegate *m_delegate;
    WrappedLabel *m_notice;
    QPushButton *m_pin;
    QPushButton *m_dismiss;
    std::optional<std::pair<AdviceList, Place>> m_chosen;
    bool m_filling = false;
};

} // namespace raphe
