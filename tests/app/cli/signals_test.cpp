// SPDX-License-Identifier: GPL-3.0-or-later
// Ctrl-C: the first asks for a stop, the second ends the program.
#include "tests/app/cli/process.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <csignal>
#include <fstream>
#include <thread>

using namespace shell;
using namespace std::chrono_literals;
using testing::HasSubstr;

namespace {

// Until the program has set its handlers: bit (signal - 1) of "SigCgt" in /proc (proc(5)).
bool waitUntilItListens(long long pid, int signal) {
    for (int i = 0; i < 2000; ++i) {
        std::ifstream status("/proc/" + std::to_string(pid) + "/status");
        for (std::string line; std::getline(status, line);)
            if (line.rfind("SigCgt:", 0) == 0)
                if (std::stoull(line.substr(7), nullptr, 16) >> (signal - 1) & 1) return true;
        std::this_thread::sleep_for(5ms);
    }
    return false;
}

std::vector<std::string> waiting() {
    return {"fixture-good", file("pumps.cutwater"), "--plugins", fixtureFolder("fixture-good"),
            "--wait"};
}

} // namespace

TEST(Signals, TheFirstOneStopsTheWork) {
    for (const int signal : {SIGINT, SIGTERM}) {
        Wish wish;
        wish.seconds = 30;
        wish.meanwhile = [&](long long pid) {
            ASSERT_TRUE(waitUntilItListens(pid, signal));
            kill(static_cast<pid_t>(pid), signal);
        };
        const Ran ran = cutwater(waiting(), wish);
        EXPECT_EQ(ran.code, 3);
        EXPECT_THAT(ran.err, HasSubstr("cancelled"));
    }
}

TEST(Signals, ALongComputationIsStopped) {
    const Folder folder;
    const std::string path = folder.write("tangle.cutwater", tangle(300, 2000));
    Wish wish;
    wish.meanwhile = [&](long long pid) {
        ASSERT_TRUE(waitUntilItListens(pid, SIGINT));
        std::this_thread::sleep_for(700ms);
        kill(static_cast<pid_t>(pid), SIGINT);
    };
    const Ran ran = cutwater({"cut-sets", path, "--memory", "4096"}, wish);
    EXPECT_EQ(ran.code, 3) << ran.err;
}
