#include "app/raphe/examination/LineBar.h"

#include "app/raphe/FlowLayout.h"
#include "app/raphe/Style.h"
#include "app/raphe/practice/FormParts.h"
#include "app/words/LineQuestionText.h"
#include "core/document/VisitMap.h"
#include "core/examination/RecordWords.h"
#include "core/treatment/WorkWords.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace raphe {

namespace {

constexpr std::size_t completionsAtMost = 6;

QLabel *chipLabel(const QString &text, const char *role)
{
    auto *label = new QLabel(text);
    label->setProperty("chip", QString::fromLatin1(role));
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->ensurePolished();
    // A label that wraps guesses its own size, and forgets its frame: 10 and 4 pixels at each side (Style.cpp).
    constexpr QSize frame(20, 8);
    constexpr int longest = 340; // pixels: a chip never widens the window
    const QSize words = label->fontMetrics().boundingRect({0, 0, longest, QWIDGETSIZE_MAX}, Qt::TextWordWrap, text).size();
    label->setFixedSize(words.width() + 1 + frame.width(), std::max(words.height() + frame.height(), touchTarget - 8));
    return label;
}

QPushButton *chipButton(const std::string &text, const char *role)
{
    auto *button = new QPushButton(QString::fromStdString(text));
    button->setProperty("chip", QString::fromLatin1(role));
    button->setAutoDefault(true); // Enter takes it, as Space does
    button->setMinimumHeight(touchTarget - 8);
    return button;
}

} // namespace

LineBar::LineBar(VisitSession &session, QWidget *parent)
    : QWidget(parent), m_session(session), m_line(new QLineEdit), m_read(new QWidget), m_chips(new FlowLayout(m_read))
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(10, 4, 10, 4);
    column->setSpacing(4);
    auto *row = new QHBoxLayout;
    row->setSpacing(6);
    m_line->setAccessibleName(tr("Findings in trade talk"));
    m_line->setPlaceholderText(tr("Type findings: r glute max origin tender 3 familiar, l l4/5 clear (L)"));
    m_line->setMinimumHeight(touchTarget);
    m_line->setMaxLength(1000);
    m_line->installEventFilter(this);
    row->addWidget(m_line, 1);
    QPushButton *record = pushButton(tr("Record"));
    record->setAccessibleName(tr("Record what was typed"));
    record->setToolTip(tr("Enter"));
    QPushButton *help = pushButton(tr("How to type"));
    row->addWidget(record);
    row->addWidget(help);
    column->addLayout(row);
    m_chips->setContentsMargins(0, 0, 0, 0);
    m_chips->setSpacing(6);
    column->addWidget(m_read);

    connect(m_line, &QLineEdit::textChanged, this, &LineBar::readAgain);
    connect(m_line, &QLineEdit::cursorPositionChanged, this, &LineBar::offer);
    connect(m_line, &QLineEdit::textEdited, this, [this] { m_back = 0; });
    connect(m_line, &QLineEdit::returnPressed, this, &LineBar::recordAll);
    connect(record, &QPushButton::clicked, this, &LineBar::recordAll);
    connect(help, &QPushButton::clicked, this, &LineBar::helpWanted);
    connect(&session, &VisitSession::treatmentChanged, this, &LineBar::noteWork);
    connect(&session, &VisitSession::visitOpened, this, [this] {
        if (std::exchange(m_visit, m_session.visitId()) == m_session.visitId())
            return; // shown anew
        m_line->setText({});
        m_earlier.clear();
        m_back = 0;
    });
    readAgain();
}

void LineBar::begin()
{
    m_line->setFocus(Qt::ShortcutFocusReason);
    m_line->selectAll();
}

std::string LineBar::text() const
{
    return m_line->text().toStdString();
}

