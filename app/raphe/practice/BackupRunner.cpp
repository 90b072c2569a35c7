#include "app/raphe/practice/BackupRunner.h"

#include "app/raphe/InBackground.h"
#include "app/words/ErrorText.h"
#include "core/store/BackupFolder.h"

#include <QDateTime>
#include <QHBoxLayout>
#include <QToolButton>

namespace raphe {

namespace {

constexpr int scheduleMinutes = 10; // how often the day is looked at; our choice

std::string today()
{
    return QDate::currentDate().toString(Qt::ISODate).toStdString();
}

} // namespace

BackupRunner::BackupRunner(Practice &practice, QObject *parent)
    : QObject(parent),
      m_practice(practice),
      m_sign(new QWidget),
      m_words(new QLabel),
      m_entries(std::make_shared<std::atomic<std::int64_t>>(0)),
      m_stop(std::make_shared<std::atomic<bool>>(false))
{
    auto *row = new QHBoxLayout(m_sign);
    row->setContentsMargins(0, 0, 0, 0);
    auto *stop = new QToolButton;
    stop->setText(tr("Stop"));
    stop->setAccessibleName(tr("Stop the back-up"));
    stop->setStyleSheet(QStringLiteral("min-height: 16px; padding: 1px 8px;")); // the status line stays as low as it is
    row->addWidget(m_words);
    row->addWidget(stop);
    m_sign->hide();
    connect(stop, &QToolButton::clicked, this, [this] { m_stop->store(true); });
    connect(&m_look, &QTimer::timeout, this, [this] {
        const auto entries = m_entries->load();
        m_words->setText(entries == 0 ? tr("Backing up ...") : tr("Checking the back-up: entry %1").arg(entries));
    });
    m_look.setInterval(200);
    connect(&m_schedule, &QTimer::timeout, this, &BackupRunner::runIfDue);
    m_schedule.start(scheduleMinutes * 60 * 1000);
    readSettings();
}

BackupRunner::~BackupRunner()
{
    m_stop->store(true);
    if (m_sign && !m_sign->parent())
        delete m_sign;
}

void BackupRunner::readSettings()
{
    const auto settings = m_practice.settings();
    m_folder = settings ? settings.value().backupFolder : std::string();
    m_failedOn.clear();
}

void BackupRunner::runIfDue()
{
    if (!m_folder.empty() && m_failedOn != today() && lastBackupDay(m_folder, m_practice.file()) < today())
        run();
}

void BackupRunner::run()
{
    if (m_isRunning)
        return;
    if (m_folder.empty()) {
        Q_EMIT failed(tr("There is no folder for back-ups yet: choose one in the settings."));
        return;
    }
    m_isRunning = true;
    m_entries->store(0);
    m_stop->store(false);
    m_words->setText(tr("Backing up ..."));
    m_sign->show();
    m_look.start();
    const std::string minute = QDateTime::currentDateTime().toString(QStringLiteral("yyyy-MM-ddTHHmm")).toStdString();
    inBackground(
        this,
        [folder = m_folder, file = m_practice.file(), minute, entries = m_entries, stop = m_stop] {
            return backUpInto(folder, file, minute, [&](std::int64_t number) {
                entries->store(number);
                return !stop->load();
            });
        },
        [this](const Result<FolderBackup> &made) {
            m_isRunning = false;
            m_look.stop();
            m_sign->hide();
            if (made) {
                m_failedOn.clear();
                Q_EMIT done(tr("The back-up is written and checked: %1").arg(QString::fromStdString(made.value().file)));
                return;
            }
            m_failedOn = today(); // not every ten minutes again
            Q_EMIT failed(m_stop->load() ? tr("The back-up was stopped; there is none of today.")
                                         : tr("NO BACK-UP of today: %1").arg(errorText(made.error())));
        });
}

} // namespace raphe
