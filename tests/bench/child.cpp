// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/child.h"

#include <cerrno>
#include <cmath>
#include <csignal>
#include <cstdio>
#include <cstring>
#include <ctime>
#include <fstream>
#include <malloc.h>
#include <new>
#include <poll.h>
#include <pthread.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace bench {

namespace {

constexpr std::size_t kStackBytes = std::size_t{1} << 30; // touched only as far as it is used
constexpr int kOutOfMemory = 77;
constexpr double kClockFactor = 30; // other work on the machine must not turn into "no answer"

std::size_t statusBytes(const char* field) {
    std::ifstream status("/proc/self/status");
    std::string word;
    while (status >> word)
        if (word == field) {
            std::size_t kilobytes = 0;
            status >> kilobytes;
            return kilobytes * 1024;
        }
    return 0;
}

void limit(int resource, rlim_t soft, rlim_t hard) {
    const rlimit value{soft, hard};
    setrlimit(static_cast<__rlimit_resource>(resource), &value);
}

void writeAll(int descriptor, const void* data, std::size_t size) {
    const char* at = static_cast<const char*>(data);
    while (size > 0) {
        const ssize_t written = write(descriptor, at, size);
        if (written < 0 && errno == EINTR) continue;
        if (written <= 0) return;
        at += written;
        size -= static_cast<std::size_t>(written);
    }
}

struct Job {
    const std::function<std::string()>* work;
    std::string answer;
};

void* onBigStack(void* argument) {
    Job& job = *static_cast<Job*>(argument);
    try {
        job.answer = (*job.work)();
    } catch (const std::bad_alloc&) {
        _exit(kOutOfMemory);
    }
    return nullptr;
}

[[noreturn]] void child(int descriptor, const ChildLimits& limits,
                        const std::function<std::string()>& work) {
    prctl(PR_SET_PDEATHSIG, SIGKILL); // a driver that is stopped leaves nothing behind
    const auto seconds = static_cast<rlim_t>(std::ceil(limits.seconds));
    limit(RLIMIT_CPU, seconds, seconds + 2);
    limit(RLIMIT_CORE, 0, 0);
    std::size_t pages = 0;
    std::ifstream("/proc/self/statm") >> pages;
    const auto already = pages * static_cast<std::size_t>(sysconf(_SC_PAGESIZE));
    const rlim_t bytes = already + limits.memoryBytes + kStackBytes;
    limit(RLIMIT_AS, bytes, bytes);
    // The library that is measured prints when it ends; that is no part of the table.
    if (!std::freopen("/dev/null", "w", stdout) || !std::freopen("/dev/null", "w", stderr))
        _exit(1);

    const std::size_t before = residentBytes();
    Job job{&work, {}};
    pthread_attr_t attributes;
    pthread_attr_init(&attributes);
    pthread_attr_setstacksize(&attributes, kStackBytes);
    pthread_t thread;
    if (pthread_create(&thread, &attributes, onBigStack, &job) != 0) _exit(kOutOfMemory);
    pthread_join(thread, nullptr);
    const std::size_t peak = peakResidentBytes();
    const double growth = peak > before ? static_cast<double>(peak - before) / 1e6 : 0;
    writeAll(descriptor, &growth, sizeof growth);
    writeAll(descriptor, job.answer.data(), job.answer.size());
    _exit(0);
}

} // namespace

ChildOutcome runInChild(const ChildLimits& limits, const std::function<std::string()>& work) {
    ChildOutcome outcome;
    int ends[2];
    if (pipe(ends) != 0) return outcome;
    std::fflush(nullptr);
    malloc_trim(0); // so that the child cannot fill holes which the parent has already paid for
    const pid_t pid = fork();
    if (pid == 0) {
        close(ends[0]);
        child(ends[1], limits, work);
    }
    close(ends[1]);
    std::string received;
    bool onTime = true;
    const double end = wallSeconds() + limits.seconds * kClockFactor;
    while (pid > 0) {
        const double left = end - wallSeconds();
        pollfd wait{ends[0], POLLIN, 0};
        const int ready = poll(&wait, 1, left > 0 ? static_cast<int>(left * 1e3) + 1 : 0);
        if (ready < 0 && errno == EINTR) continue;
        if (ready <= 0) {
            kill(pid, SIGKILL);
            onTime = false;
            break;
        }
        char buffer[4096];
        const ssize_t size = read(ends[0], buffer, sizeof buffer);
        if (size < 0 && errno == EINTR) continue;
        if (size <= 0) break;
        received.append(buffer, static_cast<std::size_t>(size));
    }
    close(ends[0]);
    if (pid < 0) return outcome;
    int status = 0;
    while (waitpid(pid, &status, 0) < 0 && errno == EINTR) {
    }
    const int signal = WIFSIGNALED(status) ? WTERMSIG(status) : 0;
    if (!onTime || signal == SIGXCPU) {
        outcome.ending = Ending::tooLong;
    } else if (WIFEXITED(status) && WEXITSTATUS(status) == kOutOfMemory) {
        outcome.ending = Ending::tooMuchMemory;
    } else if (WIFEXITED(status) && WEXITSTATUS(status) == 0 &&
               received.size() >= sizeof outcome.peakGrowthMB) {
        outcome.ending = Ending::answered;
        std::memcpy(&outcome.peakGrowthMB, received.data(), sizeof outcome.peakGrowthMB);
        outcome.answer = received.substr(sizeof outcome.peakGrowthMB);
    }
    return outcome;
}

std::string sentence(Ending ending, const ChildLimits& limits) {
    switch (ending) {
    case Ending::answered: return "";
    case Ending::tooLong: {
        char text[64];
        std::snprintf(text, sizeof text, "no answer in %g s", limits.seconds);
        return text;
    }
    case Ending::tooMuchMemory: return "over " + std::to_string(limits.memoryBytes >> 20) + " MB";
    case Ending::broken: break;
    }
    return "ended early";
}

double wallSeconds() {
    timespec now{};
    clock_gettime(CLOCK_MONOTONIC, &now);
    return static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) * 1e-9;
}

double processorSeconds() {
    timespec now{};
    // The clock of the process would be read in steps of milliseconds under a limit of its time.
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) * 1e-9;
}

std::size_t residentBytes() {
    return statusBytes("VmRSS:");
}
std::size_t peakResidentBytes() {
    return statusBytes("VmHWM:");
}

} // namespace bench
