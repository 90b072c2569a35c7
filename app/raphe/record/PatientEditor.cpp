#include "app/raphe/record/PatientEditor.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/record/BloodPressureEdit.h"
#include "app/raphe/record/ConditionsEdit.h"
#include "app/raphe/record/ContactEdit.h"
#include "app/raphe/record/EntryRows.h"
#include "app/raphe/record/KeptList.h"
#include "app/raphe/record/OptionalDateEdit.h"
#include "app/raphe/record/PregnancyEdit.h"
#include "app/raphe/record/RecordPage.h"
#include "app/raphe/record/ReferenceEdit.h"
#include "app/raphe/record/TextField.h"
#include "app/raphe/record/TextLine.h"
#include "core/safety/Day.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QShortcut>
#include <QStackedWidget>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

constexpr int lateForPregnancy = 56; // years; beyond it the right patient is asked for: our choice, no source
constexpr const char *pregnancyId = "pregnancy"; // of the condition, in resources/safety/conditions.json

QString birthWords(const std::string &isoDate)
{
    if (QDate::fromString(QString::fromStdString(isoDate), Qt::ISODate) > QDate::currentDate())
        return PatientEditor::tr("%1 is still to come. Is that right?", "a date").arg(dayWords(isoDate));
    QString words = bornWords(isoDate);
    words[0] = words[0].toUpper();
    return PatientEditor::tr("%1.", "a sentence").arg(words);
}

template <class T, class InWords> std::vector<QString> inWords(const std::vector<T> &values, InWords words)
{
    std::vector<QString> out;
    out.reserve(values.size());
    for (const T &value : values)
        out.push_back(words(value));
    return out;
}

// Null when nothing is left over from a join: then there is nothing to show.
template <class T, class InWords>
KeptList *addKept(RecordPage *page, const QString &name, const std::vector<T> &values, InWords words)
{
    if (values.empty())
        return nullptr;
    auto *kept = new KeptList(name);
    page->add(name, kept);
    kept->give(inWords(values, words));
    return kept;
}

template <class T> std::vector<T> keptOf(const KeptList *list, const std::vector<T> &given)
{
    return list ? list->keptOf(given) : given;
}

} // namespace

PatientEditor::PatientEditor(PatientRecord record, const SafetyRules &rules, QWidget *parent)
    : QDialog(parent), m_given(std::move(record)), m_rules(rules), m_tabs(new QTabWidget), m_bars(new QStackedWidget)
{
    setWindowTitle(m_given.name.empty() ? tr("New patient") : tr("Patient's record"));
    resize(780, 640);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    column->setSpacing(10);
    column->addWidget(m_tabs, 1);
    column->addWidget(m_bars);
    m_tabs->tabBar()->setAccessibleName(tr("Parts of the record"));
    addPage(makePersonPage(), tr("Person"));
    addPage(makeContactsPage(), tr("Contacts"));
    addPage(makeHealthPage(), tr("Health"));
    addPage(makeComplaintsPage(), tr("Complaints"));
    m_bars->addWidget(makeSaveBar());
    m_bars->addWidget(makeLeaveBar());
    m_bars->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    fill();
    for (const auto key : {Qt::Key_Return, Qt::Key_Enter})
        connect(new QShortcut(Qt::CTRL | key, this), &QShortcut::activated, this, &PatientEditor::accept);
    // Whoever goes back to the form wants to go on with it.
    m_focusWatch = connect(qApp, &QApplication::focusChanged, this, [this](QWidget *, QWidget *now) {
        if (now && m_tabs->isAncestorOf(now))
            m_bars->setCurrentIndex(0);
    });
    lookAgain();
    m_name->setFocus();
}

RecordPage *PatientEditor::makePersonPage()
{
    auto *page = new RecordPage;
    page->add(tr("Name"), m_name = new TextField(tr("Name"), tr("Write the name, or what the person wants to be called.")));
    page->add(tr("Other names"), m_otherNames = new RowsOf<TextRow>([] {
        return new TextRow(tr("Other name"), tr("Also known as, or the name before"));
    }));
    page->add(tr("Birth date"), m_born = new OptionalDateEdit(tr("Birth date"), birthWords));
    m_otherBorn = addKept(page, tr("Other birth dates"), m_given.otherBorn, dayWords);
    page->add(tr("Sex, height"), m_reference = new ReferenceEdit);
    page->add(tr("Mark"), m_mark = new TextField(tr("Mark")));
    m_mark->line().setPlaceholderText(tr("What you recognise the person by, as 'walks with a stick'"));
    page->add(tr("Language"), m_language = new TextField(tr("Language")));
    page->add(tr("Interpreter"), m_interpreter = new TextField(tr("Interpreter")));
    m_interpreter->line().setPlaceholderText(tr("Who interprets; empty when none is needed"));
    page->close();
    return page;
}

