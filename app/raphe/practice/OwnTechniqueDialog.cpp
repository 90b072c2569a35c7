#include "app/raphe/practice/OwnTechniqueDialog.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/practice/Passphrase.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

OwnTechniqueDialog::OwnTechniqueDialog(const OwnTechnique &technique, const Techniques &techniques, QWidget *parent)
    : WorkDialog(tr("A technique of your own"), parent),
      m_before(technique),
      m_techniques(techniques),
      m_name(new QLineEdit(QString::fromStdString(technique.name))),
      m_like(new QComboBox),
      m_seconds(new QSpinBox),
      m_how(new QLineEdit(QString::fromStdString(technique.how))),
      m_caution(new QLineEdit(QString::fromStdString(technique.caution))),
      m_preferred(new QCheckBox(tr("Choose it wherever that one would be chosen")))
{
    setAttribute(Qt::WA_DeleteOnClose);
    form().addLayout(labelled(tr("Name"), m_name));
    for (const Technique &known : techniques.all)
        m_like->addItem(capitalised(QString::fromStdString(known.name)));
    form().addLayout(labelled(tr("Worked like"), m_like));
    form().addWidget(hint(tr("For the same tissue and layers, with the same cautions, consent, rest and scope of practice.")));
    m_seconds->setRange(1, Technique::longest);
    m_seconds->setSingleStep(15);
    m_seconds->setSuffix(tr(" s at one place", "after a number of seconds"));
    form().addLayout(labelled(tr("How long"), m_seconds));
    form().addLayout(labelled(tr("How"), m_how));
    form().addLayout(labelled(tr("When to stop"), m_caution));
    m_preferred->setMinimumHeight(touchTarget);
    m_preferred->setChecked(technique.isPreferred);
    form().addWidget(m_preferred);
    form().addStretch(1);
    addGap();
    connect(addButton(tr("Cancel")), &QPushButton::clicked, this, &OwnTechniqueDialog::reject);
    QPushButton *keep = addButton(tr("Keep"));
    keep->setDefault(true);
    connect(keep, &QPushButton::clicked, this, &OwnTechniqueDialog::check);
    const auto like =
        std::find_if(techniques.all.begin(), techniques.all.end(), [&](const Technique &t) { return t.id == technique.like; });
    if (like != techniques.all.end())
        m_like->setCurrentIndex(static_cast<int>(like - techniques.all.begin()));
    connect(m_like, &QComboBox::activated, this, &OwnTechniqueDialog::takeOver);
    if (technique.name.empty())
        takeOver();
    else
        m_seconds->setValue(technique.seconds);
    forgetNoticeWhenTyping();
    resize(480, 560);
    m_name->setFocus();
}

// What is said of the other one is a beginning.
void OwnTechniqueDialog::takeOver()
{
    const Technique &like = m_techniques.all[static_cast<std::size_t>(m_like->currentIndex())];
    m_seconds->setValue(like.dose.seconds);
    m_how->setText(QString::fromStdString(like.dose.how));
    m_caution->setText(QString::fromStdString(like.caution));
}

OwnTechnique OwnTechniqueDialog::technique() const
{
    OwnTechnique out = m_before;
    out.name = storedName(m_name->text());
    out.like = m_techniques.all[static_cast<std::size_t>(m_like->currentIndex())].id;
    out.seconds = m_seconds->value();
    out.how = storedName(m_how->text());
    out.caution = storedName(m_caution->text());
    out.isPreferred = m_preferred->isChecked();
    return out;
}

void OwnTechniqueDialog::check()
{
    const std::pair<QLineEdit *, QString> needed[] = {{m_name, tr("Give the technique a name.")},
        {m_how, tr("Say how it is done, in a few words.")}, {m_caution, tr("Say when to stop.")}};
    for (const auto &[field, trouble] : needed)
        if (field->text().trimmed().isEmpty()) {
            field->setFocus();
            return say(trouble);
        }
    accept();
}

} // namespace raphe
