// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plugins/sdk/host.h"

#include <QDialog>

#include <map>

class QTableWidget;

namespace cutwater::editor {

// All plug-ins: what works, and what was left out or has failed, each with the reason.
class PluginsDialog : public QDialog {
    Q_OBJECT

public:
    PluginsDialog(const sdk::Host& host, const std::map<std::string, QString>& failures,
                  QWidget* parent = nullptr);

    QTableWidget* table() const { return m_table; }

private:
    void add(const QString& state, const QString& name, const QString& kind, const QString& says,
             const std::string& file);

    QTableWidget* m_table;
};

} // namespace cutwater::editor
