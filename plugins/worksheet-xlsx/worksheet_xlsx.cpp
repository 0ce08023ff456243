// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/dates.h"
#include "models/worksheet/columns.h"
#include "models/worksheet/sheet_text.h"
#include "plugins/sdk/interfaces.h"
#include "plugins/sdk/tree/cautions.h"
#include "plugins/worksheet-xlsx/workbook.h"

#include <fmt/format.h>

#include <QFile>
#include <QObject>
#include <QTemporaryDir>

namespace cutwater::worksheet_xlsx {
namespace {

using worksheet::Cell;
using worksheet::Row;
using worksheet::Sheet;

constexpr std::size_t kMostRows = 1'000'000; // a sheet of the format holds 1,048,576

void addRows(Workbook& book, const Sheet& sheet, const worksheet::SheetPart& part, const char* name,
             bool dormantOnly) {
    const auto shown = worksheet::columnsOf(part);
    std::vector<std::string> headings;
    std::vector<double> widths;
    for (const worksheet::Column* column : shown) {
        headings.push_back(column->unit.empty()
                               ? std::string(column->title)
                               : fmt::format("{} [{}]", column->title, column->unit));
        widths.push_back(column->kind == worksheet::ColumnKind::text ? 22 : 8);
    }
    book.startSheet(name, headings, widths);
    std::uint32_t at = 1;
    for (const Row* row : worksheet::rowsOf(sheet, part)) {
        if (dormantOnly && !row->dormant) continue;
        std::uint16_t column = 0;
        for (const worksheet::Column* one : shown) {
            const Cell cell = one->read(sheet, *row);
            if (const auto* text = std::get_if<std::string>(&cell)) book.text(at, column, *text);
            if (const auto* whole = std::get_if<std::int64_t>(&cell))
                book.number(at, column, static_cast<double>(*whole));
            if (const auto* number = std::get_if<double>(&cell)) book.number(at, column, *number);
            ++column;
        }
        ++at;
    }
    book.endSheet(at - 1);
}

void addScales(Workbook& book, const Sheet& sheet) {
    book.startSheet("Scales", {"Scale", "Rating", "Word", "Meaning", "Up to [/y]"},
                    {14, 8, 24, 60, 12});
    std::uint32_t at = 1;
    const auto add = [&](const char* name, const std::vector<project::RatingLevel>& scale) {
        for (const project::RatingLevel& level : scale) {
            book.text(at, 0, name);
            if (level.rating) book.number(at, 1, *level.rating);
            book.text(at, 2, level.word);
            book.text(at, 3, level.meaning);
            if (level.limit) book.number(at, 4, *level.limit);
            ++at;
        }
    };
    add("severity", sheet.scales.severity);
    add("occurrence", sheet.scales.occurrence);
    add("detection", sheet.scales.detection);
    book.endSheet(at - 1);
}

// What a reader has to know: which plant and revision, in which state, and the cautions.
void addFront(Workbook& book, const project::Project& project) {
    book.startSheet("About", {"What", "Words"}, {24, 110});
    std::uint32_t at = 1;
    const auto add = [&](const char* what, const std::string& words) {
        if (words.empty()) return;
        book.text(at, 0, what);
        book.text(at++, 1, words);
    };
    add("Project", project.name);
    add("Plant", project.plant);
    add("Operating mode", project.operatingMode);
    add("Revision", project.revision);
    add("Date", project.date);
    add("Prepared by", project.preparedBy);
    add("Checked by", project.checkedBy);
    for (const std::string& rule : project.rules)
        add("Rule", rule);
    for (const std::string& assumption : project.assumptions)
        add("Assumption", assumption);
    add("Warning", worksheet::kRpnWarning);
    std::vector<sdk::Note> cautions;
    sdk::tree::addCautions(cautions, sdk::tree::CautionScope::machine, project);
    for (const sdk::Note& caution : cautions)
        add("Caution", caution.sentence);
}

} // namespace

class WorksheetXlsx : public QObject, public sdk::Exchange {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID CUTWATER_EXCHANGE_IID FILE "worksheet-xlsx.json")
    Q_INTERFACES(cutwater::sdk::Exchange)

public:
    std::vector<std::string> suffixes() const override { return {"xlsx"}; }
    bool canRead() const override { return false; }
    bool canWrite() const override { return true; }

    sdk::Answer<project::Project> read(const std::string&, const sdk::Values&,
                                       const sdk::Job&) const override {
        return sdk::Answer<project::Project>::failed(
            {problem("workbooks are written, not read", "save the sheet as CSV and import that")});
    }

    sdk::Answer<std::string> write(const project::Project& project, const sdk::Values& values,
                                   const sdk::Job&) const override {
        using Answer = sdk::Answer<std::string>;
        if (project.modes.size() > kMostRows)
            return Answer::failed(
                {problem("there are more rows than a workbook can hold", "write it as CSV")});
        const project::Index index(project);
        const Sheet sheet = worksheet::sheetOf(project, index);
        QTemporaryDir folder;
        if (!folder.isValid())
            return Answer::failed(
                {problem("no temporary folder can be made", "make room on the disk")});
        const QString path = folder.filePath("worksheet.xlsx");
        Workbook book(path.toStdString());
        book.title(project.name, project::isIsoDate(project.date) ? project.date : "");
        addFront(book, project);
        const auto part = worksheet::partOf(values.text("columns").value_or(""),
                                            values.text("rows").value_or(""));
        addRows(book, sheet, part, "Worksheet", false);
        addRows(book, sheet, part, "Dormant", true);
        addScales(book, sheet);
        if (const std::string fault = book.close(); !fault.empty())
            return Answer::failed(
                {problem(fmt::format("the workbook cannot be written ({})", fault),
                         "make room on the disk, or write it as CSV")});
        QFile file(path);
        if (!file.open(QIODevice::ReadOnly))
            return Answer::failed({problem("the workbook cannot be read back", "try again")});
        const QByteArray bytes = file.readAll();
        return Answer::of(std::string(bytes.constData(), static_cast<std::size_t>(bytes.size())));
    }

private:
    static project::Problem problem(std::string what, std::string remedy) {
        return {project::Severity::error, std::move(what), std::move(remedy), {}, 0};
    }
};

} // namespace cutwater::worksheet_xlsx

#include "worksheet_xlsx.moc"
