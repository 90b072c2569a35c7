#include "app/raphe/treatment/StopPage.h"

#include "app/paint/Theme.h"
#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

struct StopSign {
    const char *id;
    const char *question;
};

// Common practice, no source.
constexpr StopSign stopSigns[] = {{"faint", QT_TRANSLATE_NOOP("raphe::StopPage", "Faint, or about to be")},
    {"new-numbness-or-weakness", QT_TRANSLATE_NOOP("raphe::StopPage", "New numbness or weakness")},
    {"sudden-severe-pain", QT_TRANSLATE_NOOP("raphe::StopPage", "Sudden severe pain")},
    {"breathless", QT_TRANSLATE_NOOP("raphe::StopPage", "Breathless")}};

WrappedLabel *large(const QString &words, double points, int weight)
{
    auto *label = new WrappedLabel(words);
    label->setFont(typeface(points, weight));
    return label;
}

} // namespace

StopPage::StopPage(QWidget *parent)
    : QWidget(parent),
      m_told(new QLineEdit),
      m_answer(new QLineEdit),
      m_goOn(pushButton(tr("None of these: go on"))),
      m_end(pushButton(tr("End the treatment and record it")))
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(48, 32, 48, 32);
    column->setSpacing(14);
    column->addWidget(large(tr("STOPPED"), 48, QFont::Bold));
    column->addWidget(large(tr("Help to sit or lie as needed. Stay with the patient."), 28, QFont::Normal));
    column->addWidget(large(tr("Any of these? Emergency services first, this page later."), 18, QFont::Normal));
    for (const StopSign &sign : stopSigns) {
        auto *box = new QCheckBox(tr(sign.question));
        box->setFont(typeface(20));
        box->setMinimumHeight(touchTarget + 8);
        connect(box, &QCheckBox::toggled, this, &StopPage::tellButtons);
        column->addWidget(box);
        m_signs.push_back(box);
    }
    column->addLayout(labelled(tr("What happened"), m_told));
    column->addLayout(labelled(tr("What was done about it"), m_answer));
    connect(m_told, &QLineEdit::textChanged, this, &StopPage::tellButtons);
    column->addStretch(1);
    auto *row = new QHBoxLayout;
    row->addWidget(m_goOn);
    row->addStretch(1);
    row->addWidget(m_end);
    column->addLayout(row);
    connect(m_goOn, &QPushButton::clicked, this, &StopPage::goOnWanted);
    connect(m_end, &QPushButton::clicked, this, &StopPage::endWanted);
    for (QPushButton *button : {m_goOn, m_end})
        button->setAutoDefault(false);
    begin();
}

void StopPage::begin()
{
    for (QCheckBox *box : m_signs)
        box->setChecked(false);
    m_told->clear();
    m_answer->clear();
    tellButtons();
}

void StopPage::tellButtons()
{
    const bool isSomething = !told().signs.empty() || !told().told.empty();
    m_goOn->setEnabled(!isSomething);
    m_end->setText(isSomething ? tr("End the treatment and record it") : tr("End the treatment"));
}

AdverseEvent StopPage::told() const
{
    AdverseEvent out;
    for (std::size_t i = 0; i < m_signs.size(); ++i)
        if (m_signs[i]->isChecked())
            out.signs.emplace_back(stopSigns[i].id);
    out.told = m_told->text().trimmed().toStdString();
    out.answer = m_answer->text().trimmed().toStdString();
    return out;
}

std::vector<std::string> StopPage::signs()
{
    std::vector<std::string> out;
    std::transform(std::begin(stopSigns), std::end(stopSigns), std::back_inserter(out),
        [](const StopSign &sign) { return std::string(sign.id); });
    return out;
}

} // namespace raphe
