// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/scan.h"

#include "models/document/scanner.h"

namespace cutwater::document {

std::optional<project::Problem> scanDocument(std::string_view text) {
    Scanner scanner(text);
    scanner.document();
    return scanner.fault();
}

std::size_t elementEnd(std::string_view text, std::size_t start) {
    Scanner scanner(text);
    return scanner.element(start) ? scanner.position() : std::string_view::npos;
}

} // namespace cutwater::document
