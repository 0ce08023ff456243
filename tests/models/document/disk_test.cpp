// SPDX-License-Identifier: GPL-3.0-or-later
// Files that cannot be opened, and saving that must leave either the old or the new file, whole.
#include "models/document/disk.h"
#include "models/document/document.h"

#include <cerrno>
#include <csignal>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sstream>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

namespace cutwater::document {

namespace fs = std::filesystem;
using ::testing::HasSubstr;

namespace {

class Disk : public ::testing::Test {
protected:
    void SetUp() override {
        std::string name = (fs::temp_directory_path() / "cutwater-disk-XXXXXX").string();
        ASSERT_NE(::mkdtemp(name.data()), nullptr);
        folder = name;
    }
    void TearDown() override {
        fs::permissions(folder, fs::perms::owner_all);
        fs::remove_all(folder);
    }
    std::string path(const std::string& name) const { return (folder / name).string(); }
    std::string put(const std::string& name, const std::string& text) const {
        std::ofstream(path(name), std::ios::binary) << text;
        return path(name);
    }
    std::vector<std::string> names() const {
        std::vector<std::string> names;
        for (const auto& entry : fs::directory_iterator(folder))
            names.push_back(entry.path().filename().string());
        return names;
    }
    fs::path folder;
};

std::string contents(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

// What load() says about it; must be one sentence.
std::string refusal(const std::string& path) {
    const auto loaded = load(path);
    if (loaded) return "it was loaded";
    EXPECT_EQ(loaded.problems().size(), 1u);
    return toSentence(loaded.problems()[0]);
}

const std::string kSound = "<cutwater version=\"1.0\"/>";

} // namespace

TEST_F(Disk, LoadRefusesWhatIsNoFile) {
    EXPECT_THAT(refusal(path("none.cutwater")), HasSubstr("there is no such file"));
    EXPECT_THAT(refusal(""), HasSubstr("there is no such file"));
    EXPECT_THAT(refusal(folder.string()), HasSubstr("it is a folder"));
    ASSERT_EQ(::mkfifo(path("pipe").c_str(), 0600), 0);
    EXPECT_THAT(refusal(path("pipe")), HasSubstr("a pipe or a device")); // and does not wait
    EXPECT_THAT(refusal("/dev/zero"), HasSubstr("a pipe or a device"));
    EXPECT_THAT(refusal(put("empty", "")), HasSubstr("the file is empty"));
    EXPECT_THAT(refusal(put("file", kSound) + "/x"), HasSubstr("is a file, not a folder"));
    fs::create_symlink("b", path("a"));
    fs::create_symlink("a", path("b"));
    EXPECT_THAT(refusal(path("a")), HasSubstr("round in a circle"));
}

TEST_F(Disk, LoadRefusesAGigabyteUnread) {
    put("huge", "");
    fs::resize_file(path("huge"), std::uintmax_t{1} << 30); // holes, read as NUL bytes
    EXPECT_THAT(refusal(path("huge")), HasSubstr("it is 1024 MB long, more than the 512 MB"));
}

TEST_F(Disk, LoadSaysWhenItMayNot) {
    put("secret", kSound);
    fs::permissions(path("secret"), fs::perms::none);
    if (::geteuid() != 0) {
        EXPECT_THAT(refusal(path("secret")), HasSubstr("you have no permission"));
        return;
    }
    // Root may read all: ask as nobody, in a process of its own.
    fs::permissions(folder, fs::perms::owner_all | fs::perms::others_exec);
    const pid_t child = ::fork();
    if (child == 0) {
        if (::setgid(65534) != 0 || ::setuid(65534) != 0) ::_exit(2);
        const auto loaded = load(path("secret"));
        const bool right = !loaded && loaded.problems()[0].what.find("you have no permission") !=
                                          std::string::npos;
        ::_exit(right ? 0 : 1);
    }
    int status = 0;
    ASSERT_EQ(::waitpid(child, &status, 0), child);
    EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 0) << status;
}

TEST_F(Disk, LoadReportsErrorsOfMeaning) {
    const auto loaded =
        load(put("a", "<cutwater version=\"1.0\">\n<gates>\n<gate id=\"g\" kind=\"or\"/>"
                      "</gates></cutwater>"));
    ASSERT_FALSE(loaded);
    EXPECT_TRUE(hasErrors(loaded.problems()));
    EXPECT_THAT(toSentence(loaded.problems()[0], "a"), HasSubstr("a:"));
    const auto warned = load(put("b", "<cutwater version=\"1.0\"><events>\n<event id=\"e\" "
                                      "kind=\"basic\"/></events></cutwater>"));
    ASSERT_TRUE(warned);
    ASSERT_FALSE(warned->warnings.empty());
    EXPECT_EQ(warned->warnings[0].line, 2);
}

TEST_F(Disk, SaveAndLoadGiveTheSame) {
    project::Project project;
    project.name = "Sound & <whole>";
    EXPECT_TRUE(save(project, path("new.cutwater")).empty());
    const auto loaded = load(path("new.cutwater"));
    ASSERT_TRUE(loaded);
    EXPECT_TRUE(loaded->project == project);
    EXPECT_EQ(names().size(), 1u);
}

TEST_F(Disk, SaveKeepsPermissionsAndFollowsLinks) {
    put("real", "old");
    fs::permissions(path("real"),
                    fs::perms::owner_read | fs::perms::owner_write | fs::perms::group_read);
    fs::create_directory(path("sub"));
    fs::create_symlink("../real", path("sub/link"));
    EXPECT_TRUE(replaceFile(path("sub/link"), "new").empty());
    EXPECT_TRUE(fs::is_symlink(path("sub/link")));
    EXPECT_EQ(contents(path("real")), "new");
    EXPECT_EQ(fs::status(path("real")).permissions(),
              fs::perms::owner_read | fs::perms::owner_write | fs::perms::group_read);
    // A link to what is not there yet makes it.
    fs::create_symlink("later", path("dangling"));
    EXPECT_TRUE(replaceFile(path("dangling"), "made").empty());
    EXPECT_EQ(contents(path("later")), "made");
    EXPECT_TRUE(fs::is_symlink(path("dangling")));
}

TEST_F(Disk, NewFileHasTheUsualPermissions) {
    const mode_t mask = ::umask(027);
    EXPECT_TRUE(replaceFile(path("new"), "x").empty());
    ::umask(mask);
    struct stat facts = {};
    ASSERT_EQ(::stat(path("new").c_str(), &facts), 0);
    EXPECT_EQ(facts.st_mode & 0777u, 0640u);
}

TEST_F(Disk, SaveRefusesWhatItCannotReplace) {
    const auto refused = [&](const std::string& target) {
        const auto problems = replaceFile(target, "x");
        EXPECT_EQ(problems.size(), 1u);
        return problems.empty() ? "it was saved" : toSentence(problems[0]);
    };
    EXPECT_THAT(refused(folder.string()), HasSubstr("it is a folder"));
    EXPECT_THAT(refused(""), HasSubstr("names no file"));
    EXPECT_THAT(refused(path("x/")), HasSubstr("names no file"));
    EXPECT_THAT(refused(path("no/such/file")), HasSubstr("there is no such file or folder"));
    // A pipe, not /dev/null: where this goes wrong, root would put a file in its place.
    ASSERT_EQ(::mkfifo(path("pipe").c_str(), 0600), 0);
    EXPECT_THAT(refused(path("pipe")), HasSubstr("a pipe or a device"));
    EXPECT_TRUE(fs::is_fifo(path("pipe")));
    EXPECT_THAT(refused(path(std::string(300, 'n'))), HasSubstr("its name is too long"));
    fs::create_symlink("b", path("a"));
    fs::create_symlink("a", path("b"));
    EXPECT_THAT(refused(path("a")), HasSubstr("circle"));
    EXPECT_EQ(names().size(), 3u);
}

TEST_F(Disk, SaveRefusesAProjectThatCannotBeWritten) {
    const std::string old = put("a", "old");
    project::Project project;
    project.name = "\x01";
    EXPECT_EQ(save(project, old).size(), 1u);
    EXPECT_EQ(contents(old), "old");
}

TEST_F(Disk, FullDiskLeavesTheOldFile) {
    const std::string old = put("a", "old");
    // A limit on the length of files is the nearest thing to a full disk that a test can have.
    struct rlimit before = {};
    ASSERT_EQ(::getrlimit(RLIMIT_FSIZE, &before), 0);
    const auto handler = ::signal(SIGXFSZ, SIG_IGN);
    struct rlimit small = before;
    small.rlim_cur = 100'000;
    ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &small), 0);
    const auto problems = replaceFile(old, std::string(300'000, 'x'));
    ::setrlimit(RLIMIT_FSIZE, &before);
    ::signal(SIGXFSZ, handler);
    ASSERT_EQ(problems.size(), 1u);
    EXPECT_THAT(toSentence(problems[0]), HasSubstr("longer than is allowed"));
    EXPECT_EQ(contents(old), "old");
    EXPECT_EQ(names().size(), 1u);
}

// Every step that touches the disk may fail; the sentence says why, the old file stays, and nothing
// is left behind.
TEST_F(Disk, EveryStepMayFail) {
    const std::string old = put("a", "old");
    const std::string text(200'000, 'x');
    int steps = 0;
    ASSERT_TRUE(replaceFile(old, text, [&](std::string_view) {
                    ++steps;
                    return 0;
                }).empty());
    ASSERT_GE(steps, 8); // create, permissions, four pieces, flush, rename, flush folder
    put("a", "old");
    for (int failing = 0; failing < steps; ++failing) {
        int step = 0;
        std::string last;
        const auto problems = replaceFile(old, text, [&](std::string_view name) {
            last = name;
            return step++ == failing ? ENOSPC : 0;
        });
        ASSERT_EQ(problems.size(), 1u) << last;
        EXPECT_THAT(toSentence(problems[0]), HasSubstr("the disk is full")) << last;
        EXPECT_EQ(names().size(), 1u) << last;
        if (last == "flush folder") {
            EXPECT_EQ(contents(old), text); // renamed already: the new one is there, whole
            put("a", "old");
        } else {
            EXPECT_EQ(contents(old), "old") << last;
        }
    }
}

// The process is killed before every step in turn: the old or the new file is there, whole.
TEST_F(Disk, KilledAtAnyStepLeavesAWholeFile) {
    const std::string text(200'000, 'x');
    int oldOnes = 0, newOnes = 0;
    for (int fatal = 0;; ++fatal) {
        const std::string target = put("a", "old");
        const pid_t child = ::fork();
        ASSERT_GE(child, 0);
        if (child == 0) {
            int step = 0;
            replaceFile(target, text, [&](std::string_view) {
                if (step++ == fatal) ::kill(::getpid(), SIGKILL);
                return 0;
            });
            ::_exit(0);
        }
        int status = 0;
        ASSERT_EQ(::waitpid(child, &status, 0), child);
        const std::string found = contents(target);
        EXPECT_TRUE(found == "old" || found == text) << "at step " << fatal;
        (found == "old" ? oldOnes : newOnes) += 1;
        if (WIFEXITED(status)) break; // all steps done
        ASSERT_TRUE(WIFSIGNALED(status));
    }
    EXPECT_GE(oldOnes, 7);
    EXPECT_EQ(newOnes, 2); // killed after the rename, and not killed at all
    // What a killed process left behind does not stand in the way of the next.
    EXPECT_TRUE(replaceFile(path("a"), "again").empty());
    EXPECT_EQ(contents(path("a")), "again");
}

TEST_F(Disk, ProtectedFileAndFolderAreRespected) {
    put("locked", "old");
    fs::permissions(path("locked"), fs::perms::owner_read | fs::perms::others_read);
    fs::create_directory(path("closed"));
    put("closed/a", "old");
    fs::permissions(path("closed/a"), fs::perms::all);
    fs::permissions(path("closed"), fs::perms::owner_read | fs::perms::owner_exec |
                                        fs::perms::others_read | fs::perms::others_exec);
    fs::permissions(folder, fs::perms::all);
    const pid_t child = ::fork();
    if (child == 0) {
        if (::geteuid() == 0 && (::setgid(65534) != 0 || ::setuid(65534) != 0)) ::_exit(2);
        const auto says = [](const project::Problems& problems, const char* what) {
            return problems.size() == 1 && problems[0].what.find(what) != std::string::npos;
        };
        if (!says(replaceFile(path("locked"), "x"), "protected against writing")) ::_exit(3);
        if (!says(replaceFile(path("closed/a"), "x"), "you have no permission")) ::_exit(4);
        ::_exit(0);
    }
    int status = 0;
    ASSERT_EQ(::waitpid(child, &status, 0), child);
    EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 0) << status;
    EXPECT_EQ(contents(path("locked")), "old");
    EXPECT_EQ(contents(path("closed/a")), "old");
    fs::permissions(path("closed"), fs::perms::owner_all);
}

} // namespace cutwater::document
