// What the program is, its version, its limits, and whose work it uses under which licence (core/document/Notices). The notices
// are shown as they are written, in English; a link opens in the system's browser, and nothing else leaves the program.
#pragma once

#include "core/document/Notices.h"

#include <QDialog>

class QTextBrowser;

namespace raphe {

class AboutDialog : public QDialog {
    Q_OBJECT

public:
    /// `version`: of the program, such as 0.1.0.
    AboutDialog(const Notices &notices, const QString &version, QWidget *parent = nullptr);

    [[nodiscard]] QTextBrowser &notices() { return *m_notices; }

private:
    QTextBrowser *m_notices;
};

} // namespace raphe
