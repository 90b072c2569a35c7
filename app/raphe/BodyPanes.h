// The views of the body side by side: which are shown, made when first needed, all with the same layer, look and marks.
#pragma once

#include "app/raphe/BodyView.h"
#include "core/reasoning/Knowledge.h"
#include "core/record/Visit.h"

#include <QSplitter>

#include <optional>
#include <vector>

namespace raphe {

/// One view; facing counts for the side view and the head's inset.
struct Pane {
    View view{};
    Side facing = Side::Right;
    bool operator==(const Pane &) const = default;
};

/// What is shown at once, under one name and one key.
struct Arrangement {
    QString name;
    Qt::Key key{};
    std::vector<Pane> panes;
};

class BodyPanes : public QSplitter {
    Q_OBJECT

public:
    explicit BodyPanes(const Knowledge &knowledge, QWidget *parent = nullptr);

    [[nodiscard]] static std::vector<Arrangement> arrangements();
    /// Shows these views and no others.
    void show(const std::vector<Pane> &panes);
    [[nodiscard]] const std::vector<Pane> &shown() const { return m_shown; }
    /// The next arrangement after the one shown.
    void showNext();
    /// The view of a pane, made when it was not there yet.
    [[nodiscard]] BodyView &viewOf(const Pane &pane);

    void setTheme(const Theme &theme);
    void setLayer(Layer layer);
    void setSelected(const std::optional<Place> &place);
    void setLit(const std::vector<LitPlace> &lit, const std::vector<PathStep> &path);
    /// Front and back share the marks: each stands once, where more of the structure is seen. Other views mark what they show.
    void setFindings(const std::vector<Finding> &findings, int current);
    /// The marks carry these places' numbers in this order, and no others; nothing: that of the finding.
    void setOrder(const std::optional<std::vector<Place>> &order);
    /// The marks carry grades: of tenderness or of restriction, the higher one.
    void setGraded(bool isGraded) { m_isGraded = isGraded; }
    void setUpsideDown(bool upsideDown);
    [[nodiscard]] bool isUpsideDown() const { return m_upsideDown; }
    void resetZoom();
    /// Shows a view that draws the place: one of those shown if one does, else the arrangement that has one.
    void showView(const Place &place);
    /// Makes the place visible: in a view that is shown if one has it, else in the arrangement that has.
    void reveal(const Place &place);

Q_SIGNALS:
    void touched(const raphe::Place &place, const std::vector<raphe::UnderHit> &stack);
    void hovered(const QString &name);

private:
    [[nodiscard]] std::vector<ShownMark> marksFor(const Pane &pane) const;
    [[nodiscard]] int numberOf(std::size_t finding) const;
    void dress(const Pane &pane, BodyView &view);

    struct Made {
        Pane pane;
        BodyView *view;
    };
    const Knowledge &m_knowledge;
    std::vector<Made> m_made; // owned by the splitter
    std::vector<Pane> m_shown;
    Theme m_theme = Theme::light();
    Layer m_layer = Layer::SuperficialMuscle;
    std::optional<Place> m_selected;
    std::vector<LitPlace> m_lit;
    std::vector<PathStep> m_path;
    std::vector<Finding> m_findings;
    int m_current = -1;
    std::optional<std::vector<Place>> m_order;
    bool m_isGraded = false;
    bool m_upsideDown = false;
};

} // namespace raphe
