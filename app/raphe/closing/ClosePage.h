// The close of a visit: what goes home, how it goes on, what the practitioner makes of it, and the signature.
#pragma once

#include "app/raphe/VisitSession.h"

#include <QWidget>

#include <vector>

class QPushButton;

namespace raphe {

class CloseSection;

class ClosePage : public QWidget {
    Q_OBJECT

public:
    explicit ClosePage(VisitSession &session, QWidget *parent = nullptr);

    /// To be called when it comes to the front.
    void begin();

Q_SIGNALS:
    void retestWanted();
    void signWanted();

private:
    QWidget *makeHead();
    void refresh();

    VisitSession &m_session;
    std::vector<CloseSection *> m_sections;
    QPushButton *m_sign = nullptr;
};

} // namespace raphe
