#include "app/raphe/practice/FormParts.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/words/ErrorText.h"

#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QStyle>
#include <QVBoxLayout>

namespace raphe {

namespace {

constexpr int nameGap = 4; // pixels between a name and its field
constexpr int scrollGap = 10; // pixels between a page and its scroll bar

QVBoxLayout *under(const QString &name, QWidget *buddy)
{
    buddy->setAccessibleName(name);
    buddy->setMinimumHeight(touchTarget);
    auto *label = new QLabel(name);
    label->setBuddy(buddy);
    auto *column = new QVBoxLayout;
    column->setSpacing(nameGap);
    column->addWidget(label);
    return column;
}

} // namespace

QVBoxLayout *labelled(const QString &name, QWidget *field)
{
    QVBoxLayout *column = under(name, field);
    column->addWidget(field);
    return column;
}

QVBoxLayout *labelled(const QString &name, QBoxLayout *row, QWidget *first)
{
    QVBoxLayout *column = under(name, first);
    column->addLayout(row);
    return column;
}

QLabel *heading(const QString &text)
{
    auto *label = new QLabel(text);
    label->setProperty("role", QStringLiteral("head"));
    return label;
}

WrappedLabel *hint(const QString &text)
{
    auto *label = new WrappedLabel(text);
    label->setProperty("role", QStringLiteral("quiet"));
    label->setTextFormat(Qt::PlainText); // it may say again what somebody typed
    return label;
}

QPushButton *pushButton(const QString &text)
{
    auto *button = new QPushButton(text);
    button->setMinimumHeight(touchTarget);
    button->setAccessibleName(text);
    return button;
}

QPushButton *toggleButton(const QString &text, const QString &about)
{
    auto *button = new QPushButton(text);
    button->setCheckable(true);
    button->setAutoDefault(false);
    button->setMinimumHeight(touchTarget);
    button->setAccessibleName(about);
    button->setToolTip(about);
    button->setStyleSheet(QStringLiteral("padding-left: 5px; padding-right: 5px;"));
    return button;
}

void setWrong(QLineEdit *line, bool isWrong)
{
    if (raphe::isWrong(line) == isWrong)
        return;
    line->setProperty("wrong", isWrong);
    line->style()->unpolish(line);
    line->style()->polish(line);
}

bool isWrong(const QLineEdit *line)
{
    return line->property("wrong").toBool();
}

QScrollArea *scrolled(QWidget *page)
{
    auto *area = new QScrollArea;
    area->setWidget(page);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
    QObject::connect(area->verticalScrollBar(), &QScrollBar::rangeChanged, page,
        [page](int, int most) { page->setContentsMargins(0, 0, most > 0 ? scrollGap : 0, 0); });
    return area;
}

std::vector<std::string> linesIn(const QString &text)
{
    std::vector<std::string> lines;
    for (const QString &line : text.split(QLatin1Char('\n')))
        if (!line.trimmed().isEmpty())
            lines.push_back(line.trimmed().toStdString());
    return lines;
}

QString capitalised(QString text)
{
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}

QString sentence(const Error &error)
{
    QString text = error.place.empty() ? capitalised(errorText(error)) : errorText(error);
    if (!text.endsWith(QLatin1Char('.')))
        text += QLatin1Char('.');
    return text;
}

} // namespace raphe
