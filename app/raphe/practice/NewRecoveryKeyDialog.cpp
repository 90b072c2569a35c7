#include "app/raphe/practice/NewRecoveryKeyDialog.h"

#include "app/raphe/practice/FormParts.h"
#include "app/raphe/practice/OnPractice.h"
#include "app/raphe/practice/RecoveryKeyPages.h"

#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace raphe {

NewRecoveryKeyDialog::NewRecoveryKeyDialog(const Practice &practice, QWidget *parent)
    : WorkDialog(tr("A new recovery key"), parent),
      m_practice(practice),
      m_next(RecoveryKey::random()),
      m_pages(new QStackedWidget),
      m_key(new RecoveryKeyPage),
      m_proof(new RecoveryProofPage)
{
    setAttribute(Qt::WA_DeleteOnClose);
    form().addWidget(m_pages, 1);
    m_pages->addWidget(m_key);
    m_pages->addWidget(m_proof);
    addGap();
    connect(addButton(tr("Cancel")), &QPushButton::clicked, this, &NewRecoveryKeyDialog::reject);
    m_back = addButton(tr("Back"));
    m_forward = addButton({});
    m_forward->setDefault(true);
    connect(m_back, &QPushButton::clicked, this, [this] { goTo(Key); });
    connect(m_forward, &QPushButton::clicked, this, &NewRecoveryKeyDialog::next);
    connect(m_key, &RecoveryKeyPage::failed, this, &NewRecoveryKeyDialog::say);
    const auto settings = practice.settings();
    m_key->show({settings ? QString::fromStdString(settings.value().name) : QString(), QDate::currentDate(), m_next},
        tr("The key that you have stays valid until the last step. Then it opens only back-ups made before, and this one opens "
           "the practice:"));
    forgetNoticeWhenTyping();
    resize(600, 600);
    goTo(Key);
    if (!settings)
        complain(settings.error());
}

void NewRecoveryKeyDialog::goTo(Page page)
{
    say({});
    m_pages->setCurrentIndex(page);
    m_back->setVisible(page == Proof);
    const QString text = page == Key ? tr("It is on paper") : tr("Set it");
    m_forward->setText(text);
    m_forward->setAccessibleName(text);
    if (page == Key) {
        m_key->focusPrint();
    } else {
        m_proof->ask();
        m_proof->setFocus();
    }
}

void NewRecoveryKeyDialog::next()
{
    if (m_pages->currentIndex() == Key)
        goTo(Proof);
    else if (const QString trouble = m_proof->trouble(m_next); !trouble.isEmpty())
        say(trouble);
    else
        change();
}

void NewRecoveryKeyDialog::change()
{
    workOn(tr("Setting the new key ..."),
        onPractice(m_practice, [next = m_next](Practice &practice) { return practice.changeRecoveryKey(next); }),
        [this](const Result<Done> &outcome) {
            if (outcome)
                accept();
            else
                complain(outcome.error());
        });
}

void NewRecoveryKeyDialog::done(int result)
{
    m_key->clear();
    WorkDialog::done(result);
}

} // namespace raphe
