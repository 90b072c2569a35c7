// The lines in which an addressee of letters is typed: in the letter and in the practice's book. No widget itself; its lines
// belong to the layout that they are put into.
#pragma once

#include "app/raphe/record/RecordField.h"
#include "core/record/Letter.h"

#include <optional>
#include <vector>

class QVBoxLayout;

namespace raphe {

class TextBlock;
class TextLine;

class AddresseeLines {
public:
    AddresseeLines();

    [[nodiscard]] TextLine *name() const { return m_name; }
    [[nodiscard]] TextLine *role() const { return m_role; }
    [[nodiscard]] TextBlock *address() const { return m_address; }
    void addTo(QVBoxLayout &column) const;

    void give(const Addressee &addressee);
    [[nodiscard]] Addressee value() const;
    [[nodiscard]] bool isBlank() const;
    void setReadOnly(bool isReadOnly);
    /// Of lines that are not all blank.
    [[nodiscard]] std::optional<Mistake> mistake() const;

private:
    TextLine *m_name;
    TextLine *m_role;
    TextBlock *m_address;
};

/// 'Dr A. Example, general practice'.
[[nodiscard]] QString addresseeName(const Addressee &addressee);

} // namespace raphe
