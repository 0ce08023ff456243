// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plugins/sdk/interfaces.h"

#include <QObject>

namespace cutwater::fmea_plugin {

class Fmea : public QObject, public sdk::Analysis {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID CUTWATER_ANALYSIS_IID FILE "fmea.json")
    Q_INTERFACES(cutwater::sdk::Analysis)

public:
    std::vector<sdk::Parameter> parameters(const project::Project* project) const override;
    sdk::Answer<sdk::Result> run(const project::Project& project, const sdk::Values& values,
                                 const sdk::Job& job) const override;
};

} // namespace cutwater::fmea_plugin
