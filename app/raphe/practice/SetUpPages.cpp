#include "app/raphe/practice/SetUpPages.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/practice/PassphraseEdit.h"

#include <QHBoxLayout>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace raphe {

namespace {

constexpr int letterheadLines = 3;

QVBoxLayout *pageColumn(QWidget *page)
{
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    return column;
}

QHBoxLayout *sideBySide()
{
    auto *row = new QHBoxLayout;
    row->setSpacing(12);
    return row;
}

} // namespace

QString proposedSignIn(const QString &name)
{
    const QString first = name.trimmed().section(QLatin1Char(' '), 0, 0);
    QString out;
    for (const QChar c : first.normalized(QString::NormalizationForm_D))
        if (c.isLetterOrNumber() || c.isSurrogate())
            out += c;
    return out.toLower().normalized(QString::NormalizationForm_C);
}

SetUpNamesPage::SetUpNamesPage(const QString &introduction, QWidget *parent)
    : QWidget(parent),
      m_practice(new QLineEdit),
      m_letterhead(new QPlainTextEdit),
      m_name(new QLineEdit),
      m_signIn(new QLineEdit),
      m_passphrase(new PassphraseEdit(tr("Passphrase")))
{
    QVBoxLayout *column = pageColumn(this);
    column->addWidget(hint(introduction));
    column->addLayout(labelled(tr("Name of the practice"), m_practice));
    m_letterhead->setTabChangesFocus(true);
    m_letterhead->setPlaceholderText(tr("Address, telephone: as it shall stand on paper. May wait."));
    column->addLayout(labelled(tr("Letterhead"), m_letterhead));
    m_letterhead->setFixedHeight(m_letterhead->fontMetrics().lineSpacing() * letterheadLines + 24);
    QHBoxLayout *person = sideBySide();
    person->addLayout(labelled(tr("Your name"), m_name), 3);
    person->addLayout(labelled(tr("Sign-in name"), m_signIn), 2);
    column->addLayout(person);
    column->addWidget(m_passphrase);
    column->addStretch(1);
    connect(m_name, &QLineEdit::textEdited, this, &SetUpNamesPage::proposeSignIn);
    connect(m_signIn, &QLineEdit::textEdited, this, [this](const QString &typed) { m_isSignInTheirs = !typed.isEmpty(); });
    setFocusProxy(m_practice);
}

void SetUpNamesPage::proposeSignIn()
{
    if (!m_isSignInTheirs)
        m_signIn->setText(proposedSignIn(m_name->text()));
}

QString SetUpNamesPage::trouble()
{
    const auto isMissing = [](QLineEdit *field) {
        if (!field->text().trimmed().isEmpty())
            return false;
        field->setFocus();
        return true;
    };
    if (isMissing(m_practice))
        return tr("Give the practice a name; it can be changed later.");
    if (isMissing(m_name))
        return tr("Type your name: it stands under what you sign.");
    if (isMissing(m_signIn))
        return tr("Choose a sign-in name.");
    const QString passphrase = m_passphrase->trouble();
    if (passphrase.isEmpty())
        return {};
    m_passphrase->focusTrouble();
    return tr("The passphrase: %1", "followed by a sentence").arg(passphrase);
}

void SetUpNamesPage::writeInto(PracticeSettings &settings) const
{
    settings.name = storedName(m_practice->text());
    settings.letterhead = storedName(m_letterhead->toPlainText());
}

std::string SetUpNamesPage::signIn() const
{
    return storedName(m_signIn->text());
}

std::string SetUpNamesPage::name() const
{
    return storedName(m_name->text());
}

Passphrase SetUpNamesPage::passphrase() const
{
    return m_passphrase->passphrase();
}

void SetUpNamesPage::wipePassphrase()
{
    m_passphrase->wipeBoth();
}

SetUpChoicesPage::SetUpChoicesPage(const std::vector<TechniqueGroup> &scope, QWidget *parent) : QWidget(parent)
{
    const PracticeSettings proposed;
    m_folder = new FolderEdit(proposed.backupFolder);
    m_lock = new LockBox(proposed.lockMinutes);
    m_units = new UnitsBox(proposed.isMetric);
    m_language = new LanguageBox(proposed.language);
    QVBoxLayout *column = pageColumn(this);
    column->addWidget(hint(tr("All of this can be changed later in the settings.")));
    column->addWidget(m_folder);
    column->addWidget(
        hint(tr("Best on a drive that is unplugged afterwards: what is not connected cannot be spoilt or stolen with "
                "this computer. Back-ups are sealed as the practice is.")));
    column->addWidget(m_lock);
    QHBoxLayout *row = sideBySide();
    row->addWidget(m_units, 1);
    row->addWidget(m_language, 1);
    column->addLayout(row);
    if (!scope.empty()) {
        m_scope = new ScopeTicks(tr("Techniques within your scope of practice"), scope, {});
        column->addWidget(m_scope);
    }
    column->addStretch(1);
    setFocusProxy(m_folder);
}

QString SetUpChoicesPage::trouble()
{
    if (QString folder = m_folder->trouble(); !folder.isEmpty()) {
        m_folder->setFocus();
        return folder;
    }
    return m_scope ? m_scope->trouble() : QString();
}

void SetUpChoicesPage::writeInto(PracticeSettings &settings) const
{
    settings.backupFolder = m_folder->folder();
    settings.lockMinutes = m_lock->minutes();
    settings.isMetric = m_units->isMetric();
    settings.language = m_language->code();
}

std::vector<std::string> SetUpChoicesPage::scope() const
{
    return m_scope ? m_scope->scope() : std::vector<std::string>();
}

} // namespace raphe
