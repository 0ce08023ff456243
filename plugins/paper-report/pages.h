// SPDX-License-Identifier: GPL-3.0-or-later
// From markup to a document: a page for browsers, PDF, and text for office programs.
#pragma once

#include "plugins/paper-report/chapters.h"

namespace cutwater::paper_report {

// The markup with its head and style sheet, ready for a browser and for its printer.
std::string browserPage(const std::string& title, const std::string& body);

// A4; title and page number at the foot of each page; the drawings as pages of their own in their
// size. Ends: cancelled, failed (no font).
sdk::Answer<std::string> pdfPages(const Order& order, const std::string& title,
                                  const std::string& body,
                                  const std::vector<NamedPicture>& pictures);

// OpenDocument text; drawings as pictures.
sdk::Answer<std::string> odtText(const Order& order, const std::string& title,
                                 const std::string& body,
                                 const std::vector<NamedPicture>& pictures);

} // namespace cutwater::paper_report
