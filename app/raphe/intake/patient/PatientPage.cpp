#include "app/raphe/intake/patient/PatientPage.h"

#include "app/paint/Theme.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/record/TextLine.h"

#include <QApplication>
#include <QGridLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace raphe {

namespace {

constexpr double bodyPoints = 20;
constexpr double titlePoints = 29;
constexpr double largePoints = 26;
constexpr int gap = 12; // pixels at scale 1
constexpr int besideWidth = 330;

int scaled(int pixels, double scale)
{
    return static_cast<int>(std::lround(pixels * scale));
}

} // namespace

QString inTwoLines(const QString &text)
{
    constexpr qsizetype longest = 22; // characters of one line
    if (text.size() <= longest)
        return text;
    qsizetype best = -1;
    for (qsizetype at = text.indexOf(QLatin1Char(' ')); at >= 0; at = text.indexOf(QLatin1Char(' '), at + 1))
        if (best < 0 || std::abs(2 * at - text.size()) < std::abs(2 * best - text.size()))
            best = at;
    return best < 0 ? text : text.left(best) + QLatin1Char('\n') + text.mid(best + 1);
}

PatientPage::PatientPage(const PatientWords &words, const char *titleId, QWidget *parent)
    : QWidget(parent), m_words(words), m_column(new QVBoxLayout(this)), m_title(new WrappedLabel(words.say(titleId)))
{
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->addWidget(m_title);
    m_title->setTextFormat(Qt::PlainText);
    setAccessibleName(m_title->text());
}

QString PatientPage::title() const
{
    return m_title->text();
}

void PatientPage::give(const PatientAnswers &, int patch)
{
    m_patch = patch;
}

void PatientPage::take(PatientAnswers &) const { }

bool PatientPage::isAnswered() const
{
    return std::any_of(m_rows.begin(), m_rows.end(), [](const ChoiceRow *row) { return row->value().has_value(); })
        || std::any_of(m_texts.begin(), m_texts.end(), [](const TextBlock *text) { return !text->isBlank(); });
}

QString PatientPage::answerWords(const PatientAnswers &, int) const
{
    return {};
}

QWidget *PatientPage::firstField() const
{
    if (m_rows.empty())
        return m_texts.empty() ? nullptr : m_texts.front();
    return m_rows.front()->button(m_rows.front()->value().value_or(0));
}

WrappedLabel *PatientPage::tell(const QString &text, QVBoxLayout *into)
{
    auto *label = new WrappedLabel(text);
    label->setTextFormat(Qt::PlainText);
    (into ? into : m_column)->addWidget(label);
    return label;
}

WrappedLabel *PatientPage::tellLarge(QVBoxLayout *into)
{
    WrappedLabel *label = tell({}, into);
    m_large.push_back(label);
    return label;
}

void PatientPage::addRow(ChoiceRow *row, const QString &question, bool besideQuestion)
{
    m_rows.push_back(row);
    for (auto *button : row->findChildren<QPushButton *>()) {
        button->setText(inTwoLines(button->text()));
        button->installEventFilter(this);
    }
    connect(row, &ChoiceRow::chosen, this, &PatientPage::changed);
    if (!besideQuestion) {
        if (!question.isEmpty()) {
            m_column->addSpacing(gap / 2);
            tell(question);
        }
        m_column->addWidget(row);
        return;
    }
    auto *line = new QHBoxLayout;
    auto *label = new WrappedLabel(question);
    label->setTextFormat(Qt::PlainText);
    m_besideRows.push_back(label);
    line->addWidget(label);
    line->addWidget(row, 1);
    m_column->addLayout(line);
}

ChoiceRow *PatientPage::ask(const QString &question, const QStringList &answers, int columns, bool besideQuestion)
{
    auto *row = new ChoiceRow(question.isEmpty() ? title() : question, answers, columns);
    addRow(row, question, besideQuestion);
    return row;
}

ChoiceRow *PatientPage::askNumber(const QString &question)
{
    ChoiceRow *row = ChoiceRow::ofNumbers(question.isEmpty() ? title() : question, PainScore::highest);
    addRow(row, question, false);
    return row;
}

TextBlock *PatientPage::askWords(const QString &question, int lines)
{
    if (!question.isEmpty()) {
        m_column->addSpacing(gap / 2);
        tell(question);
    }
    auto *text = new TextBlock(question.isEmpty() ? title() : question, lines);
    m_texts.push_back(text);
    m_column->addWidget(text);
    WrappedLabel *isLong = tell(say("move-long"));
    isLong->hide();
    connect(text, &QPlainTextEdit::textChanged, this, [this, text, isLong] {
        constexpr int manyCharacters = 600; // some ten lines; our choice
        isLong->setVisible(text->document()->characterCount() > manyCharacters);
        Q_EMIT changed();
    });
    return text;
}

QPushButton *PatientPage::largeButton(const QString &text)
{
    auto *button = new QPushButton(text);
    button->setAccessibleName(text.simplified());
    return button;
}

void PatientPage::setScale(double scale)
{
    m_scale = scale;
    // To each: where a style sheet is, fonts do not come down from the parent.
    for (QWidget *widget : findChildren<QWidget *>())
        if (qobject_cast<QLabel *>(widget) || qobject_cast<QPushButton *>(widget) || qobject_cast<QPlainTextEdit *>(widget))
            widget->setFont(typeface(bodyPoints * scale));
    m_title->setFont(typeface(titlePoints * scale, QFont::Bold));
    for (WrappedLabel *label : m_large)
        label->setFont(typeface(largePoints * scale, QFont::DemiBold));
    m_column->setSpacing(scaled(gap, scale));
    for (ChoiceRow *row : m_rows)
        static_cast<QGridLayout *>(row->layout())->setSpacing(scaled(gap - 4, scale));
    for (WrappedLabel *label : m_besideRows)
        label->setFixedWidth(scaled(besideWidth, scale));
}

// Up and down choose as left and right do.
bool PatientPage::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::KeyPress || event->type() == QEvent::ShortcutOverride) {
        const auto *key = static_cast<QKeyEvent *>(event);
        const bool isUp = key->key() == Qt::Key_Up;
        if ((isUp || key->key() == Qt::Key_Down) && !(key->modifiers() & ~Qt::KeypadModifier)) {
            QKeyEvent across(event->type(), isUp ? Qt::Key_Left : Qt::Key_Right, Qt::NoModifier);
            QApplication::sendEvent(watched, &across);
            event->accept();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace raphe
