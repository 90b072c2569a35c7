// readDrawing: a strict reader for the small part of SVG that our drawings may use.
#include "core/anatomy/Atlas.h"
#include "core/anatomy/Drawing.h"

#include <QXmlStreamReader>

#include <cmath>
#include <cstdlib>
#include <set>

namespace raphe {

namespace {

class PathData {
public:
    PathData(std::string_view text, bool whole) : m_text(text), m_whole(whole) { }

    /// Empty string on success, otherwise the rule that was broken.
    std::string read(Outline &out)
    {
        char command = 0;
        while (skipSpace(), m_at < m_text.size()) {
            const char c = m_text[m_at];
            if (c == 'M' || c == 'L' || c == 'C' || c == 'Z') {
                command = c;
                ++m_at;
            } else if (std::isalpha(static_cast<unsigned char>(c)) || command == 0 || command == 'Z') {
                return std::string("only absolute M, L, C, Z are allowed, found '") + c + "'";
            }
            if (command != 'M' && (out.empty() || out.back().closed))
                return "a contour must start with M";
            switch (command) {
            case 'M': {
                Point p;
                if (!point(p))
                    return m_whole ? "M needs one point" : "M needs one point with x >= 0";
                out.push_back({p, {}, false});
                m_pen = p;
                command = 'L'; // further pairs are lines, as SVG has it
                break;
            }
            case 'L': {
                Point p;
                if (!point(p))
                    return m_whole ? "L needs one point" : "L needs one point with x >= 0";
                out.back().segments.push_back({m_pen, p, p});
                m_pen = p;
                break;
            }
            case 'C': {
                Cubic c3;
                if (!point(c3.control1) || !point(c3.control2) || !point(c3.end))
                    return m_whole ? "C needs three points" : "C needs three points with x >= 0";
                out.back().segments.push_back(c3);
                m_pen = c3.end;
                break;
            }
            default: out.back().closed = true; break;
            }
        }
        if (out.empty() || out.front().segments.empty())
            return "the path is empty";
        return {};
    }

private:
    void skipSpace()
    {
        while (
            m_at < m_text.size() && (m_text[m_at] == ' ' || m_text[m_at] == ',' || m_text[m_at] == '\n' || m_text[m_at] == '\t'))
            ++m_at;
    }

    bool number(double &value)
    {
        skipSpace();
        const std::size_t begin = m_at;
        while (m_at < m_text.size()
            && (std::isdigit(static_cast<unsigned char>(m_text[m_at])) || m_text[m_at] == '.' || m_text[m_at] == '-'))
            ++m_at;
        const std::string digits(m_text.substr(begin, m_at - begin));
        bool ok = false;
        value = QByteArray::fromStdString(digits).toDouble(&ok); // independent of the locale
        return ok && std::isfinite(value) && std::abs(value) <= 2000;
    }

    bool point(Point &p) { return number(p.x) && number(p.y) && (m_whole || p.x >= 0); }

    std::string_view m_text;
    bool m_whole;
    std::size_t m_at = 0;
    Point m_pen;
};

class SvgReader {
public:
    SvgReader(std::string_view svg, const std::string &file, View view, const Atlas &atlas)
        : m_xml(QByteArray(svg.data(), static_cast<qsizetype>(svg.size()))), m_file(file), m_view(view), m_atlas(atlas)
    {
    }

    void read()
    {
        while (!m_xml.atEnd()) {
            const auto token = m_xml.readNext();
            if (token == QXmlStreamReader::StartElement)
                start();
            else if (token == QXmlStreamReader::EndElement && m_xml.name() == u"g")
                m_group.clear();
            else if (token == QXmlStreamReader::Characters && !m_xml.isWhitespace())
                fail({}, "text between elements");
            else if (token == QXmlStreamReader::DTD || token == QXmlStreamReader::ProcessingInstruction)
                fail({}, "document types and processing instructions");
        }
        if (m_xml.hasError())
            fail({}, m_xml.errorString().toStdString());
        if (m_silhouette.empty())
            fail("body-outline", "missing");
    }

    Outline m_silhouette;
    std::vector<DrawnShape> m_shapes;
    double m_scale = 1;

private:
    [[noreturn]] void fail(const std::string &id, const std::string &rule) const
    {
        throw Error{ErrorCode::BadDrawing,
            m_file + ", line " + std::to_string(m_xml.lineNumber()) + ", column " + std::to_string(m_xml.columnNumber())
                + (id.empty() ? "" : ", id " + id),
            rule};
    }

    std::string attribute(QStringView name) const { return m_xml.attributes().value(name.toString()).toString().toStdString(); }

