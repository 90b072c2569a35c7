#include "app/raphe/examination/TestRow.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/practice/FormParts.h"
#include "core/examination/AccuracyWords.h"
#include "core/examination/Barred.h"

#include <QCoreApplication>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QInputDialog>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

enum Present { IsThere, IsNot };

} // namespace

void showStudies(QWidget *parent, const QString &title, const QStringList &studies)
{
    auto *box = new QMessageBox(QMessageBox::NoIcon, title,
        (studies
            + QStringList{QCoreApplication::translate("showStudies",
                "Figures of the patients of those studies, with 95 % intervals. They say nothing certain of the person in the "
                "room.")})
            .join(QStringLiteral("\n\n")),
        QMessageBox::Close, parent);
    box->setTextFormat(Qt::PlainText);
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->open();
}

TestRow::TestRow(VisitSession &session, const ExamTest &test) : SheetRow(session), m_test(test) { }

ChoiceRow *TestRow::makeAnswer(const QString &name) const
{
    switch (answerFormOf(m_test.kind)) {
    case AnswerForm::Pain: return new ChoiceRow(name, {tr("None"), tr("Other pain"), tr("Familiar")});
    case AnswerForm::Grade: return ChoiceRow::ofNumbers(name, highestGradeOf(m_test.kind));
    case AnswerForm::Present: return new ChoiceRow(name, {tr("Present"), tr("Absent")});
    case AnswerForm::Values: break;
    }
    return nullptr;
}

TestRow::Cell TestRow::makeCell(Side side)
{
    const QString name = withSide(side, m_test.name);
    Cell cell;
    cell.side = side;
    cell.box = new QWidget;
    auto *lines = new QVBoxLayout(cell.box);
    lines->setContentsMargins(0, 4, 6, 4);
    lines->setSpacing(4);
    auto *row = new QHBoxLayout;
    row->setSpacing(6);
    lines->addLayout(row);
    if (side == Side::Midline)
        row->addWidget(hint(loud(side)));
    if ((cell.answer = makeAnswer(name)))
        row->addWidget(cell.answer);
    if (m_test.vital)
        for (const std::string &field : m_test.vital->fields) {
            auto *line = new QLineEdit;
            line->setAccessibleName(tr("%1, %2", "a vital sign, a part of it").arg(name, QString::fromStdString(field)));
            line->setPlaceholderText(QString::fromStdString(field));
            line->setMinimumHeight(touchTarget);
            line->setMaximumWidth(110);
            line->setMaxLength(8);
            cell.values.push_back(line);
            row->addWidget(line);
        }
    if (m_test.vital)
        row->addWidget(new QLabel(QString::fromStdString(m_test.vital->unit)));
    row->addStretch(1);
    auto *below = new QHBoxLayout;
    below->setSpacing(6);
    lines->addLayout(below);
    const auto addButton = [&](const QString &text, const QString &about) {
        QPushButton *button = toggleButton(text, tr("%1: %2", "a test with its side, what is said of it").arg(name, about));
        button->setToolTip(about);
        below->addWidget(button);
        return button;
    };
    if (m_test.kind == TestKind::Nerve)
        cell.changes = addButton(tr("Changes"), tr("moving a distant part changes what is felt"));
    cell.unable = addButton(tr("Could not"), tr("could not be done, with the reason"));
    below->addStretch(1);
    return cell;
}

void TestRow::addTo(QGridLayout &grid)
{
    const int line = grid.rowCount();
    grid.addWidget(makeName(QString::fromStdString(m_test.name),
                       tr("%1 Counts: %2.", "how a test is done, what is a positive answer")
                           .arg(QString::fromStdString(m_test.how), QString::fromStdString(m_test.positive))),
        line, 0, 2, 1);
    for (const Side side : sidesOf(m_test.isPaired))
        m_cells.push_back(makeCell(side));
    for (std::size_t i = 0; i < m_cells.size(); ++i) {
        const Cell &cell = m_cells[i];
        addBox(grid, line, cell.side, cell.box);
        if (cell.answer)
            connect(cell.answer, &ChoiceRow::chosen, this, [this, i] { takeAnswer(m_cells[i]); });
        for (QLineEdit *edit : cell.values)
            connect(edit, &QLineEdit::editingFinished, this, [this, i] { takeValues(m_cells[i]); });
        if (cell.changes)
            connect(cell.changes, &QPushButton::clicked, this, [this, i] { takeChanges(m_cells[i]); });
        connect(cell.unable, &QPushButton::clicked, this, [this, i] { askWhyUnable(m_cells[i]); });
    }
    if (!m_test.accuracy.empty()) {
        auto *worth = new QPushButton(tr("What it is worth"));
        worth->setAutoDefault(false);
        worth->setMinimumHeight(touchTarget);
        worth->setAccessibleName(tr("What %1 is worth, by studies").arg(QString::fromStdString(m_test.name)));
        grid.addWidget(worth, line, 3, Qt::AlignTop);
        connect(worth, &QPushButton::clicked, this, [this, worth] { showWorth(worth->window()); });
    }
    m_said = hint();
    grid.addWidget(m_said, line + 1, 1, 1, 2, Qt::AlignTop);
    refresh();
}

