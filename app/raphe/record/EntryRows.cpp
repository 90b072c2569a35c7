#include "app/raphe/record/EntryRows.h"

#include "app/raphe/Style.h"
#include "app/raphe/record/TextLine.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace raphe {

TextRow::TextRow(const QString &name, const QString &example, QWidget *parent)
    : ListRow(name.toLower(), parent), m_text(new TextLine(name))
{
    m_text->setPlaceholderText(example);
    line().addWidget(m_text);
    watch(m_text);
    setStops({m_text});
}

void TextRow::give(const std::string &text)
{
    const QSignalBlocker quiet(m_text);
    m_text->give(text);
    tellButton();
}

std::string TextRow::value() const
{
    return m_text->value();
}

bool TextRow::isBlank() const
{
    return m_text->isBlank();
}

SurgeryRow::SurgeryRow(QWidget *parent)
    : ListRow(tr("operation"), parent), m_text(new TextLine(tr("Operation"))), m_year(new TextLine(tr("Year of operation")))
{
    m_text->setPlaceholderText(tr("What was done"));
    m_year->setPlaceholderText(tr("Year"));
    line().addWidget(m_text, 1);
    line().addWidget(m_year);
    m_year->setFixedWidth(84);
    watch(m_text);
    watch(m_year);
    setStops({m_text, m_year});
}

void SurgeryRow::give(const Surgery &surgery)
{
    const QSignalBlocker quietText(m_text);
    const QSignalBlocker quietYear(m_year);
    m_text->give(surgery.text);
    m_year->give(surgery.year ? std::to_string(*surgery.year) : std::string());
    tellButton();
}

Surgery SurgeryRow::value() const
{
    return {m_text->value(), m_year->number()};
}

bool SurgeryRow::isBlank() const
{
    return m_text->isBlank() && m_year->isBlank();
}

std::optional<Mistake> SurgeryRow::ownMistake() const
{
    if (m_text->isBlank() && !m_year->isBlank())
        return Mistake{tr("Write what was done in that year, or remove the row."), m_text};
    const auto year = m_year->number();
    if (!m_year->isBlank() && (!year || *year < Surgery::firstYear || *year > Surgery::lastYear))
        return Mistake{tr("Write the year with four digits, as 1999, or leave it empty."), m_year};
    return std::nullopt;
}

ImplantRow::ImplantRow(QWidget *parent)
    : ListRow(tr("implant"), parent), m_text(new TextLine(tr("Implant"))), m_place(new TextLine(tr("Place of implant")))
{
    m_text->setPlaceholderText(tr("What it is"));
    m_place->setPlaceholderText(tr("Where it is"));
    line().addWidget(m_text, 3);
    line().addWidget(m_place, 2);
    watch(m_text);
    watch(m_place);
    setStops({m_text, m_place});
}

void ImplantRow::give(const Implant &implant)
{
    const QSignalBlocker quietText(m_text);
    const QSignalBlocker quietPlace(m_place);
    m_text->give(implant.text);
    m_place->give(implant.place);
    tellButton();
}

Implant ImplantRow::value() const
{
    return {m_text->value(), m_place->value()};
}

bool ImplantRow::isBlank() const
{
    return m_text->isBlank() && m_place->isBlank();
}

std::optional<Mistake> ImplantRow::ownMistake() const
{
    if (!m_text->isBlank() || m_place->isBlank())
        return std::nullopt;
    return Mistake{tr("Write what is there, or remove the row."), m_text};
}

ComplaintRow::ComplaintRow(QWidget *parent)
    : ListRow(tr("complaint"), parent),
      m_text(new TextBlock(tr("Complaint"), 2)),
      m_since(new TextLine(tr("Since when, complaint"))),
      m_closed(new QCheckBox(tr("Closed")))
{
    m_text->setPlaceholderText(tr("What the patient comes for, in their words"));
    m_since->setPlaceholderText(tr("In their words, as 'last winter'"));
    m_closed->setAccessibleName(tr("Closed, complaint"));
    m_closed->setMinimumHeight(touchTarget);
    auto *since = new QLabel(tr("Since"));
    since->setBuddy(m_since);
    auto *more = new QHBoxLayout;
    more->setSpacing(12);
    more->addWidget(since);
    more->addWidget(m_since, 1);
    more->addWidget(m_closed);
    auto *lines = new QVBoxLayout;
    lines->setSpacing(6);
    lines->addWidget(m_text);
    lines->addLayout(more);
    lines->addSpacing(12); // before the next complaint
    line().addLayout(lines);
    watch(m_text);
    watch(m_since);
    connect(m_closed, &QCheckBox::toggled, this, &ComplaintRow::tell);
    connect(this, &RecordField::edited, this, &ComplaintRow::tellClosed);
    setStops({m_text, m_since, m_closed});
    tellClosed();
}

void ComplaintRow::give(const PatientComplaint &complaint)
{
    const QSignalBlocker quietText(m_text);
    const QSignalBlocker quietSince(m_since);
    const QSignalBlocker quietClosed(m_closed);
    m_id = complaint.id;
    m_text->give(complaint.text);
    m_since->give(complaint.since);
    m_closed->setChecked(complaint.closed);
    tellButton();
    tellClosed();
}

void ComplaintRow::tellClosed()
{
    m_closed->setEnabled(!isBlank()); // an empty row is no complaint
}

PatientComplaint ComplaintRow::value() const
{
    return {m_id, m_text->value(), m_since->value(), m_closed->isChecked()};
}

bool ComplaintRow::isBlank() const
{
    return m_id == 0 && m_text->isBlank() && m_since->isBlank();
}

std::optional<Mistake> ComplaintRow::ownMistake() const
{
    if (isBlank() || !m_text->isBlank())
        return std::nullopt;
    return m_id == 0 ? Mistake{tr("Write what the complaint is, or remove it."), m_text}
                     : Mistake{tr("Write what the complaint is. One that is over can be marked as closed."), m_text};
}

} // namespace raphe
