#include "app/raphe/record/ContactEdit.h"

#include "app/raphe/record/TextLine.h"

#include <QHBoxLayout>

namespace raphe {

ContactEdit::ContactEdit(const QString &who, QWidget *parent)
    : RecordField(parent),
      m_name(new TextLine(tr("%1: name", "doctor, emergency contact or guardian").arg(who))),
      m_phone(new TextLine(tr("%1: phone", "doctor, emergency contact or guardian").arg(who)))
{
    m_name->setPlaceholderText(tr("Name"));
    m_phone->setPlaceholderText(tr("Phone"));
    auto *row = new QHBoxLayout;
    row->setSpacing(6);
    row->addWidget(m_name, 3);
    row->addWidget(m_phone, 2);
    column().addLayout(row);
    setFocusProxy(m_name);
    watch(m_name);
    watch(m_phone);
}

void ContactEdit::give(const std::optional<Contact> &contact)
{
    const QSignalBlocker quietName(m_name);
    const QSignalBlocker quietPhone(m_phone);
    m_name->give(contact ? contact->name : std::string());
    m_phone->give(contact ? contact->phone : std::string());
    tell();
}

std::optional<Contact> ContactEdit::value() const
{
    if (m_name->isBlank() && m_phone->isBlank())
        return std::nullopt;
    return Contact{m_name->value(), m_phone->value()};
}

} // namespace raphe
