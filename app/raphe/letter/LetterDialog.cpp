#include "app/raphe/letter/LetterDialog.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/letter/LetterTextEdit.h"
#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/record/TextLine.h"
#include "core/base/Utf8.h"
#include "core/document/LetterSigns.h"
#include "core/document/LetterWords.h"

#include <QComboBox>
#include <QDate>
#include <QHBoxLayout>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

constexpr int leftWidth = 480; // pixels
constexpr std::array urgencies{
    Urgency::EmergencyNow, Urgency::SameDay, Urgency::WithinDays, Urgency::Routine, Urgency::Information}; // as they are offered

std::string dayOfWriting()
{
    return QDate::currentDate().toString(Qt::ISODate).toStdString();
}

QStringList urgencyNames()
{
    QStringList out;
    for (const Urgency urgency : urgencies)
        out << QString::fromStdString(urgencyInWords(urgency));
    return out;
}

int rowOf(Urgency urgency)
{
    return static_cast<int>(std::find(urgencies.begin(), urgencies.end(), urgency) - urgencies.begin());
}

Letter draftOf(const VisitSession &session)
{
    return letterDraft({session.adviser().rules(), *session.knowledge().regions, session.examination(), session.handTechniques(),
                           session.reference()},
        session.visit(), dayOfWriting());
}

// What was composed of very long texts is kept as its beginning.
LetterText bounded(LetterText text)
{
    if (characterCount(text.composed) > LetterText::longest)
        text.composed = QString::fromStdString(text.composed).left(LetterText::longest / 2).toStdString() + " ...";
    return text;
}

} // namespace

LetterDialog::LetterDialog(VisitSession &session, QWidget *parent)
    : WorkDialog(tr("Letter to another professional"), parent),
      m_session(session),
      m_draft(draftOf(session)),
      m_suggestion(suggestedUrgency(session.adviser().rules().signs(), session.visit())),
      m_which(new QComboBox),
      m_fromBook(new QComboBox),
      m_keepTo(pushButton(tr("Keep in the book"))),
      m_urgency(new ChoiceRow(tr("Urgency"), urgencyNames())),
      m_question(new LetterTextEdit(tr("Question"), {}, 3))
{
    keepEnterToFocus();
    m_which->setAccessibleName(tr("Which letter"));
    m_which->setMinimumHeight(touchTarget);
    titleRow().addWidget(m_which);
    auto *halves = new QHBoxLayout;
    halves->setSpacing(18);
    halves->addWidget(makeLeft());
    halves->addWidget(makeRight(), 1);
    form().addLayout(halves, 1);
    form().addWidget(
        hint(tr("Answers that were given alone never stand in a letter. Assists a trained practitioner; follow local law, "
                "scope of practice and licensed care.")));
    makeButtons();
    fillBook();
    connect(m_which, &QComboBox::activated, this, &LetterDialog::choose);
    list();
    const std::size_t kept = session.visit().letters.size();
    choose(kept == 0 ? 0 : static_cast<int>(kept) - 1);
    resize(1100, 690);
    m_to.name()->setFocus();
}

QWidget *LetterDialog::makeLeft()
{
    auto *page = new QWidget;
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(heading(tr("To")));
    m_fromBook->setAccessibleName(tr("From the book of addressees"));
    m_fromBook->setMinimumHeight(touchTarget);
    column->addWidget(m_fromBook);
    m_to.addTo(*column);
    m_keepTo->setAutoDefault(false);
    m_keepTo->setToolTip(tr("For other letters too; the book is in the settings of the practice"));
    column->addWidget(m_keepTo, 0, Qt::AlignLeft);
    column->addWidget(heading(tr("Urgency")));
    m_urgency->setStyleSheet(m_urgency->styleSheet() + QStringLiteral(" QPushButton { min-height: 28px; }")); // for a finger
    column->addWidget(m_urgency);
    //: %1: how urgent
    column->addWidget(
        hint(tr("Suggested by this visit: %1. You choose.").arg(QString::fromStdString(urgencyInWords(m_suggestion)))));
    column->addWidget(m_question);
    column->addStretch(1);
    for (QLineEdit *line : {static_cast<QLineEdit *>(m_to.name()), static_cast<QLineEdit *>(m_to.role())})
        connect(line, &QLineEdit::textChanged, this, &LetterDialog::edited);
    connect(m_to.address(), &QPlainTextEdit::textChanged, this, &LetterDialog::edited);
    connect(m_question, &LetterTextEdit::edited, this, &LetterDialog::edited);
    connect(m_keepTo, &QPushButton::clicked, this, &LetterDialog::keepAddressee);
    connect(m_fromBook, &QComboBox::activated, this, [this](int row) {
        if (row > 0)
            m_to.give(m_offered[static_cast<std::size_t>(row) - 1]);
        edited();
    });
    connect(m_urgency, &ChoiceRow::chosen, this, [this] {
        if (!m_urgency->value() || !mayEdit()) // pressed again: there always is one
            m_urgency->give(rowOf(m_base.urgency));
        edited();
    });
    QScrollArea *area = scrolled(page);
    area->setFixedWidth(leftWidth);
    return area;
}

