#include "app/raphe/practice/HistoryDialog.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/practice/EntryWords.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/practice/VisitChanges.h"
#include "core/anatomy/Atlas.h"
#include "core/record/VisitJson.h"

#include <QHBoxLayout>
#include <QListView>
#include <QPushButton>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace raphe {

namespace {

QString headHtml(const QString &text)
{
    return QStringLiteral("<p style='margin:12px 0 2px 0'><b>%1</b></p>").arg(text.toHtmlEscaped());
}

QString lineHtml(const QString &text)
{
    QString escaped = text.toHtmlEscaped();
    escaped.replace(QLatin1Char('\n'), QStringLiteral("<br>"));
    return QStringLiteral("<p style='margin:3px 0 0 10px'>%1</p>").arg(escaped);
}

QString listHtml(const QString &title, const QStringList &lines)
{
    QString html;
    for (const QString &line : lines)
        html += lineHtml(HistoryDialog::tr("%1: %2", "'Added', what was added").arg(title, line));
    return html;
}

QString stateWords(VisitState state)
{
    switch (state) {
    case VisitState::Draft: return HistoryDialog::tr("The visit is a draft: it is not signed yet.");
    case VisitState::Signed: return HistoryDialog::tr("The visit is signed.");
    case VisitState::Amending:
        return HistoryDialog::tr("An amendment is being written: it is not signed yet, and not shown here.");
    case VisitState::InError: return HistoryDialog::tr("The visit was entered in error. It is kept, and shown as such.");
    }
    return {};
}

} // namespace

HistoryDialog::HistoryDialog(const Practice &practice, std::int64_t visit, const Knowledge &knowledge, const SafetyRules &rules,
    const Examination &examination, QWidget *parent)
    : QDialog(parent),
      m_knowledge(knowledge),
      m_rules(rules),
      m_examination(examination),
      m_state(new WrappedLabel),
      m_list(new QListView),
      m_text(new QTextBrowser)
{
    setWindowTitle(tr("History of the visit"));
    resize(720, 640);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    column->setSpacing(10);
    m_state->setProperty("role", QStringLiteral("head"));
    m_state->setTextFormat(Qt::PlainText);
    column->addWidget(m_state);
    m_list->setAccessibleName(tr("Versions, the newest first"));
    m_list->setModel(&m_model);
    m_list->setStyleSheet(QStringLiteral("QListView::item { padding: 6px 8px; }"));
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setTextElideMode(Qt::ElideRight);
    column->addWidget(m_list, 2);
    m_text->setAccessibleName(tr("The chosen version"));
    m_text->setOpenLinks(false);
    m_text->setTabChangesFocus(true);
    column->addWidget(m_text, 5);
    auto *row = new QHBoxLayout;
    auto *close = pushButton(tr("Close"));
    row->addStretch(1);
    row->addWidget(close);
    column->addLayout(row);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this,
        [this](const QModelIndex &now) { showVersion(now.row()); });
    read(practice, visit);
    m_list->setFocus();
}

void HistoryDialog::read(const Practice &practice, std::int64_t visit)
{
    const auto stored = practice.visit(visit);
    auto versions = practice.history(visit);
    if (!stored || !versions) {
        m_state->say(sentence(stored ? versions.error() : stored.error()));
        return;
    }
    m_state->say(stateWords(stored.value().state));
    m_model.setVersions(std::move(versions).value());
    if (m_model.rowCount() > 0)
        m_list->setCurrentIndex(m_model.index(0));
    else
        m_text->setPlainText(tr("There is no version yet. Signing makes the first."));
}

Result<Visit> HistoryDialog::visitOf(const VisitVersion &version) const
{
    return readVisit(version.document, "entry " + std::to_string(version.entry), *m_knowledge.atlas);
}

void HistoryDialog::showVersion(int row)
{
    if (row < 0)
        return;
    const VisitVersion &version = m_model.version(row);
    QString html = factsOf(version);
    if (version.document.empty()) {
        html += lineHtml(tr("This act changed nothing of what was written, and keeps no copy of it."));
    } else if (const auto visit = visitOf(version); visit) {
        html += changesOf(row, visit.value()) + findingsOf(visit.value());
    } else {
        html += lineHtml(sentence(visit.error()));
    }
    m_text->setHtml(html);
}

QString HistoryDialog::factsOf(const VisitVersion &version) const
{
    const QString entered = momentWords(version.madeAt);
    const QString author = version.author.empty() ? tr("unknown user") : QString::fromStdString(version.author);
    QString act = actWords(version.kind);
    act[0] = act[0].toUpper();
    std::vector<std::pair<QString, QString>> facts{{tr("Act"), act}, {tr("By"), author}, {tr("Entered"), entered},
        {tr("Time of care"), version.careAt.empty() ? tr("not given: the same") : careWords(version.careAt)}};
    if (!version.reason.empty())
        facts.emplace_back(tr("Reason"), QString::fromStdString(version.reason));
    QString html = QStringLiteral("<table cellspacing='0' cellpadding='2'>");
    for (const auto &[name, words] : facts)
        html += QStringLiteral("<tr><td style='padding-right:16px; color:%1'>%2</td><td>%3</td></tr>")
                    .arg(themeFor(Appearance::System).quiet.name(), name.toHtmlEscaped(), words.toHtmlEscaped());
    return html + QStringLiteral("</table>");
}

QString HistoryDialog::changesOf(int row, const Visit &visit) const
{
    QString html = headHtml(tr("What changed against the version before"));
    const VisitVersion *before = m_model.before(row);
    if (!before)
        return html + lineHtml(tr("This is the first version."));
    const auto earlier = visitOf(*before);
    if (!earlier)
        return html + lineHtml(sentence(earlier.error()));
    const VisitChanges changes = visitChanges(*m_knowledge.atlas, m_rules, m_examination, earlier.value(), visit);
    if (changes.areNone())
        return html + lineHtml(tr("Nothing: both say the same."));
    html += listHtml(tr("Added"), changes.added) + listHtml(tr("Gone"), changes.gone) + listHtml(tr("Changed"), changes.changed);
    for (const QString &line : changes.others)
        html += lineHtml(line);
    return html;
}

QString HistoryDialog::findingsOf(const Visit &visit) const
{
    QString html = headHtml(tr("Findings (%1)").arg(visit.findings.size()));
    if (visit.findings.empty())
        return html + lineHtml(tr("None written down."));
    int number = 0;
    for (const Finding &finding : visit.findings)
        html += lineHtml(tr("%1. %2", "number, finding").arg(++number).arg(findingLine(*m_knowledge.atlas, finding)));
    return html;
}

} // namespace raphe
