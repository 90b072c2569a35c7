// What a join of two records left over: it is shown and kept, and can be taken out.
#pragma once

#include "app/raphe/record/RecordField.h"

#include <cstddef>

namespace raphe {

class KeptList : public RecordField {
    Q_OBJECT

public:
    /// `name`: of what is listed, in the plural.
    explicit KeptList(const QString &name, QWidget *parent = nullptr);

    void give(const std::vector<QString> &entries);
    /// Those of `given` that were not taken out; as many were given to give().
    template <class T> [[nodiscard]] std::vector<T> keptOf(const std::vector<T> &given) const
    {
        std::vector<T> out;
        for (const Entry &entry : m_entries)
            out.push_back(given[entry.index]);
        return out;
    }

protected:
    [[nodiscard]] QString understood() const override;

private:
    struct Entry {
        std::size_t index;
        QWidget *row;
    };
    void remove(std::size_t index);

    QString m_name;
    std::vector<Entry> m_entries;
};

} // namespace raphe
