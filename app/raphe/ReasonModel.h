// One of the three lists as rows: headings, what is offered with bar, reason and evidence, and what was dismissed.
#pragma once

#include "core/plan/Advice.h"

#include <QAbstractListModel>

#include <optional>
#include <vector>

namespace raphe {

class ReasonModel : public QAbstractListModel {
    Q_OBJECT

public:
    /// Lines: reason and evidence in short, and in full. Bar: 0 to 1, or nothing.
    enum Role { LinesRole = Qt::UserRole + 1, FullLinesRole, BarRole };

    ReasonModel(const Atlas &atlas, AdviceList list, QObject *parent = nullptr);

    void show(const Advice &advice, const Visit &visit);
    void clear();
    [[nodiscard]] AdviceList list() const { return m_list; }
    /// What a row offers; nullptr for a heading.
    [[nodiscard]] const Suggestion *suggestion(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex &index) const override;

private:
    struct Row {
        QString heading; // of a row that offers nothing
        std::optional<Suggestion> offered;
        bool isPinned = false;
        QString dismissed; // the reason
        double bar = 0;
    };
    void addOffered(std::vector<Suggestion> list, const Visit &visit);
    void addHeading(const QString &text, double bar = 0);
    [[nodiscard]] QStringList linesOf(const Row &row, bool inFull) const;
    [[nodiscard]] QStringList cautionsOf(const Suggestion &s, bool inFull) const;

    const Atlas &m_atlas;
    AdviceList m_list;
    std::vector<Row> m_rows;
    std::vector<CautionVerdict> m_general; // said once, above the lists
};

} // namespace raphe
