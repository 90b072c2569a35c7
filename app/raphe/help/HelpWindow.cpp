#include "app/raphe/help/HelpWindow.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/help/HelpView.h"
#include "app/raphe/practice/FormParts.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScreen>
#include <QShortcut>
#include <QSplitter>
#include <QTextDocument>
#include <QVBoxLayout>

#include <algorithm>
#include <numeric>

namespace raphe {

namespace {

QStringList wordsOf(const QString &typed)
{
    QStringList words = typed.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    words.removeDuplicates();
    return words;
}

} // namespace

HelpWindow::HelpWindow(const HelpPages &pages, QWidget *beside)
    : QWidget(beside, Qt::Window), m_pages(pages), m_isOn(pages.pages.size(), false), m_found(pages.pages.size(), 0)
{
    setAttribute(Qt::WA_DeleteOnClose);
    setAttribute(Qt::WA_QuitOnClose, false);
    setWindowTitle(tr("Help"));
    auto *halves = new QSplitter;
    halves->setChildrenCollapsible(false);
    halves->addWidget(makeLeft());
    halves->addWidget(makeRight());
    halves->setStretchFactor(1, 1);
    halves->setSizes({300, 700});
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(12, 12, 12, 12);
    row->addWidget(halves);
    makeKeys();
    resize(QSize(1000, 760).boundedTo(screen()->availableSize()));
}

QWidget *HelpWindow::makeLeft()
{
    auto *box = new QWidget;
    auto *column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 6, 0);
    m_find = new QLineEdit;
    m_find->setAccessibleName(tr("Find words in all pages"));
    m_find->setPlaceholderText(tr("Find words (Ctrl+F)"));
    m_find->setToolTip(tr("Enter goes to the next place, Shift+Enter to the one before"));
    m_find->setMinimumHeight(touchTarget);
    m_find->setClearButtonEnabled(true);
    m_find->installEventFilter(this);
    connect(m_find, &QLineEdit::textChanged, this, &HelpWindow::lookFor);
    column->addWidget(m_find);
    m_said = hint();
    column->addWidget(m_said);
    m_contents = new QListWidget;
    m_contents->setAccessibleName(tr("Pages of the help"));
    m_contents->setWordWrap(true);
    m_contents->setStyleSheet(QStringLiteral("QListView::item { min-height: %1px; padding: 0 6px; }").arg(touchTarget));
    m_contents->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    for (const HelpPage &page : m_pages.pages)
        m_contents->addItem(QString::fromStdString(page.title));
    connect(m_contents, &QListWidget::currentRowChanged, this, [this](int row) {
        if (row >= 0)
            m_view->open(m_pages.pages[static_cast<std::size_t>(row)].id);
    });
    column->addWidget(m_contents, 1);
    return box;
}

QWidget *HelpWindow::makeRight()
{
    auto *box = new QWidget;
    auto *column = new QVBoxLayout(box);
    column->setContentsMargins(6, 0, 0, 0);
    const auto button = [](const QString &text, const QString &about) {
        QPushButton *made = pushButton(text);
        made->setAccessibleName(about);
        made->setToolTip(about);
        return made;
    };
    m_back = button(tr("Back"), tr("Back to the page before (Alt+Left)"));
    m_forward = button(tr("Forward"), tr("Forward again (Alt+Right)"));
    m_before = button(tr("Last found"), tr("To the place that was found before this one (Shift+F3)"));
    m_next = button(tr("Next found"), tr("To the next place that was found (F3)"));
    QPushButton *away = button(tr("Close"), tr("Close the help (Esc)"));
    auto *row = new QHBoxLayout;
    row->addWidget(m_back);
    row->addWidget(m_forward);
    row->addStretch(1);
    row->addWidget(m_before);
    row->addWidget(m_next);
    row->addStretch(1);
    row->addWidget(away);
    column->addLayout(row);
    m_view = new HelpView(m_pages);
    column->addWidget(m_view, 1);
    connect(m_back, &QPushButton::clicked, m_view, &HelpView::backward);
    connect(m_forward, &QPushButton::clicked, m_view, &HelpView::forward);
    connect(m_view, &HelpView::backwardAvailable, m_back, &QPushButton::setEnabled);
    connect(m_view, &HelpView::forwardAvailable, m_forward, &QPushButton::setEnabled);
    connect(m_view, &HelpView::sourceChanged, this, &HelpWindow::showPage);
    connect(m_before, &QPushButton::clicked, this, [this] { step(-1); });
    connect(m_next, &QPushButton::clicked, this, [this] { step(1); });
    connect(away, &QPushButton::clicked, this, &HelpWindow::close);
    for (QPushButton *resting : {m_back, m_forward, m_before, m_next})
        resting->setEnabled(false);
    return box;
}

