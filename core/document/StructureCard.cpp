#include "core/document/StructureCard.h"

#include "core/anatomy/Edge.h"
#include "core/anatomy/Terms.h"
#include "core/document/VisitMap.h"
#include "core/reasoning/Paths.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <cmath>
#include <set>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("StructureCard", text);
}

CardText say(const QString &text)
{
    return {text.toStdString(), {}};
}

constexpr Millimetres exampleStature{1700}; // where the patient's is not known: an example, said to be one

class Writer {
public:
    Writer(const Linkage &linkage, const Place &place) : m_linkage(linkage), m_atlas(linkage.atlas()), m_place(place) { }

    StructureCard write(const std::string &language, const std::vector<Finding> &now, const std::vector<PastFinding> &before)
    {
        const Structure &s = m_atlas.at(m_place.structure);
        m_card.place = m_place;
        m_card.title = m_atlas.spoken(m_place);
        m_card.plain = m_atlas.plain(m_place, language);
        m_card.nature = inWords(s.kind);
        if (s.kind == Kind::Muscle || s.kind == Kind::Nerve || s.kind == Kind::Vessel || s.kind == Kind::Bursa)
            m_card.nature = tr(QT_TRANSLATE_NOOP("StructureCard", "%1; layer: %2"))
                                .arg(QString::fromStdString(inWords(s.kind)), QString::fromStdString(inWords(s.layer)))
                                .toStdString();
        writeFindings(s, now, before);
        writeCautions(s);
        writeSeat(s);
        writeAttachments(s);
        writeActions(s);
        writeSupply(s);
        writeContinuities();
        writeAttachedHere(s);
        writeJoints(s);
        writeStack();
        writeParts(s);
        writeNames(s);
        for (const std::string &id : m_cited)
            for (std::string &words : sourcesInWords(m_atlas, {id}))
                m_card.sources.push_back(std::move(words));
        return std::move(m_card);
    }

private:
    void add(const char *title, std::vector<CardLine> lines)
    {
        if (lines.empty())
            return;
        CardSection section{tr(title).toStdString(), {}, std::move(lines)};
        const std::string first = section.lines.front().evidence;
        const auto isFirst = [&](const CardLine &line) { return line.evidence == first; };
        if (section.lines.size() > 1 && std::all_of(section.lines.begin(), section.lines.end(), isFirst)) {
            section.evidence = first;
            for (CardLine &line : section.lines)
                line.evidence.clear();
        }
        m_card.sections.push_back(std::move(section));
    }

    // A structure as links: its own side where the place has one, else each side.
    void mention(std::vector<CardText> &parts, const StructureId &id) const
    {
        const Structure &s = m_atlas.at(id);
        if (!s.paired && !m_atlas.isSpinalSegment(id)) {
            parts.push_back({m_atlas.spoken({id, Side::Midline}), Place{id, Side::Midline}});
        } else if (m_place.side != Side::Midline || !s.paired) {
            parts.push_back({m_atlas.spoken({id, m_place.side}), Place{id, m_place.side}});
        } else {
            parts.push_back(say(QString::fromStdString(s.names.english) + QStringLiteral(": ")));
            parts.push_back({tr(QT_TRANSLATE_NOOP("StructureCard", "left")).toStdString(), Place{id, Side::Left}});
            parts.push_back(say(QStringLiteral(", ")));
            parts.push_back({tr(QT_TRANSLATE_NOOP("StructureCard", "right")).toStdString(), Place{id, Side::Right}});
        }
    }

    void mentionAll(std::vector<CardText> &parts, const std::vector<StructureId> &ids) const
    {
        for (std::size_t i = 0; i < ids.size(); ++i) {
            if (i > 0)
                parts.push_back(say(QStringLiteral(", ")));
            mention(parts, ids[i]);
        }
    }

    CardLine lineOf(const std::vector<StructureId> &ids, std::string evidence = {}) const
    {
        CardLine line{{}, std::move(evidence)};
        mentionAll(line.parts, ids);
        return line;
    }

