#include "app/raphe/closing/HomeSection.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/record/TextLine.h"
#include "app/words/ErrorText.h"

#include <QCheckBox>
#include <QDate>
#include <QHBoxLayout>
#include <QInputDialog>
#include <QMenu>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

QString text(const std::string &words)
{
    return QString::fromStdString(words);
}

GivenAdvice given(const HomeAdviceItem &item)
{
    return {item.id, item.title, item.stop.empty() ? item.text : item.text + "\n" + item.stop};
}

bool isOwn(const GivenAdvice &advice)
{
    return advice.item.empty();
}

std::string today()
{
    return QDate::currentDate().toString(Qt::ISODate).toStdString();
}

} // namespace

HomeSection::HomeSection(VisitSession &session, QWidget *parent) : CloseSection(session, parent)
{
    makeAdvice();
    makeWarning();
    makeCall();
}

void HomeSection::makeAdvice()
{
    column().addWidget(heading(tr("For home")));
    QStringList always;
    for (const std::string &line : m_session.homeAdvice().always)
        always << text(line);
    column().addWidget(hint(always.join(QLatin1Char(' '))));
    m_advice = new QVBoxLayout;
    column().addLayout(m_advice);
    auto *row = new QHBoxLayout;
    QPushButton *add = pushButton(tr("Add advice"));
    m_menu = new QMenu(add);
    connect(m_menu, &QMenu::aboutToShow, this, &HomeSection::fillMenu);
    add->setMenu(m_menu);
    row->addWidget(add);
    row->addStretch(1);
    column().addLayout(row);
    m_own = new TextBlock(tr("And in own words"), 1);
    m_own->setPlaceholderText(m_own->accessibleName());
    column().addWidget(m_own);
    connect(m_own, &QPlainTextEdit::textChanged, this, &HomeSection::takeOwn);
    m_keepOwn = pushButton(tr("Keep it in the library ..."));
    m_keepOwn->setToolTip(tr("For other patients too; it is changed and taken out in the settings of the practice"));
    connect(m_keepOwn, &QPushButton::clicked, this, &HomeSection::keepOwn);
    column().addWidget(m_keepOwn, 0, Qt::AlignLeft);
}

// What suits where it hurts stands first; with what the patient has, some is to be asked about before it is given.
void HomeSection::fillMenu()
{
    m_menu->clear();
    const Visit &visit = m_session.visit();
    std::vector<std::string> sheets;
    for (const Sheet *sheet : proposedSheets(m_session.examination(), *m_session.knowledge().regions, visit))
        sheets.push_back(sheet->id);
    std::vector<std::string> conditions;
    for (const Condition &condition : m_session.asSuspected().conditions)
        conditions.push_back(condition.id);
    const HomeAdvice &library = m_session.homeAdvice();
    constexpr std::size_t first = 8;
    const std::vector<const HomeAdviceItem *> items = offeredFor(library, sheets);
    QMenu *into = m_menu;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (i == first)
            into = m_menu->addMenu(tr("More"));
        const HomeAdviceItem *item = items[i];
        const bool isAsked = isAskedFirst(library, *item, conditions);
        QAction *action = into->addAction(isAsked ? tr("%1 - ask first", "advice").arg(text(item->title)) : text(item->title),
            this, [this, item] { addAdvice(given(*item)); });
        action->setEnabled(std::none_of(visit.closing.advice.begin(), visit.closing.advice.end(),
            [&](const GivenAdvice &advice) { return advice.item == item->id; }));
        if (isAsked)
            action->setToolTip(tr("This patient has something with which it is not given unasked"));
    }
}

// Own words stand last.
void HomeSection::addAdvice(const GivenAdvice &advice)
{
    Closing changed = closing();
    const auto own = std::find_if(changed.advice.begin(), changed.advice.end(), isOwn);
    changed.advice.insert(own, advice);
    write(changed);
    refresh();
}

void HomeSection::takeOwn()
{
    Closing changed = closing();
    std::erase_if(changed.advice, isOwn);
    if (!m_own->isBlank())
        changed.advice.push_back({{}, {}, m_own->value()});
    write(changed);
    m_keepOwn->setVisible(!m_own->isBlank());
}

