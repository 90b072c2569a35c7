#include "app/raphe/intake/DecisionDialog.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "core/base/Utf8.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace raphe {

namespace {

constexpr int dialogWidth = 560;

QString decisionName(Decision decision)
{
    switch (decision) {
    case Decision::EmergencyServices: return DecisionDialog::tr("Emergency services called");
    case Decision::CareSameDay: return DecisionDialog::tr("Sent to licensed medical care today");
    case Decision::Referred: return DecisionDialog::tr("Referred: to be judged before this is treated");
    case Decision::InCare: return DecisionDialog::tr("Known to the treating team, who agree to the work");
    case Decision::Explained: return DecisionDialog::tr("Asked further: there is a harmless reason");
    }
    return {};
}

} // namespace

DecisionDialog::DecisionDialog(const WarningSign &sign, WarningAnswer answer,
    const std::vector<std::pair<Place, QString>> &places, Slip slip, QWidget *parent)
    : WorkDialog(capitalised(QString::fromStdString(sign.name)), parent),
      m_sign(sign),
      m_answer(std::move(answer)),
      m_slip(slip),
      m_decided(new QComboBox),
      m_why(new QLineEdit(QString::fromStdString(m_answer.why))),
      m_told(new QLineEdit(QString::fromStdString(m_answer.told)))
{
    m_answer.isThere = true;
    const auto addPart = [this](const QString &head, const std::string &words) {
        auto *part = new QVBoxLayout;
        part->setSpacing(2);
        part->addWidget(heading(head));
        auto *label = new WrappedLabel(QString::fromStdString(words));
        label->setTextFormat(Qt::PlainText);
        part->addWidget(label);
        form().addLayout(part);
    };
    addPart(tr("What to do"), sign.act);
    addPart(tr("What it could mean at worst"), sign.means);
    const bool isEmergency = sign.level == WarningLevel::EmergencyNow;
    if (isEmergency)
        form().addWidget(
            new WrappedLabel(tr("This ends the work of this visit, and cannot be taken back. 'It was a slip' records nothing.")));
    for (const auto &[decision, word] : decisionWords)
        m_decided->addItem(decisionName(decision), static_cast<int>(decision));
    const Decision proposed = m_answer.decided.value_or(isEmergency ? Decision::EmergencyServices
            : sign.level == WarningLevel::SameDay                   ? Decision::CareSameDay
                                                                    : Decision::Referred);
    m_decided->setCurrentIndex(m_decided->findData(static_cast<int>(proposed)));
    form().addLayout(labelled(tr("What was decided"), m_decided));
    m_why->setPlaceholderText(tr("What was found, and why so"));
    form().addLayout(labelled(tr("Why"), m_why));
    m_told->setPlaceholderText(tr("Name, and how"));
    form().addLayout(labelled(tr("Who was told"), m_told));
    if (!places.empty()) {
        auto *where = new QVBoxLayout;
        where->setSpacing(0);
        where->addWidget(heading(tr("Where")));
        for (const auto &[place, name] : places) {
            auto *tick = new QCheckBox(name);
            tick->setMinimumHeight(touchTarget);
            tick->setAccessibleName(tr("Where: %1").arg(name));
            tick->setChecked(std::find(m_answer.at.begin(), m_answer.at.end(), place) != m_answer.at.end() || places.size() == 1);
            where->addWidget(tick);
            m_places.emplace_back(place, tick);
        }
        form().addLayout(where);
    }
    form().addWidget(hint(tr("Assists a trained practitioner; follow local law, scope of practice and licensed care.")));
    form().addStretch(1);
    if (slip == Slip::Possible)
        connect(addButton(tr("It was a slip")), &QPushButton::clicked, this, &DecisionDialog::reject);
    addGap();
    connect(addButton(tr("Not decided yet")), &QPushButton::clicked, this, [this] { record(false); });
    QPushButton *save = addButton(tr("Record"));
    save->setDefault(true);
    connect(save, &QPushButton::clicked, this, [this] { record(true); });
    forgetNoticeWhenTyping();
    resize(dialogWidth, sizeHint().height());
    m_why->setFocus();
}

void DecisionDialog::reject()
{
    if (m_slip == Slip::No)
        return record(false);
    m_isSlip = true;
    WorkDialog::reject();
}

void DecisionDialog::record(bool isDecided)
{
    m_answer.at.clear();
    for (const auto &[place, tick] : m_places)
        if (tick->isChecked())
            m_answer.at.push_back(place);
    m_answer.why = m_why->text().trimmed().toStdString();
    m_answer.told = m_told->text().trimmed().toStdString();
    m_answer.decided.reset();
    if (isDecided) {
        if (!saysSomething(m_answer.why)) {
            m_why->setFocus();
            return say(tr("Write down why. 'Not decided yet' records the sign alone; the work waits until then."));
        }
        if (!saysSomething(m_answer.told) && m_sign.level == WarningLevel::EmergencyNow) {
            m_told->setFocus();
            return say(tr("Write down who was told."));
        }
        if (!m_places.empty() && m_answer.at.empty()) {
            m_places.front().second->setFocus();
            return say(tr("Tick where it is."));
        }
        m_answer.decided = static_cast<Decision>(m_decided->currentData().toInt());
    }
    accept();
}

Result<Done> decideOn(VisitSession &session, const WarningSign &sign, DecisionDialog::Slip slip, QWidget *parent)
{
    const std::vector<WarningAnswer> before = session.visit().warnings;
    WarningAnswer answer{sign.id, true, session.visit().date, session.visit().complaintAt, {}, {}, {}};
    Result<Done> kept = Done{};
    if (const WarningAnswer *known = session.answerTo(sign); known && known->isThere) {
        answer = *known;
    } else {
        kept = session.answerWarning(answer);
        if (kept)
            kept = session.saveNow();
    }
    DecisionDialog dialog(sign, answer, session.placesFor(sign), slip, parent);
    if (dialog.exec() == QDialog::Accepted) {
        const auto done = session.answerWarning(dialog.answer());
        return done ? kept : done;
    }
    if (dialog.isSlip())
        session.takeBackSlip(before);
    return kept;
}

} // namespace raphe
