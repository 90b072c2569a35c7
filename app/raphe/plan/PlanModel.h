// The plan as rows: cautions that hold for several steps, the steps in order, and after a heading what was left out, each with
// its reasons.
#pragma once

#include "core/plan/SessionPlan.h"

#include <QAbstractListModel>

namespace raphe {

class PlanModel : public QAbstractListModel {
    Q_OBJECT

public:
    enum Role { LinesRole = Qt::UserRole + 1, FullLinesRole };

    explicit PlanModel(const Atlas &atlas, QObject *parent = nullptr) : QAbstractListModel(parent), m_atlas(atlas) { }

    /// `wish`: what it was made with; what is pinned, or worked with a technique chosen by hand, is shown as such.
    void show(SessionPlan plan, const PlanWish &wish);
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex &index) const override;

    [[nodiscard]] const SessionPlan &plan() const { return m_plan; }
    /// nullptr: the row is no step.
    [[nodiscard]] const PlannedStep *step(int row) const;
    /// Nothing: the row is a heading.
    [[nodiscard]] std::optional<Place> place(int row) const;

private:
    struct Row {
        QString title;
        QStringList lines;
        QStringList fullLines; // of the chosen row
        std::optional<Place> place;
        const PlannedStep *step = nullptr; // of m_plan
        bool isLeft = false;
    };
    // A reason and the numbers of the steps that it holds for, where they are several.
    using Shared = std::vector<std::pair<QString, QStringList>>;
    [[nodiscard]] Shared sharedCautions() const;
    [[nodiscard]] Row rowOf(const PlannedStep &step, int number, const Shared &shared, const PlanWish &wish) const;

    const Atlas &m_atlas;
    SessionPlan m_plan;
    std::vector<Row> m_rows;
};

} // namespace raphe
