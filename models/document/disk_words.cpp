// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/disk_words.h"

#include <cerrno>
#include <system_error>

namespace cutwater::document {

project::Problem cannot(const std::string& action, const std::string& path, const std::string& why,
                        const std::string& remedy) {
    project::Problem problem;
    problem.what =
        "cannot " + action + " " + (path.empty() ? "a file without a name" : path) + ": " + why;
    problem.remedy = remedy;
    return problem;
}

std::string inWords(int error) {
    switch (error) {
    case ENOENT: return "there is no such file or folder";
    case ENOTDIR: return "a part of its path is a file, not a folder";
    case EACCES:
    case EPERM: return "you have no permission";
    case ENOSPC: return "the disk is full";
    case EDQUOT: return "your share of the disk is used up";
    case EFBIG: return "the file would be longer than is allowed here";
    case EROFS: return "the disk can only be read";
    case ENAMETOOLONG: return "its name is too long";
    case ELOOP: return "its symbolic links go round in a circle";
    case EIO: return "the disk reports an error";
    case EMFILE:
    case ENFILE: return "too many files are open";
    default: return std::generic_category().message(error);
    }
}

std::string remedyFor(int error) {
    switch (error) {
    case ENOENT:
    case ENOTDIR: return "check the name and the folder";
    case EACCES:
    case EPERM: return "ask its owner for permission, or use another folder";
    case ENOSPC:
    case EDQUOT:
    case EFBIG: return "make room, or save to another disk";
    case EROFS: return "save to another disk";
    case ENAMETOOLONG: return "choose a shorter name";
    case ELOOP: return "mend the links";
    default: return "check the disk, or use another one";
    }
}

} // namespace cutwater::document
