#include "app/raphe/treatment/AdverseForm.h"

#include "app/paint/Theme.h"
#include "app/raphe/Style.h"
#include "app/raphe/practice/FormParts.h"

#include <QCheckBox>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

struct StopSign {
    const char *id;
    const char *question;
};

// Common practice, no source.
constexpr StopSign stopSigns[] = {{"faint", QT_TRANSLATE_NOOP("raphe::AdverseForm", "Faint, or about to be")},
    {"new-numbness-or-weakness", QT_TRANSLATE_NOOP("raphe::AdverseForm", "New numbness or weakness")},
    {"sudden-severe-pain", QT_TRANSLATE_NOOP("raphe::AdverseForm", "Sudden severe pain")},
    {"breathless", QT_TRANSLATE_NOOP("raphe::AdverseForm", "Breathless")}};

} // namespace

AdverseForm::AdverseForm(QWidget *parent) : QWidget(parent), m_told(new QLineEdit), m_answer(new QLineEdit)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    for (const StopSign &sign : stopSigns) {
        auto *box = new QCheckBox(tr(sign.question));
        box->setFont(typeface(20));
        box->setMinimumHeight(touchTarget + 8);
        connect(box, &QCheckBox::toggled, this, &AdverseForm::edited);
        column->addWidget(box);
        m_signs.push_back(box);
    }
    column->addLayout(labelled(tr("What happened"), m_told));
    column->addLayout(labelled(tr("What was done about it"), m_answer));
    for (QLineEdit *line : {m_told, m_answer})
        connect(line, &QLineEdit::textChanged, this, &AdverseForm::edited);
}

void AdverseForm::clear()
{
    for (QCheckBox *box : m_signs)
        box->setChecked(false);
    m_told->clear();
    m_answer->clear();
}

AdverseEvent AdverseForm::told() const
{
    AdverseEvent out;
    for (std::size_t i = 0; i < m_signs.size(); ++i)
        if (m_signs[i]->isChecked())
            out.signs.emplace_back(stopSigns[i].id);
    out.told = m_told->text().trimmed().toStdString();
    out.answer = m_answer->text().trimmed().toStdString();
    return out;
}

bool AdverseForm::saysSomething() const
{
    const AdverseEvent event = told();
    return !event.signs.empty() || !event.told.empty();
}

std::vector<std::string> AdverseForm::signs()
{
    std::vector<std::string> out;
    std::transform(std::begin(stopSigns), std::end(stopSigns), std::back_inserter(out),
        [](const StopSign &sign) { return std::string(sign.id); });
    return out;
}

QString AdverseForm::wordsOf(const std::string &sign)
{
    for (const StopSign &known : stopSigns)
        if (known.id == sign)
            return tr(known.question);
    return QString::fromStdString(sign);
}

} // namespace raphe
