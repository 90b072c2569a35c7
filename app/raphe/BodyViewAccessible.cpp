#include "app/raphe/BodyViewAccessible.h"

#include "app/raphe/BodyView.h"

#include <QAccessible>
#include <QAccessibleWidget>

#include <algorithm>

namespace raphe {

namespace {

// One structure, told by its place; stays valid as long as the view lives.
class PlaceInterface : public QAccessibleInterface {
public:
    PlaceInterface(BodyView *view, Place place) : m_view(view), m_place(std::move(place)) { }

    [[nodiscard]] const Place &place() const { return m_place; }
    bool isValid() const override { return m_view != nullptr; }
    QObject *object() const override { return nullptr; }
    QAccessibleInterface *childAt(int, int) const override { return nullptr; }
    QAccessibleInterface *parent() const override { return QAccessible::queryAccessibleInterface(m_view); }
    QAccessibleInterface *child(int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface *) const override { return -1; }
    QString text(QAccessible::Text t) const override { return t == QAccessible::Name ? m_view->nameOf(m_place) : QString(); }
    void setText(QAccessible::Text, const QString &) override { }
    QRect rect() const override
    {
        const QRect box = m_view->widgetRectOf(m_place);
        return {m_view->mapToGlobal(box.topLeft()), box.size()};
    }
    QAccessible::Role role() const override { return QAccessible::Graphic; }
    QAccessible::State state() const override
    {
        QAccessible::State state;
        state.focusable = true;
        state.focused = m_view->hasFocus() && m_view->cursor() == m_place;
        return state;
    }

private:
    BodyView *m_view;
    Place m_place;
};

class BodyViewInterface : public QAccessibleWidget {
public:
    explicit BodyViewInterface(BodyView *view) : QAccessibleWidget(view, QAccessible::List), m_view(view) { }
    ~BodyViewInterface() override
    {
        for (const QAccessible::Id id : m_ids)
            QAccessible::deleteAccessibleInterface(id);
    }

    int childCount() const override { return static_cast<int>(m_view->placesShown().size()); }
    QAccessibleInterface *child(int index) const override
    {
        const auto places = m_view->placesShown();
        if (index < 0 || index >= static_cast<int>(places.size()))
            return nullptr;
        const Place &place = places[static_cast<std::size_t>(index)];
        for (const QAccessible::Id id : m_ids) {
            auto *known = static_cast<PlaceInterface *>(QAccessible::accessibleInterface(id));
            if (known && known->place() == place)
                return known;
        }
        auto *made = new PlaceInterface(m_view, place); // registered, and deleted through the registry
        m_ids.push_back(QAccessible::registerAccessibleInterface(made));
        return made;
    }
    int indexOfChild(const QAccessibleInterface *child) const override
    {
        const auto places = m_view->placesShown();
        const auto *known = dynamic_cast<const PlaceInterface *>(child);
        const auto it = known ? std::find(places.begin(), places.end(), known->place()) : places.end();
        return it == places.end() ? -1 : static_cast<int>(it - places.begin());
    }
    QAccessibleInterface *focusChild() const override
    {
        const auto places = m_view->placesShown();
        const auto it = m_view->cursor() ? std::find(places.begin(), places.end(), *m_view->cursor()) : places.end();
        return it == places.end() ? nullptr : child(static_cast<int>(it - places.begin()));
    }

private:
    BodyView *m_view;
    mutable std::vector<QAccessible::Id> m_ids;
};

QAccessibleInterface *make(const QString &, QObject *object)
{
    auto *view = qobject_cast<BodyView *>(object);
    return view ? new BodyViewInterface(view) : nullptr; // Qt owns it
}

} // namespace

void installBodyViewAccessibility()
{
    static const bool installed = [] {
        QAccessible::installFactory(make);
        return true;
    }();
    static_cast<void>(installed);
}

} // namespace raphe
