#include "core/document/fhir/FhirThemes.h"

namespace raphe::fhir {

namespace {

// One finding: a panel of the place, and an observation of each quality as its member, since parts of an observation have no
// place of their own in FHIR.
class FindingPanel {
public:
    FindingPanel(Making &making, When when, const Finding &finding)
        : m_making(making),
          m_when(when),
          m_finding(finding),
          m_name("finding/" + finding.place.structure.value + "/" + std::string(wordOf(raphe::sideWords, finding.place.side))
              + (finding.spot ? "/" + std::string(wordOf(spotWords, *finding.spot)) : "")
              + (finding.at ? "/at-" + finding.at->value : "")),
          m_time(timeOf(making, when, MomentKind::Finding, finding.place.structure.value, finding.place.side))
    {
    }

    void addAll()
    {
        addTenderness();
        addMotion();
        if (m_finding.endFeel)
            word("end-feel", "end-feel", wordOf(endFeelWords, *m_finding.endFeel));
        if (m_finding.familiar)
            member("familiar-pain", "valueBoolean", true);
        addTexture();
        for (const Place &place : m_finding.refersTo)
            addFeltAlso(place);
        if (std::string note = cleaned(m_finding.note); !note.empty())
            member("remark", "valueString", std::move(note));
        addPanel();
    }

private:
    [[nodiscard]] Json seen(const char *code)
    {
        Json out = m_making.observation(code, m_time);
        out["bodySite"] = m_making.site(m_finding.place, m_finding.spot, m_finding.at);
        out["method"] = ownCoded("method", "by-hand");
        return out;
    }
    void keep(const std::string &quality, Json observation)
    {
        m_members.push_back(addSeen(m_making, m_when, m_name + "/" + quality, std::move(observation)));
    }
    void member(const char *code, const char *valueName, Json value)
    {
        Json out = seen(code);
        out[valueName] = std::move(value);
        keep(code, std::move(out));
    }
    void word(const char *code, const char *list, std::string_view value)
    {
        member(code, "valueCodeableConcept", ownCoded(list, value));
    }

    void addTenderness()
    {
        if (m_finding.tenderness)
            member("tenderness", "valueInteger", m_finding.tenderness->grade);
        if (m_finding.sore)
            word("tenderness", "found", "present-not-graded");
        if (m_finding.clear.tenderness)
            word("tenderness", "found", "clear");
    }
    void addMotion()
    {
        if (m_finding.restriction)
            member("restriction", "valueInteger", m_finding.restriction->grade);
        if (m_finding.stiff)
            word("restriction", "found", "present-not-graded");
        if (m_finding.clear.motion)
            word("restriction", "found", "clear");
        if (m_finding.play)
            member("joint-play", "valueInteger", m_finding.play->grade);
    }
    void addTexture()
    {
        std::string all;
        for (const std::string &texture : m_finding.texture)
            if (const std::string one = cleaned(texture); !one.empty())
                all += (all.empty() ? "" : "; ") + one;
        if (!all.empty())
            member("texture", "valueString", std::move(all));
    }
    void addFeltAlso(const Place &place)
    {
        Json out = seen("felt-also-here");
        out["bodySite"] = m_making.site(place); // the other place; where was pressed is the panel's
        out["valueBoolean"] = true;
        addNote(out, "Pressed: " + m_making.placeWords(m_finding.place, m_finding.spot, m_finding.at));
        keep("felt-also-here/" + place.structure.value + "/" + std::string(wordOf(raphe::sideWords, place.side)), std::move(out));
    }
    void addPanel()
    {
        Json out = seen("palpation");
        if (m_finding.unable)
            m_making.setAbsent(out, "not-performed", *m_finding.unable);
        else if (m_members.empty())
            m_making.setAbsent(out, "unknown", {}); // nothing but the place was said
        for (Json &reference : m_members)
            append(out, "hasMember", std::move(reference));
        if (m_finding.certain)
            append(out, "component", m_making.component("very-sure", "valueBoolean", true));
        if (m_finding.afterComparing)
            append(out, "component", m_making.component("felt-after-comparing", "valueBoolean", true));
        addSeen(m_making, m_when, m_name, std::move(out));
    }

    Making &m_making;
    When m_when;
    const Finding &m_finding;
    std::string m_name;
    std::string m_time;
    std::vector<Json> m_members;
};

} // namespace

std::string timeOf(const Making &making, When when, MomentKind kind, const std::string &id, Side side)
{
    std::string time;
    if (when == When::Before)
        for (const Moment &moment : making.visit().timeline)
            if (moment.kind == kind && moment.id == id && moment.side == side)
                time = moment.time; // a thing that was recorded again has its later time too
    return time;
}

Json addSeen(Making &making, When when, const std::string &name, Json observation)
{
    if (when == When::Before)
        return making.add(name, std::move(observation));
    append(observation, "category", ownCoded("phase", "after-the-treatment"));
    if (making.has(name))
        append(observation, "extension", extension(making.codes().uri("sequel-to"), "valueReference", making.referTo(name)));
    return making.add("again/" + name, std::move(observation));
}

void addFindings(Making &making)
{
    for (const Finding &finding : making.visit().findings)
        FindingPanel(making, When::Before, finding).addAll();
    for (const Finding &finding : making.visit().retested.findings)
        FindingPanel(making, When::After, finding).addAll();
}

} // namespace raphe::fhir
