#include "app/raphe/examination/EdgeStrip.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>

namespace raphe {

namespace {

constexpr int sideGap = 8;
constexpr int fieldHeight = 52;
constexpr int laneHeight = 22;
constexpr int leastField = 40;

} // namespace

EdgeStrip::EdgeStrip(const Atlas &atlas, const Sweep &sweep, const Theme &theme, QWidget *parent)
    : QWidget(parent), m_atlas(atlas), m_sweep(sweep), m_theme(theme), m_marks(sweep.steps.size())
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Steps along the edge"));
}

QSize EdgeStrip::minimumSizeHint() const
{
    const int steps = static_cast<int>(m_sweep.steps.size());
    return {2 * sideGap + steps * leastField, fieldHeight + 12 + static_cast<int>(lanes().size()) * laneHeight};
}

QRectF EdgeStrip::field(std::size_t step) const
{
    const double width = (this->width() - 2.0 * sideGap) / static_cast<double>(m_sweep.steps.size());
    return {sideGap + width * static_cast<double>(step), 2, width, fieldHeight};
}

// Attachments that do not overlap share a lane.
std::vector<std::vector<std::size_t>> EdgeStrip::lanes() const
{
    std::vector<std::vector<std::size_t>> out;
    const auto &stretches = m_sweep.edge.stretches;
    for (std::size_t i = 0; i < stretches.size(); ++i) {
        const auto free = std::find_if(out.begin(), out.end(), [&](const std::vector<std::size_t> &lane) {
            return stretches[lane.back()].along.to <= stretches[i].along.from + 1e-9;
        });
        if (free == out.end())
            out.push_back({i});
        else
            free->push_back(i);
    }
    return out;
}

void EdgeStrip::goTo(std::size_t step)
{
    m_at = std::min(step, m_sweep.steps.size() - 1);
    update();
    Q_EMIT changed();
}

void EdgeStrip::mark(std::optional<int> grade)
{
    m_marks[m_at] = grade;
    goTo(grade ? m_at + 1 : m_at);
}

void EdgeStrip::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t i = 0; i < m_sweep.steps.size(); ++i) {
        const QRectF box = field(i).adjusted(1.5, 1.5, -1.5, -1.5);
        const auto &grade = m_marks[i];
        const bool isSore = grade && *grade > 0;
        const bool isClear = grade && *grade == 0;
        painter.setPen(QPen(i == m_at ? m_theme.accent : m_theme.quiet, i == m_at ? 3 : 1));
        painter.setBrush(isSore ? m_theme.tender : m_theme.panel);
        painter.drawRoundedRect(box, 6, 6);
        painter.setPen(isSore ? m_theme.panel : m_theme.ink);
        QFont large = font();
        large.setPointSizeF(font().pointSizeF() * 1.4);
        large.setBold(true);
        painter.setFont(large);
        painter.drawText(box.adjusted(0, 0, 0, -14), Qt::AlignCenter,
            isSore        ? QString::number(*grade)
                : isClear ? tr("clear", "a step of the edge")
                          : QString());
        painter.setFont(font());
        painter.setPen(isSore ? m_theme.panel : m_theme.quiet);
        painter.drawText(box.adjusted(0, 0, 0, -2), Qt::AlignHCenter | Qt::AlignBottom, QString::number(i + 1));
    }
    double top = fieldHeight + 10;
    const double whole = width() - 2.0 * sideGap;
    for (const auto &lane : lanes()) {
        for (const std::size_t s : lane) {
            const Stretch &stretch = m_sweep.edge.stretches[s];
            const QRectF bar(sideGap + whole * stretch.along.from + 1, top, whole * (stretch.along.to - stretch.along.from) - 2,
                laneHeight - 4);
            const bool isHere = std::count(m_sweep.steps[m_at].stretches.begin(), m_sweep.steps[m_at].stretches.end(), s) > 0;
            painter.setPen(QPen(isHere ? m_theme.accent : m_theme.quiet, isHere ? 2 : 1));
            painter.setBrush(m_theme.panel);
            painter.drawRoundedRect(bar, 4, 4);
            painter.setPen(m_theme.ink);
            const QString name = QString::fromStdString(m_atlas.at(stretch.structure).names.english);
            painter.drawText(bar.adjusted(4, 0, -2, 0), Qt::AlignVCenter | Qt::AlignLeft,
                painter.fontMetrics().elidedText(name, Qt::ElideRight, static_cast<int>(bar.width()) - 6));
        }
        top += laneHeight;
    }
}

// A press chooses; each one on the chosen step is one grade more: clear, 1, 2, 3, 4, nothing.
void EdgeStrip::mousePressEvent(QMouseEvent *event)
{
    for (std::size_t i = 0; i < m_sweep.steps.size(); ++i) {
        if (!field(i).contains(event->position()))
            continue;
        auto &grade = m_marks[i];
        if (i == m_at)
            grade = !grade ? std::optional(0) : *grade == Tenderness::highest ? std::nullopt : std::optional(*grade + 1);
        goTo(i);
        return;
    }
}

void EdgeStrip::keyPressEvent(QKeyEvent *event)
{
    const int key = event->key();
    if (key == Qt::Key_Left)
        goTo(m_at == 0 ? 0 : m_at - 1);
    else if (key == Qt::Key_Right || key == Qt::Key_Space)
        goTo(m_at + 1);
    else if (key == Qt::Key_Home)
        goTo(0);
    else if (key == Qt::Key_End)
        goTo(m_sweep.steps.size() - 1);
    else if (key >= Qt::Key_0 && key <= Qt::Key_0 + Tenderness::highest)
        mark(key - Qt::Key_0);
    else if (key == Qt::Key_C)
        mark(0);
    else if (key == Qt::Key_Delete || key == Qt::Key_Backspace)
        mark(std::nullopt);
    else
        QWidget::keyPressEvent(event);
}

} // namespace raphe