void LineBar::readAgain()
{
    m_handedOver.reset();
    m_work.reset();
    if (isWorkLine(text(), m_session.lineWords())) {
        m_work = readWorkLine(text(), m_session.lineWords(), m_session.handTechniques());
        m_reading = {};
        for (const LineMistake &mistake : m_work->mistakes)
            m_reading.chips.push_back({mistake.begin, mistake.end, mistake});
        for (const LineQuestion &question : m_work->questions)
            m_reading.chips.push_back({question.begin, question.end, question});
    } else {
        m_reading = readLine(text(), m_session.lineWords());
    }
    offer();
}

// Chips and questions as they stand, then what could be typed next.
void LineBar::offer()
{
    const bool hadFocus = m_read->isAncestorOf(QApplication::focusWidget());
    while (QLayoutItem *item = m_chips->takeAt(0)) {
        delete item->widget(); // none of them is at work: their clicks come by the queue
        delete item;
    }
    addChips();
    const auto cursor = static_cast<std::size_t>(m_line->text().left(m_line->cursorPosition()).toUtf8().size());
    m_completions = m_line->text().isEmpty() ? std::vector<LineCompletion>{}
                                             : completions(text(), cursor, m_session.lineWords(), completionsAtMost);
    for (std::size_t i = 0; i < m_completions.size(); ++i) {
        QPushButton *button = chipButton(m_completions[i].insert, "offer");
        button->setAccessibleName(tr("Complete: %1").arg(button->text()));
        connect(
            button, &QPushButton::clicked, this, [this, i] { complete(i); }, Qt::QueuedConnection);
        m_chips->addWidget(button);
    }
    m_read->setVisible(m_chips->count() > 0);
    m_read->updateGeometry();
    if (hadFocus)
        m_line->setFocus();
}

void LineBar::addChips()
{
    if (m_work && m_work->step)
        m_chips->addWidget(chipLabel(inWords(*m_work->step), "read"));
    for (const LineChip &chip : m_reading.chips)
        addChip(chip);
    if (m_work && !m_work->problem.empty())
        m_chips->addWidget(chipLabel(QString::fromStdString(m_work->problem), "ask"));
}

QString LineBar::inWords(const TreatmentStep &step) const
{
    return capitalised(QString::fromStdString(stepInWords(step, m_session.handTechniques(), *m_session.knowledge().atlas)));
}

QString LineBar::inWords(const LineChip &chip) const
{
    if (const auto *finding = std::get_if<Finding>(&chip.is))
        return capitalised(QString::fromStdString(m_session.knowledge().atlas->spoken(finding->place))) + QStringLiteral(": ")
            + QString::fromStdString(findingInWords(*m_session.knowledge().atlas, *finding));
    if (const auto *measure = std::get_if<Measure>(&chip.is))
        return capitalised(QString::fromStdString(raphe::inWords(m_session.examination(), *measure)));
    if (const auto *mistake = std::get_if<LineMistake>(&chip.is))
        return mistakeText(*mistake);
    return questionText(std::get<LineQuestion>(chip.is));
}

void LineBar::addChip(const LineChip &chip)
{
    if (const auto *question = std::get_if<LineQuestion>(&chip.is)) {
        addQuestion(*question);
        return;
    }
    const bool isMistake = std::holds_alternative<LineMistake>(chip.is);
    m_chips->addWidget(
        chipLabel(isMistake ? tr("Not read: %1").arg(inWords(chip)) : inWords(chip), isMistake ? "mistake" : "read"));
}

void LineBar::addQuestion(const LineQuestion &question)
{
    m_chips->addWidget(chipLabel(questionText(question), "ask"));
    for (std::size_t i = 0; i < question.choices.size(); ++i) {
        QPushButton *button = chipButton(question.choices[i].insert, "answer");
        button->setAccessibleName(
            tr("%1: %2", "words that were asked about, an answer").arg(QString::fromStdString(question.words), button->text()));
        connect(
            button, &QPushButton::clicked, this,
            [this, question, i] { m_line->setText(QString::fromStdString(answered(text(), question, i)) + QLatin1Char(' ')); },
            Qt::QueuedConnection);
        m_chips->addWidget(button);
    }
}

