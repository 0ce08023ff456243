// SPDX-License-Identifier: GPL-3.0-or-later
// Several threads over one list of independent tasks.
#pragma once

#include "models/logic/budget.h"

#include <atomic>
#include <exception>
#include <optional>
#include <thread>
#include <vector>

namespace cutwater::logic {

// Calls work(worker, task) once for every task in 0 .. tasks-1, on `workers` threads of which the
// caller is number 0. What the tasks compute must not depend on who does them or when. The first
// thing thrown ends all of them and is thrown again.
template <typename Work>
void forEachTask(std::size_t tasks, unsigned workers, Account& account, Work work) {
    std::atomic<std::size_t> next{0};
    std::vector<std::exception_ptr> thrown(workers);
    std::atomic<bool> failed{false};
    const auto run = [&](unsigned worker) {
        try {
            for (std::size_t task = next++; task < tasks && !failed; task = next++)
                work(worker, task);
        } catch (...) {
            thrown[worker] = std::current_exception();
            if (!failed.exchange(true))
                account.ended = workers > 1;
            else
                thrown[worker] = nullptr; // only the first one says why
        }
    };
    {
        std::vector<std::jthread> threads;
        for (unsigned worker = 1; worker < workers; ++worker)
            threads.emplace_back(run, worker);
        run(0);
    }
    account.ended = false;
    for (const std::exception_ptr& what : thrown)
        if (what) std::rethrow_exception(what);
}

} // namespace cutwater::logic
