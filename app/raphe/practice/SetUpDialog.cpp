#include "app/raphe/practice/SetUpDialog.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/practice/RecoveryKeyPages.h"
#include "core/store/PlainPractice.h"

#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace raphe {

namespace {

constexpr int steps = 4;

bool isPlain(const std::string &file)
{
    if (!QFileInfo::exists(QString::fromStdString(file)))
        return false;
    const auto plain = isPlainPractice(file);
    return plain.ok() && plain.value(); // what else is there, Practice::make refuses and says so
}

} // namespace

SetUpDialog::SetUpDialog(
    const std::string &file, QWidget *parent, const DerivationCost &cost, const std::vector<TechniqueGroup> &scope)
    : WorkDialog(tr("Set up the practice"), parent),
      m_file(file),
      m_cost(cost),
      m_isSealing(isPlain(file)),
      m_step(new QLabel),
      m_pages(new QStackedWidget),
      m_names(new SetUpNamesPage(
          m_isSealing ? tr(
              "Your records so far are in a file that anybody can read. They move into a sealed one, which takes its place once "
              "both hold the same; the plain file is then removed, though traces of it can stay on the disk for a while.")
                      : tr("Everything is kept in one sealed file on this computer. Only a passphrase opens it."))),
      m_choices(new SetUpChoicesPage(scope)),
      m_key(new RecoveryKeyPage),
      m_proof(new RecoveryProofPage)
{
    m_step->setProperty("role", QStringLiteral("quiet"));
    titleRow().addWidget(m_step, 0, Qt::AlignTop);
    form().addWidget(m_pages, 1);
    m_pages->addWidget(scrolled(m_names));
    m_pages->addWidget(scrolled(m_choices));
    m_pages->addWidget(m_key);
    m_pages->addWidget(m_proof);
    m_pages->addWidget(makeLeavePage());
    m_leave = addButton({});
    addGap();
    m_back = addButton(tr("Back"));
    m_next = addButton({});
    m_next->setDefault(true);
    connect(m_leave, &QPushButton::clicked, this, [this] { m_pages->currentIndex() == Leave ? accept() : reject(); });
    connect(m_back, &QPushButton::clicked, this, &SetUpDialog::back);
    connect(m_next, &QPushButton::clicked, this, &SetUpDialog::next);
    connect(m_key, &RecoveryKeyPage::failed, this, &SetUpDialog::say);
    forgetNoticeWhenTyping();
    resize(600, 600);
    goTo(Names);
}

SetUpDialog::~SetUpDialog() = default;

QWidget *SetUpDialog::makeLeavePage()
{
    auto *page = new QWidget;
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    column->addWidget(new WrappedLabel(tr("The practice is there and opens with your passphrase.")));
    column->addWidget(new WrappedLabel(tr(
        "If the passphrase is ever lost and the recovery key is not on paper, nobody can open the records any more. The key is "
        "not shown again after this; a new one can be made in the settings, under 'Users'.")));
    column->addStretch(1);
    return page;
}

void SetUpDialog::goTo(Page page)
{
    const auto set = [](QPushButton *button, const QString &text) {
        button->setText(text);
        button->setAccessibleName(text);
    };
    say({});
    m_pages->setCurrentIndex(page);
    setTitle(page == Names    ? (m_isSealing ? tr("Seal the practice") : tr("Set up the practice"))
            : page == Choices ? tr("How it shall work")
            : page == Key     ? tr("Put the recovery key on paper")
            : page == Proof   ? tr("Is it on paper?")
                              : tr("Finish without proof?"));
    m_step->setText(page == Leave ? QString() : tr("Step %1 of %2").arg(page + 1).arg(steps));
    m_back->setVisible(page == Choices || page == Proof);
    set(m_leave, page <= Choices ? tr("Cancel") : page == Leave ? tr("Finish without proof") : tr("Finish without proof ..."));
    set(m_next,
        page == Choices     ? (m_isSealing ? tr("Seal it") : tr("Make the practice"))
            : page == Key   ? tr("It is on paper")
            : page == Proof ? tr("Finish")
            : page == Leave ? tr("Back to the key")
                            : tr("Next"));
    if (page == Proof)
        m_proof->ask();
    if (page == Names)
        m_names->setFocus();
    else if (page == Choices)
        m_choices->setFocus();
    else if (page == Key)
        m_key->focusPrint();
    else if (page == Proof)
        m_proof->setFocus();
    else
        m_next->setFocus();
}