void LineBar::complete(std::size_t index)
{
    if (index >= m_completions.size())
        return; // typed on meanwhile
    const LineCompletion taken = m_completions[index];
    std::string line = text();
    line.replace(taken.begin, taken.end - taken.begin, taken.insert + " ");
    const auto cursor = QString::fromStdString(line.substr(0, taken.begin + taken.insert.size() + 1)).size();
    m_line->setText(QString::fromStdString(line));
    m_line->setCursorPosition(static_cast<int>(cursor));
    m_line->setFocus();
}

void LineBar::recordAll()
{
    if (m_line->text().trimmed().isEmpty())
        return;
    if (!m_reading.mistakes().empty() || !m_reading.questions().empty()) {
        Q_EMIT told(tr("Nothing is recorded yet: answer what is asked, or mend what was not read."));
        return;
    }
    if (m_work && !m_work->step) {
        Q_EMIT told(QString::fromStdString(m_work->problem));
        return;
    }
    if (m_session.visitId() == 0 || m_session.isReadOnly()) {
        Q_EMIT told(tr("This visit cannot be changed."));
        return;
    }
    if (m_work) {
        recordWork();
        return;
    }
    std::vector<Measure> measures = m_reading.measures();
    for (Measure &measure : measures) {
        const auto [mode, device] = m_measuring ? m_measuring() : std::pair{MoveMode::Active, std::optional<Device>()};
        measure.mode = measure.mode.value_or(mode);
        const Movement *movement = m_session.examination().findMovement(measure.movement);
        if (!measure.device && measure.value && movement)
            measure.device = deviceFor(*movement, device);
    }
    const bool isNew =
        m_session.record(m_reading.findings(), measures, tr("typed: %1", "undo step").arg(m_line->text().left(40)));
    emptyLine();
    Q_EMIT told(isNew ? tr("Recorded. Undo takes it back.") : tr("All of it was recorded already."));
}

// The log may take it only after a caution was read: the line stands until it is there, and is not handed over twice.
void LineBar::recordWork()
{
    const TreatmentStep step = *m_work->step;
    m_handedOver = step;
    m_loggedBefore = m_session.visit().treatment.steps.size();
    m_session.addWork(step);
}

void LineBar::noteWork()
{
    const auto &steps = m_session.visit().treatment.steps;
    const bool isLogged = m_handedOver && steps.size() > m_loggedBefore && steps.back().place == m_handedOver->place
        && steps.back().technique == m_handedOver->technique && steps.back().seconds == m_handedOver->seconds
        && steps.back().kPa == m_handedOver->kPa;
    if (!isLogged)
        return;
    const QString work = inWords(steps.back());
    emptyLine();
    Q_EMIT told(tr("Logged. %1.", "side, structure, technique, time").arg(work));
}

void LineBar::emptyLine()
{
    m_earlier.push_back(text());
    m_back = 0;
    m_line->setText({}); // unlike clear() it leaves nothing to undo: Ctrl+Z is the visit's
}

// Up brings back what was recorded before, down goes forth again and then to what is offered or asked; Escape empties the line.
bool LineBar::eventFilter(QObject *watched, QEvent *event)
{
    if (watched != m_line || event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    switch (static_cast<QKeyEvent *>(event)->key()) {
    case Qt::Key_Down:
        if (m_back > 0) { // forth again, to what was being typed
            --m_back;
            m_line->setText(m_back == 0 ? m_unfinished : QString::fromStdString(m_earlier[m_earlier.size() - m_back]));
            return true;
        }
        for (int i = 0; i < m_chips->count(); ++i)
            if (auto *button = qobject_cast<QPushButton *>(m_chips->itemAt(i)->widget())) {
                button->setFocus();
                return true;
            }
        return true;
    case Qt::Key_Up:
        if (m_back == m_earlier.size())
            return true;
        if (m_back == 0)
            m_unfinished = m_line->text();
        m_line->setText(QString::fromStdString(m_earlier[m_earlier.size() - ++m_back]));
        return true;
    case Qt::Key_Escape: m_line->clear(); return true;
    default: return QWidget::eventFilter(watched, event);
    }
}

} // namespace raphe
