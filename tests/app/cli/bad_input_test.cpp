// SPDX-License-Identifier: GPL-3.0-or-later
// Bad files end in a sentence and exit 1, hard ones in an answer; nothing crashes, nothing hangs.
#include "tests/app/cli/process.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>

namespace fs = std::filesystem;
using namespace shell;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

namespace {

void expectRefused(const std::string& path, const std::string& part) {
    for (const char* command : {"cut-sets", "list"}) {
        const Ran ran = cutwater({command, path});
        EXPECT_EQ(ran.code, 1) << path;
        EXPECT_THAT(ran.out, IsEmpty()) << path;
        EXPECT_THAT(ran.err, HasSubstr(part)) << path;
        EXPECT_THAT(ran.err, HasSubstr(": error: ")) << path;
    }
    const Ran check = cutwater({"check", path});
    EXPECT_EQ(check.code, 1) << path;
    EXPECT_THAT(check.out, HasSubstr(part)) << path;
}

// G0 = e0 and G1, G1 = e1 or G2, and so on down: no module of it is small, every level counts.
std::string chain(int gates) {
    std::string events, text;
    for (int i = 0; i <= gates; ++i)
        events += "    <event id=\"e" + std::to_string(i) +
                  "\" kind=\"basic\">\n"
                  "      <model kind=\"probability\">\n"
                  "        <probability value=\"0.001\" unit=\"1\"/>\n"
                  "      </model>\n    </event>\n";
    for (int i = 0; i < gates; ++i) {
        const std::string below =
            i + 1 < gates ? "g" + std::to_string(i + 1) : "e" + std::to_string(gates);
        text += "    <gate id=\"g" + std::to_string(i) + "\" kind=\"" + (i % 2 ? "or" : "and") +
                "\">\n      <input ref=\"e" + std::to_string(i) + "\"/>\n      <input ref=\"" +
                below + "\"/>\n    </gate>\n";
    }
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<cutwater version=\"1.0\">\n  <events>\n" +
           events + "  </events>\n  <gates>\n" + text +
           "  </gates>\n  <top-events>\n    <top-event id=\"T1\">\n      <node ref=\"g0\"/>\n"
           "    </top-event>\n  </top-events>\n</cutwater>\n";
}

} // namespace

TEST(BadInput, FilesThatAreNotThereOrNoFiles) {
    const Folder folder;
    expectRefused(folder.path("no-such.cutwater"), "no-such.cutwater");
    expectRefused(folder.path(""), "");
    expectRefused("/dev/zero", "/dev/zero");
    ASSERT_EQ(mkfifo(folder.path("pipe").c_str(), 0600), 0);
    expectRefused(folder.path("pipe"), "pipe");
    expectRefused(folder.write("empty.cutwater", ""), "empty.cutwater");
    expectRefused(folder.write("noise.cutwater", std::string("\x00\x01\xFF\xFE<<<<", 8)), "noise");
    if (geteuid() == 0) return; // root may read everything
    const std::string locked = folder.write("locked.cutwater", "x");
    chmod(locked.c_str(), 0);
    expectRefused(locked, "locked");
}

TEST(BadInput, TornFilesAtEveryTenthByte) {
    const Folder folder;
    const std::string whole = bytesOf(file("pumps.cutwater"));
    for (std::size_t size = 0; size + 20 < whole.size(); size += whole.size() / 10) {
        const Ran ran =
            cutwater({"cut-sets", folder.write("torn.cutwater", whole.substr(0, size))});
        EXPECT_EQ(ran.code, 1) << size;
        EXPECT_THAT(ran.err, HasSubstr(": error: ")) << size;
    }
}

TEST(BadInput, EveryBadFileOfTheReadersTests) {
    if (!fs::is_directory(CUTWATER_BAD_FILES)) GTEST_SKIP() << "the reader's tests have none";
    std::size_t count = 0;
    for (const auto& entry : fs::recursive_directory_iterator(CUTWATER_BAD_FILES)) {
        if (!entry.is_regular_file()) continue;
        const Ran ran = cutwater({"single-failures", entry.path().string()});
        EXPECT_EQ(ran.code, 1) << entry.path();
        EXPECT_THAT(ran.err, HasSubstr(": error: ")) << entry.path();
        ++count;
    }
    EXPECT_GT(count, 5u);
}

TEST(BadInput, AThousandMillionInAVoteGate) {
    const Ran ran = cutwater({"probability", file("broken.cutwater")});
    EXPECT_EQ(ran.code, 1);
    EXPECT_THAT(ran.err, HasSubstr("broken.cutwater:20: error: "));
    EXPECT_THAT(ran.err, HasSubstr("1000000000"));
}

TEST(HardInput, AChainOfAHundredThousandGatesIsSolved) {
    const Folder folder;
    const std::string path = folder.write("chain.cutwater", chain(100'000));
    const Ran ran = cutwater({"probability", path, "--format", "csv", "--table", "top-events"});
    ASSERT_EQ(ran.code, 0) << ran.err;
    // By hand, from below: p <- q + (1-q) p at an or, p <- q p at an and; the fixed point of one
    // pair is soon reached, so the top is q (q + (1-q) x) with x = q^2 / (1 - q + q^2).
    const double q = 0.001, x = q * q / (1 - q + q * q);
    const std::string row = ran.out.substr(ran.out.find('\n') + 1);
    const double top = std::strtod(row.c_str() + row.find(',', row.find(',') + 1) + 1, nullptr);
    EXPECT_NEAR(top / (q * (q + (1 - q) * x)), 1, 1e-12) << row;
    const Ran sets = cutwater({"cut-sets", path, "--limit", "3", "--quiet"});
    EXPECT_EQ(sets.code, 0) << sets.err;
    EXPECT_THAT(sets.out, HasSubstr("e0, e1"));
}

TEST(HardInput, TooLittleMemoryIsALimit) {
    const Folder folder;
    const std::string path = folder.write("tangle.cutwater", tangle(300, 2000));
    const Ran ran = cutwater({"cut-sets", path, "--memory", "16"});
    EXPECT_EQ(ran.code, 3) << ran.out.substr(0, 500);
    EXPECT_THAT(ran.err, HasSubstr("16 MB"));
}
