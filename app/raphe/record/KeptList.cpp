#include "app/raphe/record/KeptList.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

KeptList::KeptList(const QString &name, QWidget *parent) : RecordField(parent), m_name(name) { }

void KeptList::give(const std::vector<QString> &entries)
{
    for (std::size_t i = 0; i < entries.size(); ++i) {
        auto *row = new QWidget;
        auto *line = new QHBoxLayout(row);
        line->setContentsMargins(2, 0, 0, 0);
        line->setSpacing(6);
        auto *words = new WrappedLabel(entries[i]);
        line->addWidget(words, 1);
        auto *button = new QPushButton(tr("Remove"));
        button->setMinimumHeight(touchTarget);
        button->setAccessibleName(tr("Remove from %1: %2", "what is listed, the entry").arg(m_name, entries[i]));
        line->addWidget(button);
        connect(button, &QPushButton::clicked, this, [this, i] { remove(i); });
        column().addWidget(row);
        m_entries.push_back({i, row});
    }
    tell();
}

void KeptList::remove(std::size_t index)
{
    const auto at = std::find_if(m_entries.begin(), m_entries.end(), [&](const Entry &entry) { return entry.index == index; });
    QWidget *row = at->row;
    m_entries.erase(at);
    row->hide(); // the keyboard goes on to the next entry or field
    row->setParent(nullptr);
    row->deleteLater(); // its button is still at work
    tell();
}

QString KeptList::understood() const
{
    return m_entries.empty() ? tr("All taken out.") : tr("From a record that was joined to this one. Take out what is wrong.");
}

} // namespace raphe
