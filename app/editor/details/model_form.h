// SPDX-License-Identifier: GPL-3.0-or-later
// The failure model of an event: kind, clock, and a row for each number that the kind has a place
// for.
#pragma once

#include "app/editor/details/quantity_row.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QLabel;
class QVBoxLayout;

namespace cutwater::editor {

class ModelForm : public QWidget {
    Q_OBJECT
public:
    explicit ModelForm(QWidget* parent = nullptr);

    // Shows a model; a field that the user is in keeps its place.
    void show(const project::FailureModel& model,
              const std::vector<project::Parameter>& parameters);
    // What is wrong with it, in sentences; empty: nothing.
    void setProblems(const QString& sentences);

signals:
    void edited(const cutwater::project::FailureModel& model);

private:
    void makeRows(project::ModelKind kind);
    void gather();

    project::FailureModel m_shown;
    std::vector<project::Parameter> m_parameters;
    QComboBox* m_kind;
    QComboBox* m_clock;
    QWidget* m_clockLine;
    QVBoxLayout* m_rowsLayout;
    std::vector<QuantityRow*> m_rows;
    project::ModelKind m_rowsOf = project::ModelKind::none;
    QLabel* m_problems;
};

} // namespace cutwater::editor
