#include "app/raphe/intake/PainBoardAccessible.h"

#include "app/raphe/intake/PainBoard.h"

#include <QAccessible>
#include <QAccessibleWidget>

#include <algorithm>
#include <utility>

namespace raphe {

namespace {

// One region on one view. The board outlives it: its own interface deletes it.
class SpotInterface : public QAccessibleInterface {
public:
    SpotInterface(PainBoard *board, PainBoard::Spot spot) : m_board(board), m_spot(std::move(spot)) { }

    [[nodiscard]] const PainBoard::Spot &spot() const { return m_spot; }
    bool isValid() const override { return true; }
    QObject *object() const override { return nullptr; }
    QAccessibleInterface *childAt(int, int) const override { return nullptr; }
    QAccessibleInterface *parent() const override { return QAccessible::queryAccessibleInterface(m_board); }
    QAccessibleInterface *child(int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface *) const override { return -1; }
    QString text(QAccessible::Text t) const override { return t == QAccessible::Name ? m_board->nameOf(m_spot) : QString(); }
    void setText(QAccessible::Text, const QString &) override { }
    QRect rect() const override
    {
        const QRect box = m_board->boxOf(m_spot);
        return {m_board->mapToGlobal(box.topLeft()), box.size()};
    }
    QAccessible::Role role() const override { return QAccessible::CheckBox; }
    QAccessible::State state() const override
    {
        QAccessible::State state;
        state.focusable = true;
        state.checkable = true;
        state.checked = m_board->isPainted(m_spot);
        state.readOnly = m_board->isReadOnly();
        state.focused = m_board->hasFocus() && m_board->spotAtCursor() == m_spot;
        return state;
    }

private:
    PainBoard *m_board;
    PainBoard::Spot m_spot;
};

class PainBoardInterface : public QAccessibleWidget {
public:
    explicit PainBoardInterface(PainBoard *board) : QAccessibleWidget(board, QAccessible::List), m_board(board) { }
    ~PainBoardInterface() override
    {
        for (const QAccessible::Id id : m_ids)
            QAccessible::deleteAccessibleInterface(id);
    }

    int childCount() const override { return static_cast<int>(m_board->spots().size()); }
    QAccessibleInterface *child(int index) const override
    {
        const auto spots = m_board->spots();
        if (index < 0 || index >= static_cast<int>(spots.size()))
            return nullptr;
        const PainBoard::Spot &spot = spots[static_cast<std::size_t>(index)];
        for (const QAccessible::Id id : m_ids) {
            auto *known = static_cast<SpotInterface *>(QAccessible::accessibleInterface(id));
            if (known && known->spot() == spot)
                return known;
        }
        auto *made = new SpotInterface(m_board, spot); // registered, and deleted through the registry
        m_ids.push_back(QAccessible::registerAccessibleInterface(made));
        return made;
    }
    int indexOfChild(const QAccessibleInterface *child) const override
    {
        const auto *known = dynamic_cast<const SpotInterface *>(child);
        return known ? indexOf(known->spot()) : -1;
    }
    QAccessibleInterface *focusChild() const override
    {
        const auto spot = m_board->spotAtCursor();
        return spot ? child(indexOf(*spot)) : nullptr;
    }

private:
    [[nodiscard]] int indexOf(const PainBoard::Spot &spot) const
    {
        const auto spots = m_board->spots();
        const auto it = std::find(spots.begin(), spots.end(), spot);
        return it == spots.end() ? -1 : static_cast<int>(it - spots.begin());
    }

    PainBoard *m_board;
    mutable std::vector<QAccessible::Id> m_ids;
};

QAccessibleInterface *make(const QString &, QObject *object)
{
    auto *board = qobject_cast<PainBoard *>(object);
    return board ? new PainBoardInterface(board) : nullptr; // Qt owns it
}

} // namespace

void installPainBoardAccessibility()
{
    static const bool installed = [] {
        QAccessible::installFactory(make);
        return true;
    }();
    static_cast<void>(installed);
}

} // namespace raphe
