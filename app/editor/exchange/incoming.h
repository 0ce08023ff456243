// SPDX-License-Identifier: GPL-3.0-or-later
// Incoming: what a file of another format brings, judged before anything changes.
#pragma once

#include "models/project/edits/changed.h"
#include "plugins/sdk/host.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include <memory>
#include <optional>

namespace cutwater::editor {

struct Incoming {
    QString path;
    std::shared_ptr<const project::Project> project; // null: it cannot be read
    project::Problems problems; // why not, or what validate() finds in it; with lines of the file
    bool cancelled = false;
    // The project at hand with what came in; empty: it cannot be put there.
    std::optional<project::edits::Changed> merged;
    QString whyNotMerged;
};

class IncomingWords {
    Q_DECLARE_TR_FUNCTIONS(cutwater::editor::Incoming)

public:
    // "3 top events, 12 gates, 40 events ..."; what there is none of is left out.
    static QStringList counts(const project::Project& project);
    // The same of what would be new: against the project at hand.
    static QStringList changes(const project::Project& before, const project::Project& after);
};

// Reads the bytes with the plug-in and tries to put them into `current`. Any thread; throws nothing
// of the plug-in's.
Incoming readIncoming(const QString& path, const std::string& bytes, const sdk::Exchange& exchange,
                      const sdk::PluginFacts& facts, const project::Project& current,
                      const sdk::Job& job);

// Trees are put beside those that are there, with what they need of the plant; where there is no
// tree the rows of the worksheet are taken, those of the same failure mode changed.
project::edits::Result mergeInto(const project::Project& current, const project::Project& incoming,
                                 const std::string& name);

} // namespace cutwater::editor