void SetUpDialog::next()
{
    switch (static_cast<Page>(m_pages->currentIndex())) {
    case Names:
        if (const QString trouble = m_names->trouble(); !trouble.isEmpty())
            say(trouble);
        else
            goTo(Choices);
        return;
    case Choices:
        if (const QString trouble = m_choices->trouble(); !trouble.isEmpty())
            say(trouble);
        else
            make();
        return;
    case Key: goTo(Proof); return;
    case Proof:
        if (const QString trouble = m_proof->trouble(*m_recovery); !trouble.isEmpty()) {
            say(trouble);
        } else {
            noteOnPaper();
        }
        return;
    case Leave: goTo(Key); return;
    }
}

void SetUpDialog::back()
{
    goTo(m_pages->currentIndex() == Proof ? Key : Names);
}

void SetUpDialog::make()
{
    PracticeSettings settings;
    m_names->writeInto(settings);
    m_choices->writeInto(settings);
    workOn(
        m_isSealing ? tr("Sealing the records ...") : tr("Making the practice ..."),
        [file = m_file, settings, who = m_names->signIn(), name = m_names->name(), passphrase = m_names->passphrase(),
            cost = m_cost, scope = m_choices->scope(), isSealing = m_isSealing]() -> Result<Made> {
            const WipedAccount first(who, name, passphrase, cost, scope);
            const auto made = isSealing ? sealPlainPractice(file, settings, first) : Practice::make(file, settings, first);
            if (!made)
                return made.error();
            return Made{made.value().practice->keys(), made.value().recovery};
        },
        [this](const Result<Made> &outcome) { takeOutcome(outcome); });
}

void SetUpDialog::takeOutcome(const Result<Made> &outcome)
{
    if (!outcome) {
        complain(outcome.error());
        return;
    }
    m_keys = outcome.value().keys;
    m_recovery = outcome.value().recovery;
    m_names->wipePassphrase();
    PracticeSettings settings;
    m_names->writeInto(settings);
    m_key->show({QString::fromStdString(settings.name), QDate::currentDate(), *m_recovery},
        m_isSealing
            ? tr("Your records are in the sealed file now, checked one by one, and the plain file is removed. This is its "
                 "recovery key:")
            : tr("The practice is made and opens with your passphrase. This is its recovery key:"));
    goTo(Key);
}

void SetUpDialog::noteOnPaper()
{
    workOn(
        tr("Finishing ..."),
        [file = m_file, keys = m_keys]() -> Result<Done> {
            const auto practice = Practice::open(file, keys);
            if (!practice)
                return practice.error();
            auto settings = practice.value()->settings();
            if (!settings)
                return settings.error();
            settings.value().isRecoveryOnPaper = true;
            return practice.value()->saveSettings(settings.value());
        },
        [this](const Result<Done> &noted) {
            if (noted)
                accept();
            else
                complain(noted.error());
        });
}

QString SetUpDialog::signIn() const
{
    return QString::fromStdString(m_names->signIn());
}

void SetUpDialog::reject()
{
    if (isWorking())
        return;
    if (!m_keys)
        WorkDialog::reject();
    else
        goTo(m_pages->currentIndex() == Leave ? Key : Leave);
}

void SetUpDialog::done(int result)
{
    m_names->wipePassphrase();
    m_key->clear();
    m_recovery.reset();
    WorkDialog::done(result);
}

} // namespace raphe
