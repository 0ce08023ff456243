// SPDX-License-Identifier: GPL-3.0-or-later
// Files cut off and spoilt by chance, the same chance each time.
#include "tests/fuzz/check_document.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <random>
#include <sstream>

namespace cutwater::fuzz {

namespace fs = std::filesystem;

namespace {

const std::string kTests = CUTWATER_SOURCE_DIR "/tests/";

std::string contents(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

std::string fullFile() {
    return contents(kTests + "models/document/files/full.cutwater");
}

std::vector<std::string> dictionary() {
    std::vector<std::string> words;
    std::istringstream lines(contents(kTests + "fuzz/document.dict"));
    for (std::string line; std::getline(lines, line);)
        if (line.size() > 2 && line.front() == '"')
            words.push_back(line.substr(1, line.size() - 2));
    return words;
}

// One to four changes, of the kinds that disks, editors and hands make.
std::string spoilt(std::string text, std::mt19937& random, const std::vector<std::string>& words) {
    const auto below = [&](std::size_t end) { return end == 0 ? 0 : random() % end; };
    for (std::size_t changes = 1 + below(4); changes > 0 && !text.empty(); --changes) {
        const std::size_t at = below(text.size());
        const std::size_t length = std::min(below(40), text.size() - at);
        switch (below(7)) {
        case 0: text[at] = static_cast<char>(random()); break;
        case 1: text[at] = static_cast<char>(text[at] ^ (1 << below(8))); break;
        case 2: text.erase(at, length); break;
        case 3: text.insert(at, text.substr(below(text.size()), length)); break;
        case 4: text.insert(at, words[below(words.size())]); break;
        case 5: text.replace(at, length, words[below(words.size())]); break;
        case 6: { // an element or line is doubled
            const std::size_t start = text.rfind('\n', at);
            const std::size_t end = text.find('\n', at);
            if (start != std::string::npos && end != std::string::npos && start < end)
                text.insert(end, text.substr(start, end - start));
            break;
        }
        }
    }
    return text;
}

} // namespace

TEST(Mutation, SeedsAreSound) {
    int count = 0;
    for (const auto& entry : fs::directory_iterator(kTests + "fuzz/corpus/document")) {
        EXPECT_EQ(complaintAbout(contents(entry.path())), "") << entry.path();
        ++count;
    }
    EXPECT_GE(count, 5);
    EXPECT_GE(dictionary().size(), 50u);
    EXPECT_EQ(complaintAbout(fullFile()), "");
}

TEST(Mutation, FileCutOffAtEveryThirdByte) {
    const std::string text = fullFile();
    ASSERT_GT(text.size(), 10'000u);
    for (std::size_t length = 0; length < text.size(); length += 3)
        ASSERT_EQ(complaintAbout(text.substr(0, length)), "") << "cut at " << length;
}

TEST(Mutation, EveryByteOfASmallFileInTurn) {
    const std::string text = contents(kTests + "fuzz/corpus/document/small.cutwater");
    for (std::size_t at = 0; at < text.size(); ++at)
        for (char c : {'\0', '<', '>', '&', '"', ' ', '/', '-', '\xFF', 'e'}) {
            std::string changed = text;
            changed[at] = c;
            ASSERT_EQ(complaintAbout(changed), "") << "byte " << at << ":\n" << changed;
        }
}

TEST(Mutation, SpoiltFiles) {
    const std::vector<std::string> words = dictionary();
    std::vector<std::string> seeds{fullFile()};
    std::vector<fs::path> paths;
    for (const auto& entry : fs::directory_iterator(kTests + "fuzz/corpus/document"))
        paths.push_back(entry.path());
    std::sort(paths.begin(), paths.end());
    for (const fs::path& path : paths)
        seeds.push_back(contents(path));
    std::mt19937 random(20260301);
    for (int i = 0; i < 6000; ++i) {
        const std::string text =
            spoilt(seeds[static_cast<std::size_t>(i) % seeds.size()], random, words);
        ASSERT_EQ(complaintAbout(text), "") << "round " << i << ":\n" << text;
    }
}

} // namespace cutwater::fuzz