RecordPage *PatientEditor::makeContactsPage()
{
    auto *page = new RecordPage;
    page->add(tr("Phone"), m_phone = new TextField(tr("Phone")));
    page->add(tr("Email"), m_email = new TextField(tr("Email")));
    page->add(tr("Address"), m_address = new TextBlockField(tr("Address"), 3));
    page->add(tr("Doctor"), m_doctor = new ContactEdit(tr("Doctor")));
    page->add(tr("In an emergency"), m_emergency = new ContactEdit(tr("Emergency contact")));
    page->add(tr("Guardian"), m_guardian = new ContactEdit(tr("Guardian")));
    page->close();
    return page;
}

RecordPage *PatientEditor::makeHealthPage()
{
    auto *page = new RecordPage;
    page->add(tr("Standing conditions"), m_conditions = new ConditionsEdit(m_rules));
    page->add(tr("Medicines"),
        m_medicines = new RowsOf<TextRow>([] { return new TextRow(tr("Medicine"), tr("Medicine, and how much of it")); }));
    page->add(tr("Allergies"),
        m_allergies = new RowsOf<TextRow>([] { return new TextRow(tr("Allergy"), tr("What is not tolerated")); }));
    page->add(tr("Pregnancy"), m_pregnancy = new PregnancyEdit);
    m_pregnancyReminder = new QWidget;
    auto *reminder = new QHBoxLayout(m_pregnancyReminder);
    reminder->setContentsMargins(2, 0, 0, 0);
    reminder->addWidget(hint(tr("Cautions go by the standing conditions; pregnancy is not among them yet.")), 1);
    auto *addPregnancy = pushButton(tr("Add it there"));
    addPregnancy->setAccessibleName(tr("Add pregnancy to the standing conditions"));
    reminder->addWidget(addPregnancy, 0, Qt::AlignTop);
    page->add({}, m_pregnancyReminder);
    page->add({}, m_pregnancyDoubt = hint());
    m_otherPregnancies = addKept(page, tr("Other weeks of pregnancy"), m_given.otherPregnancies, pregnancyWords);
    page->add(tr("Blood pressure"), m_bloodPressure = new BloodPressureEdit);
    m_otherBloodPressures = addKept(page, tr("Other blood pressures"), m_given.otherBloodPressures, bloodPressureWords);
    page->add(tr("To clarify"), m_unclear = new RowsOf<TextRow>([] {
        return new TextRow(tr("To clarify"), tr("What is written and cannot be; asked about at each visit"));
    }));
    page->add(tr("Operations"), m_surgery = new RowsOf<SurgeryRow>([] { return new SurgeryRow; }));
    page->add({}, m_surgeryDoubt = hint());
    page->add(tr("Implants"), m_implants = new RowsOf<ImplantRow>([] { return new ImplantRow; }));
    m_ruledOut = addKept(page, tr("Said not to be so"), m_given.ruledOut, [this](const RuledOut &ruledOut) {
        const ConditionKind *kind = m_rules.findCondition(ruledOut.id);
        return tr("%1 (the record says '%2')", "a condition, what speaks for it")
            .arg(QString::fromStdString(kind ? kind->name : ruledOut.id), QString::fromStdString(ruledOut.because));
    });
    page->close();
    for (RecordField *field : std::initializer_list<RecordField *>{m_pregnancy, m_bloodPressure})
        connect(field, &RecordField::isUnclear, this, [this](const QString &written) {
            std::vector<std::string> unclear = m_unclear->value();
            unclear.push_back(written.toStdString());
            m_unclear->give(unclear);
            lookAgain();
        });
    connect(addPregnancy, &QPushButton::clicked, this, [this] {
        m_pregnancy->setFocus(); // the button is about to go
        m_conditions->add(pregnancyId);
    });
    return page;
}

