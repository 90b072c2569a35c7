#include "tests/shots/Still.h"

#include "app/raphe/BodyView.h"

#include <QTest>

#include <algorithm>

namespace raphe {

bool waitUntilStill(const QWidget &widget)
{
    QTest::qWait(400); // words find their height, drawings are measured, the body is painted anew when the hand rests
    const bool isStill = QTest::qWaitFor(
        [&] {
            const auto views = widget.findChildren<BodyView *>();
            return std::all_of(views.begin(), views.end(), [](const BodyView *view) { return view->isStill(); });
        },
        10000);
    QTest::qWait(50); // and the words about it find their height
    return isStill;
}

} // namespace raphe
