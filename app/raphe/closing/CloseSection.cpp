#include "app/raphe/closing/CloseSection.h"

#include <QScopedValueRollback>
#include <QVBoxLayout>

namespace raphe {

CloseSection::CloseSection(VisitSession &session, QWidget *parent)
    : QWidget(parent), m_session(session), m_column(new QVBoxLayout(this))
{
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(8);
}

void CloseSection::refresh()
{
    if (m_isWriting)
        return;
    const QScopedValueRollback showing(m_isShowing, true);
    setEnabled(m_session.visitId() != 0 && !m_session.isReadOnly());
    show(closing());
}

void CloseSection::write(const Closing &closing)
{
    if (m_isShowing)
        return;
    const QScopedValueRollback writing(m_isWriting, true);
    m_session.setClosing(closing);
}

} // namespace raphe
