// A doctor, an emergency contact, a guardian: name and phone side by side. Nobody when both are empty.
#pragma once

#include "app/raphe/record/RecordField.h"
#include "core/record/PatientRecord.h"

namespace raphe {

class ContactEdit : public RecordField {
    Q_OBJECT

public:
    explicit ContactEdit(const QString &who, QWidget *parent = nullptr);

    void give(const std::optional<Contact> &contact);
    [[nodiscard]] std::optional<Contact> value() const;

private:
    TextLine *m_name;
    TextLine *m_phone;
};

} // namespace raphe