void HomeSection::keepOwn()
{
    bool ok = false;
    const QString title =
        QInputDialog::getText(this, tr("Keep the advice"), tr("Under which title?"), QLineEdit::Normal, {}, &ok).trimmed();
    if (!ok || title.isEmpty())
        return;
    const auto id = m_session.keepAdvice({{}, title.toStdString(), m_own->value()});
    if (!id)
        return m_session.tell(errorText(id.error()));
    Closing changed = closing();
    for (GivenAdvice &advice : changed.advice)
        if (isOwn(advice))
            advice = {id.value(), title.toStdString(), advice.text};
    write(changed);
    refresh();
}

void HomeSection::keepWording(const std::string &item)
{
    for (const GivenAdvice &advice : closing().advice)
        if (advice.item == item)
            if (const auto kept = m_session.keepAdvice({advice.item, advice.title, advice.text}); !kept)
                m_session.tell(errorText(kept.error()));
}

void HomeSection::showAdvice(const std::vector<GivenAdvice> &all)
{
    if (all == m_shown)
        return;
    m_shown = all;
    while (QLayoutItem *item = m_advice->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
        auto *box = new QWidget;
        auto *lines = new QVBoxLayout(box);
        lines->setContentsMargins(0, 0, 0, 6);
        auto *row = new QHBoxLayout;
        auto *title = new WrappedLabel(text(all[i].title.empty() ? all[i].item : all[i].title));
        title->setProperty("role", QStringLiteral("head"));
        row->addWidget(title, 1);
        QPushButton *remove = pushButton(tr("Remove"));
        remove->setAccessibleName(tr("Remove: %1").arg(title->text()));
        const std::string item = all[i].item;
        QPushButton *keep = pushButton(tr("Keep this wording"));
        keep->setToolTip(tr("For other patients too"));
        const auto isKept = [this, item](const std::string &words) {
            const HomeAdviceItem *known = m_session.homeAdvice().find(item);
            return known && given(*known).text == words;
        };
        keep->setVisible(!isKept(all[i].text));
        connect(keep, &QPushButton::clicked, this, [this, item, keep] {
            keepWording(item);
            keep->hide();
        });
        row->addWidget(keep);
        row->addWidget(remove);
        lines->addLayout(row);
        auto *words = new TextBlock(tr("%1, as the patient gets it").arg(title->text()), 4);
        words->give(all[i].text);
        lines->addWidget(words);
        m_advice->addWidget(box);
        box->show(); // the page may be seen already
        connect(remove, &QPushButton::clicked, this, [this, item] {
            Closing changed = closing();
            std::erase_if(changed.advice, [&](const GivenAdvice &advice) { return advice.item == item; });
            write(changed);
            QMetaObject::invokeMethod(this, &HomeSection::refresh, Qt::QueuedConnection); // the button goes
        });
        connect(words, &QPlainTextEdit::textChanged, this, [this, item, words, keep, isKept] {
            keep->setVisible(!words->isBlank() && !isKept(words->value()));
            if (isShowing() || words->isBlank())
                return; // advice of no words is removed by its button
            Closing changed = closing();
            for (std::vector<GivenAdvice> *list : {&changed.advice, &m_shown})
                for (GivenAdvice &advice : *list)
                    if (advice.item == item)
                        advice.text = words->value();
            write(changed);
        });
    }
}

void HomeSection::makeWarning()
{
    column().addWidget(heading(tr("What to expect, and when to call")));
    m_expect = new WrappedLabel;
    m_expect->setTextFormat(Qt::PlainText);
    column().addWidget(m_expect);
    m_told = new QCheckBox(tr("Told to the patient"));
    m_told->setMinimumHeight(touchTarget);
    connect(m_told, &QCheckBox::clicked, this, [this](bool on) {
        Closing changed = closing();
        changed.isTold = on;
        write(changed);
    });
    column().addWidget(m_told, 0, Qt::AlignLeft);
}

