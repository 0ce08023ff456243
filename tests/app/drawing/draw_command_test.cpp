// SPDX-License-Identifier: GPL-3.0-or-later
// `cutwater draw` as its user meets it: words in, files, sentences and exit codes out.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sys/wait.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <unistd.h>

namespace {

namespace fs = std::filesystem;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::StartsWith;

std::string contentOf(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

struct Ran {
    int code = -1;
    std::string out, err;
};

class DrawCommand : public ::testing::Test {
protected:
    void SetUp() override {
        std::string pattern = (fs::temp_directory_path() / "cutwater-draw-XXXXXX").string();
        ASSERT_NE(mkdtemp(pattern.data()), nullptr);
        m_folder = pattern;
        m_demo = (fs::path(CUTWATER_SOURCE_DIR) / "share/examples/sandpiper-bay.cutwater").string();
    }
    void TearDown() override { fs::remove_all(m_folder); }

    Ran draw(const std::string& words) const {
        const std::string command =
            "env -u DISPLAY -u QT_QPA_PLATFORM '" CUTWATER_PROGRAM "' draw " + words + " >'" +
            (m_folder / "out").string() + "' 2>'" + (m_folder / "err").string() + "'";
        const int status = std::system(command.c_str());
        return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, contentOf(m_folder / "out"),
                contentOf(m_folder / "err")};
    }

    std::string in(const std::string& name) const { return (m_folder / name).string(); }

    // A file of one or gate with `inputs` events, below `tops` top events.
    std::string file(int inputs, int tops = 1) const {
        std::ofstream out(m_folder / "tree.cutwater");
        out << "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<cutwater version=\"1.0\">\n"
               "<project><name>small</name></project>\n<events>\n";
        for (int i = 0; i < inputs; ++i)
            out << "<event id=\"e" << i << "\" kind=\"basic\"><name>cause " << i
                << "</name><model kind=\"probability\"><probability value=\"0.01\" unit=\"1\"/>"
                   "</model></event>\n";
        out << "</events>\n<gates>\n<gate id=\"G\" kind=\"or\"><name>any</name>\n";
        for (int i = 0; i < inputs; ++i)
            out << "<input ref=\"e" << i << "\"/>\n";
        out << "</gate>\n</gates>\n<top-events>\n";
        for (int t = 1; t <= tops; ++t)
            out << "<top-event id=\"T" << t << "\"><name>top " << t
                << "</name><node ref=\"G\"/></top-event>\n";
        out << "</top-events>\n</cutwater>\n";
        return in("tree.cutwater");
    }

    fs::path m_folder;
    std::string m_demo;
};

TEST_F(DrawCommand, OneSheetGoesToTheFileThatIsNamed) {
    const Ran ran = draw(file(3) + " --output " + in("x.svg"));
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_EQ(ran.out, in("x.svg") + "\n");
    EXPECT_THAT(contentOf(in("x.svg")), HasSubstr("cause 2"));
}

TEST_F(DrawCommand, WithoutAnOutputOneSheetGoesToStandardOutput) {
    const Ran ran = draw(file(3));
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.out, StartsWith("<?xml"));
    EXPECT_THAT(ran.out, HasSubstr("</svg>"));
    EXPECT_THAT(ran.err, IsEmpty());
}

TEST_F(DrawCommand, SeveralSheetsBecomeNumberedFiles) {
    const Ran ran = draw(file(90) + " --output " + in("x.png") + " --dpi 40");
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr(in("x-1.png") + "\n" + in("x-2.png") + "\n"));
    EXPECT_THAT(contentOf(in("x-2.png")), StartsWith("\x89PNG"));
    EXPECT_FALSE(fs::exists(in("x.png")));
}

TEST_F(DrawCommand, APdfHoldsAllSheets) {
    const Ran ran = draw(file(90) + " --output " + in("x.pdf") + " --probabilities");
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_EQ(ran.out, in("x.pdf") + "\n");
    const std::string pdf = contentOf(in("x.pdf"));
    EXPECT_THAT(pdf, StartsWith("%PDF-"));
    EXPECT_THAT(pdf, HasSubstr("/Type /Page\n"));
}

