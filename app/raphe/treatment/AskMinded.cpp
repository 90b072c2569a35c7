#include "app/raphe/treatment/AskMinded.h"

#include <QCoreApplication>
#include <QMessageBox>

namespace raphe {

bool askMinded(const VisitSession &session, const TreatmentStep &step, const QString &why, QWidget *parent)
{
    const auto tr = [](const char *text) { return QCoreApplication::translate("askMinded", text); };
    return QMessageBox::question(parent, tr(QT_TRANSLATE_NOOP("askMinded", "Before it is logged")),
               tr(QT_TRANSLATE_NOOP("askMinded", "%1\n\n%2\n\nWas this minded?"))
                   .arg(QString::fromStdString(session.knowledge().atlas->spoken(step.place)), why),
               QMessageBox::Yes | QMessageBox::No, QMessageBox::No)
        == QMessageBox::Yes;
}

QString reasonsOf(const std::vector<CautionVerdict> &held)
{
    QStringList reasons;
    for (const CautionVerdict &v : held)
        reasons << QString::fromStdString(v.reason);
    reasons.removeDuplicates();
    return reasons.join(QLatin1Char('\n'));
}

} // namespace raphe
