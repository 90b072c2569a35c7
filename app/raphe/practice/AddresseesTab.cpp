#include "app/raphe/practice/AddresseesTab.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/record/TextLine.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

AddresseeRow::AddresseeRow(QWidget *parent) : ListRow(tr("addressee"), parent)
{
    auto *column = new QVBoxLayout;
    m_lines.addTo(*column);
    line().addLayout(column, 1);
    watch(m_lines.name());
    watch(m_lines.role());
    watch(m_lines.address());
    setStops({m_lines.name(), m_lines.role(), m_lines.address()});
}

void AddresseeRow::give(const Addressee &addressee)
{
    const QSignalBlocker quietName(m_lines.name());
    const QSignalBlocker quietRole(m_lines.role());
    const QSignalBlocker quietAddress(m_lines.address());
    m_lines.give(addressee);
    tellButton();
}

AddresseesTab::AddresseesTab(const std::vector<Addressee> &addressees, QWidget *parent)
    : QWidget(parent), m_rows(new RowsOf<AddresseeRow>([] { return new AddresseeRow; }))
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 12, 0, 0);
    column->setSpacing(12);
    column->addWidget(heading(tr("Whom letters go to")));
    column->addWidget(
        hint(tr("They are offered when a letter is written, where new ones are kept as well. Letters that were kept stay "
                "as they are, whatever is changed here.")));
    column->addWidget(m_rows);
    column->addStretch(1);
    m_rows->give(addressees);
}

std::optional<Mistake> AddresseesTab::mistake() const
{
    for (const ListRow *row : m_rows->rows())
        if (auto found = row->mistake())
            return found;
    return m_rows->mistake();
}

std::vector<Addressee> AddresseesTab::addressees() const
{
    std::vector<Addressee> out;
    for (const Addressee &one : m_rows->value())
        if (std::find(out.begin(), out.end(), one) == out.end())
            out.push_back(one);
    return out;
}

} // namespace raphe