QString HomeSection::expectations() const
{
    QStringList lines;
    for (const std::string &line : expectedAfter(m_session.homeAdvice(), m_session.visit().treatment, m_session.handTechniques()))
        lines << text(line);
    const auto add = [&](CallWhom whom, const QString &head) {
        QStringList part;
        for (const CallLine &call : m_session.homeAdvice().calls)
            if (call.whom == whom)
                part << text(call.text);
        lines << QString() << head << part;
    };
    add(CallWhom::Emergency, tr("Emergency services at once, when:"));
    add(CallWhom::DoctorToday, tr("A doctor the same day, when:"));
    add(CallWhom::Us, tr("Us, when:"));
    return lines.join(QLatin1Char('\n')).trimmed();
}

void HomeSection::makeCall()
{
    column().addWidget(heading(tr("Call the day after")));
    m_call = toggleButton(tr("We call tomorrow"), tr("A call to the patient on the day after"));
    connect(m_call, &QPushButton::clicked, this, &HomeSection::takeCall);
    column().addWidget(m_call, 0, Qt::AlignLeft);
    m_called = new QWidget;
    auto *lines = new QVBoxLayout(m_called);
    lines->setContentsMargins(0, 0, 0, 0);
    m_reaction = new ChoiceRow(tr("After the treatment"), {tr("Nothing unusual"), tr("Sore, and it passed"), tr("Bad")});
    m_callTold = new TextLine(tr("What was told, and what was agreed"));
    m_callTold->setPlaceholderText(m_callTold->accessibleName());
    lines->addWidget(hint(tr("When the call was made:")));
    lines->addWidget(m_reaction);
    lines->addWidget(m_callTold);
    column().addWidget(m_called);
    connect(m_reaction, &ChoiceRow::chosen, this, &HomeSection::takeCall);
    connect(m_callTold, &QLineEdit::textEdited, this, &HomeSection::takeCall);
}

void HomeSection::takeCall()
{
    Closing changed = closing();
    if (!m_call->isChecked()) {
        changed.call.reset();
    } else {
        if (!changed.call) {
            const QDate day = QDate::fromString(text(m_session.visit().date), Qt::ISODate);
            const QDate next = (day.isValid() ? day : QDate::currentDate()).addDays(1);
            changed.call = LaterCall{next.toString(Qt::ISODate).toStdString(), {}, {}, {}};
        }
        const auto reaction = m_reaction->value();
        changed.call->reaction = reaction ? std::optional(static_cast<Reaction>(*reaction)) : std::nullopt;
        changed.call->told = m_callTold->value();
        const bool isMade = changed.call->reaction || !changed.call->told.empty();
        changed.call->made = !isMade ? std::string() : changed.call->made.empty() ? today() : changed.call->made;
    }
    write(changed);
    showCall(changed.call);
}

void HomeSection::showCall(const std::optional<LaterCall> &call)
{
    m_call->setChecked(call.has_value());
    m_call->setText(call ? tr("We call on %1").arg(dayWords(call->due)) : tr("We call tomorrow"));
    m_called->setVisible(call && call->due <= today());
    if (!call) { // nothing of a patient before stays
        m_reaction->give(std::nullopt);
        m_callTold->give({});
        return;
    }
    m_reaction->give(call->reaction ? std::optional(static_cast<int>(*call->reaction)) : std::nullopt);
    if (m_callTold->value() != call->told)
        m_callTold->give(call->told);
}

void HomeSection::show(const Closing &closing)
{
    std::vector<GivenAdvice> library = closing.advice;
    std::erase_if(library, isOwn);
    showAdvice(library);
    const auto own = std::find_if(closing.advice.begin(), closing.advice.end(), isOwn);
    if (const std::string words = own == closing.advice.end() ? std::string() : own->text; words != m_own->value())
        m_own->give(words);
    m_keepOwn->setVisible(!m_own->isBlank());
    m_expect->say(expectations());
    m_told->setChecked(closing.isTold);
    showCall(closing.call);
}

} // namespace raphe
