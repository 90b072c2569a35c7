#include "app/raphe/CardPanel.h"

#include "core/document/StructureCard.h"

#include <QPushButton>
#include <QTextBrowser>
#include <QUrl>
#include <QVBoxLayout>

namespace raphe {

namespace {

QString addressOf(const Place &place)
{
    return QStringLiteral("%1/%2").arg(
        QString::fromStdString(place.structure.value), QString::fromUtf8(wordOf(sideWords, place.side).data()));
}

std::optional<Place> placeOf(const QUrl &address)
{
    const QStringList parts = address.toString().split(QLatin1Char('/'));
    const auto side = parts.size() == 2 ? fromWord(sideWords, parts[1].toStdString()) : std::nullopt;
    return side ? std::optional(Place{{parts[0].toStdString()}, *side}) : std::nullopt;
}

QString htmlOf(const StructureCard &card, const Theme &theme)
{
    const QString quiet = theme.quiet.name();
    QString html = QStringLiteral("<p style='color:%1; margin-top:0'>%2</p>")
                       .arg(quiet, QString::fromStdString(card.nature).toHtmlEscaped());
    for (const CardSection &section : card.sections) {
        html += QStringLiteral("<p style='margin:12px 0 2px 0'><b>%1</b></p>")
                    .arg(QString::fromStdString(section.title).toHtmlEscaped());
        if (!section.evidence.empty())
            html += QStringLiteral("<p style='margin:0 0 0 10px; color:%1; font-size:9.5pt'>%2</p>")
                        .arg(quiet, QString::fromStdString(section.evidence).toHtmlEscaped());
        for (const CardLine &line : section.lines) {
            QString words;
            for (const CardText &part : line.parts) {
                const QString text = QString::fromStdString(part.text).toHtmlEscaped();
                words += part.leadsTo
                    ? QStringLiteral("<a href='%1' style='color:%2; text-decoration:none; font-weight:500'>%3</a>")
                          .arg(addressOf(*part.leadsTo), theme.accent.name(), text)
                    : text;
            }
            html += QStringLiteral("<p style='margin:3px 0 0 10px'>%1").arg(words);
            if (!line.evidence.empty())
                html += QStringLiteral("<br><span style='color:%1; font-size:9.5pt'>%2</span>")
                            .arg(quiet, QString::fromStdString(line.evidence).toHtmlEscaped());
            html += QStringLiteral("</p>");
        }
    }
    if (!card.sources.empty())
        html += QStringLiteral("<p style='margin:12px 0 2px 0'><b>%1</b></p>").arg(CardPanel::tr("Sources"));
    for (std::size_t i = 0; i < card.sources.size(); ++i)
        html += QStringLiteral("<p style='margin:3px 0 0 10px; color:%1; font-size:9.5pt'>[%2] %3</p>")
                    .arg(quiet)
                    .arg(i + 1)
                    .arg(QString::fromStdString(card.sources[i]).toHtmlEscaped());
    return html;
}

} // namespace

CardPanel::CardPanel(VisitSession &session, QWidget *parent) : QWidget(parent), m_session(session)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 6, 0, 0);
    column->setSpacing(6);
    m_back = new QPushButton(tr("Back"));
    m_back->setAccessibleName(tr("Back to the card before"));
    m_back->setToolTip(tr("Back to the card before (Alt+Left)"));
    m_back->setShortcut(Qt::ALT | Qt::Key_Left);
    m_back->setMinimumHeight(touchTarget);
    m_back->setEnabled(false);
    m_text = new QTextBrowser;
    m_text->setAccessibleName(tr("Structure card"));
    m_text->setOpenLinks(false);
    m_text->setPlaceholderText(tr("Touch the body or find a structure by name; its card stands here."));
    column->addWidget(m_text, 1);

    connect(m_text, &QTextBrowser::anchorClicked, this, [this](const QUrl &address) {
        const auto place = placeOf(address);
        if (!place)
            return;
        if (m_shown)
            m_trail.push_back(*m_shown);
        Q_EMIT chosen(*place);
        m_back->setEnabled(!m_trail.empty());
    });
    connect(m_back, &QPushButton::clicked, this, [this] {
        if (m_trail.empty())
            return;
        const Place place = m_trail.back();
        m_trail.pop_back();
        Q_EMIT chosen(place);
        m_back->setEnabled(!m_trail.empty());
    });
    connect(&session, &VisitSession::visitOpened, this, [this] {
        m_trail.clear();
        m_back->setEnabled(false);
    });
    connect(&session, &VisitSession::aimChanged, this, &CardPanel::refresh);
    connect(&session, &VisitSession::findingsChanged, this, &CardPanel::refresh);
}

void CardPanel::setTheme(const Theme &theme)
{
    m_theme = theme;
    refresh();
}

void CardPanel::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    refresh();
}

void CardPanel::refresh()
{
    if (!isVisible())
        return;
    const auto &aim = m_session.aim();
    if (!aim) {
        m_shown.reset();
        m_text->clear();
        return;
    }
    const StructureCard card =
        structureCard(*m_session.knowledge().linkage, aim->place, "en", m_session.visit().findings, m_session.pastFindings());
    m_shown = aim->place;
    m_text->setHtml(htmlOf(card, m_theme));
}

} // namespace raphe
