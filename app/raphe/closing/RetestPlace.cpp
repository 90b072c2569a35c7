#include "app/raphe/closing/RetestPlace.h"

#include "app/raphe/intake/ChoiceRow.h"

#include <algorithm>
#include <tuple>

namespace raphe {

namespace {

bool isSame(const Finding &a, const Finding &b)
{
    return std::tie(a.place, a.spot, a.at) == std::tie(b.place, b.spot, b.at);
}

} // namespace

RetestPlace::RetestPlace(VisitSession &session, const RetestItem &item) : RetestRow(session, item)
{
    for (const Finding &finding : session.visit().findings)
        if (finding.place == Place{StructureId{item.id}, item.side} && finding.isFound())
            make(finding);
}

void RetestPlace::make(const Finding &before)
{
    Spotted out;
    out.before = before;
    const QString where =
        before.spot ? tr(", %1", "a spot").arg(QString::fromStdString(std::string(wordOf(spotWords, *before.spot)))) : QString();
    const auto row = [&](const QString &quality, int highest) {
        const QString name = quality + where;
        ChoiceRow *choices =
            ChoiceRow::ofNumbers(tr("%1: %2", "place, what is read").arg(QString::fromStdString(item().name), name), highest);
        add(choices, name);
        return choices;
    };
    if (before.tenderness || before.sore)
        out.tenderness = row(tr("Tenderness, 0 to 4"), Tenderness::highest);
    if (before.play)
        out.play = row(tr("Joint play, 0 to 6, 3 is normal"), JointPlay::highest);
    if (before.restriction || before.stiff || (!out.tenderness && !out.play))
        out.restriction = row(tr("Restriction, 0 to 3"), Restriction::highest);
    m_spots.push_back(out);
    for (ChoiceRow *choices : {out.tenderness, out.restriction, out.play})
        if (choices)
            connect(choices, &ChoiceRow::chosen, this, [this, out, choices] {
                if (!isUnread(*choices))
                    take(out);
            });
}

void RetestPlace::take(const Spotted &spotted)
{
    Finding now;
    now.place = spotted.before.place;
    now.spot = spotted.before.spot;
    now.at = spotted.before.at;
    if (spotted.tenderness && spotted.tenderness->value())
        now.tenderness = Tenderness{*spotted.tenderness->value()};
    if (spotted.restriction && spotted.restriction->value())
        now.restriction = Restriction{*spotted.restriction->value()};
    if (spotted.play && spotted.play->value())
        now.play = JointPlay{*spotted.play->value()};
    Retested again = m_session.visit().retested;
    std::erase_if(again.findings, [&](const Finding &f) { return isSame(f, now); });
    if (now.saysAnything())
        again.findings.push_back(now);
    m_session.setRetested(again);
}

void RetestPlace::showEntry()
{
    for (const Spotted &spotted : m_spots) {
        const auto &all = m_session.visit().retested.findings;
        const auto now = std::find_if(all.begin(), all.end(), [&](const Finding &f) { return isSame(f, spotted.before); });
        const auto give = [&](ChoiceRow *row, auto grade) {
            if (row)
                row->give(now != all.end() && (*now).*grade ? std::optional(((*now).*grade)->grade) : std::nullopt);
        };
        give(spotted.tenderness, &Finding::tenderness);
        give(spotted.restriction, &Finding::restriction);
        give(spotted.play, &Finding::play);
    }
}

} // namespace raphe
