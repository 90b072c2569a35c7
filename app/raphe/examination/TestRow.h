// A test on the sheet: how it is done, what counts, the answer on each side; why it could not be done, and what studies say of
// it.
#pragma once

#include "app/raphe/examination/SheetRow.h"

class QLineEdit;
class QPushButton;

namespace raphe {

class ChoiceRow;

class TestRow : public SheetRow {
    Q_OBJECT

public:
    /// Keeps a reference to the test.
    TestRow(VisitSession &session, const ExamTest &test);

    void addTo(QGridLayout &grid) override;
    void refresh() override;

protected:
    [[nodiscard]] std::vector<CautionVerdict> verdictsAt(const Cautions &cautions, Side side) const override;

private:
    struct Cell {
        Side side{};
        QWidget *box = nullptr;
        ChoiceRow *answer = nullptr; // none for values
        std::vector<QLineEdit *> values;
        QPushButton *changes = nullptr; // of a nerve
        QPushButton *unable = nullptr;
    };
    [[nodiscard]] Cell makeCell(Side side);
    [[nodiscard]] ChoiceRow *makeAnswer(const QString &name) const;
    void takeAnswer(const Cell &cell);
    void takeValues(const Cell &cell);
    void takeChanges(const Cell &cell);
    void askWhyUnable(const Cell &cell);
    void showWorth(QWidget *parent) const;
    [[nodiscard]] TestResult started(const Cell &cell) const;
    [[nodiscard]] std::optional<int> shown(const TestResult &result) const;

    const ExamTest &m_test;
    std::vector<Cell> m_cells;
    WrappedLabel *m_said = nullptr; // why it could not be done
};

/// What studies say of a test or a cluster, one a paragraph, with counts, intervals and sources.
void showStudies(QWidget *parent, const QString &title, const QStringList &studies);

} // namespace raphe
