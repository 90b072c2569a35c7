// Finds a structure by any of its names, typing errors and all; a side word ('left', 'r') picks the side.
#pragma once

#include "core/anatomy/NameSearch.h"

#include <QLineEdit>

class QCompleter;
class QStandardItemModel;

namespace raphe {

/// What typed text means: a name, and a side where a side word stands with it.
struct TypedPlace {
    std::string name;
    std::optional<Side> side;
};
[[nodiscard]] TypedPlace typedPlace(const QString &text);

class SearchBox : public QLineEdit {
    Q_OBJECT

public:
    explicit SearchBox(const Atlas &atlas, QWidget *parent = nullptr);

    /// The places offered for what is typed, best first.
    [[nodiscard]] std::vector<Place> offered() const { return m_offered; }

Q_SIGNALS:
    void chosen(const raphe::Place &place);
    void nothingFound(const QString &text);

private:
    void offer(const QString &text);
    void choose(int row);

    const Atlas &m_atlas;
    NameSearch m_search;
    QStandardItemModel *m_rows;
    QCompleter *m_completer;
    std::vector<Place> m_offered;
};

} // namespace raphe
