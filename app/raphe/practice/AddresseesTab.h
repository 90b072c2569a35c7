// The book of those whom letters go to: kept from letters, to be changed or taken out, and new ones.
#pragma once

#include "app/raphe/letter/AddresseeLines.h"
#include "app/raphe/record/RowList.h"

#include <QWidget>

namespace raphe {

class AddresseeRow : public ListRow {
    Q_OBJECT

public:
    using Value = Addressee;
    static Value nothing() { return {}; }
    explicit AddresseeRow(QWidget *parent = nullptr);

    void give(const Addressee &addressee);
    [[nodiscard]] Addressee value() const { return m_lines.value(); }
    [[nodiscard]] bool isBlank() const override { return m_lines.isBlank(); }

protected:
    [[nodiscard]] std::optional<Mistake> ownMistake() const override { return m_lines.mistake(); }

private:
    AddresseeLines m_lines;
};

class AddresseesTab : public QWidget {
    Q_OBJECT

public:
    explicit AddresseesTab(const std::vector<Addressee> &addressees, QWidget *parent = nullptr);

    /// Each once.
    [[nodiscard]] std::vector<Addressee> addressees() const;
    [[nodiscard]] std::optional<Mistake> mistake() const;

private:
    RowsOf<AddresseeRow> *m_rows;
};

} // namespace raphe
