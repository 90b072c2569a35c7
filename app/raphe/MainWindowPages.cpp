// The pages that the window makes, and the files for other programs.
#include "app/raphe/MainWindow.h"

#include "app/paint/LetterPages.h"
#include "app/paint/VisitMapPages.h"
#include "app/raphe/letter/LetterDialog.h"
#include "app/raphe/pages/PagesDialog.h"
#include "app/raphe/pages/VisitPages.h"
#include "app/words/ErrorText.h"
#include "core/document/Deidentified.h"

#include <QDir>
#include <QFileDialog>
#include <QMenu>
#include <QStatusBar>
#include <QToolButton>

namespace raphe {

void MainWindow::makePagesMenu(QToolButton *button)
{
    auto *menu = new QMenu(button);
    QAction *map = menu->addAction(tr("Visit map for the patient ..."), this, [this] { showPages(0); });
    map->setShortcut(QKeySequence::Print);
    addAction(map); // the key works while the menu is closed
    menu->addAction(tr("Note ..."), this, [this] { showPages(1); });
    menu->addAction(tr("Letter to a professional ..."), this, &MainWindow::writeLetter);
    menu->addSeparator();
    menu->addAction(tr("File for another program ..."), this, &MainWindow::exchange);
    menu->addAction(tr("Whole record of the patient ..."), this, [this] {
        if (m_session.visitId() != 0)
            showOffers({m_pages->record()}, 0);
    });
    menu->addSeparator();
    menu->addAction(tr("Form before arrival ..."), this, &MainWindow::askForForm);
    menu->addAction(tr("Rules for a clinician's review ..."), this, [this] { showPages(3); });
    button->setMenu(menu);
    button->setPopupMode(QToolButton::InstantPopup);
}

void MainWindow::showPages(std::size_t first)
{
    if (m_session.visitId() == 0 && first < 2) {
        tell(tr("Open a visit first: these pages are of one."));
        return;
    }
    std::vector<PageOffer> offers;
    if (m_session.visitId() != 0)
        offers = {m_pages->map(), m_pages->note()};
    const std::size_t missing = 2 - offers.size();
    offers.push_back(m_pages->form());
    offers.push_back(m_pages->rules());
    showOffers(std::move(offers), first - missing);
}

void MainWindow::showOffers(std::vector<PageOffer> offers, std::size_t first)
{
    PagesDialog dialog(std::move(offers), {m_settings.paper(), m_pages->language(), false, false}, this);
    connect(&dialog, &PagesDialog::paperChanged, this, [this](Paper paper) { m_settings.setPaper(paper); });
    dialog.choose(first);
    dialog.exec();
}

void MainWindow::askForForm()
{
    showPages(2);
}

void MainWindow::writeLetter()
{
    if (m_session.visitId() == 0) {
        tell(tr("Open a visit first: these pages are of one."));
        return;
    }
    LetterDialog dialog(m_session, this);
    connect(&dialog, &LetterDialog::printWanted, this, [this](const Letter &letter, const LetterFacts &facts) {
        PageOffer offer{tr("Letter"), tr("To another professional."), tr("letter"), false, {}, {}, {}};
        offer.make = [letter, facts](
                         const PageChoice &choice) -> Result<PrintedPages> { return letterPages(choice.paper, letter, facts); };
        showOffers({offer}, 0);
    });
    dialog.exec();
}

void MainWindow::exchange()
{
    if (m_session.visitId() == 0) {
        tell(tr("Open a visit first: these pages are of one."));
        return;
    }
    const std::vector<PageFormat> formats = m_pages->exchange();
    QStringList filters;
    for (const PageFormat &format : formats)
        filters << format.filter;
    QString chosen = filters.first();
    QString file = QFileDialog::getSaveFileName(
        this, tr("Save for another program"), QDir::home().filePath(tr("visit")), filters.join(QStringLiteral(";;")), &chosen);
    if (file.isEmpty())
        return;
    const auto index = static_cast<std::size_t>(std::max<qsizetype>(filters.indexOf(chosen), 0));
    const QString ending = chosen.section(QStringLiteral("*"), 1).section(QLatin1Char(')'), 0, 0);
    if (!file.endsWith(ending))
        file += ending;
    const auto written = formats[index].write(file.toStdString(), {});
    if (written && index + 1 == formats.size())
        tell(tr("Saved as '%1'.").arg(file) + QLatin1Char(' ') + QString::fromStdString(deidentifiedWarning()));
    else
        tellWritten(written, file);
}

bool MainWindow::exportMap(const QString &file, Paper paper)
{
    const auto pages = m_pages->map().make({paper, m_pages->language(), false, false});
    const auto written = pages ? writePages(file.toStdString(), pages.value()) : Result<Done>(pages.error());
    tellWritten(written, file);
    return written.ok();
}

void MainWindow::tellWritten(const Result<Done> &written, const QString &file)
{
    statusBar()->showMessage(written ? tr("The page is in %1").arg(file) : errorText(written.error()), written ? 8000 : 0);
}

} // namespace raphe