TEST_F(DrawCommand, ProbabilitiesStandOnTheSheet) {
    const Ran ran = draw(file(2) + " --probabilities");
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr(">1.00e-02<"));
}

TEST_F(DrawCommand, SeveralTopsAreInTheNames) {
    const Ran ran = draw(file(2, 2) + " --output " + in("x.svg"));
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_EQ(ran.out, in("x-T1.svg") + "\n" + in("x-T2.svg") + "\n");
}

TEST_F(DrawCommand, OneSheetOfManyMayBeAskedFor) {
    const Ran ran = draw(file(90) + " --sheet 2");
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("sheet 2 of"));
    const Ran beyond = draw(file(90) + " --sheet 99");
    EXPECT_EQ(beyond.code, 2);
    EXPECT_THAT(beyond.err, HasSubstr("--sheet 99: the tree of T1 has"));
}

TEST_F(DrawCommand, AGateMayBeTheTop) {
    const Ran ran = draw(file(2) + " --top G");
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("G any"));
}

TEST_F(DrawCommand, AnUnknownTopIsAnsweredWithTheNearest) {
    const Ran ran = draw(m_demo + " --top T2-9");
    EXPECT_EQ(ran.code, 2);
    EXPECT_THAT(ran.err, HasSubstr("did you mean T2-"));
}

TEST_F(DrawCommand, MarkedEventsMustExist) {
    EXPECT_EQ(draw(file(2) + " --mark e0,e1").code, 0);
    const Ran ran = draw(file(2) + " --mark e0,e9");
    EXPECT_EQ(ran.code, 2);
    EXPECT_THAT(ran.err, HasSubstr("e9"));
}

TEST_F(DrawCommand, UsageMistakesEndWithTwoAndWriteNothing) {
    for (const char* words : {"--output x.doc", "--paper A5", "--dpi 10 --type png",
                              "--orientation sideways", "--layout best", "--shet 1"}) {
        const Ran ran = draw(file(2) + " " + words);
        EXPECT_EQ(ran.code, 2) << words << ": " << ran.err;
        EXPECT_THAT(ran.out, IsEmpty()) << words;
        EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << words << ": " << ran.err;
    }
    EXPECT_EQ(draw("").code, 2);
    EXPECT_EQ(draw(file(90)).code, 2); // several files and no name for them
}

TEST_F(DrawCommand, TooManySheetsEndWithThree) {
    const Ran ran = draw(file(90) + " --max-sheets 1 --output " + in("x.pdf"));
    EXPECT_EQ(ran.code, 3);
    EXPECT_THAT(ran.err, HasSubstr("more than 1"));
    EXPECT_FALSE(fs::exists(in("x.pdf")));
}

TEST_F(DrawCommand, ABadFileOrFolderEndsWithOne) {
    EXPECT_EQ(draw(in("missing.cutwater")).code, 1);
    const Ran ran = draw(file(2) + " --output " + in("no/such/folder/x.svg"));
    EXPECT_EQ(ran.code, 1);
    EXPECT_THAT(ran.err, HasSubstr("x.svg"));
}

TEST_F(DrawCommand, DrawsTheWholeDemo) {
    const Ran ran = draw(m_demo + " --output " + in("demo.pdf") + " --probabilities");
    EXPECT_EQ(ran.code, 0) << ran.err;
    std::istringstream names(ran.out);
    int count = 0;
    for (std::string name; std::getline(names, name); ++count)
        EXPECT_THAT(contentOf(name), StartsWith("%PDF-")) << name;
    EXPECT_GE(count, 5);
}

TEST_F(DrawCommand, HelpNamesTheOptions) {
    const Ran ran = draw("--help");
    EXPECT_EQ(ran.code, 0);
    for (const char* option : {"--top", "--type", "--paper", "--orientation", "--dpi", "--sheet",
                               "--probabilities", "--layout", "--mark", "--max-sheets"})
        EXPECT_THAT(ran.out, HasSubstr(option));
}

} // namespace
