#include "app/raphe/SearchBox.h"

#include "app/raphe/Style.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QRegularExpression>
#include <QStandardItemModel>

namespace raphe {

namespace {

constexpr std::size_t structuresOffered = 8;

} // namespace

TypedPlace typedPlace(const QString &text)
{
    TypedPlace typed;
    QStringList words;
    for (const QString &word : text.split(QRegularExpression(QStringLiteral("\\s+")), Qt::SkipEmptyParts)) {
        const QString lower = word.toLower();
        if (lower == SearchBox::tr("left", "side word that is typed") || lower == QStringLiteral("l"))
            typed.side = Side::Left;
        else if (lower == SearchBox::tr("right", "side word that is typed") || lower == QStringLiteral("r"))
            typed.side = Side::Right;
        else
            words << word;
    }
    typed.name = words.join(QLatin1Char(' ')).toStdString();
    return typed;
}

SearchBox::SearchBox(const Atlas &atlas, QWidget *parent)
    : QLineEdit(parent), m_atlas(atlas), m_search(atlas), m_rows(new QStandardItemModel(this)), m_completer(new QCompleter(this))
{
    setAccessibleName(tr("Find a structure by name"));
    setPlaceholderText(tr("Find a structure (Ctrl+F)"));
    setToolTip(tr("Any name will do, Latin or everyday; 'left' or 'right' picks the side"));
    setMinimumHeight(touchTarget);
    setClearButtonEnabled(true);
    m_completer->setModel(m_rows);
    m_completer->setCompletionMode(QCompleter::UnfilteredPopupCompletion);
    m_completer->setMaxVisibleItems(10);
    m_completer->setWidget(this);
    m_completer->popup()->setStyleSheet(QStringLiteral("QListView::item { min-height: %1px; padding: 0 8px; }").arg(touchTarget));
    connect(this, &QLineEdit::textEdited, this, &SearchBox::offer);
    connect(m_completer, qOverload<const QModelIndex &>(&QCompleter::activated), this,
        [this](const QModelIndex &index) { choose(index.row()); });
    connect(this, &QLineEdit::returnPressed, this, [this] {
        const QModelIndex current = m_completer->popup()->isVisible() ? m_completer->popup()->currentIndex() : QModelIndex();
        if (m_offered.empty())
            offer(text());
        if (!m_offered.empty())
            choose(std::max(0, current.row()));
        else if (!text().trimmed().isEmpty())
            Q_EMIT nothingFound(text());
    });
}

void SearchBox::offer(const QString &text)
{
    m_rows->clear();
    m_offered.clear();
    const TypedPlace typed = typedPlace(text);
    for (const NameHit &hit : m_search.find(typed.name, structuresOffered)) {
        const Structure &s = m_atlas.at(hit.structure);
        const auto sides = m_atlas.sides(s);
        const bool hasTyped = typed.side && std::find(sides.begin(), sides.end(), *typed.side) != sides.end();
        for (const Side side : sides) {
            if (hasTyped && side != *typed.side)
                continue;
            const Place place{s.id, side};
            const QString spoken = QString::fromStdString(m_atlas.spoken(place));
            auto *row = new QStandardItem(hit.name == s.names.english
                    ? spoken
                    : tr("%1  (%2)", "place, and the name that was meant").arg(spoken, QString::fromStdString(hit.name)));
            row->setEditable(false);
            m_rows->appendRow(row);
            m_offered.push_back(place);
        }
    }
    if (m_offered.empty())
        m_completer->popup()->hide();
    else
        m_completer->complete();
}

void SearchBox::choose(int row)
{
    if (row < 0 || row >= static_cast<int>(m_offered.size()))
        return;
    const Place place = m_offered[static_cast<std::size_t>(row)];
    m_completer->popup()->hide();
    setText(QString::fromStdString(m_atlas.spoken(place)));
    selectAll();
    m_offered.clear();
    Q_EMIT chosen(place);
}

} // namespace raphe