QWidget *LetterDialog::makeRight()
{
    auto *half = new QWidget;
    auto *column = new QVBoxLayout(half);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    m_outdated = new QWidget;
    auto *row = new QHBoxLayout(m_outdated);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(new WrappedLabel(tr("The visit says something else by now than when this letter was composed.")), 1);
    m_anew = pushButton(tr("Compose anew"));
    m_anew->setAutoDefault(false);
    m_anew->setToolTip(tr("What you edited stays as it is"));
    connect(m_anew, &QPushButton::clicked, this, &LetterDialog::composeAnew);
    row->addWidget(m_anew);
    column->addWidget(m_outdated);
    m_right = new QScrollArea;
    m_right->setWidgetResizable(true);
    m_right->setFrameShape(QFrame::NoFrame);
    m_right->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_right->setFocusPolicy(Qt::NoFocus);
    column->addWidget(m_right, 1);
    return half;
}

void LetterDialog::makeButtons()
{
    const auto add = [this](const QString &text, auto pressed) {
        QPushButton *button = addButton(text);
        button->setAutoDefault(false); // Enter presses what has the focus
        connect(button, &QPushButton::clicked, this, pressed);
        return button;
    };
    m_sent = add({}, &LetterDialog::toggleSent);
    m_sent->setCheckable(true);
    m_takeOut = add(tr("Take out of the visit"), &LetterDialog::takeOut);
    addGap();
    add(tr("Cancel"), &LetterDialog::reject);
    m_print = add(tr("Print or save ..."), &LetterDialog::print);
    m_keep = add(tr("Keep"), &LetterDialog::keep);
    m_keep->setToolTip(tr("In the visit"));
}

// The kept letters, and a new one at the end.
void LetterDialog::list()
{
    const std::vector<Letter> &letters = m_session.visit().letters;
    m_which->clear();
    for (const Letter &one : letters) {
        const QString to = one.to.isNobody() ? tr("to whoever takes over") : addresseeName(one.to);
        //: %1: a date; %2: a person
        m_which->addItem(
            one.sent.empty() ? tr("%1, %2").arg(dayWords(one.written), to) : tr("%1, %2, sent").arg(dayWords(one.written), to));
    }
    m_which->addItem(tr("A new letter"));
    m_which->setCurrentIndex(static_cast<int>(m_kept.value_or(letters.size())));
    m_which->setVisible(!letters.empty());
}

void LetterDialog::fillBook()
{
    const auto settings = m_session.practice().settings();
    if (!settings)
        return complain(settings.error());
    m_book = settings.value().addressees;
    m_offered = m_book;
    m_fromBook->clear();
    m_fromBook->addItem(tr("From the book ..."));
    for (const Addressee &one : m_book)
        m_fromBook->addItem(addresseeName(one));
    const auto &doctor = m_session.record().doctor;
    if (doctor && !doctor->name.empty()) {
        m_offered.push_back({doctor->name, {}, {}});
        //: %1: a name
        m_fromBook->addItem(tr("%1, the patient's doctor").arg(QString::fromStdString(doctor->name)));
    }
}

