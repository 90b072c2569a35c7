// The pain drawing of the open visit: the body to paint on, what each patch feels like, how much of the body it takes, how far it
// covers the drawing of the last visit, and the places in words to be said back to the patient.
#pragma once

#include "app/paint/Theme.h"
#include "app/raphe/VisitSession.h"
#include "app/raphe/intake/PainBoard.h"
#include "core/anatomy/BodyShare.h"

#include <QTimer>

class QComboBox;
class QPushButton;

namespace raphe {

class ChoiceRow;
class WrappedLabel;

class PainPanel : public QWidget {
    Q_OBJECT

public:
    explicit PainPanel(VisitSession &session, QWidget *parent = nullptr);

    void setTheme(const Theme &theme);
    [[nodiscard]] PainBoard &board() { return *m_board; }
    /// What the current patch feels like; stands beside the board, so that this stays large. Belongs to the layout that takes it.
    [[nodiscard]] QWidget *details() { return m_details; }

Q_SIGNALS:
    /// The screen is to be handed to the patient.
    void patientWanted();
    void refused(const QString &message);

protected:
    void showEvent(QShowEvent *event) override;

private:
    void confirm();
    [[nodiscard]] QWidget *makeTools();
    void goTo(const Place &named);
    void showVisit();
    void showPatch();
    void measure();
    [[nodiscard]] QString extentWords();
    [[nodiscard]] QString overlapWords();
    [[nodiscard]] QString placeWords() const;

    VisitSession &m_session;
    PainBoard *m_board;
    QComboBox *m_views = nullptr;
    ChoiceRow *m_brush = nullptr;
    QPushButton *m_erase = nullptr;
    ChoiceRow *m_quality;
    ChoiceRow *m_intensity;
    QWidget *m_details;
    QPushButton *m_remove;
    WrappedLabel *m_patch; // where the current patch lies
    WrappedLabel *m_places; // of all patches, to be said back
    WrappedLabel *m_measures;
    QPushButton *m_patient;
    QPushButton *m_confirm;
    QTimer m_rest; // measuring waits until the hand rests
    std::optional<BodyShare> m_share; // made when first needed
    SurfaceMask m_silhouette;
};

} // namespace raphe
