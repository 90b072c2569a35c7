// The rows of a patient list that is looked at before it is imported: which of them are ticked, and what is to be looked at
// first. A row with a mistake cannot be ticked; one that looks like somebody else begins unticked.
#pragma once

#include "core/record/PatientCsv.h"

#include <QAbstractTableModel>

#include <set>
#include <vector>

namespace raphe {

struct CsvLook {
    CsvPreview preview;
    std::vector<PatientRecord> existing; // with whom the rows were compared
};

class CsvImportModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Tick, Line, Name, Born, Look, columns };
    struct Counts {
        std::size_t rows = 0;
        std::size_t ticked = 0;
        std::size_t imported = 0;
        std::size_t alike = 0; // perhaps somebody else
        std::size_t mistakes = 0;
    };

    explicit CsvImportModel(QObject *parent = nullptr);

    void show(CsvLook look);
    void clear() { show({}); }
    void showOnlyLooks(bool only);
    /// Those of these rows that can be ticked.
    void setTicked(const std::vector<int> &rows, bool ticked);
    [[nodiscard]] bool isTicked(int row) const { return m_state[rowAt(row)] == State::Ticked; }
    /// What is ticked has become patients.
    void setImported();

    [[nodiscard]] const CsvPreview &preview() const { return m_look.preview; }
    [[nodiscard]] const Counts &counts() const { return m_counts; }
    /// For chosenRows(): all that is not ticked.
    [[nodiscard]] std::set<std::size_t> leftOut() const;
    /// What to look at in a row, as a sentence; empty when nothing.
    [[nodiscard]] const QString &reason(int row) const { return m_reasons[rowAt(row)]; }

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex &index) const override;
    [[nodiscard]] bool setData(const QModelIndex &index, const QVariant &value, int role) override;

Q_SIGNALS:
    void countsChanged();

private:
    enum class State { Mistake, Open, Ticked, Imported };

    [[nodiscard]] std::size_t rowAt(int row) const { return m_shown[static_cast<std::size_t>(row)]; }
    [[nodiscard]] bool canTick(std::size_t row) const { return m_state[row] == State::Open || m_state[row] == State::Ticked; }
    [[nodiscard]] QString text(std::size_t row, int column) const;
    [[nodiscard]] QString likeWhom(const CsvDuplicate &duplicate) const;
    void judgeRows();
    void chooseShown();
    void count();

    CsvLook m_look;
    std::vector<State> m_state; // these two of each row of the list
    std::vector<QString> m_reasons;
    std::vector<std::size_t> m_shown; // indices into the list's rows
    bool m_onlyLooks = false;
    Counts m_counts;
};

} // namespace raphe
