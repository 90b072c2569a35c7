#include "app/raphe/closing/ClosePage.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/closing/AheadSection.h"
#include "app/raphe/closing/HomeSection.h"
#include "app/raphe/closing/OwnSection.h"
#include "app/raphe/closing/ReviewBox.h"
#include "app/raphe/practice/FormParts.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace raphe {

ClosePage::ClosePage(VisitSession &session, QWidget *parent) : QWidget(parent), m_session(session)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(10, 8, 10, 10);
    column->setSpacing(8);
    column->addWidget(makeHead());
    auto *review = new ReviewBox(session);
    auto *home = new HomeSection(session);
    auto *ahead = new AheadSection(session);
    auto *own = new OwnSection(session);
    m_sections = {review, home, ahead, own};
    column->addWidget(review);
    auto *halves = new QHBoxLayout;
    halves->setSpacing(16);
    const auto half = [&](std::initializer_list<QWidget *> sections) {
        auto *page = new QWidget;
        auto *rows = new QVBoxLayout(page);
        rows->setContentsMargins(0, 0, 8, 0);
        rows->setSpacing(14);
        for (QWidget *section : sections)
            rows->addWidget(section);
        rows->addStretch(1);
        halves->addWidget(scrolled(page), 1);
    };
    half({home});
    half({ahead, own});
    column->addLayout(halves, 1);
    column->addWidget(hint(tr("Assists a trained practitioner; follow local law, scope of practice and licensed care.")));
    const auto again = [this] {
        if (isVisible())
            refresh();
    };
    connect(&session, &VisitSession::visitOpened, this, again);
    connect(&session, &VisitSession::closingChanged, this, again);
}

QWidget *ClosePage::makeHead()
{
    auto *box = new QWidget;
    auto *row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(heading(tr("Close of the visit")));
    row->addStretch(1);
    QPushButton *back = pushButton(tr("Back to the retest"));
    back->setToolTip(tr("What was stiff or sore, once more (J)"));
    connect(back, &QPushButton::clicked, this, &ClosePage::retestWanted);
    row->addWidget(back);
    m_sign = pushButton(tr("Sign"));
    connect(m_sign, &QPushButton::clicked, this, &ClosePage::signWanted);
    row->addWidget(m_sign);
    return box;
}

void ClosePage::begin()
{
    refresh();
    m_sign->setFocus();
}

void ClosePage::refresh()
{
    for (CloseSection *section : m_sections)
        section->refresh();
    m_sign->setEnabled(m_session.visitId() != 0 && !m_session.isReadOnly());
}

} // namespace raphe
