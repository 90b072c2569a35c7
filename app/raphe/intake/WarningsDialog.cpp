#include "app/raphe/intake/WarningsDialog.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/DecisionDialog.h"
#include "app/raphe/practice/FormParts.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace raphe {

WarningsDialog::WarningsDialog(VisitSession &session, QWidget *parent)
    : WorkDialog(tr("Warning signs"), parent), m_session(session), m_list(new QVBoxLayout), m_state(new WrappedLabel)
{
    m_state->setProperty("role", QStringLiteral("head"));
    form().addWidget(m_state);
    auto *page = new QWidget;
    m_list->setContentsMargins(0, 0, 8, 0);
    m_list->setSpacing(14);
    page->setLayout(m_list);
    // What is asked by voice comes first; then what the practitioner sees and feels; last what nobody else may hear.
    auto due = m_session.warningsToAsk();
    const auto take = [&](const QString &title, auto belongs) {
        std::vector<const WarningSign *> signs;
        std::copy_if(due.begin(), due.end(), std::back_inserter(signs), belongs);
        if (!signs.empty())
            m_list->addWidget(makeGroup(title, signs));
    };
    const auto asked = [](WarningLevel level) {
        return [level](const WarningSign *s) { return !s->byPractitioner && !s->alone && s->level == level; };
    };
    std::vector<const WarningSign *> there; // to be decided, or decided anew
    for (const WarningAnswer &answer : m_session.visit().warnings)
        if (const WarningSign *sign = m_session.adviser().rules().signs().find(answer.sign); sign && answer.isThere)
            there.push_back(sign);
    std::erase_if(due, [&](const WarningSign *sign) { return std::find(there.begin(), there.end(), sign) != there.end(); });
    if (!there.empty())
        m_list->addWidget(makeGroup(tr("What is there: 'Yes' shows what was decided"), there));
    take(tr("A yes ends the work of this visit"), asked(WarningLevel::EmergencyNow));
    take(tr("A yes goes to medical care today"), asked(WarningLevel::SameDay));
    take(tr("A yes is judged before this is treated"), asked(WarningLevel::BeforeTreating));
    take(tr("What you see and feel"), [](const WarningSign *s) { return s->byPractitioner && !s->alone; });
    take(tr("Only while nobody else can hear or read along"), [](const WarningSign *s) { return s->alone; });
    if (due.empty() && there.empty())
        m_list->addWidget(new WrappedLabel(tr("Nothing is to be asked: every answer still holds today.")));
    m_list->addStretch(1);
    form().addWidget(scrolled(page), 1);
    addGap();
    QPushButton *done = addButton(tr("Done"));
    connect(done, &QPushButton::clicked, this, &WarningsDialog::accept);
    keepEnterToFocus();
    resize(720, 690);
    showAnswers();
    (m_groups.empty() ? done : m_groups.front().noToAll)->setFocus();
}

QWidget *WarningsDialog::makeGroup(const QString &title, const std::vector<const WarningSign *> &signs)
{
    auto *box = new QWidget;
    auto *column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    Group group;
    group.noToAll = pushButton({});
    auto *head = new QHBoxLayout;
    head->addWidget(heading(title), 1);
    head->addWidget(group.noToAll);
    column->addLayout(head);
    for (const WarningSign *sign : signs) {
        auto *row = new QHBoxLayout;
        row->setSpacing(6);
        auto *words = new WrappedLabel(QString::fromStdString(sign->ask));
        words->setTextFormat(Qt::PlainText);
        words->setToolTip(QString::fromStdString(sign->name + "\n" + sign->means));
        row->addWidget(words, 1, Qt::AlignVCenter);
        auto *choice = new QButtonGroup(box);
        const auto button = [&](const QString &text) {
            QPushButton *made = pushButton(text);
            made->setCheckable(true);
            made->setAutoDefault(false);
            made->setAccessibleName(tr("%1: %2", "an answer, and the question").arg(text, QString::fromStdString(sign->ask)));
            choice->addButton(made);
            row->addWidget(made, 0, Qt::AlignVCenter);
            return made;
        };
        const Row made{sign, button(tr("No")), button(tr("Yes"))};
        connect(made.no, &QAbstractButton::clicked, this, [this, sign] { answerNo({sign}); });
        connect(made.yes, &QAbstractButton::clicked, this, [this, sign] { answerYes(*sign); });
        group.rows.push_back(made);
        column->addLayout(row);
    }
    connect(group.noToAll, &QPushButton::clicked, this, [this, signs] {
        std::vector<const WarningSign *> open;
        std::copy_if(signs.begin(), signs.end(), std::back_inserter(open),
            [this](const WarningSign *sign) { return !m_session.answerTo(*sign); });
        answerNo(open);
    });
    m_groups.push_back(std::move(group));
    return box;
}

void WarningsDialog::answerNo(const std::vector<const WarningSign *> &signs)
{
    for (const WarningSign *sign : signs)
        if (const auto done = m_session.answerWarning({sign->id, false, m_session.visit().date, {}, {}, {}, {}}); !done) {
            complain(done.error());
            break;
        }
    showAnswers();
}

void WarningsDialog::answerYes(const WarningSign &sign)
{
    if (const auto done = decideOn(m_session, sign, DecisionDialog::Slip::Possible, this); !done)
        complain(done.error());
    addNewlyDue();
    showAnswers();
}

// Some signs are asked only once another is there.
void WarningsDialog::addNewlyDue()
{
    std::vector<const WarningSign *> fresh;
    for (const WarningSign *sign : m_session.warningsToAsk())
        if (std::none_of(m_groups.begin(), m_groups.end(), [&](const Group &group) {
                return std::any_of(group.rows.begin(), group.rows.end(), [&](const Row &row) { return row.sign == sign; });
            }))
            fresh.push_back(sign);
    if (!fresh.empty())
        m_list->insertWidget(m_list->count() - 1, makeGroup(tr("Asked because of an answer"), fresh));
}

void WarningsDialog::showAnswers()
{
    std::size_t open = 0;
    for (const Group &group : m_groups) {
        std::size_t openHere = 0;
        for (const Row &row : group.rows) {
            const WarningAnswer *answer = m_session.answerTo(*row.sign);
            row.no->group()->setExclusive(false); // else the last choice cannot be taken back
            row.no->setChecked(answer && !answer->isThere);
            row.yes->setChecked(answer && answer->isThere);
            row.no->group()->setExclusive(true);
            row.no->setEnabled(!answer || !m_session.isFinal(*answer));
            openHere += answer ? 0 : 1;
        }
        group.noToAll->setText(tr("No to all (%1)").arg(openHere));
        group.noToAll->setAccessibleName(tr("No to all %1 that are open in this group").arg(openHere));
        group.noToAll->setEnabled(openHere > 0);
        open += openHere;
    }
    m_state->say(m_session.isLocked() ? tr("STOP: nothing is treated until what is there is decided, or at this visit at all.")
            : open > 0                ? tr("%1 to ask. A yes stops the work until it is decided what to do.").arg(open)
                                      : tr("All asked."));
}

} // namespace raphe
