// Which key each pedal sends: press the pedal while its field has the focus. Most pedals pretend to be a keyboard.
#pragma once

#include "app/raphe/Settings.h"
#include "core/examination/Pass.h"

#include <QDialog>

class QCheckBox;
class QPushButton;

namespace raphe {

class WrappedLabel;

class PedalsDialog : public QDialog {
    Q_OBJECT

public:
    explicit PedalsDialog(Settings &settings, QWidget *parent = nullptr);

    void accept() override;

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void tell();

    Settings &m_settings;
    int m_keys[2];
    QPushButton *m_fields[2];
    WrappedLabel *m_message;
    QCheckBox *m_touches;
    QPushButton *m_save;
};

} // namespace raphe