    // Cites sources: their numbers in the card's list.
    QString cite(const std::vector<std::string> &sources)
    {
        std::set<std::ptrdiff_t> cited;
        for (const std::string &id : sources) {
            auto it = std::find(m_cited.begin(), m_cited.end(), id);
            if (it == m_cited.end())
                it = m_cited.insert(m_cited.end(), id);
            cited.insert(it - m_cited.begin() + 1);
        }
        QStringList numbers;
        for (const std::ptrdiff_t number : cited)
            numbers << QString::number(number);
        return numbers.isEmpty() ? QString() : QStringLiteral(" [%1]").arg(numbers.join(QStringLiteral(", ")));
    }

    std::string evidence(Grade grade, const std::vector<std::string> &sources)
    {
        return gradeInWords(grade) + cite(sources).toStdString();
    }

    static QString share(const Along &along)
    {
        return tr(QT_TRANSLATE_NOOP("StructureCard", "%1-%2 % of its length"))
            .arg(std::lround(along.from * 100))
            .arg(std::lround(along.to * 100));
    }

    void mentionEnds(std::vector<CardText> &parts, const Attachment &head, const std::vector<StructureId> &ends) const
    {
        for (std::size_t i = 0; i < ends.size(); ++i) {
            if (i > 0)
                parts.push_back(say(QStringLiteral(", ")));
            mention(parts, ends[i]);
            if (const Along *along = head.alongOf(ends[i]))
                parts.push_back(say(QStringLiteral(" (%1)").arg(share(*along))));
        }
    }

    void writeAttachments(const Structure &s)
    {
        std::vector<CardLine> lines;
        for (const Attachment &head : s.attachments) {
            CardLine line;
            if (!head.head.empty())
                line.parts.push_back(say(QString::fromStdString(head.head) + QStringLiteral(": ")));
            line.parts.push_back(say(tr(QT_TRANSLATE_NOOP("StructureCard", "from "))));
            mentionEnds(line.parts, head, head.origins);
            line.parts.push_back(say(tr(QT_TRANSLATE_NOOP("StructureCard", " to "))));
            mentionEnds(line.parts, head, head.insertions);
            line.evidence = evidence(head.evidence, head.sources);
            lines.push_back(std::move(line));
        }
        add(QT_TRANSLATE_NOOP("StructureCard", "Attachments"), std::move(lines));
    }

    void writeActions(const Structure &s)
    {
        std::vector<CardLine> lines;
        std::vector<const Action *> told;
        for (const Action &action : s.actions) {
            if (std::any_of(told.begin(), told.end(), [&](const Action *a) { return a->motions == action.motions; }))
                continue;
            told.push_back(&action);
            CardLine line;
            for (const Action &same : s.actions) { // joints that move alike share a line
                if (same.motions != action.motions)
                    continue;
                if (!line.parts.empty())
                    line.parts.push_back(say(QStringLiteral(", ")));
                if (const auto *joint = std::get_if<StructureId>(&same.at))
                    mention(line.parts, *joint);
                else
                    line.parts.push_back({inWords(std::get<JointComplex>(same.at)), {}});
            }
            QStringList motions;
            for (const Motion motion : action.motions)
                motions << QString::fromStdString(inWords(motion));
            line.parts.push_back(say(QStringLiteral(": ") + motions.join(QStringLiteral(", "))));
            lines.push_back(std::move(line));
        }
        for (CardLine &line : lines)
            line.evidence = evidence(Grade::Described, s.sources);
        add(QT_TRANSLATE_NOOP("StructureCard", "Action"), std::move(lines));
    }

    void writeSupply(const Structure &s)
    {
        std::vector<CardLine> lines;
        if (!s.nerves.empty()) {
            CardLine line = lineOf(s.nerves, evidence(Grade::Described, s.sources));
            QStringList roots;
            for (const std::string &root : s.roots)
                roots << QString::fromStdString(root);
            if (!roots.isEmpty())
                line.parts.push_back(
                    say(tr(QT_TRANSLATE_NOOP("StructureCard", "; roots %1")).arg(roots.join(QStringLiteral(", ")))));
            lines.push_back(std::move(line));
        }
        add(QT_TRANSLATE_NOOP("StructureCard", "Nerve"), std::move(lines));

        if (!s.beside.empty())
            add(QT_TRANSLATE_NOOP("StructureCard", "Runs along or lies against"),
                {lineOf(s.beside, evidence(Grade::Described, s.sources))});
        std::vector<StructureId> supplied;
        std::vector<StructureId> neighbours;
        for (const Structure &other : m_atlas.structures()) {
            if (std::find(other.nerves.begin(), other.nerves.end(), s.id) != other.nerves.end())
                supplied.push_back(other.id);
            if (other.kind != Kind::CautionArea
                && std::find(other.beside.begin(), other.beside.end(), s.id) != other.beside.end())
                neighbours.push_back(other.id);
        }
        if (!supplied.empty())
            add(QT_TRANSLATE_NOOP("StructureCard", "Supplies"), {lineOf(supplied)});
        if (!neighbours.empty())
            add(QT_TRANSLATE_NOOP("StructureCard", "Nerves, vessels, bursae and discs here"), {lineOf(neighbours)});
    }

