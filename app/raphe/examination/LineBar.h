// The typed line: findings in trade talk, or a piece of work, read while they are typed. What was understood stands below the
// line as chips; what is open is asked there, each answer a button; names are offered as they begin. Enter records everything as
// one step, once nothing is open.
#pragma once

#include "app/raphe/VisitSession.h"
#include "core/treatment/WorkLine.h"

#include <QWidget>

#include <functional>

class QLineEdit;

namespace raphe {

class FlowLayout;

class LineBar : public QWidget {
    Q_OBJECT

public:
    explicit LineBar(VisitSession &session, QWidget *parent = nullptr);

    void begin();
    [[nodiscard]] QLineEdit &line() { return *m_line; }
    /// How a measured movement was measured, where the line does not say.
    void setMeasuring(std::function<std::pair<MoveMode, std::optional<Device>>()> measuring)
    {
        m_measuring = std::move(measuring);
    }

Q_SIGNALS:
    void helpWanted();
    void told(const QString &message);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void readAgain();
    void offer();
    void addChips();
    void addChip(const LineChip &chip);
    void addQuestion(const LineQuestion &question);
    void complete(std::size_t index);
    void recordAll();
    void recordWork();
    void noteWork();
    void emptyLine();
    [[nodiscard]] std::string text() const;
    [[nodiscard]] QString inWords(const LineChip &chip) const;
    [[nodiscard]] QString inWords(const TreatmentStep &step) const;

    VisitSession &m_session;
    QLineEdit *m_line;
    QWidget *m_read; // what was understood and what is asked
    FlowLayout *m_chips;
    LineReading m_reading;
    std::optional<WorkReading> m_work; // where the line says what was done; its questions and mistakes stand in m_reading
    std::optional<TreatmentStep> m_handedOver; // work of this line that is to be logged ...
    std::size_t m_loggedBefore = 0; // ... behind so many steps
    std::vector<LineCompletion> m_completions;
    std::vector<std::string> m_earlier; // lines of this visit that were recorded
    std::size_t m_back = 0; // how far back the arrows have gone
    QString m_unfinished; // what was being typed before they went
    std::int64_t m_visit = 0;
    std::function<std::pair<MoveMode, std::optional<Device>>()> m_measuring;
};

} // namespace raphe
