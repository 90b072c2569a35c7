#include "app/raphe/help/HelpTopics.h"

#include "app/raphe/examination/PassDialog.h"
#include "app/raphe/examination/PedalsDialog.h"
#include "app/raphe/examination/SweepDialog.h"
#include "app/raphe/intake/CautionsDialog.h"
#include "app/raphe/intake/ConsentDialog.h"
#include "app/raphe/intake/DecisionDialog.h"
#include "app/raphe/intake/WarningsDialog.h"
#include "app/raphe/intake/patient/PatientWindow.h"
#include "app/raphe/letter/LetterDialog.h"
#include "app/raphe/pages/PagesDialog.h"
#include "app/raphe/patients/CsvImportDialog.h"
#include "app/raphe/patients/DuplicatesDialog.h"
#include "app/raphe/patients/PatientsDialog.h"
#include "app/raphe/patients/RetentionDialog.h"
#include "app/raphe/practice/AccessLogDialog.h"
#include "app/raphe/practice/HistoryDialog.h"
#include "app/raphe/practice/NewRecoveryKeyDialog.h"
#include "app/raphe/practice/OwnTechniqueDialog.h"
#include "app/raphe/practice/RecoverDialog.h"
#include "app/raphe/practice/RestoreDialog.h"
#include "app/raphe/practice/SetUpDialog.h"
#include "app/raphe/practice/SettingsDialog.h"
#include "app/raphe/practice/UnlockDialog.h"
#include "app/raphe/practice/UserDialogs.h"
#include "app/raphe/record/PatientEditor.h"
#include "app/raphe/treatment/TreatmentWindow.h"

#include <QApplication>

namespace raphe {

namespace {

template <class Dialog> bool is(const QWidget &widget)
{
    return qobject_cast<const Dialog *>(&widget) != nullptr;
}

template <class... Dialogs> bool isOneOf(const QWidget &widget)
{
    return (is<Dialogs>(widget) || ...);
}

} // namespace

std::optional<QString> topicOfDialog(const QWidget &dialog)
{
    if (isOneOf<WarningsDialog, DecisionDialog, CautionsDialog>(dialog))
        return QStringLiteral("cautions");
    if (is<ConsentDialog>(dialog))
        return QStringLiteral("consent");
    if (isOneOf<PassDialog, PedalsDialog, SweepDialog>(dialog))
        return QStringLiteral("examination");
    if (isOneOf<PatientsDialog, PatientEditor, CsvImportDialog, DuplicatesDialog, RetentionDialog, AccessLogDialog,
            HistoryDialog>(dialog))
        return QStringLiteral("record");
    if (isOneOf<UnlockDialog, RecoverDialog, RestoreDialog, SetUpDialog, SettingsDialog, AddUserDialog, UserScopeDialog,
            RemoveUserDialog, ChangePassphraseDialog, NewRecoveryKeyDialog>(dialog))
        return QStringLiteral("practice-file");
    if (isOneOf<PagesDialog, LetterDialog>(dialog))
        return QStringLiteral("documents");
    if (is<OwnTechniqueDialog>(dialog))
        return QStringLiteral("plan");
    return {};
}

bool isScreenTaken()
{
    const QWidgetList all = QApplication::topLevelWidgets();
    return std::any_of(all.begin(), all.end(),
        [](const QWidget *window) { return window->isVisible() && isOneOf<TreatmentWindow, PatientWindow>(*window); });
}

} // namespace raphe
