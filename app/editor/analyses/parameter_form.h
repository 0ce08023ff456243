// SPDX-License-Identifier: GPL-3.0-or-later
// ParameterForm: the form of an analysis, made from what it declares.
#pragma once

#include "models/project/index.h"
#include "plugins/sdk/parameter.h"

#include <QWidget>

#include <memory>
#include <vector>

class QGridLayout;
class QLabel;

namespace cutwater::editor {

class ParameterField;

class ParameterForm : public QWidget {
    Q_OBJECT

public:
    explicit ParameterForm(QWidget* parent = nullptr);
    ~ParameterForm() override;

    // Makes the fields anew where the declarations are others than before; what was typed stays.
    void show(std::vector<sdk::Parameter> parameters,
              std::shared_ptr<const project::Project> project);
    // Checked values with the standards filled in. Where something is wrong it is said beside the
    // field, which gets the focus, and the problems come back.
    project::Outcome<sdk::Values> read();
    ParameterField* field(const std::string& name) const;
    const std::vector<sdk::Parameter>& parameters() const { return m_parameters; }
    // "top T1, max-order 3": what was given other than the standards.
    QString summary() const;

signals:
    void changed();
    void submitted(); // Return in a field

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    bool exists(const std::string& id);

    std::vector<sdk::Parameter> m_parameters;
    std::shared_ptr<const project::Project> m_project;
    std::unique_ptr<project::Index> m_index;
    std::vector<ParameterField*> m_fields;
    QWidget* m_body = nullptr;
    QLabel* m_help; // the sentence of the field that has the focus
};

} // namespace cutwater::editor
