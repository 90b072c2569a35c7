#include "app/raphe/intake/IntakePage.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/ComplaintForm.h"
#include "app/raphe/intake/SinceLastCard.h"
#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/record/TextLine.h"
#include "core/record/PatientSearch.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QStyle>
#include <QTabBar>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

// Their numbers from 0.
std::optional<std::pair<std::size_t, std::size_t>> toldTwice(const std::vector<Complaint> &complaints)
{
    for (std::size_t i = 0; i < complaints.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (const std::string words = foldedWords(complaints[i].text);
                !words.empty() && words == foldedWords(complaints[j].text))
                return std::pair(j, i);
    return std::nullopt;
}

} // namespace

IntakePage::IntakePage(VisitSession &session, QWidget *parent)
    : QWidget(parent), m_session(session), m_pain(new PainPanel(session))
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(10, 8, 10, 10);
    column->setSpacing(8);
    column->addWidget(makeHead());
    auto *halves = new QSplitter;
    halves->setChildrenCollapsible(false);
    halves->addWidget(m_pain);
    halves->addWidget(makeForm());
    halves->setStretchFactor(0, 1);
    halves->setStretchFactor(1, 1);
    column->addWidget(halves, 1);

    connect(m_pain, &PainPanel::patientWanted, this, &IntakePage::patientWanted);
    connect(m_pain, &PainPanel::refused, this, &IntakePage::refused);
    connect(&session, &VisitSession::visitOpened, this, [this] {
        m_current = 0;
        showVisit();
    });
    connect(&session, &VisitSession::intakeChanged, this, &IntakePage::showVisit);
    connect(&session, &VisitSession::findingsChanged, this, &IntakePage::showVisit); // the injury
    showVisit();
}

QWidget *IntakePage::makeHead()
{
    auto *box = new QWidget;
    auto *row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(heading(tr("Intake")));
    m_injured = new QCheckBox(tr("Began with an injury"));
    m_injured->setMinimumHeight(touchTarget);
    m_injured->setToolTip(tr("Then the questions about broken bones and torn tissue are asked"));
    connect(m_injured, &QCheckBox::clicked, this, [this](bool on) { m_session.setInjured(on); });
    row->addWidget(m_injured);
    row->addStretch(1);
    QPushButton *form = pushButton(tr("Printed form ..."));
    form->setToolTip(tr("Pages for the patient to fill in before the visit"));
    connect(form, &QPushButton::clicked, this, &IntakePage::formWanted);
    row->addWidget(form);
    m_consent = pushButton(tr("Consent ..."));
    connect(m_consent, &QPushButton::clicked, this, &IntakePage::consentWanted);
    row->addWidget(m_consent);
    m_examine = pushButton(tr("To the examination"));
    m_examine->setToolTip(tr("Intake and back (E)"));
    connect(m_examine, &QPushButton::clicked, this, &IntakePage::examinationWanted);
    row->addWidget(m_examine);
    return box;
}

QWidget *IntakePage::makeForm()
{
    auto *page = new QWidget;
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(4, 0, 8, 0);
    column->setSpacing(10);
    m_since = new SinceLastCard(m_session);
    connect(m_since, &SinceLastCard::allSame, this, &IntakePage::examinationWanted);
    column->addWidget(m_since);

    auto *chooser = new QHBoxLayout;
    m_tabs = new QTabBar;
    m_tabs->setAccessibleName(tr("Complaints of this visit, the first one is what it is about"));
    m_tabs->setExpanding(false);
    m_tabs->setElideMode(Qt::ElideRight);
    m_tabs->setUsesScrollButtons(true);
    m_tabs->setDrawBase(false);
    connect(m_tabs, &QTabBar::currentChanged, this, &IntakePage::chooseComplaint);
    chooser->addWidget(m_tabs, 1);
    QPushButton *add = pushButton(tr("Another"));
    add->setAccessibleName(tr("Another complaint"));
    connect(add, &QPushButton::clicked, this, &IntakePage::addComplaint);
    chooser->addWidget(add);
    m_first = pushButton(tr("Make first"));
    m_first->setToolTip(tr("The visit is about this one"));
    connect(m_first, &QPushButton::clicked, this, &IntakePage::putFirst);
    chooser->addWidget(m_first);
    column->addLayout(chooser);
    column->addWidget(m_twice = hint());

    auto *asked = new QHBoxLayout;
    m_asked = hint();
    m_stillSo = pushButton(tr("Still so"));
    m_stillSo->setToolTip(tr("What was told of the complaints then holds today too"));
    connect(m_stillSo, &QPushButton::clicked, this, [this] { m_session.confirmComplaints(); });
    asked->addWidget(m_asked, 1);
    asked->addWidget(m_stillSo);
    column->addLayout(asked);
    m_form = new ComplaintForm;
    connect(m_form, &ComplaintForm::edited, this, &IntakePage::takeComplaint);
    column->addWidget(m_form);

    m_promised = new TextBlock(tr("Promised until the next visit, one a line"), 2);
    column->addLayout(labelled(m_promised->accessibleName(), m_promised));
    connect(m_promised, &QPlainTextEdit::textChanged, this, [this] {
        if (!m_filling)
            m_session.setPromised(linesIn(m_promised->toPlainText()));
    });
    column->addStretch(1);
    m_scroll = scrolled(page);
    auto *box = new QWidget;
    auto *both = new QVBoxLayout(box);
    both->setContentsMargins(0, 0, 0, 0);
    both->addWidget(m_pain->details());
    both->addWidget(m_scroll, 1);
    return box;
}

