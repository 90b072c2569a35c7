// What a place is tied to, as rows: the tissue, the path in words, what the evidence means, the sources.
#pragma once

#include "core/reasoning/Knowledge.h"
#include "core/reasoning/Trace.h"

#include <QAbstractListModel>

#include <optional>

namespace raphe {

class TraceModel : public QAbstractListModel {
    Q_OBJECT

public:
    enum Role { ShortRole = Qt::UserRole + 1, LinesRole }; // in a word; in full

    explicit TraceModel(const Knowledge &knowledge, QObject *parent = nullptr);

    /// Shows one group of what the place is tied to, up to a ring; no place: no rows.
    void show(const std::optional<Place> &place, TraceGroup group, std::size_t ring);
    /// Largest ring of the group shown (0 when there is none).
    [[nodiscard]] std::size_t rings() const { return m_rings; }
    [[nodiscard]] const std::vector<Traced> &rows() const { return m_rows; }

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;

private:
    [[nodiscard]] QStringList linesOf(const Traced &traced) const;

    const Knowledge &m_knowledge;
    std::optional<Place> m_place;
    std::vector<Traced> m_all; // of the place
    std::vector<Traced> m_rows;
    std::size_t m_rings = 0;
};

} // namespace raphe