TestResult TestRow::started(const Cell &cell) const
{
    const TestResult *before = m_session.resultOf(m_test.id, cell.side);
    TestResult fresh;
    fresh.test = m_test.id;
    fresh.side = cell.side;
    if (before)
        fresh.note = before->note;
    return fresh;
}

void TestRow::takeAnswer(const Cell &cell)
{
    if (isUnread(*cell.answer))
        return;
    const auto chosen = cell.answer->value();
    const TestResult *before = m_session.resultOf(m_test.id, cell.side);
    if (!chosen) {
        if (before && !before->unable)
            m_session.removeResult(m_test.id, cell.side);
        return;
    }
    TestResult result = started(cell);
    switch (answerFormOf(m_test.kind)) {
    case AnswerForm::Pain: {
        result.pain = static_cast<TestPain>(*chosen);
        result.changesFromAfar = before && before->changesFromAfar && result.pain != TestPain::None;
        break;
    }
    case AnswerForm::Grade: result.grade = *chosen; break;
    case AnswerForm::Present: result.present = *chosen == IsThere; break;
    case AnswerForm::Values: return;
    }
    m_session.record(result);
}

void TestRow::takeValues(const Cell &cell)
{
    TestResult result = started(cell);
    bool isEmpty = true;
    for (std::size_t i = 0; i < cell.values.size(); ++i) {
        QLineEdit *line = cell.values[i];
        const QString text = line->text().trimmed().replace(QLatin1Char(','), QLatin1Char('.'));
        bool isNumber = false;
        const double number = text.toDouble(&isNumber);
        isEmpty = isEmpty && text.isEmpty();
        const bool isRight = isNumber && number >= m_test.vital->least[i] && number <= m_test.vital->most[i];
        line->setToolTip(text.isEmpty() || isRight
                ? QString()
                : tr("A number from %1 to %2").arg(m_test.vital->least[i]).arg(m_test.vital->most[i]));
        setWrong(line, !text.isEmpty() && !isRight);
        if (isRight)
            result.values.push_back(number);
    }
    const TestResult *before = m_session.resultOf(m_test.id, cell.side);
    if (isEmpty && before && !before->unable) {
        m_session.removeResult(m_test.id, cell.side);
    } else if (result.values.size() == cell.values.size()) {
        for (QLineEdit *line : cell.values)
            line->setModified(false);
        m_session.record(result);
    }
}

void TestRow::takeChanges(const Cell &cell)
{
    const TestResult *before = m_session.resultOf(m_test.id, cell.side);
    if (before && before->pain && before->pain != TestPain::None) {
        TestResult result = *before;
        result.changesFromAfar = cell.changes->isChecked();
        m_session.record(result);
    }
    refresh();
}

void TestRow::askWhyUnable(const Cell &cell)
{
    const TestResult *before = m_session.resultOf(m_test.id, cell.side);
    if (before && before->unable) {
        m_session.removeResult(m_test.id, cell.side);
        return;
    }
    bool ok = false;
    const QString reason = QInputDialog::getText(cell.box->window(), tr("Could not be done"),
        tr("Why could '%1' not be done?").arg(QString::fromStdString(m_test.name)), QLineEdit::Normal, {}, &ok)
                               .trimmed();
    if (ok && !reason.isEmpty()) {
        TestResult result = started(cell);
        result.unable = reason.toStdString();
        m_session.record(result);
    }
    refresh();
}

void TestRow::showWorth(QWidget *parent) const
{
    QStringList lines;
    for (const Accuracy &accuracy : m_test.accuracy)
        lines << QString::fromStdString(inWords(accuracy, m_session.examination()));
    showStudies(parent, capitalised(QString::fromStdString(m_test.name)), lines);
}

std::optional<int> TestRow::shown(const TestResult &result) const
{
    if (result.pain)
        return static_cast<int>(*result.pain);
    if (result.grade)
        return *result.grade;
    if (result.present)
        return *result.present ? IsThere : IsNot;
    return std::nullopt;
}

void TestRow::refresh()
{
    QStringList said;
    for (const Cell &cell : m_cells) {
        const TestResult *result = m_session.resultOf(m_test.id, cell.side);
        if (cell.answer)
            cell.answer->give(result ? shown(*result) : std::nullopt);
        for (std::size_t i = 0; i < cell.values.size(); ++i) {
            const bool isThere = result && i < result->values.size();
            if (cell.values[i]->isModified() && !m_session.isReadOnly())
                continue; // what was typed and is not whole yet stays
            cell.values[i]->setText(isThere ? QString::number(result->values[i]) : QString());
            setWrong(cell.values[i], false);
        }
        if (cell.changes) {
            cell.changes->setEnabled(result && result->pain && result->pain != TestPain::None);
            cell.changes->setChecked(result && result->changesFromAfar);
        }
        cell.unable->setChecked(result && result->unable);
        if (result && result->unable)
            said << tr("%1, could not be done: %2", "a side, the reason")
                        .arg(loud(cell.side), QString::fromStdString(*result->unable));
    }
    m_said->setVisible(!said.isEmpty());
    m_said->say(said.join(QStringLiteral("; ")));
}

std::vector<CautionVerdict> TestRow::verdictsAt(const Cautions &cautions, Side side) const
{
    return verdictsOn(*m_session.knowledge().atlas, cautions, m_test, side);
}

} // namespace raphe