// As wide as what it holds: the area scrolls up and down only.
void IntakePage::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    const int bar = style()->pixelMetric(QStyle::PM_ScrollBarExtent);
    m_scroll->setMinimumWidth(m_scroll->widget()->minimumSizeHint().width() + bar);
}

void IntakePage::setTheme(const Theme &theme)
{
    m_pain->setTheme(theme);
}

void IntakePage::begin()
{
    m_form->focusFirst();
}

const Complaint *IntakePage::before(const Complaint &complaint) const
{
    const auto &last = m_session.lastVisit();
    if (!last)
        return nullptr;
    const auto same = std::find_if(last->complaints.begin(), last->complaints.end(), [&](const Complaint &other) {
        return complaint.episode ? other.episode == complaint.episode : other.text == complaint.text;
    });
    return same == last->complaints.end() ? nullptr : &*same;
}

void IntakePage::showVisit()
{
    m_filling = true;
    const Visit &visit = m_session.visit();
    const bool mayChange = m_session.visitId() != 0 && !m_session.isReadOnly();
    m_injured->setChecked(visit.injured);
    m_injured->setEnabled(mayChange);
    m_consent->setEnabled(m_session.visitId() != 0);
    const std::size_t due = m_session.visitId() != 0 ? m_session.consentsDue().size() : 0;
    m_consent->setText(due == 0 ? tr("Consent: all asked")
            : mayChange         ? tr("Consent: %1 to ask").arg(due)
                                : tr("Consent: %1 not asked").arg(due));
    m_consent->setAccessibleName(m_consent->text());
    m_consent->setToolTip(tr("What is explained and agreed (Alt+C)"));
    const std::size_t count = std::max({visit.complaints.size(), m_current + 1, std::size_t{1}});
    while (m_tabs->count() > static_cast<int>(count))
        m_tabs->removeTab(m_tabs->count() - 1);
    for (std::size_t i = 0; i < count; ++i) {
        const QString words =
            i < visit.complaints.size() ? QString::fromStdString(visit.complaints[i].text).simplified() : QString();
        const QString title =
            tr("%1. %2", "number, words of a complaint").arg(i + 1).arg(words.isEmpty() ? tr("new") : words.left(24));
        if (static_cast<int>(i) < m_tabs->count())
            m_tabs->setTabText(static_cast<int>(i), title);
        else
            m_tabs->addTab(title);
    }
    m_tabs->setCurrentIndex(static_cast<int>(m_current));
    m_first->setVisible(m_current > 0);
    const auto twins = toldTwice(visit.complaints);
    m_twice->setVisible(twins.has_value());
    if (twins)
        m_twice->say(tr("Complaints %1 and %2 are told in the same words. Both are kept as told; empty the words and answers of "
                        "one if it is the same.")
                         .arg(twins->first + 1)
                         .arg(twins->second + 1));
    if (linesIn(m_promised->toPlainText()) != visit.promised) { // what is being typed stays as it is
        QStringList lines;
        for (const std::string &line : visit.promised)
            lines << QString::fromStdString(line);
        m_promised->setPlainText(lines.join(QLatin1Char('\n')));
    }
    m_promised->setReadOnly(!mayChange);
    m_form->setReadOnly(!mayChange);
    m_filling = false;
    showComplaint();
}

void IntakePage::showComplaint()
{
    const auto &complaints = m_session.visit().complaints;
    const Complaint complaint = m_current < complaints.size() ? complaints[m_current] : Complaint{};
    m_form->give(complaint, before(complaint));
    const bool isOld = !complaint.asked.empty() && complaint.asked != m_session.visit().date;
    m_asked->setVisible(isOld);
    m_stillSo->setVisible(isOld && !m_session.isReadOnly());
    if (isOld)
        m_asked->say(tr("As told on %1, not asked again yet. Numbers are asked at each visit.").arg(dayWords(complaint.asked)));
}

void IntakePage::chooseComplaint(int index)
{
    if (m_filling || index < 0)
        return;
    m_current = static_cast<std::size_t>(index);
    showVisit();
}

void IntakePage::addComplaint()
{
    m_current = m_session.visit().complaints.size();
    if (m_current >= Complaint::most) {
        m_current = Complaint::most - 1;
        Q_EMIT refused(tr("A visit holds %1 complaints at most.").arg(Complaint::most));
    }
    showVisit();
    m_form->focusFirst();
}

void IntakePage::putFirst()
{
    std::vector<Complaint> complaints = m_session.visit().complaints;
    if (m_current >= complaints.size())
        return;
    const auto chosen = complaints.begin() + static_cast<std::ptrdiff_t>(m_current);
    std::rotate(complaints.begin(), chosen, chosen + 1);
    m_current = 0;
    m_session.setComplaints(complaints);
}

void IntakePage::takeComplaint()
{
    std::vector<Complaint> complaints = m_session.visit().complaints;
    if (m_current >= complaints.size())
        complaints.resize(m_current + 1);
    Complaint told = m_form->value();
    if (told != complaints[m_current])
        told.asked = m_session.visit().date;
    Complaint bare = told;
    bare.asked.clear();
    if (bare == Complaint{}) // the day of an answer is none
        told = bare;
    complaints[m_current] = std::move(told);
    m_session.setComplaints(complaints);
}

} // namespace raphe
