// SPDX-License-Identifier: GPL-3.0-or-later
// Judges a plug-in's file by its metadata, which Qt reads without running any of its code. Private
// to the host and its tests.
#pragma once

#include "plugins/sdk/host.h"

#include <string>
#include <variant>

class QJsonObject;

namespace cutwater::sdk {

// The word for a kind in the metadata ("analysis") and in sentences.
std::string word(PluginKind kind);

// Facts, or the sentence why the file is left out. `metadata` is what QPluginLoader::metaData()
// answers.
std::variant<PluginFacts, std::string> judge(const std::string& file, const QJsonObject& metadata);

// The same for a file on disk: whether it is one that can hold a plug-in at all, then its metadata.
std::variant<PluginFacts, std::string> judgeFile(const std::string& file);

} // namespace cutwater::sdk
