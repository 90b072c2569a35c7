// Makes the back-ups of a practice into its folder: once a day while the program runs, and on demand. Works in the background,
// shows how far it is in a sign of its own, and can be stopped there.
#pragma once

#include "core/store/Practice.h"

#include <QLabel>
#include <QObject>
#include <QPointer>
#include <QTimer>

#include <atomic>
#include <memory>

class QToolButton;

namespace raphe {

class BackupRunner : public QObject {
    Q_OBJECT

public:
    explicit BackupRunner(Practice &practice, QObject *parent = nullptr);
    ~BackupRunner() override;

    /// For the status line; hidden while nothing runs. Belongs to whom it is given.
    [[nodiscard]] QWidget *sign() { return m_sign; }
    void readSettings();
    /// Now; one at a time.
    void run();
    /// When there is a folder and no back-up of today in it.
    void runIfDue();
    [[nodiscard]] bool isRunning() const { return m_isRunning; }

Q_SIGNALS:
    void done(const QString &words);
    void failed(const QString &words);

private:
    Practice &m_practice;
    std::string m_folder;
    std::string m_failedOn; // the day on which the schedule failed and said so
    QPointer<QWidget> m_sign;
    QLabel *m_words;
    QTimer m_schedule;
    QTimer m_look;
    std::shared_ptr<std::atomic<std::int64_t>> m_entries; // so many are checked
    std::shared_ptr<std::atomic<bool>> m_stop;
    bool m_isRunning = false;
};

} // namespace raphe
