// The pages that the window writes: the visit map, the letter about warning signs, the form before arrival, the rules for review.
#include "app/raphe/MainWindow.h"

#include "app/paint/ArrivalFormPages.h"
#include "app/paint/ReferralLetterPage.h"
#include "app/paint/RuleReviewPages.h"
#include "app/paint/VisitMapPage.h"
#include "app/words/ErrorText.h"

#include <QDir>
#include <QFileDialog>
#include <QMenu>
#include <QStatusBar>
#include <QToolButton>

namespace raphe {

void MainWindow::makePagesMenu(QToolButton *button)
{
    auto *menu = new QMenu(button);
    QAction *map = menu->addAction(tr("Visit map for the patient ..."), this, &MainWindow::askForMap);
    map->setShortcut(QKeySequence::Print);
    addAction(map); // the key works while the menu is closed
    menu->addAction(tr("Letter about warning signs ..."), this, &MainWindow::askForLetter);
    menu->addSeparator();
    menu->addAction(tr("Form before arrival ..."), this, &MainWindow::askForForm);
    menu->addAction(tr("Rules for a clinician's review ..."), this, &MainWindow::askForRules);
    button->setMenu(menu);
    button->setPopupMode(QToolButton::InstantPopup);
}

void MainWindow::askForMap()
{
    askForPage(tr("Save the visit map"), tr("visit-map.pdf"), {tr("SVG (*.svg)"), tr("PNG (*.png)")},
        [this](const std::string &file, Paper paper) { return writeMap(file, paper); });
}

Result<Done> MainWindow::writeMap(const std::string &file, Paper paper) const
{
    const Knowledge &k = m_session.knowledge();
    return writeVisitMap(file, paper, visitMap(m_session.adviser().rules(), *k.atlas, *k.body, m_session.visit(), "en"),
        BodyArt(*k.atlas, k.body->of(View::Front)), BodyArt(*k.atlas, k.body->of(View::Back)));
}

bool MainWindow::exportMap(const QString &file, Paper paper)
{
    const auto written = writeMap(file.toStdString(), paper);
    tellWritten(written, file);
    return written.ok();
}

void MainWindow::tellWritten(const Result<Done> &written, const QString &file)
{
    statusBar()->showMessage(written ? tr("The page is in %1").arg(file) : errorText(written.error()), written ? 8000 : 0);
}

void MainWindow::askForPage(const QString &title, const QString &name, const QStringList &otherFormats, const Writing &write)
{
    const QString letter = tr("PDF, Letter (*.pdf)");
    const QString a4 = tr("PDF, A4 (*.pdf)");
    QString chosen = m_settings.paper() == Paper::Letter ? letter : a4;
    const QString file = QFileDialog::getSaveFileName(
        this, title, QDir::home().filePath(name), (QStringList{a4, letter} + otherFormats).join(QStringLiteral(";;")), &chosen);
    if (file.isEmpty())
        return;
    const Paper paper = chosen == letter ? Paper::Letter : Paper::A4;
    m_settings.setPaper(paper);
    tellWritten(write(file.toStdString(), paper), file);
}

void MainWindow::askForLetter()
{
    if (m_session.visitId() == 0)
        return;
    const auto letter = referralLetter(m_session.adviser().rules(), *m_session.knowledge().atlas, m_session.visit(), "visit");
    if (!letter) {
        statusBar()->showMessage(tr("No warning sign of this visit may stand in a letter: there is none, or it was told alone."));
        return;
    }
    askForPage(tr("Save the letter"), tr("letter.pdf"), {},
        [&](const std::string &file, Paper paper) { return writeReferralLetter(file, paper, letter.value()); });
}

void MainWindow::askForForm()
{
    const auto texts = readEmbeddedPatientTexts();
    const auto form = texts ? arrivalForm(texts.value()) : Result<ArrivalForm>(texts.error());
    if (!form) {
        statusBar()->showMessage(errorText(form.error()));
        return;
    }
    askForPage(tr("Save the form before arrival"), tr("before-your-visit.pdf"), {}, [&](const std::string &file, Paper paper) {
        const Knowledge &k = m_session.knowledge();
        return writeArrivalForm(
            file, paper, form.value(), BodyArt(*k.atlas, k.body->of(View::Front)), BodyArt(*k.atlas, k.body->of(View::Back)));
    });
}

void MainWindow::askForRules()
{
    askForPage(tr("Save the rules for review"), tr("rules-for-review.pdf"), {}, [&](const std::string &file, Paper paper) {
        return writeRuleReview(file, paper, ruleReview(m_session.adviser().rules(), *m_session.knowledge().atlas));
    });
}

} // namespace raphe
