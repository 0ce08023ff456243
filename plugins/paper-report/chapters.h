// SPDX-License-Identifier: GPL-3.0-or-later
// The chapters of the report, each a piece of markup.
#pragma once

#include "plugins/paper-report/markup.h"
#include "plugins/sdk/interfaces.h"

#include <string>
#include <vector>

namespace cutwater::paper_report {

// A picture that rich text refers to by its name.
struct NamedPicture {
    std::string name, svg;
    double width = 0, height = 0; // points
};

struct Order {
    const project::Project& project;
    const sdk::ReportContent& content;
    Dialect dialect = Dialect::browser;
    std::size_t rows = 200; // of a table; more are counted, not shown
    bool signatures = true;
    const sdk::Job& job;
};

// What stands first: who, what, when, which revision; and what the report is not.
std::string titleChapter(const Order& order);
// Which top events, in which state of the plant, with the figure of the first result that has one.
std::string topChapter(const Order& order, int number);
// A result: what answered with which parameters, its warnings, tables, plots and methods. Pictures
// of plots are added to `pictures` where the dialect asks for them.
std::string resultChapter(const Order& order, const sdk::ReportPart& part, int number,
                          std::vector<NamedPicture>& pictures);
std::string assumptionChapter(const Order& order, int number);
// Each number of the failure models with its source and how far to trust it.
std::string sourceChapter(const Order& order, int number);
std::string cautionChapter(const Order& order, int number);
std::string signatureChapter(int number);
// Browser only: paper has the drawings as pages of their own.
std::string drawingChapter(const Order& order, int number);

} // namespace cutwater::paper_report
