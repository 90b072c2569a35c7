#include "app/raphe/practice/RecoveryKeyEdit.h"

#include "app/raphe/practice/FormParts.h"
#include "app/raphe/practice/Passphrase.h"
#include "app/raphe/practice/RecoverySheet.h"

#include <QGridLayout>
#include <QLineEdit>
#include <QRegularExpression>
#include <QVBoxLayout>

namespace raphe {

namespace {

constexpr int groupSize = static_cast<int>(RecoveryKey::groupSize);

} // namespace

RecoveryKeyEdit::RecoveryKeyEdit(QWidget *parent) : QWidget(parent)
{
    auto *grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(8);
    for (std::size_t i = 0; i < m_groups.size(); ++i) {
        auto *field = new QLineEdit;
        field->setInputMethodHints(Qt::ImhSensitiveData | Qt::ImhNoPredictiveText | Qt::ImhPreferUppercase | Qt::ImhLatinOnly);
        m_groups[i] = field;
        const int at = static_cast<int>(i);
        grid->addLayout(labelled(tr("Group %1").arg(at + 1), field), at / keyGroupsInRow, at % keyGroupsInRow);
        connect(field, &QLineEdit::textEdited, this, [this, i] { spread(i); });
    }
    setFocusProxy(m_groups.front());
}

RecoveryKeyEdit::~RecoveryKeyEdit()
{
    for (QLineEdit *field : m_groups)
        wipe(*field);
}

void RecoveryKeyEdit::spread(std::size_t from)
{
    static const QRegularExpression separators(QStringLiteral("[\\s-]"));
    QString typed = m_groups[from]->text().remove(separators);
    if (typed.size() < groupSize)
        return;
    std::size_t at = from;
    while (at + 1 < m_groups.size() && typed.size() > groupSize) {
        m_groups[at++]->setText(typed.left(groupSize));
        typed.remove(0, groupSize);
    }
    m_groups[at]->setText(typed);
    if (typed.size() >= groupSize && at + 1 < m_groups.size())
        ++at;
    m_groups[at]->setFocus();
}

Result<RecoveryKey> RecoveryKeyEdit::read()
{
    const auto failAt = [this](std::size_t group, const std::string &detail) {
        m_groups[group]->setFocus();
        m_groups[group]->selectAll();
        return Error{ErrorCode::MistypedKey, "group " + std::to_string(group + 1), detail};
    };
    std::string typed;
    for (std::size_t i = 0; i < m_groups.size(); ++i) {
        const std::string group = m_groups[i]->text().trimmed().toStdString();
        if (group.empty())
            return failAt(i, "empty");
        typed += group + ' ';
    }
    auto key = RecoveryKey::parse(typed);
    for (std::size_t i = 0; !key && i < m_groups.size(); ++i)
        if (key.error().place == "group " + std::to_string(i + 1))
            return failAt(i, key.error().detail);
    return key;
}

} // namespace raphe