    void allow(const std::string &id, std::initializer_list<QStringView> names) const
    {
        for (const auto &a : m_xml.attributes())
            if (std::find(names.begin(), names.end(), a.qualifiedName()) == names.end())
                fail(id, "attribute " + a.qualifiedName().toString().toStdString());
    }

    void start()
    {
        const auto name = m_xml.name();
        const std::string id = attribute(u"id");
        if ((name == u"svg") != m_atRoot)
            fail(id, "the root, and only the root, is an svg element");
        m_atRoot = false;
        if (name == u"svg") {
            allow(id, {u"viewBox", u"width", u"height", u"data-scale", u"data-anchor"});
            if (attribute(u"viewBox") != "-500 0 1000 1000")
                fail(id, "viewBox must be -500 0 1000 1000");
            readScale();
            return;
        }
        if (name == u"g") {
            allow(id, {u"id"});
            if (!m_group.empty())
                fail(id, "groups inside groups");
            if (id != "outline" && (!id.starts_with("layer-") || !fromWord(layerWords, id.substr(6))))
                fail(id, "a group is 'outline' or 'layer-' and a layer's name");
            m_group = id;
            return;
        }
        if (name != u"path")
            fail(id, "element " + name.toString().toStdString());
        allow(id, {u"id", u"d", u"class"});
        if (m_group.empty())
            fail(id, "a path outside of a group");
        if (id.empty() || !m_ids.insert(id).second)
            fail(id, "ids must be there and unique");
        readPath(id, attribute(u"class"));
    }

    // An inset states its scale and where it belongs on the body; the body's own views have neither.
    void readScale()
    {
        const auto attributes = m_xml.attributes();
        const bool stated =
            attributes.hasAttribute(QLatin1String("data-scale")) && attributes.hasAttribute(QLatin1String("data-anchor"));
        const bool any =
            attributes.hasAttribute(QLatin1String("data-scale")) || attributes.hasAttribute(QLatin1String("data-anchor"));
        if (isInset(m_view) ? !stated : any)
            fail({}, "an inset, and only an inset, states data-scale and data-anchor");
        if (!stated)
            return;
        bool ok = false;
        m_scale = attributes.value(QLatin1String("data-scale")).toDouble(&ok);
        if (!ok || !(m_scale >= 1 && m_scale <= 20))
            fail({}, "data-scale is a number from 1 to 20");
    }

    void readPath(const std::string &id, const std::string &kind)
    {
        Outline outline;
        const std::string data = attribute(u"d");
        if (const std::string rule = PathData(data, isWhole(m_view)).read(outline); !rule.empty())
            fail(id, rule);
        const bool open = kind == "outline" || kind == "fibre";
        for (const Contour &contour : outline)
            if (contour.closed == open)
                fail(id, open ? "fibres and the outline are open strokes" : "a shape must be closed with Z");
        if (m_group == "outline" || kind == "outline") {
            if (m_group != "outline" || kind != "outline" || outline.size() != 1 || !m_silhouette.empty())
                fail(id, "the group 'outline' holds one stroke of class outline");
            m_silhouette = std::move(outline);
            return;
        }
        if (!kind.empty() && kind != "fibre")
            fail(id, "class is 'fibre' or absent");
        const std::string structure = id.substr(0, id.find("--"));
        if (kind == "fibre") {
            if (m_shapes.empty() || m_shapes.back().structure.value != structure)
                fail(id, "a fibre follows its own shape");
            m_shapes.back().fibres.push_back(std::move(outline));
            return;
        }
        const Layer layer = *fromWord(layerWords, m_group.substr(6));
        const Structure *known = m_atlas.find(StructureId{structure});
        if (!known)
            throw Error{ErrorCode::UnknownId, m_file + ", line " + std::to_string(m_xml.lineNumber()), structure};
        if (known->layer != layer)
            fail(id, "drawn in another layer than the atlas gives: " + std::string(wordOf(layerWords, known->layer)));
        m_shapes.push_back({known->id, layer, std::move(outline), {}, {}, {}});
    }

    QXmlStreamReader m_xml;
    std::string m_file;
    View m_view;
    const Atlas &m_atlas;
    bool m_atRoot = true;
    std::string m_group;
    std::set<std::string> m_ids;
};

} // namespace

Result<Drawing> readDrawing(std::string_view svg, const std::string &file, View view, const Atlas &atlas)
{
    try {
        SvgReader reader(svg, file, view, atlas);
        reader.read();
        return Drawing(view, std::move(reader.m_silhouette), std::move(reader.m_shapes), reader.m_scale);
    } catch (const Error &error) {
        return error;
    }
}

} // namespace raphe
