// SPDX-License-Identifier: GPL-3.0-or-later
// A workbook in memory, closed when it is done. The library behind it writes files; a temporary
// folder of its own takes them.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

struct lxw_workbook;
struct lxw_worksheet;
struct lxw_format;

namespace cutwater::worksheet_xlsx {

class Workbook {
public:
    explicit Workbook(const std::string& path);
    ~Workbook();
    Workbook(const Workbook&) = delete;
    Workbook& operator=(const Workbook&) = delete;

    // A new sheet with its headings frozen and a filter over them. Widths in characters.
    void startSheet(const char* name, const std::vector<std::string>& headings,
                    const std::vector<double>& widths);
    void text(std::uint32_t row, std::uint16_t column, const std::string& text); // never a formula
    void number(std::uint32_t row, std::uint16_t column, double number);
    void endSheet(std::uint32_t rows); // without the headings
    void title(const std::string& title, const std::string& date);
    std::string close(); // empty, or why it could not be written

private:
    lxw_workbook* m_book = nullptr;
    lxw_worksheet* m_sheet = nullptr;
    lxw_format *m_heading = nullptr, *m_cell = nullptr;
    std::uint16_t m_columns = 0;
    std::string m_fault;
};

} // namespace cutwater::worksheet_xlsx
