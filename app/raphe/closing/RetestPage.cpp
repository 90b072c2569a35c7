#include "app/raphe/closing/RetestPage.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/closing/BeforeAfter.h"
#include "app/raphe/closing/RetestRow.h"
#include "app/raphe/practice/FormParts.h"
#include "core/treatment/WorkWords.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace raphe {

RetestPage::RetestPage(VisitSession &session, QWidget *parent)
    : QWidget(parent),
      m_session(session),
      m_lines(new QVBoxLayout),
      m_left(hint()),
      m_work(hint()),
      m_pictures(new BeforeAfter(session.knowledge()))
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(10, 8, 10, 10);
    column->setSpacing(8);
    column->addWidget(makeHead());
    column->addWidget(hint(tr("The same test, scale, side and device as before. What was found first stays hidden until the new "
                              "answer is there.")));
    auto *halves = new QHBoxLayout;
    halves->setSpacing(16);
    auto *rows = new QWidget;
    auto *page = new QVBoxLayout(rows);
    page->setContentsMargins(0, 0, 8, 0);
    page->addLayout(m_lines);
    page->addWidget(m_left);
    page->addStretch(1);
    halves->addWidget(scrolled(rows), 3);
    auto *right = new QVBoxLayout;
    right->addWidget(m_work);
    right->addWidget(m_pictures, 1);
    halves->addLayout(right, 2);
    column->addLayout(halves, 1);
    column->addWidget(
        hint(tr("A change in one visit says that something changed, not why. Assists a trained practitioner; follow "
                "local law, scope of practice and licensed care.")));
    connect(&session, &VisitSession::retestChanged, this, &RetestPage::refresh);
    const auto again = [this] {
        if (isVisible())
            fill();
    };
    connect(&session, &VisitSession::visitOpened, this, again);
    connect(&session, &VisitSession::findingsChanged, this, again);
}

QWidget *RetestPage::makeHead()
{
    auto *box = new QWidget;
    auto *row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(heading(tr("Retest")));
    row->addStretch(1);
    QPushButton *treat = pushButton(tr("Treat more"));
    treat->setToolTip(tr("Back to the plan of the treatment"));
    connect(treat, &QPushButton::clicked, this, &RetestPage::treatmentWanted);
    row->addWidget(treat);
    QPushButton *close = pushButton(tr("To the close"));
    close->setToolTip(tr("What goes home, how it goes on, and the signature (K)"));
    connect(close, &QPushButton::clicked, this, &RetestPage::closeWanted);
    row->addWidget(close);
    return box;
}

void RetestPage::setTheme(const Theme &theme)
{
    m_pictures->setTheme(theme);
}

void RetestPage::begin()
{
    fill();
    if (!m_rows.empty())
        m_rows.front()->setFocus();
}

void RetestPage::fill()
{
    qDeleteAll(m_rows);
    m_rows.clear();
    for (const RetestItem &item : toRetest(m_session.visit(), m_session.examination(), *m_session.knowledge().atlas)) {
        m_rows.push_back(makeRetestRow(m_session, item));
        m_lines->addWidget(m_rows.back());
        m_rows.back()->show(); // the page may be seen already
    }
    for (RetestRow *row : m_rows)
        row->setEnabled(!m_session.isReadOnly());
    refresh();
}

void RetestPage::refresh()
{
    const Atlas &atlas = *m_session.knowledge().atlas;
    const Visit &visit = m_session.visit();
    const auto pairs = retestPairs(visit, m_session.examination(), atlas);
    for (RetestRow *row : m_rows)
        row->refresh(pairs);
    QStringList left;
    for (const RetestItem &item : notRetested(visit, m_session.examination(), atlas))
        left << QString::fromStdString(item.name);
    m_left->say(m_rows.empty() ? tr("Nothing was marked for the retest, and nothing stiff or sore was found.")
            : left.isEmpty()   ? tr("All of it was examined again.")
                               : tr("Not examined again: %1.").arg(left.join(QStringLiteral(", "))));
    QStringList work;
    for (const std::string &line : workInWords(visit.treatment, m_session.handTechniques(), atlas))
        work << QString::fromStdString(line);
    m_work->say(work.isEmpty() ? tr("In between: nothing is logged.") : tr("In between:\n%1").arg(work.join(QLatin1Char('\n'))));
    m_pictures->show(visit);
}

} // namespace raphe