RecordPage *PatientEditor::makeComplaintsPage()
{
    auto *page = new RecordPage;
    page->addWide(
        hint(tr("Visits are about a complaint. One that is over is closed; it is not taken out, so that its visits stay "
                "with it.")));
    page->addWide(m_complaints = new RowsOf<ComplaintRow>([] { return new ComplaintRow; }));
    page->close();
    return page;
}

void PatientEditor::addPage(RecordPage *page, const QString &title)
{
    m_tabs->addTab(page, title);
    m_pages.push_back(page);
    m_titles.push_back(title);
    connect(page, &RecordPage::edited, this, &PatientEditor::lookAgain);
}

QWidget *PatientEditor::makeSaveBar()
{
    auto *bar = new QWidget;
    auto *row = new QHBoxLayout(bar);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    m_message = hint();
    auto *leave = pushButton(tr("Leave"));
    leave->setAccessibleName(tr("Leave without saving"));
    auto *save = pushButton(tr("Save"));
    save->setAccessibleName(tr("Save the record"));
    row->addWidget(m_message, 1);
    row->addWidget(leave);
    row->addWidget(save);
    connect(leave, &QPushButton::clicked, this, &PatientEditor::reject);
    connect(save, &QPushButton::clicked, this, &PatientEditor::accept);
    return bar;
}

QWidget *PatientEditor::makeLeaveBar()
{
    auto *bar = new QWidget;
    auto *row = new QHBoxLayout(bar);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    auto *question = new WrappedLabel(tr("Leave without saving? What you changed here would be gone."));
    question->setProperty("role", QStringLiteral("head"));
    auto *leave = pushButton(tr("Leave without saving"));
    m_keepWriting = pushButton(tr("Keep writing"));
    m_keepWriting->setAccessibleDescription(question->text());
    row->addWidget(question, 1);
    row->addWidget(leave);
    row->addWidget(m_keepWriting);
    connect(leave, &QPushButton::clicked, this, [this] { QDialog::reject(); });
    connect(m_keepWriting, &QPushButton::clicked, this, &PatientEditor::backToForm);
    return bar;
}

void PatientEditor::fill()
{
    m_name->give(m_given.name);
    m_otherNames->give(m_given.otherNames);
    m_born->give(m_given.born);
    m_reference->give(m_given.sex, m_given.height);
    m_mark->give(m_given.mark);
    m_language->give(m_given.language);
    m_interpreter->give(m_given.interpreter);
    m_phone->give(m_given.phone);
    m_email->give(m_given.email);
    m_address->give(m_given.address);
    m_doctor->give(m_given.doctor);
    m_emergency->give(m_given.emergency);
    m_guardian->give(m_given.guardian);
    m_conditions->give(m_given.conditions);
    m_medicines->give(m_given.medicines);
    m_allergies->give(m_given.allergies);
    m_pregnancy->give(m_given.pregnancy);
    m_bloodPressure->give(m_given.bloodPressure);
    m_unclear->give(m_given.unclear);
    m_surgery->give(m_given.surgery);
    m_implants->give(m_given.implants);
    m_complaints->give(m_given.complaints);
}

PatientRecord PatientEditor::record() const
{
    PatientRecord r;
    r.name = m_name->value();
    r.otherNames = m_otherNames->value();
    r.born = m_born->value();
    r.otherBorn = keptOf(m_otherBorn, m_given.otherBorn);
    r.sex = m_reference->sex();
    r.height = m_reference->height();
    r.mark = m_mark->value();
    r.language = m_language->value();
    r.interpreter = m_interpreter->value();
    r.phone = m_phone->value();
    r.email = m_email->value();
    r.address = m_address->value();
    r.doctor = m_doctor->value();
    r.emergency = m_emergency->value();
    r.guardian = m_guardian->value();
    r.medicines = m_medicines->value();
    r.allergies = m_allergies->value();
    r.surgery = m_surgery->value();
    r.implants = m_implants->value();
    r.conditions = m_conditions->value();
    r.ruledOut = keptOf(m_ruledOut, m_given.ruledOut);
    r.pregnancy = m_pregnancy->value();
    r.otherPregnancies = keptOf(m_otherPregnancies, m_given.otherPregnancies);
    r.bloodPressure = m_bloodPressure->value();
    r.otherBloodPressures = keptOf(m_otherBloodPressures, m_given.otherBloodPressures);
    r.unclear = m_unclear->value();
    r.complaints = m_complaints->value();
    int highest = 0;
    for (const PatientComplaint &complaint : r.complaints)
        highest = std::max(highest, complaint.id);
    for (PatientComplaint &complaint : r.complaints)
        if (complaint.id == 0)
            complaint.id = ++highest;
    return r;
}

