#include "app/raphe/treatment/WorkPicker.h"

#include "app/paint/Theme.h"
#include "app/raphe/SearchBox.h"
#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "core/treatment/Gate.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

QString worded(const std::string &words)
{
    return QString::fromStdString(words);
}

void empty(QVBoxLayout &rows)
{
    while (QLayoutItem *item = rows.takeAt(0)) {
        if (QWidget *widget = item->widget())
            widget->deleteLater(); // it may be the button that was pressed
        delete item;
    }
}

QPushButton *rowButton(const QString &words)
{
    QPushButton *button = pushButton(words);
    button->setAutoDefault(false);
    button->setMinimumHeight(touchTarget + 8);
    button->setStyleSheet(QStringLiteral("text-align: left;"));
    return button;
}

} // namespace

WorkPicker::WorkPicker(VisitSession &session, QWidget *parent)
    : QWidget(parent), m_session(session), m_places(new QVBoxLayout), m_techniques(new QVBoxLayout), m_head(heading({}))
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(48, 32, 48, 32);
    column->setSpacing(14);
    auto *title = new WrappedLabel(tr("Something else"));
    title->setFont(typeface(30, QFont::Bold));
    column->addWidget(title);
    auto *halves = new QHBoxLayout;
    halves->setSpacing(24);
    const auto half = [&](QWidget *head, QWidget *below, QVBoxLayout *rows) {
        auto *lines = new QVBoxLayout;
        lines->addWidget(head);
        if (below)
            lines->addWidget(below);
        auto *page = new QWidget;
        page->setLayout(rows);
        lines->addWidget(scrolled(page), 1);
        halves->addLayout(lines, 1);
    };
    auto *search = new SearchBox(*session.knowledge().atlas);
    connect(search, &SearchBox::chosen, this, &WorkPicker::choosePlace);
    half(heading(tr("Where")), search, m_places);
    half(m_head, nullptr, m_techniques);
    column->addLayout(halves, 1);
    auto *row = new QHBoxLayout;
    QPushButton *back = rowButton(tr("Back"));
    connect(back, &QPushButton::clicked, this, &WorkPicker::left);
    row->addWidget(back);
    row->addStretch(1);
    column->addLayout(row);
}

void WorkPicker::begin()
{
    m_place.reset();
    empty(*m_places);
    std::vector<Place> places;
    for (const Finding &finding : m_session.visit().findings)
        if (finding.isFound() && std::find(places.begin(), places.end(), finding.place) == places.end())
            places.push_back(finding.place);
    for (const Place &place : places) {
        QPushButton *button = rowButton(capitalised(worded(m_session.knowledge().atlas->spoken(place))));
        connect(button, &QPushButton::clicked, this, [this, place] { choosePlace(place); });
        m_places->addWidget(button);
        button->show(); // the page may be seen already
    }
    m_places->addStretch(1);
    showTechniques();
}

void WorkPicker::choosePlace(const Place &place)
{
    m_place = place;
    showTechniques();
}

void WorkPicker::showTechniques()
{
    empty(*m_techniques);
    m_head->setText(m_place ? capitalised(worded(m_session.knowledge().atlas->spoken(*m_place))) : tr("What"));
    if (!m_place)
        return;
    std::vector<Finding> here;
    std::copy_if(m_session.visit().findings.begin(), m_session.visit().findings.end(), std::back_inserter(here),
        [&](const Finding &finding) { return finding.place == *m_place; });
    const Cautions cautions = m_session.cautions();
    const auto techniques = techniquesFor(m_session.handTechniques(), m_session.knowledge().atlas->at(m_place->structure), here);
    for (const Technique *technique : techniques) {
        TreatmentStep step;
        step.place = *m_place;
        step.technique = technique->id;
        QPushButton *button = rowButton(capitalised(worded(technique->name)));
        const auto held = gateOf(cautions, m_session.handTechniques(), step);
        button->setEnabled(
            std::none_of(held.begin(), held.end(), [](const CautionVerdict &v) { return v.verdict == Verdict::Stop; }));
        connect(button, &QPushButton::clicked, this, [this, step] { Q_EMIT chosen(step); });
        m_techniques->addWidget(button);
        button->show();
        if (!held.empty()) {
            WrappedLabel *why = hint(worded(held.front().reason));
            m_techniques->addWidget(why);
            why->show();
        }
    }
    if (techniques.empty())
        m_techniques->addWidget(hint(tr("No technique is meant for this place.")));
    m_techniques->addStretch(1);
}

} // namespace raphe