void HelpWindow::makeKeys()
{
    const auto on = [this](const QKeySequence &keys, auto slot) {
        connect(new QShortcut(keys, this), &QShortcut::activated, this, slot);
    };
    on(QKeySequence(Qt::Key_Escape), [this] { close(); });
    on(QKeySequence(Qt::CTRL | Qt::Key_F), [this] {
        m_find->setFocus(Qt::ShortcutFocusReason);
        m_find->selectAll();
    });
    on(QKeySequence(Qt::Key_F3), [this] { step(1); });
    on(QKeySequence(Qt::SHIFT | Qt::Key_F3), [this] { step(-1); });
    on(QKeySequence(Qt::ALT | Qt::Key_Left), [this] { m_view->backward(); });
    on(QKeySequence(Qt::ALT | Qt::Key_Right), [this] { m_view->forward(); });
    on(QKeySequence(Qt::ALT | Qt::Key_Home), [this] { m_view->open(m_pages.pages.front().id); });
    on(QKeySequence(Qt::CTRL | Qt::Key_L), [this] { Q_EMIT lockWanted(); }); // as in the window beside it
}

void HelpWindow::openAt(const QString &topic)
{
    m_find->clear();
    const HelpPage *page = m_pages.find(topic.toStdString());
    m_view->open(page ? page->id : m_pages.pages.front().id);
    show();
    raise();
    activateWindow();
    m_view->setFocus();
}

QString HelpWindow::said() const
{
    return m_said->text();
}

std::size_t HelpWindow::pageAt() const
{
    return static_cast<std::size_t>(&m_view->page() - m_pages.pages.data());
}

// The contents follow the page, whoever opened it.
void HelpWindow::showPage()
{
    const QSignalBlocker quiet(m_contents);
    m_contents->setCurrentRow(static_cast<int>(pageAt()));
    setWindowTitle(tr("Help: %1", "title of a page").arg(QString::fromStdString(m_view->page().title)));
    tell();
}

bool HelpWindow::isOn(std::size_t page, const QStringList &words) const
{
    const QString title = QString::fromStdString(m_pages.pages[page].title);
    return std::all_of(words.begin(), words.end(), [&](const QString &word) {
        return title.contains(word, Qt::CaseInsensitive) || m_texts[page].contains(word, Qt::CaseInsensitive);
    });
}

void HelpWindow::lookFor()
{
    if (m_texts.empty())
        for (const HelpPage &page : m_pages.pages) {
            QTextDocument document;
            document.setMarkdown(QString::fromStdString(page.text));
            m_texts.push_back(document.toPlainText());
        }
    const QStringList words = wordsOf(m_find->text());
    for (std::size_t i = 0; i < m_found.size(); ++i) {
        m_isOn[i] = !words.isEmpty() && isOn(i, words);
        m_found[i] = m_isOn[i] ? static_cast<int>(HelpView::placesOf(words, m_texts[i]).size()) : 0;
        QListWidgetItem *item = m_contents->item(static_cast<int>(i));
        const QString title = QString::fromStdString(m_pages.pages[i].title);
        item->setText(m_found[i] == 0
                ? title
                : tr("%1 (%2)", "title of a page, in how many places something stands on it").arg(title).arg(m_found[i]));
        item->setHidden(!words.isEmpty() && !m_isOn[i]);
    }
    m_view->mark(words);
    tell();
}

void HelpWindow::tell()
{
    const int places = std::accumulate(m_found.begin(), m_found.end(), 0);
    const auto pages = static_cast<int>(std::count(m_isOn.begin(), m_isOn.end(), true));
    m_said->setText(wordsOf(m_find->text()).isEmpty() ? QString()
            : pages == 0                              ? tr("Nothing found. Try fewer or shorter words.")
            : m_view->foundAt() >= 0
            ? tr("Place %1 of %2 on this page", "numbers").arg(m_view->foundAt() + 1).arg(m_view->found())
            : tr("Places: %1, pages: %2. Enter leads there.", "numbers").arg(places).arg(pages));
    m_said->setVisible(!m_said->text().isEmpty());
    m_before->setEnabled(pages > 0);
    m_next->setEnabled(pages > 0);
}

// On this page, then on the next one that has the words, and round again.
void HelpWindow::step(int by)
{
    if (std::find(m_isOn.begin(), m_isOn.end(), true) == m_isOn.end())
        return;
    const int at = m_view->foundAt();
    const int next = at < 0 ? (by > 0 ? 0 : m_view->found() - 1) : at + by;
    if (m_isOn[pageAt()] && next >= 0 && next < m_view->found()) {
        m_view->showFound(next);
    } else {
        const std::size_t count = m_isOn.size();
        std::size_t page = pageAt();
        do
            page = (page + (by > 0 ? 1 : count - 1)) % count;
        while (!m_isOn[page]);
        m_view->open(m_pages.pages[page].id);
        m_view->showFound(by > 0 ? 0 : m_view->found() - 1);
    }
    tell();
}

bool HelpWindow::eventFilter(QObject *watched, QEvent *event)
{
    if (watched != m_find || event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const auto *key = static_cast<QKeyEvent *>(event);
    switch (key->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter: step(key->modifiers() & Qt::ShiftModifier ? -1 : 1); return true;
    case Qt::Key_Down: m_contents->setFocus(Qt::ShortcutFocusReason); return true;
    default: return QWidget::eventFilter(watched, event);
    }
}

} // namespace raphe
