// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/worksheet-xlsx/workbook.h"

#include <xlsxwriter.h>

#include <cmath>
#include <ctime>

namespace cutwater::worksheet_xlsx {

namespace {

constexpr std::size_t kLongestText = 32'767; // characters of one cell, a limit of the format

// Cut between characters, not inside one.
std::string fitting(const std::string& text) {
    if (text.size() <= kLongestText) return text;
    std::size_t end = kLongestText - 3;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80)
        --end;
    return text.substr(0, end) + "...";
}

} // namespace

Workbook::Workbook(const std::string& path) : m_book(workbook_new(path.c_str())) {
    if (!m_book) return;
    m_heading = workbook_add_format(m_book);
    format_set_bold(m_heading);
    format_set_text_wrap(m_heading);
    format_set_bottom(m_heading, LXW_BORDER_THIN);
    format_set_align(m_heading, LXW_ALIGN_VERTICAL_TOP);
    m_cell = workbook_add_format(m_book);
    format_set_text_wrap(m_cell);
    format_set_align(m_cell, LXW_ALIGN_VERTICAL_TOP);
}

Workbook::~Workbook() {
    if (m_book) workbook_close(m_book);
}

void Workbook::startSheet(const char* name, const std::vector<std::string>& headings,
                          const std::vector<double>& widths) {
    if (!m_book) return;
    m_sheet = workbook_add_worksheet(m_book, name);
    m_columns = static_cast<std::uint16_t>(headings.size());
    for (std::uint16_t i = 0; i < m_columns; ++i) {
        worksheet_set_column(m_sheet, i, i, widths[i], nullptr);
        worksheet_write_string(m_sheet, 0, i, headings[i].c_str(), m_heading);
    }
    worksheet_freeze_panes(m_sheet, 1, 0);
    worksheet_set_landscape(m_sheet);
    worksheet_set_paper(m_sheet, 9); // A4
    worksheet_fit_to_pages(m_sheet, 1, 0);
    worksheet_repeat_rows(m_sheet, 0, 0);
    worksheet_set_footer(m_sheet, "&L&F  &A&RPage &P of &N");
}

void Workbook::text(std::uint32_t row, std::uint16_t column, const std::string& text) {
    if (!m_sheet || text.empty()) return;
    if (worksheet_write_string(m_sheet, row, column, fitting(text).c_str(), m_cell) != LXW_NO_ERROR)
        m_fault = "a cell does not fit into the format";
}

void Workbook::number(std::uint32_t row, std::uint16_t column, double number) {
    if (!m_sheet || !std::isfinite(number)) return;
    if (worksheet_write_number(m_sheet, row, column, number, m_cell) != LXW_NO_ERROR)
        m_fault = "there are more rows than the format can hold";
}

void Workbook::endSheet(std::uint32_t rows) {
    if (m_sheet && m_columns > 0)
        worksheet_autofilter(m_sheet, 0, 0, rows, static_cast<lxw_col_t>(m_columns - 1));
}

void Workbook::title(const std::string& title, const std::string& date) {
    if (!m_book) return;
    // A fixed date, the project's own: the same project gives the same bytes.
    std::tm day{};
    day.tm_year = 126;
    day.tm_mday = 1;
    day.tm_hour = 12;
    if (date.size() == 10) {
        day.tm_year = std::stoi(date.substr(0, 4)) - 1900;
        day.tm_mon = std::stoi(date.substr(5, 2)) - 1;
        day.tm_mday = std::stoi(date.substr(8, 2));
    }
    std::string words = title; // the library wants text that it could change
    lxw_doc_properties properties{};
    properties.title = words.data();
    properties.created = timegm(&day);
    workbook_set_properties(m_book, &properties);
}

std::string Workbook::close() {
    if (!m_book) return "no temporary file can be made";
    const lxw_error error = workbook_close(m_book);
    m_book = nullptr;
    if (error != LXW_NO_ERROR) return lxw_strerror(error);
    return m_fault;
}

} // namespace cutwater::worksheet_xlsx
