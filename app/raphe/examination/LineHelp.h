// The page that says how findings and work are typed (resources/language/help-en.md).
#pragma once

#include <QDialog>

namespace raphe {

class LineHelp : public QDialog {
    Q_OBJECT

public:
    explicit LineHelp(QWidget *parent = nullptr);
};

} // namespace raphe
