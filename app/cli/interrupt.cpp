// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/interrupt.h"

#include <semaphore.h>

#include <cerrno>
#include <csignal>

namespace cutwater::cli {
namespace {

// A handler may do next to nothing: it posts a semaphore, and a thread that waits for it asks for
// the stop.
sem_t wake;

void onSignal(int) {
    const int saved = errno;
    sem_post(&wake);
    errno = saved;
}

} // namespace

Interrupt::Interrupt() {
    sem_init(&wake, 0, 0);
    m_watcher = std::thread([this] {
        while (sem_wait(&wake) != 0 && errno == EINTR) {
        }
        m_source.request_stop();
    });
    struct sigaction action {};
    action.sa_handler = onSignal;
    sigemptyset(&action.sa_mask);
    action.sa_flags = static_cast<int>(SA_RESETHAND) | SA_RESTART; // the second one kills
    sigaction(SIGINT, &action, nullptr);
    sigaction(SIGTERM, &action, nullptr);
    std::signal(SIGPIPE, SIG_IGN); // a closed pipe is then an error of write(), not a death
}

Interrupt::~Interrupt() {
    std::signal(SIGINT, SIG_DFL);
    std::signal(SIGTERM, SIG_DFL);
    sem_post(&wake);
    m_watcher.join();
    sem_destroy(&wake);
}

} // namespace cutwater::cli
