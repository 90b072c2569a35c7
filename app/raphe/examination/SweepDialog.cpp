#include "app/raphe/examination/SweepDialog.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/examination/EdgeStrip.h"
#include "app/raphe/practice/FormParts.h"
#include "core/examination/RecordWords.h"

#include <QHBoxLayout>
#include <QMessageBox>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace raphe {

SweepDialog::SweepDialog(VisitSession &session, const Sweep &sweep, bool isHeightKnown, const Theme &theme, QWidget *parent)
    : QDialog(parent),
      m_session(session),
      m_sweep(sweep),
      m_strip(new EdgeStrip(*session.knowledge().atlas, m_sweep, theme)),
      m_at(new WrappedLabel),
      m_marks(hint())
{
    const QString edge = QString::fromStdString(
        namedWithSide(session.knowledge().atlas->at(sweep.place.structure).names.english, sweep.place.side));
    setWindowTitle(tr("Sweep along %1").arg(edge));
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    column->setSpacing(10);
    const int step = static_cast<int>(std::lround(sweep.length.value / static_cast<double>(sweep.steps.size())));
    column->addWidget(hint(tr("%1 steps of %2 mm, %3 mm in all, from the %4 to the %5. %6")
                               .arg(sweep.steps.size())
                               .arg(step)
                               .arg(std::lround(sweep.length.value))
                               .arg(QString::fromStdString(sweep.edge.border.from), QString::fromStdString(sweep.edge.border.to),
                                   isHeightKnown ? tr("Reckoned from this patient's height; the card of the edge says how.")
                                                 : tr("The record has no height: reckoned for 170 cm."))));
    column->addWidget(heading(edge));
    column->addWidget(m_strip);
    m_at->setProperty("role", QStringLiteral("head"));
    column->addWidget(m_at);
    column->addWidget(m_marks);
    column->addWidget(hint(
        tr("Digits 0 to 4 mark how tender a step is and go on, C is clear, Delete takes back, arrows go back and "
           "forth; or press a step, and again for clear and for each grade. Steps of 25 mm are a custom of the trade, without a "
           "published source.")));
    column->addStretch(1);
    auto *row = new QHBoxLayout;
    row->addStretch(1);
    QPushButton *leave = pushButton(tr("Leave"));
    leave->setAutoDefault(false);
    QPushButton *record = pushButton(tr("Record"));
    connect(leave, &QPushButton::clicked, this, &SweepDialog::reject);
    connect(record, &QPushButton::clicked, this, &SweepDialog::accept);
    row->addWidget(leave);
    row->addWidget(record);
    column->addLayout(row);
    connect(m_strip, &EdgeStrip::changed, this, &SweepDialog::tell);
    connect(&session, &VisitSession::leaving, this, &SweepDialog::accept); // the program locks: nobody can be asked
    resize(860, sizeHint().height());
    m_strip->setFocus();
    tell();
}

void SweepDialog::tell()
{
    const std::size_t at = m_strip->at();
    QStringList attached;
    for (const std::size_t s : m_sweep.steps[at].stretches) {
        const Stretch &stretch = m_sweep.edge.stretches[s];
        const QString name = QString::fromStdString(m_session.knowledge().atlas->at(stretch.structure).names.english);
        attached << (stretch.origin ? tr("%1 (origin)") : tr("%1 (insertion)")).arg(name);
    }
    const QString step =
        tr("Step %1: %2", "a number, what attaches there")
            .arg(at + 1)
            .arg(attached.isEmpty() ? tr("nothing in the atlas attaches here") : attached.join(QStringLiteral(", ")));
    m_at->say(step);
    const auto &grade = m_strip->marks()[at];
    m_strip->setAccessibleDescription(!grade ? step
            : *grade == 0                    ? tr("%1, clear").arg(step)
                                             : tr("%1, tender %2").arg(step).arg(*grade));
    const QString where = QString::fromStdString(whereSore(m_sweep, m_strip->marks()));
    m_marks->say(where.isEmpty() ? tr("Nothing tender so far.") : capitalised(where) + QLatin1Char('.'));
}

void SweepDialog::reject()
{
    const auto &marks = m_strip->marks();
    const auto marked = std::count_if(marks.begin(), marks.end(), [](const auto &mark) { return mark.has_value(); });
    const bool leaves = marked == 0
        || QMessageBox::question(this, tr("Leave the sweep"),
               tr("%n steps are marked and not recorded. Leave all the same?", "", static_cast<int>(marked)),
               QMessageBox::Discard | QMessageBox::Cancel, QMessageBox::Cancel)
            == QMessageBox::Discard;
    if (leaves)
        QDialog::reject();
}

void SweepDialog::accept()
{
    m_session.record(findingsOf(m_sweep, m_strip->marks()), {}, tr("sweep", "undo step"));
    QDialog::accept();
}

} // namespace raphe