bool PatientEditor::isChanged() const
{
    return std::any_of(m_pages.begin(), m_pages.end(), [](const RecordPage *page) { return page->isChanged(); })
        || record() != m_given;
}

void PatientEditor::lookAgain()
{
    if (m_bars->count() == 0)
        return; // still being put together
    m_pregnancyReminder->setVisible(
        m_pregnancy->value() && !m_conditions->has(pregnancyId) && m_rules.findCondition(pregnancyId));
    const int born = QDate::fromString(QString::fromStdString(m_born->value()), Qt::ISODate).year(); // 0: not known
    const auto pregnancy = m_pregnancy->value();
    const auto age = pregnancy ? yearsBetween(m_born->value(), pregnancy->date) : std::nullopt;
    m_pregnancyDoubt->setVisible(age >= lateForPregnancy);
    m_pregnancyDoubt->say(tr("A pregnancy at %1 years: is this the right patient? It is kept and counts.").arg(age.value_or(0)));
    int before = 0;
    for (const Surgery &surgery : m_surgery->value())
        if (surgery.year && *surgery.year < born)
            before = *surgery.year;
    m_surgeryDoubt->setVisible(before > 0);
    m_surgeryDoubt->say(
        tr("An operation of %1 lies before the birth in %2. It is kept and counts; correct the year.").arg(before).arg(born));
    tellTabs();
}

void PatientEditor::tellTabs()
{
    QStringList where;
    for (std::size_t i = 0; i < m_pages.size(); ++i) {
        const int count = m_pages[i]->mistakesShown();
        m_tabs->setTabText(static_cast<int>(i),
            count == 0 ? m_titles[i] : tr("%1: %2 to correct", "part of the record, how many").arg(m_titles[i]).arg(count));
        if (count > 0)
            where << m_titles[i];
    }
    if (where.isEmpty())
        say(tr("Ctrl+Enter saves, Esc leaves."), false);
    else
        say(tr("To correct before it can be saved: %1.", "parts of the record")
                .arg(where.join(tr(", ", "between parts of the record"))),
            true);
}

bool PatientEditor::isInOrder()
{
    std::optional<Mistake> first;
    int tab = -1;
    for (std::size_t i = 0; i < m_pages.size(); ++i) {
        const auto mistake = m_pages[i]->insist();
        if (mistake && !first) {
            first = mistake;
            tab = static_cast<int>(i);
        }
    }
    if (!first)
        return true;
    m_tabs->setCurrentIndex(tab);
    first->at->setFocus();
    return false;
}

void PatientEditor::accept()
{
    m_bars->setCurrentIndex(0);
    if (!isInOrder())
        return;
    const PatientRecord written = record();
    if (const auto checked = checkPatient(written, "record"); !checked) {
        complain(checked.error());
        return;
    }
    if (m_save) {
        if (const auto saved = m_save(written); !saved) {
            complain(saved.error());
            return;
        }
    }
    QDialog::accept();
}

void PatientEditor::complain(const Error &error)
{
    say(tr("Not saved. %1").arg(sentence(error)), true);
}

void PatientEditor::say(const QString &words, bool isMistake)
{
    m_message->setProperty("role", isMistake ? QStringLiteral("head") : QStringLiteral("quiet"));
    const Theme theme = themeFor(Appearance::System);
    m_message->setStyleSheet(QStringLiteral("color: %1;").arg((isMistake ? theme.tender : theme.quiet).name()));
    m_message->say(words);
}

void PatientEditor::reject()
{
    if (m_bars->currentIndex() == 1)
        backToForm();
    else if (isChanged())
        askToLeave();
    else
        QDialog::reject();
}

void PatientEditor::askToLeave()
{
    m_writing = QApplication::focusWidget();
    m_bars->setCurrentIndex(1);
    m_keepWriting->setFocus();
}

void PatientEditor::backToForm()
{
    m_bars->setCurrentIndex(0);
    if (m_writing)
        m_writing->setFocus();
}

void PatientEditor::keyPressEvent(QKeyEvent *event)
{
    // Return goes on to the next field; only Ctrl+Return ends the form.
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        if (!qobject_cast<QPushButton *>(QApplication::focusWidget()))
            focusNextChild();
        return;
    }
    QDialog::keyPressEvent(event);
}

} // namespace raphe
