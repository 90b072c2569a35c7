#include "app/raphe/pages/PagesDialog.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/pages/PagesPreview.h"
#include "app/raphe/pages/PrintPages.h"
#include "app/raphe/practice/ChoiceFields.h"
#include "app/raphe/practice/FormParts.h"

#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

// 'txt' of 'Plain text (*.txt)'.
QString endingOf(const QString &filter)
{
    return filter.section(QStringLiteral("*."), 1).section(QLatin1Char(')'), 0, 0);
}

} // namespace

PagesDialog::PagesDialog(std::vector<PageOffer> offers, const PageChoice &choice, QWidget *parent)
    : QDialog(parent),
      m_offers(std::move(offers)),
      m_choice(choice),
      m_list(new QListWidget),
      m_about(hint()),
      m_paper(new QComboBox),
      m_language(new QComboBox),
      m_look(new QComboBox),
      m_forPatients(new QWidget),
      m_remarks(new WrappedLabel),
      m_said(new WrappedLabel),
      m_preview(new PagesPreview),
      m_print(pushButton(tr("Print ..."))),
      m_save(pushButton(tr("Save ...")))
{
    setWindowTitle(tr("Pages"));
    auto *row = new QHBoxLayout(this);
    auto *left = new QVBoxLayout;
    for (const PageOffer &each : m_offers) {
        auto *item = new QListWidgetItem(each.name, m_list);
        item->setSizeHint({0, touchTarget});
    }
    m_list->setAccessibleName(tr("Pages"));
    m_list->setFixedHeight(static_cast<int>(m_offers.size()) * touchTarget + 6);
    left->addWidget(heading(tr("Pages")));
    left->addWidget(m_list);
    left->addWidget(m_about);
    m_paper->addItems({tr("A4"), tr("Letter")});
    m_paper->setCurrentIndex(m_choice.paper == Paper::Letter ? 1 : 0);
    left->addLayout(labelled(tr("Paper"), m_paper));
    auto *forPatients = new QVBoxLayout(m_forPatients);
    forPatients->setContentsMargins(0, 0, 0, 0);
    for (const auto &each : languageWords)
        m_language->addItem(ownName(std::string(each.second)));
    m_language->setCurrentIndex(static_cast<int>(m_choice.language));
    forPatients->addLayout(labelled(tr("Language of the patient"), m_language));
    m_look->addItems({tr("In colour"), tr("In greys"), tr("Large print"), tr("Large print, in greys")});
    forPatients->addLayout(labelled(tr("Print"), m_look));
    left->addWidget(m_forPatients);
    left->addWidget(m_remarks);
    left->addStretch(1);
    left->addWidget(m_said);
    left->addWidget(m_print);
    left->addWidget(m_save);
    QPushButton *close = pushButton(tr("Close"));
    left->addWidget(close);
    auto *side = new QWidget;
    side->setLayout(left);
    side->setFixedWidth(320);
    row->addWidget(side);
    row->addWidget(m_preview, 1);
    resize(1080, 820);
    for (WrappedLabel *label : {m_remarks, m_said})
        label->setTextFormat(Qt::PlainText);

    connect(m_list, &QListWidget::currentRowChanged, this, &PagesDialog::make);
    connect(m_paper, &QComboBox::currentIndexChanged, this, [this](int index) {
        m_choice.paper = index == 1 ? Paper::Letter : Paper::A4;
        Q_EMIT paperChanged(m_choice.paper);
        make();
    });
    connect(m_language, &QComboBox::currentIndexChanged, this, [this](int index) {
        m_choice.language = languageWords[static_cast<std::size_t>(index)].first;
        make();
    });
    connect(m_look, &QComboBox::currentIndexChanged, this, [this](int index) {
        m_choice.isGrey = index == 1 || index == 3;
        m_choice.isLarge = index >= 2;
        make();
    });
    connect(m_print, &QPushButton::clicked, this, &PagesDialog::print);
    connect(m_save, &QPushButton::clicked, this, &PagesDialog::save);
    connect(close, &QPushButton::clicked, this, &QDialog::accept);
    choose(0);
}

const PageOffer &PagesDialog::offer() const
{
    return m_offers[static_cast<std::size_t>(std::max(m_list->currentRow(), 0))];
}

void PagesDialog::choose(std::size_t offer)
{
    m_list->setCurrentRow(static_cast<int>(offer));
    m_list->setFocus();
}

void PagesDialog::make()
{
    const PageOffer &chosen = offer();
    m_about->say(chosen.about);
    m_forPatients->setVisible(chosen.hasLanguages);
    m_pages = {};
    QString failed;
    if (auto made = chosen.make(m_choice))
        m_pages = std::move(made).value();
    else
        failed = sentence(made.error());
    m_preview->show(m_pages);
    m_print->setEnabled(!m_pages.pages.empty());
    m_save->setEnabled(!m_pages.pages.empty());
    const QStringList remarks = chosen.remarks ? chosen.remarks(m_choice) : QStringList();
    m_remarks->say(remarks.join(QStringLiteral("\n\n")));
    m_remarks->setVisible(!remarks.isEmpty());
    say(failed);
}

void PagesDialog::say(const QString &text)
{
    m_said->say(text);
    m_said->setVisible(!text.isEmpty());
}

void PagesDialog::print()
{
    const auto printed = printThroughDialog(m_pages, this);
    if (!printed)
        say(sentence(printed.error()));
    else if (printed.value())
        say(tr("Given to the printer."));
}

bool PagesDialog::saveAs(const QString &file)
{
    const auto format = std::find_if(offer().formats.begin(), offer().formats.end(),
        [&](const PageFormat &each) { return file.endsWith(QLatin1Char('.') + endingOf(each.filter), Qt::CaseInsensitive); });
    const auto written =
        format == offer().formats.end() ? writePdf(file.toStdString(), m_pages) : format->write(file.toStdString(), m_choice);
    say(written ? tr("Saved as '%1'.").arg(file) : sentence(written.error()));
    return written.ok();
}

void PagesDialog::save()
{
    QStringList filters{tr("PDF (*.pdf)")};
    for (const PageFormat &each : offer().formats)
        filters << each.filter;
    QString chosen = filters.first();
    QString file = QFileDialog::getSaveFileName(this, tr("Save the pages"),
        QDir::home().filePath(offer().file + QStringLiteral(".pdf")), filters.join(QStringLiteral(";;")), &chosen);
    if (file.isEmpty())
        return;
    const QString ending = QLatin1Char('.') + endingOf(chosen);
    if (!file.endsWith(ending, Qt::CaseInsensitive)) {
        if (file.endsWith(QStringLiteral(".pdf"), Qt::CaseInsensitive))
            file.chop(4);
        file += ending;
    }
    saveAs(file);
}

} // namespace raphe