void LetterDialog::choose(int row)
{
    const std::vector<Letter> &letters = m_session.visit().letters;
    const auto wanted = static_cast<std::size_t>(std::max(row, 0));
    if (isChanged() && !m_isWarned) {
        m_isWarned = true;
        m_which->setCurrentIndex(static_cast<int>(m_kept.value_or(letters.size())));
        return say(tr("This letter is not kept yet. Keep it, or choose once more to drop what was typed."));
    }
    m_kept = wanted < letters.size() ? std::optional(wanted) : std::nullopt;
    m_which->setCurrentIndex(static_cast<int>(m_kept.value_or(letters.size())));
    m_before = m_kept ? letters[*m_kept] : m_draft;
    show(*m_before);
}

void LetterDialog::show(const Letter &letter)
{
    m_base = letter;
    m_to.give(letter.to);
    m_fromBook->setCurrentIndex(0);
    m_urgency->give(rowOf(letter.urgency));
    m_question->give(letter.question);
    auto *page = new QWidget;
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 10, 0); // beside the scroll bar
    column->setSpacing(10);
    const auto add = [&](const QString &name, const LetterText &text, int least) {
        auto *edit = new LetterTextEdit(name, text, least);
        connect(edit, &LetterTextEdit::edited, this, &LetterDialog::edited);
        column->addWidget(edit);
        return edit;
    };
    m_reason = add(tr("Reason"), letter.reason, 2);
    m_parts.clear();
    for (const LetterPart &part : letter.parts)
        m_parts.push_back(add(QString::fromStdString(part.title), part.words, 1));
    column->addStretch(1);
    m_right->setWidget(page); // the one before goes
    // Tab reads from the top: to whom, urgency, question, then the texts, and at last the buttons.
    QWidget *before = m_question->stops().back();
    const auto next = [&](QWidget *stop) {
        setTabOrder(before, stop);
        before = stop;
    };
    next(m_anew);
    for (const LetterTextEdit *edit : page->findChildren<LetterTextEdit *>())
        for (QWidget *stop : edit->stops())
            next(stop);
    next(m_sent);
    m_isWarned = false;
    say({});
    tell();
}

Letter LetterDialog::letter() const
{
    Letter out = m_base;
    out.to = m_to.value();
    out.urgency = urgencies[static_cast<std::size_t>(m_urgency->value().value_or(static_cast<int>(urgencies.size()) - 1))];
    out.question = bounded(m_question->value());
    out.reason = bounded(m_reason->value());
    for (std::size_t i = 0; i < m_parts.size(); ++i)
        out.parts[i].words = bounded(m_parts[i]->value());
    // A title alone says nothing.
    std::erase_if(out.parts, [](const LetterPart &part) { return part.words.text.empty() && part.words.composed.empty(); });
    return out;
}

bool LetterDialog::isChanged() const
{
    return m_reason && (!m_before || letter() != *m_before);
}

bool LetterDialog::mayEdit() const
{
    return !m_session.isReadOnly() && m_base.sent.empty();
}

void LetterDialog::edited()
{
    if (m_isWarned) {
        m_isWarned = false;
        say({});
    }
    tell();
}

void LetterDialog::tell()
{
    const bool mayChange = !m_session.isReadOnly();
    const bool isSent = !m_base.sent.empty();
    m_to.setReadOnly(!mayEdit());
    m_fromBook->setEnabled(mayEdit() && !m_offered.empty());
    for (LetterTextEdit *edit : findChildren<LetterTextEdit *>())
        edit->setReadOnly(!mayEdit());
    const bool isInBook = std::find(m_book.begin(), m_book.end(), m_to.value()) != m_book.end();
    m_keepTo->setEnabled(!m_to.isBlank() && !m_to.mistake() && !isInBook);
    m_outdated->setVisible(m_kept && mayEdit() && isOutdated(m_base, m_draft));
    m_sent->setChecked(isSent);
    m_sent->setText(isSent ? tr("Sent on %1").arg(dayWords(m_base.sent)) : tr("Mark as sent"));
    m_sent->setAccessibleName(m_sent->text());
    m_sent->setVisible(m_kept.has_value());
    m_sent->setEnabled(mayChange);
    m_takeOut->setVisible(m_kept && !isSent);
    m_takeOut->setEnabled(mayChange);
    m_keep->setEnabled(mayEdit());
    if (!mayChange)
        amend(tr("This visit is not open for changes: a letter can be printed, and is not kept. Amend the visit to keep one."));
}

