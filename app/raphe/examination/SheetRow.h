// A line of a sheet: something that is examined on the right and on the left, or once. It shows what the visit says of it, and
// records what is answered. Rows stand in a grid, so that the sides of all stand in line.
#pragma once

#include "app/raphe/VisitSession.h"

#include <QWidget>

#include <set>
#include <string>
#include <utility>
#include <vector>

class QGridLayout;
class QLineEdit;

namespace raphe {

class ChoiceRow;
class WrappedLabel;

class SheetRow : public QObject {
    Q_OBJECT

public:
    explicit SheetRow(VisitSession &session) : m_session(session) { }

    /// Puts the row into the next lines of the grid: name, right, left.
    virtual void addTo(QGridLayout &grid) = 0;
    /// Shows what the visit says now.
    virtual void refresh() = 0;
    /// Greys what must not be done, with the reason. Rules to adapt that hold throughout are said once, elsewhere.
    void bar(const Cautions &cautions);
    void setThroughout(const std::set<std::string> &rules) { m_throughout = rules; }

protected:
    /// Right and left, or the midline alone.
    [[nodiscard]] static std::vector<Side> sidesOf(bool isPaired);
    /// 'RIGHT', 'LEFT', 'MIDLINE'.
    [[nodiscard]] static QString loud(Side side);
    /// 'RIGHT hip flexion'; of the midline the name alone.
    [[nodiscard]] static QString withSide(Side side, const std::string &name);
    /// The name with what stands under it in quiet words.
    [[nodiscard]] QWidget *makeName(const QString &name, const QString &quiet);
    /// What is answered of one side, in that side's column; the midline goes over both.
    void addBox(QGridLayout &grid, int line, Side side, QWidget *box);
    /// What cautions say of the row's movement or test on one side.
    [[nodiscard]] virtual std::vector<CautionVerdict> verdictsAt(const Cautions &cautions, Side side) const = 0;
    /// What was typed on a row of choices is none of them: it is told and nothing is recorded.
    [[nodiscard]] bool isUnread(const ChoiceRow &row);

    VisitSession &m_session;

private:
    struct Said {
        Verdict verdict{};
        QString reason;
        std::vector<Side> sides;
    };
    // Says under the name why something is barred, to be adapted or asked about first, and on which side.
    void sayBarred(const std::vector<Said> &all);

    std::vector<std::pair<Side, QWidget *>> m_boxes;
    std::set<std::string> m_throughout;
    WrappedLabel *m_barred = nullptr;
};

} // namespace raphe
