// What was felt before and what is felt now, on two drawings of the same views with the same scale. Only places that were felt
// again stand on either, so that nothing is given away before it is answered.
#pragma once

#include "app/raphe/BodyPanes.h"

#include <QWidget>

namespace raphe {

class WrappedLabel;

class BeforeAfter : public QWidget {
    Q_OBJECT

public:
    explicit BeforeAfter(const Knowledge &knowledge, QWidget *parent = nullptr);

    void setTheme(const Theme &theme);
    /// Blank when nothing was felt again.
    void show(const Visit &visit);
    [[nodiscard]] BodyPanes &before() { return *m_before; }
    [[nodiscard]] BodyPanes &now() { return *m_now; }

private:
    const Knowledge &m_knowledge;
    QWidget *m_both;
    BodyPanes *m_before;
    BodyPanes *m_now;
    WrappedLabel *m_words;
};

} // namespace raphe