bool LetterDialog::check()
{
    if (const auto mistake = m_to.mistake()) {
        mistake->at->setFocus();
        say(mistake->words);
        return false;
    }
    std::vector<LetterTextEdit *> texts{m_question, m_reason};
    texts.insert(texts.end(), m_parts.begin(), m_parts.end());
    for (const LetterTextEdit *edit : texts)
        if (characterCount(edit->value().text) > LetterText::longest) {
            edit->block()->setFocus();
            say(tr("'%1' is too long: %2 characters at most.").arg(edit->name()).arg(LetterText::longest));
            return false;
        }
    return true;
}

bool LetterDialog::store()
{
    if (!check())
        return false;
    Letter now = letter();
    now.written = dayOfWriting(); // while it is not sent, its day is that of its last words
    std::vector<Letter> letters = m_session.visit().letters;
    if (m_kept) {
        letters[*m_kept] = now;
    } else if (letters.size() == Letter::most) {
        say(tr("A visit keeps %1 letters at most.").arg(Letter::most));
        return false;
    } else {
        letters.push_back(now);
    }
    m_session.setLetters(letters);
    if (const auto saved = m_session.saveNow(); !saved) {
        complain(saved.error());
        return false;
    }
    if (m_session.visit().letters != letters)
        return false;
    if (!m_kept)
        m_kept = letters.size() - 1;
    m_base.written = now.written;
    m_before = now;
    list();
    tell();
    return true;
}

void LetterDialog::keep()
{
    if (store())
        accept();
}

void LetterDialog::takeOut()
{
    std::vector<Letter> letters = m_session.visit().letters;
    letters.erase(letters.begin() + static_cast<std::ptrdiff_t>(*m_kept));
    m_session.setLetters(letters);
    m_kept.reset();
    m_before.reset();
    list();
    tell();
    say(tr("It is no longer kept. What is on the form goes when it is closed."));
}

void LetterDialog::print()
{
    const bool isFixed = !m_base.sent.empty() || m_session.isReadOnly();
    if (!isFixed && !store())
        return;
    const auto settings = m_session.practice().settings();
    if (!settings)
        return complain(settings.error());
    Q_EMIT printWanted(letter(), letterFacts(m_session.visit(), settings.value().name, settings.value().letterhead));
}

void LetterDialog::composeAnew()
{
    show(composedAnew(letter(), m_draft));
    m_reason->block()->setFocus();
}

void LetterDialog::keepAddressee()
{
    const Addressee to = m_to.value();
    auto settings = m_session.practice().settings();
    if (!settings)
        return complain(settings.error());
    std::vector<Addressee> &book = settings.value().addressees;
    const auto same =
        std::find_if(book.begin(), book.end(), [&](const Addressee &a) { return a.name == to.name && a.role == to.role; });
    if (same != book.end())
        *same = to; // with another address
    else if (book.size() < PracticeSettings::mostAddressees)
        book.push_back(to);
    if (const auto saved = m_session.practice().saveSettings(settings.value()); !saved)
        return complain(saved.error());
    fillBook();
    tell();
}

void LetterDialog::toggleSent()
{
    const bool isSent = !m_base.sent.empty();
    if (!isSent && !store())
        return tell();
    std::vector<Letter> letters = m_session.visit().letters;
    letters[*m_kept].sent = isSent ? std::string() : dayOfWriting();
    m_session.setLetters(letters);
    m_before = m_session.visit().letters[*m_kept];
    m_base.sent = m_before->sent;
    list();
    tell();
}

void LetterDialog::reject()
{
    if (isChanged() && !m_isWarned && !m_session.isReadOnly()) {
        m_isWarned = true;
        return say(tr("This letter is not kept yet. Keep it, or close once more to drop what was typed."));
    }
    WorkDialog::reject();
}

} // namespace raphe