    void writeContinuities()
    {
        std::vector<PathStep> steps;
        forEachLink(LinkKind::Continues, [&](const PathStep &step) { steps.push_back(step); });
        std::stable_sort(
            steps.begin(), steps.end(), [](const PathStep &a, const PathStep &b) { return a.evidence < b.evidence; });
        std::vector<CardLine> lines;
        for (const PathStep &step : steps) {
            CardLine line{{{m_atlas.spoken(step.to), step.to}}, evidenceInWords(step) + cite(step.sources).toStdString()};
            if (step.changesSide())
                line.parts.push_back(say(tr(QT_TRANSLATE_NOOP("StructureCard", ", on the other side"))));
            if (!step.note.empty())
                line.parts.push_back(say(QStringLiteral(" (%1)").arg(QString::fromStdString(step.note))));
            lines.push_back(std::move(line));
        }
        add(QT_TRANSLATE_NOOP("StructureCard", "Continuous with"), std::move(lines));
    }

    void writeAttachedHere(const Structure &s)
    {
        std::vector<CardLine> lines;
        std::set<StructureId> placed; // stand in their place along the edge
        if (const auto edge = edgeOf(m_atlas, s.id)) {
            const Millimetres whole = lengthOf(edge->border, 0, 1, exampleStature);
            CardLine line;
            line.parts.push_back(say(tr(QT_TRANSLATE_NOOP("StructureCard",
                                            "Edge from %1 to %2: %3 % of stature; at 1.70 m about %4 mm, %5 steps of %6 mm "
                                            "(steps: common practice, no source)"))
                                         .arg(QString::fromStdString(edge->border.from), QString::fromStdString(edge->border.to))
                                         .arg(edge->border.lengthOverStature * 100, 0, 'f', 1)
                                         .arg(std::lround(whole.value))
                                         .arg(stepsOver(whole))
                                         .arg(customaryStep.value)));
            line.evidence = QString::fromStdString(edge->border.note).toStdString() + cite(edge->border.sources).toStdString();
            lines.push_back(std::move(line));
            for (const Stretch &stretch : edge->stretches) {
                CardLine at{{say(share(stretch.along) + QStringLiteral(": "))}, evidence(stretch.evidence, stretch.sources)};
                mention(at.parts, stretch.structure);
                if (!stretch.head.empty())
                    at.parts.push_back(say(QStringLiteral(" (%1)").arg(QString::fromStdString(stretch.head))));
                lines.push_back(std::move(at));
                placed.insert(stretch.structure);
            }
        }
        std::vector<StructureId> others;
        for (const Structure &other : m_atlas.structures()) {
            const bool attached = std::any_of(other.attachments.begin(), other.attachments.end(), [&](const Attachment &head) {
                return std::find(head.origins.begin(), head.origins.end(), s.id) != head.origins.end()
                    || std::find(head.insertions.begin(), head.insertions.end(), s.id) != head.insertions.end();
            });
            if (attached && !placed.contains(other.id))
                others.push_back(other.id);
        }
        if (!others.empty())
            lines.push_back(lineOf(others));
        add(QT_TRANSLATE_NOOP("StructureCard", "Attached here"), std::move(lines));
    }

