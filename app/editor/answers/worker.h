// SPDX-License-Identifier: GPL-3.0-or-later
// Worker: a thread of its own that does one thing at a time, always the newest that was asked.
#pragma once

#include <condition_variable>
#include <functional>
#include <mutex>
#include <stop_token>
#include <thread>

namespace cutwater::editor {

// A task must look at its stop token often: start(), stop() and the destructor stop the one that
// runs, and the destructor waits for its end. Tasks may not throw.
class Worker {
public:
    using Task = std::function<void(std::stop_token)>;

    Worker() = default;
    ~Worker();
    Worker(const Worker&) = delete;
    Worker& operator=(const Worker&) = delete;

    // Stops what runs, forgets what waits, and does `task` next. Returns at once. The thread is
    // started with the first task.
    void start(Task task);
    // Stops what runs and forgets what waits.
    void stop();

private:
    void loop(const std::stop_token& end);

    std::mutex m_mutex;
    std::condition_variable_any m_wake;
    Task m_next;
    std::stop_source m_running{std::nostopstate};
    std::jthread m_thread;
};

} // namespace cutwater::editor
