// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/sheet_text.h"
#include "models/worksheet/whole_table.h"
#include "plugins/sdk/interfaces.h"

#include <QObject>

namespace cutwater::worksheet_tsv {

class WorksheetTsv : public QObject, public sdk::Exchange {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID CUTWATER_EXCHANGE_IID FILE "worksheet-tsv.json")
    Q_INTERFACES(cutwater::sdk::Exchange)

public:
    std::vector<std::string> suffixes() const override { return {"tsv"}; }
    bool canRead() const override { return true; }
    bool canWrite() const override { return true; }

    sdk::Answer<project::Project> read(const std::string& bytes, const sdk::Values&,
                                       const sdk::Job&) const override {
        using Answer = sdk::Answer<project::Project>;
        auto made = worksheet::projectOfTable(bytes);
        return made ? Answer::of(std::move(*made)) : Answer::failed(made.problems());
    }

    sdk::Answer<std::string> write(const project::Project& project, const sdk::Values& values,
                                   const sdk::Job&) const override {
        return sdk::Answer<std::string>::of(
            worksheet::sheetAsText(project, '\t',
                                   worksheet::partOf(values.text("columns").value_or(""),
                                                     values.text("rows").value_or(""))));
    }
};

} // namespace cutwater::worksheet_tsv

#include "worksheet_tsv.moc"
