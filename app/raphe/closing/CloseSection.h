// A part of the close of a visit: it shows what the visit says of it, and writes at once what is changed. What it writes itself
// does not come back to it, so that nobody is disturbed while typing.
#pragma once

#include "app/raphe/VisitSession.h"

#include <QWidget>

class QVBoxLayout;

namespace raphe {

class CloseSection : public QWidget {
    Q_OBJECT

public:
    explicit CloseSection(VisitSession &session, QWidget *parent = nullptr);

    /// Shows what the visit says now.
    void refresh();

protected:
    virtual void show(const Closing &closing) = 0;
    [[nodiscard]] QVBoxLayout &column() { return *m_column; }
    [[nodiscard]] const Closing &closing() const { return m_session.visit().closing; }
    void write(const Closing &closing);
    [[nodiscard]] bool isShowing() const { return m_isShowing; }

    VisitSession &m_session;

private:
    QVBoxLayout *m_column;
    bool m_isShowing = false;
    bool m_isWriting = false;
};

} // namespace raphe
