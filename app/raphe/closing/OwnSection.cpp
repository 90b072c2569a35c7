#include "app/raphe/closing/OwnSection.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/record/TextLine.h"
#include "app/raphe/treatment/AdverseForm.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace raphe {

OwnSection::OwnSection(VisitSession &session, QWidget *parent)
    : CloseSection(session, parent),
      m_text(new TextBlock(tr("Your impression"), 2)),
      m_code(new TextLine(tr("Code"))),
      m_system(new TextLine(tr("Of which list, and edition"))),
      m_last(pushButton(tr("As last time")))
{
    column().addWidget(heading(tr("Your impression")));
    column().addWidget(hint(tr("In your words and within your scope of practice. The program fills in nothing here.")));
    column().addWidget(m_text);
    auto *row = new QHBoxLayout;
    row->addWidget(m_code, 1);
    row->addWidget(m_system, 2);
    row->addWidget(m_last);
    column().addLayout(row);
    for (TextLine *line : {m_code, m_system}) {
        line->setPlaceholderText(line->accessibleName());
        connect(line, &QLineEdit::textEdited, this, &OwnSection::takeImpression);
    }
    connect(m_text, &QPlainTextEdit::textChanged, this, &OwnSection::takeImpression);
    connect(m_last, &QPushButton::clicked, this, &OwnSection::takeLast);
    makeEvents();
    connect(&session, &VisitSession::treatmentChanged, this, &OwnSection::showEvents);
}

void OwnSection::takeImpression()
{
    Closing changed = closing();
    changed.impression = {m_text->value(), m_code->value(), m_system->value()};
    if (changed.impression.text.empty() && changed.impression.code.empty())
        changed.impression = {}; // a list alone says nothing
    write(changed);
}

void OwnSection::takeLast()
{
    Closing changed = closing();
    changed.impression = m_session.lastVisit()->closing.impression;
    write(changed);
    refresh();
}

void OwnSection::makeEvents()
{
    column().addWidget(heading(tr("Anything that should not have happened")));
    m_events = new WrappedLabel;
    m_events->setTextFormat(Qt::PlainText);
    column().addWidget(m_events);
    m_add = pushButton(tr("Write it down"));
    column().addWidget(m_add, 0, Qt::AlignLeft);
    m_form = new AdverseForm;
    m_form->hide();
    column().addWidget(m_form);
    m_record = pushButton(tr("Record it, with the time"));
    m_record->hide();
    column().addWidget(m_record, 0, Qt::AlignLeft);
    connect(m_add, &QPushButton::clicked, this, [this] {
        m_form->show();
        m_record->show();
        m_add->hide();
    });
    connect(m_form, &AdverseForm::edited, this, [this] { m_record->setEnabled(m_form->saysSomething()); });
    const auto putAway = [this] {
        m_form->clear();
        m_form->hide();
        m_record->hide();
        m_add->show();
    };
    connect(m_record, &QPushButton::clicked, this, [this, putAway] {
        m_session.addEvent(m_form->told());
        putAway();
    });
    connect(&m_session, &VisitSession::visitOpened, this, putAway); // half an answer is of its visit alone
    m_record->setEnabled(false);
}

void OwnSection::showEvents()
{
    QStringList lines;
    for (const AdverseEvent &event : m_session.visit().treatment.events) {
        QStringList parts;
        for (const std::string &sign : event.signs)
            parts << AdverseForm::wordsOf(sign);
        for (const std::string *words : {&event.told, &event.answer})
            if (!words->empty())
                parts << QString::fromStdString(*words);
        lines << tr("%1: %2", "time of day, what happened")
                     .arg(QString::fromStdString(event.time).left(5), parts.join(QStringLiteral("; ")));
    }
    m_events->say(lines.isEmpty() ? tr("Nothing is written down.") : lines.join(QLatin1Char('\n')));
}

void OwnSection::show(const Closing &closing)
{
    const Impression &impression = closing.impression;
    if (m_text->value() != impression.text)
        m_text->give(impression.text);
    for (const auto &[line, words] : {std::pair(m_code, &impression.code), std::pair(m_system, &impression.system)})
        if (line->value() != *words)
            line->give(*words);
    const auto &last = m_session.lastVisit();
    m_last->setVisible(last && last->episode() == m_session.visit().episode() && last->closing.impression != Impression{}
        && impression == Impression{});
    showEvents();
}

} // namespace raphe
