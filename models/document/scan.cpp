// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/scan.h"

#include "models/document/scanner.h"

namespace cutwater::document {

std::optional<project::Problem> scanDocument(Markup& markup) {
    Scanner scanner(markup);
    scanner.document();
    return scanner.fault();
}

std::size_t elementEnd(std::string_view text, std::size_t start) {
    Markup markup(text);
    Scanner scanner(markup);
    return scanner.element(start) ? scanner.position() : std::string_view::npos;
}

} // namespace cutwater::document