    void writeJoints(const Structure &s)
    {
        std::vector<CardLine> lines;
        std::vector<StructureId> crossed;
        for (const Crossing &c : m_atlas.crossings())
            if (c.muscle == s.id)
                crossed.push_back(c.joint);
        if (!crossed.empty())
            lines.push_back(lineOf(crossed, tr(QT_TRANSLATE_NOOP("StructureCard", "computed from its ends")).toStdString()));
        add(QT_TRANSLATE_NOOP("StructureCard", "Joints it crosses"), std::move(lines));

        const Joint *joint = m_atlas.findJoint(s.id);
        if (!joint)
            return;
        add(QT_TRANSLATE_NOOP("StructureCard", "Between"),
            {lineOf(joint->bones[0] == joint->bones[1] ? std::vector{joint->bones[0]}
                                                       : std::vector(joint->bones.begin(), joint->bones.end()),
                evidence(Grade::Described, s.sources))});
        std::vector<StructureId> crossers;
        for (const Crossing &c : m_atlas.crossings())
            if (c.joint == s.id)
                crossers.push_back(c.muscle);
        if (!crossers.empty())
            add(QT_TRANSLATE_NOOP("StructureCard", "Muscles that cross it"),
                {lineOf(crossers, tr(QT_TRANSLATE_NOOP("StructureCard", "computed from their ends")).toStdString())});
    }

    template <class F> void forEachLink(LinkKind kind, F use) const
    {
        std::set<Place> seen;
        for (const std::size_t node : m_linkage.nodesOf(m_place))
            for (const std::size_t index : m_linkage.linksAt(node)) {
                const Link &link = m_linkage.links()[index];
                if (link.kind != kind)
                    continue;
                const PathStep step = stepOver(m_linkage, link, node);
                if (seen.insert(step.to).second)
                    use(step);
            }
    }

    void writeStack()
    {
        const Layer own = m_atlas.at(m_place.structure).layer;
        CardLine over;
        CardLine under;
        forEachLink(LinkKind::Overlies, [&](const PathStep &step) {
            auto &parts = (m_atlas.at(step.to.structure).layer < own ? over : under).parts;
            parts.push_back(say(parts.empty() ? (&parts == &over.parts ? tr(QT_TRANSLATE_NOOP("StructureCard", "over it: "))
                                                                       : tr(QT_TRANSLATE_NOOP("StructureCard", "under it: ")))
                                              : QStringLiteral(", ")));
            parts.push_back({m_atlas.spoken(step.to), step.to});
        });
        std::vector<CardLine> lines;
        for (CardLine *line : {&over, &under})
            if (!line->parts.empty()) {
                line->evidence = tr(QT_TRANSLATE_NOOP("StructureCard", "computed from the drawing")).toStdString();
                lines.push_back(std::move(*line));
            }
        add(QT_TRANSLATE_NOOP("StructureCard", "Layers"), std::move(lines));
    }

    void writeCautions(const Structure &s)
    {
        std::vector<CardLine> lines;
        if (s.caution) {
            lines.push_back({{say(QString::fromStdString(s.caution->risk))}, {}});
            lines.push_back({{say(QString::fromStdString(s.caution->work))}, {}});
            if (!s.caution->runs.empty()) {
                CardLine runs{{say(tr(QT_TRANSLATE_NOOP("StructureCard", "There: ")))}, {}};
                mentionAll(runs.parts, s.caution->runs);
                lines.push_back(std::move(runs));
            }
            lines.back().evidence = evidence(Grade::Described, s.sources);
        }
        const auto holds = [&](const std::vector<StructureId> &ids) {
            return std::any_of(ids.begin(), ids.end(), [&](const StructureId &id) {
                return id == s.id || (s.partOf && s.kind == Kind::Muscle && id == *s.partOf) || m_atlas.at(id).partOf == s.id;
            });
        };
        for (const Structure &area : m_atlas.structures())
            if (area.caution && (holds(area.caution->runs) || holds(area.beside))) {
                CardLine line;
                mention(line.parts, area.id);
                line.parts.push_back(say(QStringLiteral(": ") + QString::fromStdString(area.caution->work)));
                lines.push_back(std::move(line));
            }
        if (!lines.empty())
            lines.push_back(
                {{say(tr(QT_TRANSLATE_NOOP("StructureCard", "Follow local law, scope of practice and licensed care.")))}, {}});
        add(QT_TRANSLATE_NOOP("StructureCard", "Caution"), std::move(lines));
    }

