#include "app/raphe/examination/LineHelp.h"

#include "app/raphe/practice/FormParts.h"

#include <QFile>
#include <QPushButton>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace raphe {

LineHelp::LineHelp(QWidget *parent) : QDialog(parent)
{
    setWindowTitle(tr("How findings and work are typed"));
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    auto *page = new QTextBrowser;
    page->setAccessibleName(tr("How findings and work are typed"));
    QFile file(QStringLiteral(":/language/help-en.md"));
    if (file.open(QIODevice::ReadOnly))
        page->setMarkdown(QString::fromUtf8(file.readAll()));
    column->addWidget(page, 1);
    QPushButton *close = pushButton(tr("Close"));
    connect(close, &QPushButton::clicked, this, &LineHelp::accept);
    column->addWidget(close, 0, Qt::AlignRight);
    resize(720, 640);
}

} // namespace raphe
