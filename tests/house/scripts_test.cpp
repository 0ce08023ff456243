// SPDX-License-Identifier: GPL-3.0-or-later
// The scripts of the README on machines that are not as they should be: each ends with one clear
// sentence and exit 1, and says what it would install before it does anything. The machine is a
// folder of commands, some of them false, that is the whole PATH of the script.
#include "tests/house/source_tree.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <sys/wait.h>

namespace fs = std::filesystem;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

namespace {

struct Outcome {
    int status = -1;
    std::string text; // both outputs
};

class Machine {
public:
    Machine() {
        for (const char* name :
             {"bash", "env", "dirname", "awk", "nproc", "grep", "cat", "timeout"}) {
            for (const char* place : {"/usr/bin", "/bin"}) {
                if (!fs::exists(fs::path(place) / name)) continue;
                fs::create_directories(m_folder.path() / "bin");
                fs::create_symlink(fs::path(place) / name, m_folder.path() / "bin" / name);
                break;
            }
        }
        command("id", "echo 0");
    }
    void command(const std::string& name, const std::string& body) const {
        m_folder.plant("bin/" + name, "#!/bin/bash\n" + body + "\n");
        fs::permissions(m_folder.path() / "bin" / name, fs::perms::owner_all);
    }
    // A Debian on which nothing is installed, and whose apt-get does as `body` says.
    void debian(const std::string& body) const {
        command("dpkg-query", "exit 1");
        command("apt-get", body);
    }
    Outcome run(const std::string& script) const {
        const std::string line = "env -i PATH='" + (m_folder.path() / "bin").string() + "' bash '" +
                                 CUTWATER_SOURCE_DIR + "/" + script + "' 2>&1 </dev/null";
        Outcome result;
        FILE* pipe = popen(line.c_str(), "r");
        std::array<char, 4096> part{};
        for (std::size_t n; (n = fread(part.data(), 1, part.size(), pipe)) > 0;)
            result.text.append(part.data(), n);
        const int status = pclose(pipe);
        result.status = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
        return result;
    }

private:
    house::TemporaryFolder m_folder;
};

class Scripts : public testing::TestWithParam<const char*> {
protected:
    Machine machine;
};

} // namespace

TEST_P(Scripts, WithoutAptGet) {
    const Outcome run = machine.run(GetParam());
    EXPECT_EQ(run.status, 1);
    EXPECT_THAT(run.text, AllOf(StartsWith("cutwater: "),
                                HasSubstr("apt-get, which this system does not have")));
    EXPECT_EQ(std::count(run.text.begin(), run.text.end(), '\n'), 1);
}

TEST_P(Scripts, WithoutANetwork) {
    machine.debian("echo \"called: $*\" >&2; case \"$*\" in *--assume-no*) exit 1;; "
                   "*--download-only*) exit 100;; esac");
    const Outcome run = machine.run(GetParam());
    EXPECT_EQ(run.status, 1);
    EXPECT_THAT(run.text, HasSubstr("see that the network is up"));
    EXPECT_LT(run.text.find("needed and not installed yet: g++ cmake"), run.text.find("called: "));
    EXPECT_THAT(run.text, Not(HasSubstr("Building")));
}

TEST_P(Scripts, WithPackagesThatDoNotInstall) {
    machine.debian("case \"$*\" in *--assume-no*) exit 1;; *update*|*--download-only*) exit 0;; "
                   "esac; exit 100");
    const Outcome run = machine.run(GetParam());
    EXPECT_EQ(run.status, 1);
    EXPECT_THAT(run.text,
                AllOf(HasSubstr("could not install the packages"), Not(HasSubstr("Building"))));
}

TEST_P(Scripts, NeitherRootNorSudo) {
    machine.debian("echo called");
    machine.command("id", "echo 1000");
    const Outcome run = machine.run(GetParam());
    EXPECT_EQ(run.status, 1);
    EXPECT_THAT(run.text, AllOf(HasSubstr("run this script as root"), Not(HasSubstr("called"))));
}

TEST_P(Scripts, SudoIsUsedWhereThereIsOne) {
    machine.debian("case \"$*\" in *--download-only*) exit 100;; esac");
    machine.command("id", "echo 1000");
    machine.command("sudo", "echo \"by sudo: $*\" >&2; exec \"$@\"");
    const Outcome run = machine.run(GetParam());
    EXPECT_EQ(run.status, 1);
    EXPECT_THAT(run.text, HasSubstr("by sudo: env DEBIAN_FRONTEND=noninteractive"));
}

TEST_P(Scripts, ABuildThatFailsEndsTheScript) {
    machine.command("dpkg-query", "echo installed");
    machine.command("apt-get", "echo called");
    machine.command("cmake", "exit 1");
    const Outcome run = machine.run(GetParam());
    EXPECT_EQ(run.status, 1);
    EXPECT_THAT(run.text, AllOf(HasSubstr("installed already"), HasSubstr("the build failed"),
                                Not(HasSubstr("called"))));
}

INSTANTIATE_TEST_SUITE_P(OfTheReadme, Scripts,
                         testing::Values("share/scripts/demo", "share/scripts/test"),
                         [](const auto& each) {
                             return std::string(each.index == 0 ? "demo" : "test");
                         });
