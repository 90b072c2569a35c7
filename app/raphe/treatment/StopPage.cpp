#include "app/raphe/treatment/StopPage.h"

#include "app/paint/Theme.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/treatment/AdverseForm.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace raphe {

namespace {

WrappedLabel *large(const QString &words, double points, int weight)
{
    auto *label = new WrappedLabel(words);
    label->setFont(typeface(points, weight));
    return label;
}

} // namespace

StopPage::StopPage(QWidget *parent)
    : QWidget(parent),
      m_form(new AdverseForm),
      m_goOn(pushButton(tr("None of these: go on"))),
      m_end(pushButton(tr("End the treatment and record it")))
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(48, 32, 48, 32);
    column->setSpacing(14);
    column->addWidget(large(tr("STOPPED"), 48, QFont::Bold));
    column->addWidget(large(tr("Help to sit or lie as needed. Stay with the patient."), 28, QFont::Normal));
    column->addWidget(large(tr("Any of these? Emergency services first, this page later."), 18, QFont::Normal));
    column->addWidget(m_form);
    connect(m_form, &AdverseForm::edited, this, &StopPage::tellButtons);
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
    m_form->clear();
    tellButtons();
}

void StopPage::tellButtons()
{
    const bool isSomething = m_form->saysSomething();
    m_goOn->setEnabled(!isSomething);
    m_end->setText(isSomething ? tr("End the treatment and record it") : tr("End the treatment"));
}

AdverseEvent StopPage::told() const
{
    return m_form->told();
}

} // namespace raphe
