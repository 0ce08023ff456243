// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/answers/worker.h"

#include <utility>

namespace cutwater::editor {

Worker::~Worker() {
    stop();
    m_thread.request_stop();
}

void Worker::start(Task task) {
    {
        const std::lock_guard lock(m_mutex);
        m_running.request_stop();
        m_next = std::move(task);
        if (!m_thread.joinable())
            m_thread = std::jthread([this](const std::stop_token& end) { loop(end); });
    }
    m_wake.notify_one();
}

void Worker::stop() {
    const std::lock_guard lock(m_mutex);
    m_running.request_stop();
    m_next = nullptr;
}

void Worker::loop(const std::stop_token& end) {
    for (;;) {
        Task task;
        std::stop_token stop;
        {
            std::unique_lock lock(m_mutex);
            if (!m_wake.wait(lock, end, [this] { return static_cast<bool>(m_next); })) return;
            task = std::exchange(m_next, nullptr);
            m_running = std::stop_source();
            stop = m_running.get_token();
        }
        task(stop);
    }
}

} // namespace cutwater::editor
