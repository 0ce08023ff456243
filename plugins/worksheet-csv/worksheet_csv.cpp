// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/import.h"
#include "models/worksheet/sheet_text.h"
#include "plugins/sdk/interfaces.h"

#include <fmt/format.h>

#include <QObject>

namespace cutwater::worksheet_csv {

// A table makes a new project: components of the tags that stand in it, and their failure modes. A
// row that is refused fails the whole: `cutwater import-rows` takes tables in part.
class WorksheetCsv : public QObject, public sdk::Exchange {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID CUTWATER_EXCHANGE_IID FILE "worksheet-csv.json")
    Q_INTERFACES(cutwater::sdk::Exchange)

public:
    std::vector<std::string> suffixes() const override { return {"csv"}; }
    bool canRead() const override { return true; }
    bool canWrite() const override { return true; }

    sdk::Answer<project::Project> read(const std::string& bytes, const sdk::Values&,
                                       const sdk::Job&) const override {
        using Answer = sdk::Answer<project::Project>;
        worksheet::ImportWish wish;
        wish.makeComponents = true;
        auto import = worksheet::importRows({}, bytes, wish);
        if (!import) return Answer::failed(import.problems());
        project::Problems problems;
        for (const worksheet::ImportRow& row : import->rows)
            if (!row.taken)
                problems.push_back({project::Severity::error,
                                    fmt::format("a row cannot be taken: {}", row.why),
                                    "mend the row, or take the table in part with import-rows",
                                    "table", row.line});
        if (!problems.empty()) return Answer::failed(std::move(problems));
        return Answer::of(std::move(import->project));
    }

    sdk::Answer<std::string> write(const project::Project& project, const sdk::Values&,
                                   const sdk::Job&) const override {
        return sdk::Answer<std::string>::of(worksheet::sheetAsText(project, ','));
    }
};

} // namespace cutwater::worksheet_csv

#include "worksheet_csv.moc"
