#include "app/raphe/practice/RecoveryKeyPages.h"

#include "app/paint/Theme.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"

#include <QDir>
#include <QFileDialog>
#include <QFrame>
#include <QGridLayout>
#include <QLineEdit>
#include <QPageLayout>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QRandomGenerator>
#include <QVBoxLayout>

namespace raphe {

namespace {

constexpr double keyPoints = 20;
constexpr double pointsPerInch = 72;

// Letter by letter, for a screen reader.
QString spelled(const QString &group)
{
    QStringList letters;
    for (const QChar c : group)
        letters += c;
    return letters.join(QLatin1Char(' '));
}

} // namespace

RecoveryKeyPage::RecoveryKeyPage(QWidget *parent)
    : QWidget(parent), m_words(new WrappedLabel), m_frame(new QFrame), m_print(pushButton(tr("Print ..."))), m_saved(hint())
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    column->addWidget(m_words);

    m_frame->setObjectName(QStringLiteral("key"));
    m_frame->setFocusPolicy(Qt::TabFocus); // so that a screen reader gets there
    m_frame->setStyleSheet(QStringLiteral("QFrame#key { border: 1px solid palette(mid); border-radius: 7px; background: "
                                          "palette(base); } QFrame#key:focus { border-color: palette(highlight); }"));
    auto *grid = new QGridLayout(m_frame);
    grid->setContentsMargins(20, 14, 20, 14);
    grid->setHorizontalSpacing(10);
    grid->setVerticalSpacing(10);
    QFont large = typeface(keyPoints, QFont::DemiBold);
    large.setLetterSpacing(QFont::AbsoluteSpacing, 2);
    for (int i = 0; i < static_cast<int>(m_groups.size()); ++i) {
        auto *number = new QLabel(QString::number(i + 1));
        number->setProperty("role", QStringLiteral("quiet"));
        auto *group = new QLabel;
        group->setObjectName(QStringLiteral("group %1").arg(i + 1));
        group->setFont(large);
        m_groups[static_cast<std::size_t>(i)] = group;
        grid->addWidget(number, i / keyGroupsInRow, 2 * (i % keyGroupsInRow), Qt::AlignRight | Qt::AlignVCenter);
        grid->addWidget(group, i / keyGroupsInRow, 2 * (i % keyGroupsInRow) + 1);
        grid->setColumnStretch(2 * (i % keyGroupsInRow) + 1, 1);
    }
    column->addWidget(m_frame);
    column->addWidget(new WrappedLabel(tr(
        "It is shown this once. With it a new passphrase can be set when yours is lost; without it nobody can. In the settings "
        "a new key can take its place.")));

    QPushButton *save = pushButton(tr("Save as text ..."));
    auto *row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(m_print);
    row->addWidget(save);
    row->addStretch(1);
    column->addLayout(row);
    m_saved->say(
        tr("Or write it down by hand: every round sign is a zero, every upright stroke a one. A text file can be read by whoever "
           "gets at it: keep it on a drive that you lock away, never on this computer."));
    column->addWidget(m_saved);
    column->addStretch(1);
    connect(m_print, &QPushButton::clicked, this, &RecoveryKeyPage::print);
    connect(save, &QPushButton::clicked, this, &RecoveryKeyPage::save);
}

void RecoveryKeyPage::show(const RecoverySheet &sheet, const QString &words)
{
    m_sheet = sheet;
    m_words->say(words);
    QStringList spoken;
    for (std::size_t i = 0; i < m_groups.size(); ++i) {
        const QString group = QString::fromStdString(sheet.key.group(i + 1));
        m_groups[i]->setText(group);
        spoken += tr("group %1: %2", "read aloud").arg(i + 1).arg(spelled(group));
    }
    m_frame->setAccessibleName(tr("Recovery key"));
    m_frame->setAccessibleDescription(spoken.join(QStringLiteral("; ")));
}

void RecoveryKeyPage::focusPrint()
{
    m_print->setFocus(); // no focus proxy: it would hide the frame from Tab
}

void RecoveryKeyPage::clear()
{
    m_sheet.reset();
    m_frame->setAccessibleDescription({});
    for (QLabel *group : m_groups)
        group->clear();
}

void RecoveryKeyPage::print()
{
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(tr("Recovery key"));
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() != QDialog::Accepted || !m_sheet)
        return;
    printer.setFullPage(true);
    const QRectF page = printer.pageLayout().fullRect(QPageLayout::Point);
    QPainter painter;
    if (!painter.begin(&printer)) {
        Q_EMIT failed(tr("The printer did not begin. Look whether it is on and has paper, or choose another one."));
        return;
    }
    painter.scale(printer.logicalDpiX() / pointsPerInch, printer.logicalDpiY() / pointsPerInch);
    paintRecoverySheet(painter, *m_sheet, page.width(), page.height());
    if (!painter.end() || printer.printerState() == QPrinter::Error)
        Q_EMIT failed(tr("The printer gave up. Look at it, and print again."));
}

void RecoveryKeyPage::save()
{
    const QString proposed = QDir::home().filePath(tr("recovery-key.txt"));
    const QString file = QFileDialog::getSaveFileName(this, tr("Save the recovery key as text"), proposed);
    if (file.isEmpty() || !m_sheet)
        return;
    if (const auto saved = saveRecoveryText(*m_sheet, file); !saved)
        Q_EMIT failed(sentence(saved.error()));
    else
        m_saved->say(
            tr("Saved as '%1'. Whoever gets at this file can read it: move it to a drive that you lock away.").arg(file));
}

RecoveryProofPage::RecoveryProofPage(QWidget *parent) : QWidget(parent)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    column->addWidget(
        new WrappedLabel(tr("Type these two groups from your paper, to be sure that they are there and can be read.")));
    auto *row = new QHBoxLayout;
    row->setSpacing(12);
    for (Question &question : m_questions) {
        question.answer = new QLineEdit;
        question.answer->setInputMethodHints(Qt::ImhPreferUppercase | Qt::ImhNoPredictiveText | Qt::ImhLatinOnly);
        QVBoxLayout *field = labelled({}, question.answer);
        question.name = qobject_cast<QLabel *>(field->itemAt(0)->widget());
        row->addLayout(field, 1);
    }
    row->addStretch(1);
    column->addLayout(row);
    column->addWidget(hint(tr("Capital or small letters are the same. 'Back' shows the key again.")));
    column->addStretch(1);
    setFocusProxy(m_questions.front().answer);
}

void RecoveryProofPage::ask()
{
    constexpr int count = static_cast<int>(RecoveryKey::groupCount);
    const int first = QRandomGenerator::global()->bounded(count);
    const int second = (first + 1 + QRandomGenerator::global()->bounded(count - 1)) % count; // another one
    m_questions[0].group = static_cast<std::size_t>(std::min(first, second)) + 1;
    m_questions[1].group = static_cast<std::size_t>(std::max(first, second)) + 1;
    for (const Question &question : m_questions) {
        const QString name = tr("Group %1").arg(question.group);
        question.name->setText(name);
        question.answer->setAccessibleName(name);
        question.answer->clear();
    }
}

QString RecoveryProofPage::trouble(const RecoveryKey &key)
{
    for (const Question &question : m_questions) {
        const QString typed = question.answer->text().trimmed();
        if (key.isGroup(question.group, typed.toStdString()))
            continue;
        question.answer->setFocus();
        question.answer->selectAll();
        return typed.isEmpty()
            ? tr("Type group %1 from your paper.").arg(question.group)
            : tr("Group %1 is another one. Compare your paper with the key: 'Back' shows it again.").arg(question.group);
    }
    return {};
}

} // namespace raphe
