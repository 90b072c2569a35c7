// The rows of a record's lists: a text; an operation with its year; an implant with its place; a complaint.
#pragma once

#include "app/raphe/record/RowList.h"
#include "core/record/PatientRecord.h"

#include <string>

class QCheckBox;

namespace raphe {

class TextRow : public ListRow {
    Q_OBJECT

public:
    using Value = std::string;
    static Value nothing() { return {}; }
    /// `name`: 'Medicine'; `example` stands in the empty row.
    TextRow(const QString &name, const QString &example, QWidget *parent = nullptr);

    void give(const std::string &text);
    [[nodiscard]] std::string value() const;
    [[nodiscard]] bool isBlank() const override;

private:
    TextLine *m_text;
};

class SurgeryRow : public ListRow {
    Q_OBJECT

public:
    using Value = Surgery;
    static Value nothing() { return {}; }
    explicit SurgeryRow(QWidget *parent = nullptr);

    void give(const Surgery &surgery);
    [[nodiscard]] Surgery value() const;
    [[nodiscard]] bool isBlank() const override;

protected:
    [[nodiscard]] std::optional<Mistake> ownMistake() const override;

private:
    TextLine *m_text;
    TextLine *m_year;
};

class ImplantRow : public ListRow {
    Q_OBJECT

public:
    using Value = Implant;
    static Value nothing() { return {}; }
    explicit ImplantRow(QWidget *parent = nullptr);

    void give(const Implant &implant);
    [[nodiscard]] Implant value() const;
    [[nodiscard]] bool isBlank() const override;

protected:
    [[nodiscard]] std::optional<Mistake> ownMistake() const override;

private:
    TextLine *m_text;
    TextLine *m_place;
};

/// A complaint that was saved is never taken out, since visits may be about it: it can be closed.
class ComplaintRow final : public ListRow {
    Q_OBJECT

public:
    using Value = PatientComplaint;
    static Value nothing() { return {0, {}, {}, false}; }
    explicit ComplaintRow(QWidget *parent = nullptr);

    void give(const PatientComplaint &complaint);
    /// The id of a new one is 0: whoever knows the whole record gives it.
    [[nodiscard]] PatientComplaint value() const;
    /// A saved one never is.
    [[nodiscard]] bool isBlank() const override;
    [[nodiscard]] bool isRemovable() const override { return m_id == 0; }

protected:
    [[nodiscard]] std::optional<Mistake> ownMistake() const override;

private:
    void tellClosed();

    int m_id = 0;
    TextBlock *m_text;
    TextLine *m_since;
    QCheckBox *m_closed;
};

} // namespace raphe
