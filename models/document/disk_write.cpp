// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/disk.h"

#include "models/document/disk_words.h"

#include <algorithm>
#include <atomic>
#include <cerrno>
#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>
#include <utility>
#include <vector>

namespace cutwater::document {

namespace {

// Where a chain of symbolic links ends, whether anything is there or not; errno in `error`.
std::string endOfLinks(std::string path, int& error) {
    constexpr int kMostLinks = 40; // as the kernel
    for (int i = 0; i < kMostLinks; ++i) {
        struct stat facts = {};
        if (::lstat(path.c_str(), &facts) != 0 || !S_ISLNK(facts.st_mode)) return path;
        std::vector<char> target(4096);
        const ssize_t length = ::readlink(path.c_str(), target.data(), target.size());
        if (length < 0) {
            error = errno;
            return path;
        }
        const std::string next(target.data(), static_cast<std::size_t>(length));
        const std::size_t slash = path.rfind('/');
        path = next.front() == '/' || slash == std::string::npos ? next
                                                                 : path.substr(0, slash + 1) + next;
    }
    error = ELOOP;
    return path;
}

std::string folderOf(const std::string& path) {
    const std::size_t slash = path.rfind('/');
    return slash == std::string::npos ? "." : slash == 0 ? "/" : path.substr(0, slash);
}

// One replacement; the temporary file is removed unless it was renamed.
class Replacement {
public:
    Replacement(std::string target, const StepHook& hook)
        : m_target(std::move(target)), m_folder(folderOf(m_target)), m_hook(hook) {}
    ~Replacement() {
        if (m_file >= 0) ::close(m_file);
        if (!m_temporary.empty()) ::unlink(m_temporary.c_str());
    }
    Replacement(const Replacement&) = delete;
    Replacement& operator=(const Replacement&) = delete;

    // Each answers 0 or an errno.
    int create(const struct stat* old);
    int write(std::string_view text);
    int rename();

private:
    int step(const char* name) const { return m_hook ? m_hook(name) : 0; }
    int flushFolder();

    std::string m_target, m_folder, m_temporary;
    const StepHook& m_hook;
    int m_file = -1;
};

int Replacement::create(const struct stat* old) {
    static std::atomic<unsigned> counter{0};
    if (const int error = step("create")) return error;
    for (int i = 0; i < 100 && m_file < 0; ++i) {
        const std::string name =
            fmt::format("{}/.cutwater-{}-{}.tmp", m_folder, ::getpid(), counter++);
        // Nobody else may read it before it has the permissions of the file that it replaces.
        m_file = ::open(name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW,
                        old ? 0600 : 0666);
        if (m_file >= 0)
            m_temporary = name;
        else if (errno != EEXIST)
            return errno;
    }
    if (m_file < 0) return EEXIST;
    if (!old) return 0;
    if (const int error = step("permissions")) return error;
    // The owner is kept where that is allowed; where it is not, the saver owns the file. Owner
    // first: changing it clears the set-id bits.
    if (::fchown(m_file, old->st_uid, old->st_gid) != 0 && ::fchown(m_file, uid_t(-1), old->st_gid))
        errno = 0;
    return ::fchmod(m_file, old->st_mode & 07777) == 0 ? 0 : errno;
}

int Replacement::write(std::string_view text) {
    constexpr std::size_t kPiece = std::size_t{1} << 16;
    while (!text.empty()) {
        if (const int error = step("write")) return error;
        const ssize_t count = ::write(m_file, text.data(), std::min(text.size(), kPiece));
        if (count < 0 && errno == EINTR) continue;
        if (count < 0) return errno;
        text.remove_prefix(static_cast<std::size_t>(count));
    }
    if (const int error = step("flush")) return error;
    if (::fsync(m_file) != 0) return errno;
    const int file = std::exchange(m_file, -1);
    return ::close(file) == 0 ? 0 : errno;
}

int Replacement::rename() {
    if (const int error = step("rename")) return error;
    if (::rename(m_temporary.c_str(), m_target.c_str()) != 0) return errno;
    m_temporary.clear();
    return flushFolder();
}

// Makes the new name itself survive a power cut. A folder that cannot be flushed (some network
// disks) does not undo what was saved.
int Replacement::flushFolder() {
    if (const int error = step("flush folder")) return error;
    const int folder = ::open(m_folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (folder < 0) return 0;
    const int error = ::fsync(folder) == 0 || errno == EINVAL ? 0 : errno;
    ::close(folder);
    return error;
}

} // namespace

project::Problems replaceFile(const std::string& path, std::string_view text,
                              const StepHook& hook) {
    int error = 0;
    const std::string target = endOfLinks(path, error);
    const auto refuse = [&](int code) {
        return project::Problems{cannot("save", path, inWords(code), remedyFor(code))};
    };
    if (path.empty() || path.back() == '/')
        return {cannot("save", path, "it names no file", "choose a file name")};
    if (error != 0) return refuse(error);
    struct stat old = {};
    const bool exists = ::stat(target.c_str(), &old) == 0;
    if (!exists && errno != ENOENT) return refuse(errno);
    if (exists && S_ISDIR(old.st_mode))
        return {cannot("save", path, "it is a folder", "choose a file name")};
    if (exists && !S_ISREG(old.st_mode))
        return {cannot("save", path, "it is a pipe or a device, not a file", "choose a file name")};
    // A rename would replace even a file that its owner protected against writing.
    if (exists && ::access(target.c_str(), W_OK) != 0)
        return {cannot("save", path, "it is protected against writing",
                       "save under another name, or remove the protection")};

    Replacement replacement(target, hook);
    if ((error = replacement.create(exists ? &old : nullptr)) != 0) return refuse(error);
    if ((error = replacement.write(text)) != 0) return refuse(error);
    if ((error = replacement.rename()) != 0) return refuse(error);
    return {};
}

} // namespace cutwater::document
