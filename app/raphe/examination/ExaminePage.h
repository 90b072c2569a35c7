// The examination on one page, in the place of the body: the sheet of a region with its movements, its joints and its tests,
// right and left side by side. Every answer is recorded at once.
#pragma once

#include "app/raphe/VisitSession.h"
#include "core/examination/ClusterCount.h"

#include <QWidget>

#include <array>
#include <optional>
#include <set>
#include <string>
#include <vector>

class QComboBox;
class QGridLayout;
class QLabel;
class QPushButton;
class QScrollArea;
class QTabWidget;

namespace raphe {

class SheetRow;
class SideHeads;
class WrappedLabel;

class ExaminePage : public QWidget {
    Q_OBJECT

public:
    explicit ExaminePage(VisitSession &session, QWidget *parent = nullptr);

    /// Puts the keys where one begins; proposes the sheet of the complaint.
    void begin();
    [[nodiscard]] const Sheet *sheet() const { return m_sheet; }
    void showSheet(const std::string &id);
    /// The sheet and the part of it on which the movement or test stands.
    void reveal(const std::string &id);
    /// How movements are measured from now on.
    [[nodiscard]] MoveMode mode() const;
    [[nodiscard]] std::optional<Device> device() const;
    /// The places of the sheet's joints for a pass, right before left.
    [[nodiscard]] std::vector<Place> placesOfPass() const;

Q_SIGNALS:
    void passWanted(const std::vector<Place> &places);
    void bodyWanted();

protected:
    void showEvent(QShowEvent *event) override;

private:
    [[nodiscard]] QWidget *makeHead();
    void propose();
    void offerSheets();
    void show(const Sheet &sheet);
    /// Empties the sheet; each of its parts is filled when it is first looked at.
    void fill();
    void fillSeen();
    void add(int part, SheetRow *row, QGridLayout &grid);
    [[nodiscard]] std::vector<const ExamTest *> testsNow() const;
    void fillMovements();
    void fillSegments();
    void fillTests();
    /// When other tests are called for than those shown.
    void fillTestsAnew();
    void refresh();
    [[nodiscard]] std::set<std::string> tellThroughout(const Cautions &cautions);
    /// Those of the sheet that show a change best, by name.
    [[nodiscard]] QString goodRetests() const;
    void tellRetest();
    [[nodiscard]] std::vector<ClusterCount> countsNow() const;
    void tellCounts();
    void showStudies();

    VisitSession &m_session;
    const Sheet *m_sheet = nullptr;
    QComboBox *m_sheets;
    QComboBox *m_mode;
    QComboBox *m_device;
    QTabWidget *m_parts;
    std::vector<QScrollArea *> m_areas; // movements, joints, tests
    std::vector<SideHeads *> m_heads; // above them
    WrappedLabel *m_throughout; // what to adapt on the whole sheet
    WrappedLabel *m_retest;
    WrappedLabel *m_counts;
    QPushButton *m_worth; // what the counts are worth
    std::array<std::vector<SheetRow *>, 3> m_rows; // of each part
    std::set<int> m_filled; // parts
    std::vector<const ExamTest *> m_tests; // shown
    std::int64_t m_shownFor = 0; // the visit for which the sheet was proposed
    bool m_isChosen = false; // the sheet, by hand
};

} // namespace raphe
