#include "app/raphe/intake/ChoiceRow.h"

#include "app/raphe/Style.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QPushButton>

#include <algorithm>

namespace raphe {

namespace {

constexpr quint64 pause = 1000; // ms: what is typed after it begins anew; our choice

// Decimal digits of any script, and nothing else.
std::optional<int> numberIn(const QString &typed)
{
    int number = 0;
    for (const QChar c : typed) {
        if (c.digitValue() < 0 || c.category() != QChar::Number_DecimalDigit || number > 1000)
            return {};
        number = 10 * number + c.digitValue();
    }
    return number;
}

} // namespace

ChoiceRow::ChoiceRow(const QString &name, const QStringList &texts, int columns, QWidget *parent) : QWidget(parent)
{
    setAccessibleName(name);
    auto *grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(2);
    const int across = columns > 0 ? columns : static_cast<int>(texts.size());
    setStyleSheet(QStringLiteral("QPushButton { padding: 3px 5px; min-width: 20px; } QPushButton:focus { padding: 2px 4px; }"));
    for (const QString &text : texts) {
        auto *button = new QPushButton(text);
        button->setCheckable(true);
        button->setAutoDefault(false);
        button->setMinimumHeight(touchTarget);
        button->setAccessibleName(tr("%1: %2", "what is asked, an answer").arg(name, text));
        button->installEventFilter(this);
        const int index = static_cast<int>(m_buttons.size());
        connect(button, &QPushButton::clicked, this,
            [this, index] { choose(m_value == index ? std::nullopt : std::optional(index)); });
        grid->addWidget(button, index / across, index % across);
        m_buttons.push_back(button);
    }
    show({});
}

ChoiceRow *ChoiceRow::ofNumbers(const QString &name, int highest)
{
    QStringList numbers;
    for (int i = 0; i <= highest; ++i)
        numbers << QString::number(i);
    auto *row = new ChoiceRow(name, numbers);
    row->m_isOfNumbers = true;
    return row;
}

void ChoiceRow::give(std::optional<int> value)
{
    if (value != m_value)
        m_unread.clear();
    show(value);
}

void ChoiceRow::setTips(const QStringList &tips)
{
    for (qsizetype i = 0; i < tips.size(); ++i)
        button(static_cast<int>(i))->setToolTip(tips[i]);
}

void ChoiceRow::choose(std::optional<int> value, const QString &unread)
{
    m_unread = unread;
    const bool hadFocus = std::any_of(m_buttons.begin(), m_buttons.end(), [](const QPushButton *b) { return b->hasFocus(); });
    show(value);
    if (hadFocus && value)
        button(*value)->setFocus();
    Q_EMIT chosen();
}

void ChoiceRow::show(std::optional<int> value)
{
    m_value = value;
    for (std::size_t i = 0; i < m_buttons.size(); ++i) {
        const bool isChosen = value == static_cast<int>(i);
        m_buttons[i]->setChecked(isChosen);
        m_buttons[i]->setFocusPolicy(isChosen || (!value && i == 0) ? Qt::StrongFocus : Qt::ClickFocus);
    }
}

// What a key chooses: an arrow the neighbour, a letter the next choice that begins with it. Nothing when it says nothing here.
std::optional<int> ChoiceRow::after(int key) const
{
    const int last = static_cast<int>(m_buttons.size()) - 1;
    if (key == Qt::Key_Left)
        return std::max(0, m_value.value_or(1) - 1);
    if (key == Qt::Key_Right)
        return std::min(last, m_value.value_or(-1) + 1);
    if (key >= Qt::Key_A && key <= Qt::Key_Z) {
        for (int step = 1; step <= last + 1; ++step) {
            const int index = (m_value.value_or(-1) + step) % (last + 1);
            if (button(index)->text().startsWith(QChar(key), Qt::CaseInsensitive))
                return index;
        }
        return {};
    }
    return {};
}

// By when the keys were struck, not by when a busy machine came to them.
bool ChoiceRow::isGoingOn(const QKeyEvent &key) const
{
    return !m_typed.isEmpty() && key.timestamp() < m_lastKey + pause;
}

// As into a field: on a row of numbers no letter is a key of the window.
bool ChoiceRow::isTyped(const QKeyEvent &key) const
{
    if (!m_isOfNumbers || (key.modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier)) || key.text().isEmpty())
        return false;
    return key.text().front().isPrint() && (key.key() != Qt::Key_Space || isGoingOn(key));
}

void ChoiceRow::type(const QKeyEvent &key)
{
    if (!isGoingOn(key))
        m_typed.clear();
    m_lastKey = key.timestamp();
    m_typed += key.text();
    const auto number = numberIn(m_typed);
    const bool isThere = number && *number < static_cast<int>(m_buttons.size());
    choose(isThere ? number : std::nullopt, isThere ? QString() : m_typed);
}

bool ChoiceRow::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() != QEvent::KeyPress && event->type() != QEvent::ShortcutOverride)
        return QWidget::eventFilter(watched, event);
    const auto *key = static_cast<QKeyEvent *>(event);
    const bool takesBack = key->key() == Qt::Key_Delete || key->key() == Qt::Key_Backspace;
    if (isTyped(*key)) {
        event->accept();
        if (event->type() == QEvent::KeyPress && isEnabled())
            type(*key);
        return true;
    }
    m_typed.clear();
    const auto value = key->modifiers() & ~Qt::KeypadModifier ? std::nullopt : after(key->key());
    if (!value && !takesBack)
        return QWidget::eventFilter(watched, event);
    event->accept(); // before the window's own keys
    if (event->type() == QEvent::KeyPress && isEnabled())
        choose(takesBack ? std::nullopt : value);
    return true;
}

} // namespace raphe