    // Where the patient may point when it is in trouble.
    void writeSeat(const Structure &s)
    {
        if (s.seat)
            add(QT_TRANSLATE_NOOP("StructureCard", "Its trouble is often felt at"),
                {lineOf(s.seat->feltAt, evidence(s.seat->evidence, s.seat->sources))});
    }

    void writeFindings(const Structure &s, const std::vector<Finding> &now, const std::vector<PastFinding> &before)
    {
        const auto isHere = [&](const Finding &f) {
            const Structure &found = m_atlas.at(f.place.structure);
            return f.place.side == m_place.side && (found.id == s.id || found.partOf == s.id);
        };
        std::vector<CardLine> lines;
        const auto tell = [&](const QString &when, const Finding &f) {
            lines.push_back({{say(when + QStringLiteral(": ")), {m_atlas.spoken(f.place), f.place},
                                 say(QStringLiteral(", ") + QString::fromStdString(findingInWords(m_atlas, f)))},
                {}});
        };
        for (const Finding &f : now)
            if (isHere(f))
                tell(tr(QT_TRANSLATE_NOOP("StructureCard", "this visit")), f);
        for (const PastFinding &past : before)
            if (isHere(past.finding))
                tell(QString::fromStdString(past.date), past.finding);
        add(QT_TRANSLATE_NOOP("StructureCard", "Found here in this patient"), std::move(lines));
    }

    void writeParts(const Structure &s)
    {
        std::vector<CardLine> lines;
        if (s.partOf) {
            CardLine line{{say(tr(QT_TRANSLATE_NOOP("StructureCard", "part of ")))}, {}};
            mention(line.parts, *s.partOf);
            lines.push_back(std::move(line));
        }
        if (const auto parts = m_atlas.partsOf(s.id); !parts.empty()) {
            CardLine line{{say(tr(QT_TRANSLATE_NOOP("StructureCard", "its parts: ")))}, {}};
            mentionAll(line.parts, parts);
            lines.push_back(std::move(line));
        }
        std::vector<StructureId> landmarks;
        if (s.kind == Kind::Bone)
            for (const Structure &other : m_atlas.structures())
                if (other.kind == Kind::Landmark && other.partOf == s.id)
                    landmarks.push_back(other.id);
        if (!landmarks.empty()) {
            CardLine line{{say(tr(QT_TRANSLATE_NOOP("StructureCard", "landmarks: ")))}, {}};
            mentionAll(line.parts, landmarks);
            lines.push_back(std::move(line));
        }
        add(QT_TRANSLATE_NOOP("StructureCard", "Parts"), std::move(lines));
    }

    void writeNames(const Structure &s)
    {
        std::vector<CardLine> lines{
            {{say(tr(QT_TRANSLATE_NOOP("StructureCard", "Latin: %1")).arg(QString::fromStdString(s.names.latin)))}, {}}};
        QStringList synonyms;
        for (const std::string &synonym : s.names.synonyms)
            synonyms << QString::fromStdString(synonym);
        if (!synonyms.isEmpty())
            lines.push_back(
                {{say(tr(QT_TRANSLATE_NOOP("StructureCard", "also said: %1")).arg(synonyms.join(QStringLiteral(", "))))}, {}});
        QStringList ids;
        for (const auto *list : {&s.uberon, &s.fma})
            for (const std::string &id : *list)
                ids << QString::fromStdString(id);
        if (!ids.isEmpty())
            lines.push_back(
                {{say(tr(QT_TRANSLATE_NOOP("StructureCard", "in open lists: %1")).arg(ids.join(QStringLiteral(", "))))}, {}});
        lines.front().evidence = cite(s.sources).trimmed().toStdString();
        add(QT_TRANSLATE_NOOP("StructureCard", "Names"), std::move(lines));
    }

    const Linkage &m_linkage;
    const Atlas &m_atlas;
    Place m_place;
    StructureCard m_card;
    std::vector<std::string> m_cited; // ids, in the order of their numbers
};

} // namespace

StructureCard structureCard(const Linkage &linkage, const Place &place, const std::string &language,
    const std::vector<Finding> &now, const std::vector<PastFinding> &before)
{
    return Writer(linkage, place).write(language, now, before);
}

} // namespace raphe
