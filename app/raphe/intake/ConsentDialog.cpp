#include "app/raphe/intake/ConsentDialog.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "core/base/Utf8.h"
#include "core/safety/Consents.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <QVBoxLayout>

namespace raphe {

namespace {

constexpr int listWidth = 280; // pixels
constexpr int anyoneThere = 1; // ids of the two answers about a chaperone
constexpr int nobodyElse = 0;

QString keptFor(Practice &practice)
{
    const auto settings = practice.settings();
    const int years = settings ? settings.value().retentionYears : 0;
    return years > 0 ? ConsentDialog::tr("%1 years").arg(years)
                     : ConsentDialog::tr("as long as the law says", "We keep it for ... after your last visit.");
}

// Presses at once and leaves the focus where it is, which a mnemonic would not.
void addKey(QPushButton *button, Qt::Key key, const QString &meaning, QWidget *dialog)
{
    const QKeySequence sequence(Qt::ALT | key);
    //: A tool tip. %1: what the button does; %2: its key
    button->setToolTip(ConsentDialog::tr("%1 (%2)").arg(meaning, sequence.toString(QKeySequence::NativeText)));
    button->setAutoDefault(false);
    new QShortcut(sequence, dialog, button, &QPushButton::click);
}

} // namespace

ConsentDialog::ConsentDialog(VisitSession &session, QWidget *parent)
    : WorkDialog(tr("Consent"), parent),
      m_session(session),
      m_keptFor(keptFor(session.practice())),
      m_state(new WrappedLabel),
      m_list(new QListWidget),
      m_marks(new WrappedLabel(tr("Marks can stay on the skin."))),
      m_chaperone(new QWidget),
      m_chaperoneChoice(new QButtonGroup(this)),
      m_chaperoneName(new QLineEdit),
      m_guardian(new QWidget),
      m_guardianName(new QLineEdit),
      m_guardianRelation(new QLineEdit),
      m_remark(new QLineEdit),
      m_given(pushButton(tr("Given"))),
      m_refused(pushButton(tr("Refused"))),
      m_withdrawn(pushButton(tr("Taken back"))),
      m_plain(addButton({}))
{
    m_state->setProperty("role", QStringLiteral("head"));
    form().addWidget(m_state);
    auto *row = new QHBoxLayout;
    row->setSpacing(16);
    m_list->setFixedWidth(listWidth);
    m_list->setWordWrap(true);
    m_list->setStyleSheet(QStringLiteral("QListWidget::item { padding: 5px 8px; }"));
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setAccessibleName(tr("What is asked consent for"));
    row->addWidget(m_list);
    auto *right = new QVBoxLayout;
    right->setSpacing(10);
    right->addWidget(makePage(), 1);
    right->addLayout(makeAnswer());
    row->addLayout(right, 1);
    form().addLayout(row, 1);
    form().addWidget(hint(tr("Keys: Alt+G given, Alt+R refused, Alt+T taken back, Alt+A all plain items. Who may consent for a "
                             "patient, and from what age a patient consents alone, is for local law. Assists a "
                             "trained practitioner; follow local law, scope of practice and licensed care.")));
    addKey(m_given, Qt::Key_G, tr("Explained, and the patient says yes"), this);
    addKey(m_refused, Qt::Key_R, tr("The patient says no"), this);
    addKey(m_withdrawn, Qt::Key_T, tr("The patient takes back a yes"), this);
    addKey(m_plain, Qt::Key_A, tr("Records a yes to each of the plain items that are still to ask"), this);
    addGap();
    QPushButton *done = addButton(tr("Done"));
    connect(m_plain, &QPushButton::clicked, this, &ConsentDialog::agreeToPlain);
    connect(done, &QPushButton::clicked, this, &ConsentDialog::accept);
    connect(m_list, &QListWidget::currentRowChanged, this, &ConsentDialog::showItem);
    keepEnterToFocus();
    forgetNoticeWhenTyping();
    orderItems();
    for (const ConsentAnswer &answer : m_session.visit().consents)
        if (answer.guardian) {
            m_guardianName->setText(QString::fromStdString(answer.guardian->name));
            m_guardianRelation->setText(QString::fromStdString(answer.guardian->relation));
        }
    for (std::size_t i = 0; i < m_items.size(); ++i)
        new QListWidgetItem(m_list);
    showAnswers();
    m_list->setCurrentRow(0);
    resize(1160, 780);
    m_list->setFocus();
}

// The patient reads along: larger than the rest of the window.
QWidget *ConsentDialog::makePage()
{
    auto *page = new QWidget;
    page->setObjectName(QStringLiteral("consent"));
    page->setStyleSheet(
        QStringLiteral("QWidget#consent QLabel { font-size: 13pt; } QWidget#consent QLabel#consentTitle { font-size: 17pt; }"));
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    const auto add = [&](const QString &head, std::string ConsentItem::*text) {
        if (!head.isEmpty())
            column->addWidget(heading(head));
        auto *label = new WrappedLabel;
        label->setTextFormat(Qt::PlainText);
        column->addWidget(label);
        column->addSpacing(8);
        m_parts.push_back({label, text});
    };
    add({}, &ConsentItem::title);
    m_parts.front().label->setObjectName(QStringLiteral("consentTitle"));
    m_parts.front().label->setProperty("role", QStringLiteral("head"));
    add(tr("What we do"), &ConsentItem::explain);
    add(tr("What it may bring"), &ConsentItem::benefits);
    add(tr("What can go wrong"), &ConsentItem::risks);
    m_marks->setProperty("role", QStringLiteral("head"));
    column->insertWidget(column->count() - 1, m_marks);
    add(tr("What else you can do"), &ConsentItem::alternatives);
    add(tr("You can stop at any time"), &ConsentItem::withdraw);
    column->addStretch(1);
    m_page = scrolled(page);
    m_page->setFocusPolicy(Qt::StrongFocus); // the arrow keys read on
    m_page->setAccessibleName(tr("What is explained"));
    return m_page;
}

QLayout *ConsentDialog::makeAnswer()
{
    auto *column = new QVBoxLayout;
    column->setSpacing(8);
    const auto field = [](QLineEdit *edit, const QString &name) {
        edit->setPlaceholderText(name);
        edit->setAccessibleName(name);
        edit->setMinimumHeight(touchTarget);
        return edit;
    };
    auto *offered = new QHBoxLayout(m_chaperone);
    offered->setContentsMargins(0, 0, 0, 0);
    offered->addWidget(heading(tr("Chaperone offered")));
    const auto choice = [&](const QString &text, int id) {
        QPushButton *button = pushButton(text);
        button->setCheckable(true);
        button->setAutoDefault(false);
        button->setAccessibleName(tr("Chaperone offered: %1").arg(text));
        m_chaperoneChoice->addButton(button, id);
        offered->addWidget(button);
    };
    choice(tr("does not want one"), nobodyElse);
    choice(tr("somebody is present"), anyoneThere);
    offered->addWidget(field(m_chaperoneName, tr("Who is present")), 1);
    connect(m_chaperoneChoice, &QButtonGroup::idClicked, this, [this](int id) {
        m_chaperoneName->setEnabled(id == anyoneThere);
        say({});
    });
    column->addWidget(m_chaperone);
    auto *guardian = new QHBoxLayout(m_guardian);
    guardian->setContentsMargins(0, 0, 0, 0);
    guardian->addWidget(heading(tr("Consents too")));
    guardian->addWidget(field(m_guardianName, tr("Name of the parent or guardian")), 2);
    guardian->addWidget(field(m_guardianRelation, tr("What they are to the patient")), 1);
    column->addWidget(m_guardian);
    auto *answer = new QHBoxLayout;
    answer->addWidget(field(m_remark, tr("Remark: what was asked, or agreed beside it")), 1);
    for (QPushButton *button : {m_given, m_refused, m_withdrawn})
        answer->addWidget(button);
    connect(m_given, &QPushButton::clicked, this, &ConsentDialog::give);
    connect(m_refused, &QPushButton::clicked, this, [this] { refuse(ConsentState::Refused); });
    connect(m_withdrawn, &QPushButton::clicked, this, [this] { refuse(ConsentState::Withdrawn); });
    column->addLayout(answer);
    return column;
}

// Once: what is answered keeps its row.
void ConsentDialog::orderItems()
{
    for (const ConsentItem &item : items().items)
        m_items.push_back(&item);
    const auto group = [this](const ConsentItem *item) { return isDue(*item) ? 0 : answerTo(*item) ? 1 : 2; };
    std::stable_sort(
        m_items.begin(), m_items.end(), [&](const ConsentItem *a, const ConsentItem *b) { return group(a) < group(b); });
}

const ConsentItem &ConsentDialog::current() const
{
    return *m_items[static_cast<std::size_t>(std::max(0, m_list->currentRow()))];
}

const ConsentAnswer *ConsentDialog::answerTo(const ConsentItem &item) const
{
    const auto &answers = m_session.visit().consents;
    const auto it = std::find_if(answers.begin(), answers.end(), [&](const ConsentAnswer &a) { return a.item == item.id; });
    return it == answers.end() ? nullptr : &*it;
}

bool ConsentDialog::isDue(const ConsentItem &item) const
{
    const auto due = m_session.consentsDue();
    return std::find(due.begin(), due.end(), &item) != due.end();
}

bool ConsentDialog::isGuardianNeeded(const ConsentItem &item) const
{
    return item.covers.guardian || isUnderAge(items(), m_session.visit(), m_session.visit().date);
}

QString ConsentDialog::stateOf(const ConsentItem &item) const
{
    const ConsentAnswer *answer = answerTo(item);
    if (!answer)
        return isDue(item) ? tr("to ask") : tr("not needed so far");
    const QString day = QString::fromStdString(answer->asked);
    switch (answer->state) {
    case ConsentState::Given:
        return answerThatHolds(items(), item, m_session.visit()) ? tr("given on %1").arg(day)
                                                                 : tr("to ask again: given on %1").arg(day);
    case ConsentState::Refused: return tr("refused on %1").arg(day);
    case ConsentState::Withdrawn: return tr("taken back on %1").arg(day);
    }
    return {};
}

QString ConsentDialog::inWords(const std::string &text) const
{
    return QString::fromStdString(text).replace(QLatin1String("{time}"), m_keptFor);
}

void ConsentDialog::showItem()
{
    const ConsentItem &item = current();
    for (const Part &part : m_parts)
        part.label->say(inWords(item.*part.text));
    m_marks->setVisible(item.marks);
    m_page->verticalScrollBar()->setValue(0);
    const ConsentAnswer *answer = answerTo(item);
    m_chaperone->setVisible(item.chaperone);
    m_chaperoneChoice->setExclusive(false); // else the last choice cannot be taken back
    for (QAbstractButton *button : m_chaperoneChoice->buttons())
        button->setChecked(false);
    m_chaperoneChoice->setExclusive(true);
    const bool holds = answer && answerThatHolds(items(), item, m_session.visit());
    if (holds && answer->chaperone)
        m_chaperoneChoice->button(*answer->chaperone == Chaperone::Present ? anyoneThere : nobodyElse)->setChecked(true);
    m_chaperoneName->setText(holds ? QString::fromStdString(answer->chaperoneName) : QString());
    m_chaperoneName->setEnabled(m_chaperoneChoice->checkedId() == anyoneThere);
    m_guardian->setVisible(item.covers.guardian || needsGuardian(items(), m_session.visit()));
    m_remark->setText(answer ? QString::fromStdString(answer->remark) : QString());
    say({});
    showAnswers();
}

void ConsentDialog::showAnswers()
{
    const auto due = m_session.consentsDue();
    for (std::size_t i = 0; i < m_items.size(); ++i) {
        QListWidgetItem *row = m_list->item(static_cast<int>(i));
        row->setText(QString::fromStdString(m_items[i]->title) + QLatin1Char('\n') + stateOf(*m_items[i]));
        QFont font = m_list->font();
        font.setBold(std::find(due.begin(), due.end(), m_items[i]) != due.end());
        row->setFont(font);
    }
    const bool mayChange = !m_session.isReadOnly();
    const ConsentItem &item = current();
    const ConsentAnswer *answer = answerTo(item);
    const bool isYes = answer && answer->state == ConsentState::Given;
    m_given->setEnabled(mayChange);
    m_refused->setEnabled(mayChange && !(isYes && answerThatHolds(items(), item, m_session.visit())));
    m_withdrawn->setEnabled(mayChange && isYes);
    QStringList plain;
    for (const ConsentItem *each : due)
        if (each->together)
            plain << QString::fromStdString(each->title);
    m_plain->setText(tr("Explained and agreed: all %1 plain items", "a count").arg(plain.size()));
    m_plain->setAccessibleName(m_plain->text());
    m_plain->setAccessibleDescription(plain.join(QStringLiteral("; ")));
    m_plain->setEnabled(mayChange && !plain.isEmpty());
    m_state->say(!mayChange        ? tr("This visit is signed or in error: its answers stay as they are.")
            : m_session.isLocked() ? tr("STOP: nothing is examined or treated at this visit as it stands.")
            : due.empty()          ? tr("All asked. What is refused or taken back is not done.")
                                   : tr("%1 to ask. What is refused or taken back is not done.").arg(due.size()));
}

bool ConsentDialog::isComplete(const ConsentItem &item)
{
    if (item.adultsOnly && isUnderAge(items(), m_session.visit(), m_session.visit().date)) {
        say(tr("This is not done with a patient under %1.").arg(items().guardianBelow));
        return false;
    }
    if (isGuardianNeeded(item) && !saysSomething(m_guardianName->text().toStdString())) {
        m_guardian->show();
        m_guardianName->setFocus();
        say(item.covers.guardian ? tr("Write down who consents for the patient: the name of the parent or guardian.")
                                 : tr("This patient is under %1: write down the name of the parent or guardian who consents too.")
                                       .arg(items().guardianBelow));
        return false;
    }
    if (isGuardianNeeded(item) && isPatient(m_session.visit(), m_guardianName->text().toStdString())) {
        m_guardianName->setFocus();
        say(tr("That is the patient's own name: write down the parent or guardian who consents too."));
        return false;
    }
    if (item.chaperone && m_chaperoneChoice->checkedId() < 0) {
        m_chaperoneChoice->button(nobodyElse)->setFocus();
        say(tr("Offer a chaperone first, and record what the patient wants."));
        return false;
    }
    if (item.chaperone && m_chaperoneChoice->checkedId() == anyoneThere
        && !saysSomething(m_chaperoneName->text().toStdString())) {
        m_chaperoneName->setFocus();
        say(tr("Write down who is present."));
        return false;
    }
    return true;
}

bool ConsentDialog::record(const ConsentItem &item, ConsentState state)
{
    ConsentAnswer answer{item.id, state, m_session.visit().date, {}, {}, {}, {}};
    if (item.chaperone && m_chaperoneChoice->checkedId() >= 0) {
        const bool isThere = m_chaperoneChoice->checkedId() == anyoneThere;
        answer.chaperone = isThere ? Chaperone::Present : Chaperone::Declined;
        if (isThere)
            answer.chaperoneName = m_chaperoneName->text().trimmed().toStdString();
    }
    const std::string name = m_guardianName->text().trimmed().toStdString();
    if (!name.empty() && (isGuardianNeeded(item) || needsGuardian(items(), m_session.visit())))
        answer.guardian = Guardian{name, m_guardianRelation->text().trimmed().toStdString()};
    if (&item == &current())
        answer.remark = m_remark->text().trimmed().toStdString();
    const auto done = m_session.answerConsent(answer);
    if (!done)
        complain(done.error());
    return done.ok();
}

void ConsentDialog::give()
{
    if (isComplete(current()) && record(current(), ConsentState::Given))
        goToNextDue();
}

void ConsentDialog::refuse(ConsentState state)
{
    if (record(current(), state))
        showItem();
}

void ConsentDialog::agreeToPlain()
{
    for (const ConsentItem *item : m_session.consentsDue())
        if (item->together && !(isComplete(*item) && record(*item, ConsentState::Given)))
            return showAnswers();
    goToNextDue();
}

// The next one below that is to ask, else the first; else it stays.
void ConsentDialog::goToNextDue()
{
    const int count = m_list->count();
    for (int step = 1; step <= count; ++step) {
        const int row = (m_list->currentRow() + step) % count;
        if (isDue(*m_items[static_cast<std::size_t>(row)])) {
            m_list->setCurrentRow(row);
            return showItem();
        }
    }
    showItem();
}

} // namespace raphe
