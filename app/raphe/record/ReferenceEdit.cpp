#include "app/raphe/record/ReferenceEdit.h"

#include "app/raphe/Style.h"
#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/record/TextLine.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace raphe {

ReferenceEdit::ReferenceEdit(QWidget *parent)
    : RecordField(parent), m_sex(new TextLine(tr("Sex"))), m_height(new TextLine(tr("Height in centimetres")))
{
    m_sex->setPlaceholderText(tr("female or male"));
    m_height->setPlaceholderText(tr("Height"));
    auto *unit = new QLabel(tr("cm"));
    unit->setMinimumHeight(touchTarget);
    auto *row = new QHBoxLayout;
    row->setSpacing(8);
    m_sex->setFixedWidth(160);
    m_height->setFixedWidth(84);
    for (TextLine *line : {m_sex, m_height})
        watch(line);
    row->addWidget(m_sex);
    row->addWidget(m_height);
    row->addWidget(unit);
    row->addStretch(1);
    column().addLayout(row);
    setFocusProxy(m_sex);
}

void ReferenceEdit::give(std::optional<Sex> sex, std::optional<int> height)
{
    const QSignalBlocker quietSex(m_sex);
    const QSignalBlocker quietHeight(m_height);
    m_sex->give(sex ? sexInWords(*sex).toStdString() : std::string());
    m_height->give(height ? std::to_string(*height) : std::string());
    tell();
}

// The first letters will do.
std::optional<Sex> ReferenceEdit::sex() const
{
    const QString typed = m_sex->text().trimmed();
    for (const Sex sex : {Sex::Female, Sex::Male})
        if (!typed.isEmpty() && sexInWords(sex).startsWith(typed, Qt::CaseInsensitive))
            return sex;
    return std::nullopt;
}

std::optional<int> ReferenceEdit::height() const
{
    return m_height->number();
}

std::optional<Mistake> ReferenceEdit::ownMistake() const
{
    using R = PatientRecord;
    if (!m_sex->isBlank() && !sex())
        return Mistake{tr("Write female or male, or leave it empty."), m_sex};
    const auto tall = height();
    if (!m_height->isBlank() && (!tall || *tall < R::leastHeight || *tall > R::greatestHeight))
        return Mistake{
            tr("Write the height as a number from %1 to %2, in centimetres.").arg(R::leastHeight).arg(R::greatestHeight),
            m_height};
    return std::nullopt;
}

QString ReferenceEdit::understood() const
{
    const auto said = sex();
    return said ? tr("%1: for reference values of that sex only.", "female or male").arg(sexInWords(*said)) : QString();
}

} // namespace raphe
