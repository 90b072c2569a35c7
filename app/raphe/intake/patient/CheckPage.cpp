#include "app/raphe/intake/patient/CheckPage.h"

#include "app/paint/Theme.h"
#include "app/raphe/WrappedLabel.h"

#include <QHBoxLayout>
#include <QPushButton>

#include <cmath>

namespace raphe {

CheckPage::CheckPage(const PatientWords &words) : PatientPage(words, "end-check-title"), m_sample(tell(words.say("end-change")))
{
    column().addStretch(1);
}

void CheckPage::list(const std::vector<Answer> &answers)
{
    m_answers = answers;
    delete m_list;
    m_list = new QWidget;
    auto *rows = new QVBoxLayout(m_list);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(static_cast<int>(std::lround(14 * scale())));
    QFont bold = m_sample->font();
    bold.setWeight(QFont::Bold);
    for (const Answer &answer : answers) {
        auto *row = new QHBoxLayout;
        row->setSpacing(static_cast<int>(std::lround(24 * scale())));
        auto *texts = new QVBoxLayout;
        texts->setSpacing(2);
        WrappedLabel *question = tell(answer.question, texts);
        question->setFont(bold);
        const QString words = answer.words.isEmpty() ? say("end-no-answer") : answer.words;
        tell(words, texts)->setFont(m_sample->font());
        row->addLayout(texts, 1);
        QPushButton *change = largeButton(this->words().onButton("end-change-this"));
        change->setFont(m_sample->font());
        change->setAccessibleName(change->text() + QStringLiteral(": ") + answer.question);
        connect(change, &QPushButton::clicked, this, [this, stop = answer.stop] { Q_EMIT changeWanted(stop); });
        row->addWidget(change, 0, Qt::AlignTop);
        rows->addLayout(row);
    }
    column().insertWidget(2, m_list);
}

void CheckPage::setScale(double scale)
{
    PatientPage::setScale(scale);
    if (m_list)
        list(std::vector<Answer>(m_answers));
}

} // namespace raphe
