// Runs something slow beside the windows and hands its outcome to `then` in the caller's thread. An owner that goes before waits
// for the work to end, and nothing is handed over: long work needs a way to be told to stop. What `work` uses must live until it
// ends: give it copies. Objects that belong to a thread, as a Practice, must not be its outcome.
#pragma once

#include <QThread>

#include <memory>
#include <optional>
#include <type_traits>
#include <utility>

namespace raphe {

template <class Work, class Then> void inBackground(QObject *owner, Work work, Then then)
{
    auto outcome = std::make_shared<std::optional<std::invoke_result_t<Work &>>>();
    QThread *thread = QThread::create([outcome, work = std::move(work)]() mutable { outcome->emplace(work()); });
    QObject::connect(
        thread, &QThread::finished, owner, [outcome, then = std::move(then)]() mutable { then(std::move(outcome->value())); });
    QObject::connect(owner, &QObject::destroyed, thread, [thread] { thread->wait(); });
    QObject::connect(thread, &QThread::finished, thread, &QObject::deleteLater);
    thread->start();
}

} // namespace raphe
