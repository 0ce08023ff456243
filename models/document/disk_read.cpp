// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/disk.h"

#include "models/document/disk_words.h"

#include <cerrno>
#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

namespace cutwater::document {

namespace {

// Why a thing that is there is not read; empty where it is an ordinary file.
std::string whyNot(const struct stat& facts) {
    if (S_ISREG(facts.st_mode)) return {};
    return S_ISDIR(facts.st_mode) ? "it is a folder" : "it is a pipe or a device, not a file";
}

project::Outcome<std::string> readAll(int file, const std::string& path, std::size_t size,
                                      std::size_t maxBytes) {
    std::string text;
    std::size_t length = 0;
    text.resize(size + 1); // one more, to see the end without another round
    for (;;) {
        const ssize_t count = ::read(file, text.data() + length, text.size() - length);
        if (count < 0 && errno == EINTR) continue;
        if (count < 0) return cannot("read", path, inWords(errno), "check the disk");
        if (count == 0) break;
        length += static_cast<std::size_t>(count);
        if (length > maxBytes)
            return cannot("read", path, "it grows while it is read", "wait and open it again");
        if (length == text.size()) text.resize(text.size() * 2);
    }
    text.resize(length);
    return text;
}

} // namespace

project::Outcome<std::string> readFile(const std::string& path, std::size_t maxBytes) {
    // Judged before it is opened: opening a pipe waits, opening a device may do something.
    struct stat facts = {};
    if (::stat(path.c_str(), &facts) != 0)
        return cannot("open", path, inWords(errno), remedyFor(errno));
    if (const std::string why = whyNot(facts); !why.empty())
        return cannot("open", path, why, "name a .cutwater file");
    const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOCTTY);
    if (file < 0) return cannot("open", path, inWords(errno), remedyFor(errno));
    project::Outcome<std::string> outcome = std::string();
    if (::fstat(file, &facts) != 0 || !whyNot(facts).empty())
        outcome = cannot("open", path, "it is no longer an ordinary file", "open it again");
    else if (static_cast<std::size_t>(facts.st_size) > maxBytes)
        outcome = cannot("open", path,
                         fmt::format("it is {} MB long, more than the {} MB allowed",
                                     facts.st_size >> 20, maxBytes >> 20),
                         "check that it is a project file, or split the project");
    else
        outcome = readAll(file, path, static_cast<std::size_t>(facts.st_size), maxBytes);
    ::close(file);
    return outcome;
}

} // namespace cutwater::document
