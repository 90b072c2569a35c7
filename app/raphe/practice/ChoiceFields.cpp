#include "app/raphe/practice/ChoiceFields.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/practice/Passphrase.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QGridLayout>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace raphe {

namespace {

// Our choice, no source. What is offered here says nothing on which texts exist.
constexpr std::array languages{"en", "de", "es", "fr", "it", "nl", "pl", "pt"};
constexpr std::array lockMinutes{1, 2, 5, 10, 15, 30, 60, 0};

QVBoxLayout *bareColumn(QWidget *owner)
{
    auto *column = new QVBoxLayout(owner);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    return column;
}

void addChoice(QComboBox &box, const QString &text, const QVariant &value, bool isChosen)
{
    box.addItem(text, value);
    if (isChosen)
        box.setCurrentIndex(box.count() - 1);
}

} // namespace

QString ownName(const std::string &code)
{
    if (code == "en")
        return QStringLiteral("English"); // Qt would say which one
    if (code == "es")
        return QStringLiteral("Espa\u00f1ol"); // the same
    const QLocale locale(QString::fromStdString(code));
    const QString name = locale.language() == QLocale::C ? QString() : locale.nativeLanguageName();
    return name.isEmpty() ? QString::fromStdString(code) : name.left(1).toUpper() + name.mid(1);
}

LanguageBox::LanguageBox(const std::string &code, QWidget *parent) : QWidget(parent), m_box(new QComboBox)
{
    const auto add = [&](const std::string &each) {
        addChoice(*m_box, ownName(each), QString::fromStdString(each), each == code);
    };
    for (const char *each : languages)
        add(each);
    if (std::find(languages.begin(), languages.end(), code) == languages.end())
        add(code);
    bareColumn(this)->addLayout(labelled(tr("Language for patients"), m_box));
}

std::string LanguageBox::code() const
{
    return m_box->currentData().toString().toStdString();
}

UnitsBox::UnitsBox(bool isMetric, QWidget *parent) : QWidget(parent), m_box(new QComboBox)
{
    addChoice(*m_box, tr("Centimetres and kilograms"), true, isMetric);
    addChoice(*m_box, tr("Inches and pounds"), false, !isMetric);
    bareColumn(this)->addLayout(labelled(tr("Units"), m_box));
}

bool UnitsBox::isMetric() const
{
    return m_box->currentData().toBool();
}

LockBox::LockBox(int minutes, QWidget *parent) : QWidget(parent), m_box(new QComboBox), m_words(hint())
{
    const auto add = [&](int each) {
        addChoice(*m_box,
            each == 0       ? tr("Never")
                : each == 1 ? tr("After 1 minute")
                            : tr("After %1 minutes").arg(each),
            each, each == minutes);
    };
    for (const int each : lockMinutes)
        add(each);
    if (std::find(lockMinutes.begin(), lockMinutes.end(), minutes) == lockMinutes.end())
        add(minutes);
    QVBoxLayout *column = bareColumn(this);
    column->addLayout(labelled(tr("Lock when left alone"), m_box));
    column->addWidget(m_words);
    connect(m_box, &QComboBox::currentIndexChanged, this, &LockBox::tell);
    tell();
}

int LockBox::minutes() const
{
    return m_box->currentData().toInt();
}

void LockBox::tell()
{
    m_words->say(minutes() == 0
            ? tr("Whoever comes to this computer while you are away can read every record and sign in your name.")
            : tr("Your passphrase then opens it again where you were."));
}

FolderEdit::FolderEdit(const std::string &folder, QWidget *parent)
    : QWidget(parent), m_before(folder), m_field(new QLineEdit(QString::fromStdString(folder)))
{
    m_field->setPlaceholderText(tr("None: back-ups are made by hand only"));
    QPushButton *button = pushButton(tr("Choose ..."));
    button->setAccessibleName(tr("Choose the folder for back-ups"));
    auto *row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(m_field, 1);
    row->addWidget(button);
    bareColumn(this)->addLayout(labelled(tr("Folder for back-ups"), row, m_field));
    setFocusProxy(m_field);
    connect(button, &QPushButton::clicked, this, &FolderEdit::choose);
}

void FolderEdit::choose()
{
    const QString chosen = QFileDialog::getExistingDirectory(this, tr("Folder for back-ups"), m_field->text());
    if (!chosen.isEmpty())
        m_field->setText(chosen);
}

std::string FolderEdit::folder() const
{
    return m_field->text().trimmed().toStdString(); // as the file system has it: not brought to one form of Unicode
}

QString FolderEdit::trouble() const
{
    if (folder().empty() || folder() == m_before) // the drive may be unplugged
        return {};
    const QFileInfo info(QString::fromStdString(folder()));
    if (!info.isAbsolute() || !info.isDir())
        return tr("There is no folder '%1'. Choose another one for back-ups, or none.").arg(info.filePath());
    if (!info.isWritable())
        return tr("Nothing can be written into '%1'. Choose another folder for back-ups, or none.").arg(info.filePath());
    return {};
}

ScopeTicks::ScopeTicks(
    const QString &title, const std::vector<TechniqueGroup> &groups, const std::vector<std::string> &chosen, QWidget *parent)
    : QWidget(parent), m_unknown(chosen)
{
    QVBoxLayout *column = bareColumn(this);
    column->addWidget(new QLabel(title));
    auto *grid = new QGridLayout;
    grid->setHorizontalSpacing(16);
    grid->setVerticalSpacing(0);
    for (const TechniqueGroup &group : groups) {
        const QString name = capitalised(QString::fromStdString(group.name));
        auto *tick = new QCheckBox(name);
        tick->setMinimumHeight(touchTarget);
        tick->setAccessibleName(name);
        tick->setChecked(chosen.empty() || std::find(chosen.begin(), chosen.end(), group.id) != chosen.end());
        const int at = static_cast<int>(m_ticks.size());
        grid->addWidget(tick, at / 2, at % 2);
        m_ticks.emplace_back(group.id, tick);
        std::erase(m_unknown, group.id);
    }
    column->addLayout(grid);
    column->addWidget(hint(
        tr("Where only others would help, the program says so instead of proposing it. Training, and the law where you work, "
           "decide what is ticked.")));
}

std::vector<std::string> ScopeTicks::scope() const
{
    std::vector<std::string> out;
    for (const auto &[id, tick] : m_ticks)
        if (tick->isChecked())
            out.push_back(id);
    if (out.size() == m_ticks.size())
        return {};
    out.insert(out.end(), m_unknown.begin(), m_unknown.end());
    return out;
}

QString ScopeTicks::trouble() const
{
    const bool any =
        m_ticks.empty() || std::any_of(m_ticks.begin(), m_ticks.end(), [](const auto &each) { return each.second->isChecked(); });
    return any ? QString() : tr("Tick at least one group of techniques.");
}

} // namespace raphe
