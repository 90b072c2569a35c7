#include "app/raphe/help/AboutDialog.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"

#include <QIcon>
#include <QLabel>
#include <QPushButton>
#include <QRegularExpression>
#include <QScreen>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace raphe {

namespace {

constexpr int iconSize = 72; // pixels

QString escaped(const std::string &text)
{
    return QString::fromStdString(text).toHtmlEscaped();
}

// Addresses become links.
QString withLinks(const std::string &text)
{
    static const QRegularExpression address(QStringLiteral("(https?://[^\\s;,)]*[^\\s;,).])"));
    return escaped(text).replace(address, QStringLiteral("<a href=\"\\1\">\\1</a>"));
}

QString paragraph(const QString &html)
{
    return QStringLiteral("<p>%1</p>").arg(html);
}

QString noticeParagraphs(const Notice &notice, const Notices &all)
{
    QString licence = escaped(all.licence(notice.licence)->name);
    if (notice.where == NoticeWhere::Tests)
        licence += QStringLiteral(" &ndash; ") + AboutDialog::tr("only in the tests of the program's source");
    QString html = paragraph(
        QStringLiteral("<b>%1</b><br>%2<br>%3<br>%4<br>%5")
            .arg(escaped(notice.what), escaped(notice.who), licence, withLinks(notice.source), escaped(notice.changed)));
    if (!notice.notice.empty())
        html += QStringLiteral("<blockquote>%1</blockquote>").arg(withLinks(notice.notice));
    return html;
}

QString headOf(NoticeKind kind)
{
    switch (kind) {
    case NoticeKind::Data: return AboutDialog::tr("Data, names and codes");
    case NoticeKind::Library: return AboutDialog::tr("Libraries");
    case NoticeKind::Typeface: return AboutDialog::tr("Typeface");
    }
    return {};
}

QString noticesPage(const Notices &all)
{
    QString html;
    for (const auto &[kind, word] : noticeKindWords) {
        html += QStringLiteral("<h3>%1</h3>").arg(headOf(kind).toHtmlEscaped());
        for (const Notice &notice : all.notices)
            if (notice.kind == kind)
                html += noticeParagraphs(notice, all);
    }
    html += QStringLiteral("<h3>%1</h3>").arg(AboutDialog::tr("Licences").toHtmlEscaped());
    for (const Licence &licence : all.licences) {
        html += paragraph(QStringLiteral("<b>%1</b><br>%2").arg(escaped(licence.name), withLinks(licence.reference)));
        if (!licence.text.empty())
            html += QStringLiteral("<pre>%1</pre>").arg(escaped(licence.text));
    }
    return html;
}

} // namespace

AboutDialog::AboutDialog(const Notices &notices, const QString &version, QWidget *parent)
    : QDialog(parent), m_notices(new QTextBrowser)
{
    setWindowTitle(tr("About Raphe"));
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    column->setSpacing(10);

    auto *top = new QHBoxLayout;
    top->setSpacing(16);
    auto *icon = new QLabel;
    icon->setPixmap(QIcon(QStringLiteral(":/icons/raphe.svg")).pixmap(QSize(iconSize, iconSize), devicePixelRatioF()));
    top->addWidget(icon, 0, Qt::AlignTop);
    auto *words = new QVBoxLayout;
    words->setSpacing(6);
    auto *name = new QLabel(tr("Raphe"));
    name->setProperty("role", QStringLiteral("title"));
    words->addWidget(name);
    words->addWidget(hint(tr("Version %1, on Qt %2").arg(version, QString::fromLatin1(qVersion()))));
    words->addWidget(
        new WrappedLabel(tr("Keeps, on one drawing of the body, what a patient complains of, what the hands find, what is "
                            "tied to it, what was done and what changed.")));
    words->addWidget(
        new WrappedLabel(tr("Assists a trained practitioner; follow local law, scope of practice and licensed care. "
                            "It ranks and reminds and shows its reasons; it never says what a patient has. How well each "
                            "thing is known stands beside it; no rule of it has been read by a clinician yet.")));
    top->addLayout(words, 1);
    column->addLayout(top);

    column->addWidget(heading(tr("Whose work it uses")));
    m_notices->setAccessibleName(tr("Whose work it uses, and the licences"));
    m_notices->setOpenExternalLinks(true);
    m_notices->document()->setDocumentMargin(10);
    // The style's own blue is hard to read on a dark ground.
    m_notices->document()->setDefaultStyleSheet(
        QStringLiteral("a { color: %1; } blockquote { margin-left: 16px; } p { margin-top: 2px; margin-bottom: 8px; } "
                       "pre { font-size: 9pt; }")
            .arg(palette().color(QPalette::Highlight).name()));
    m_notices->setHtml(noticesPage(notices));
    column->addWidget(m_notices, 1);

    QPushButton *close = pushButton(tr("Close"));
    close->setDefault(true);
    connect(close, &QPushButton::clicked, this, &AboutDialog::accept);
    column->addWidget(close, 0, Qt::AlignRight);
    close->setFocus();
    resize(QSize(720, 680).boundedTo(screen()->availableSize()));
}

} // namespace raphe
