// SPDX-License-Identifier: GPL-3.0-or-later
// One number of a failure model: value, unit, how well it is known, where it comes from.
#pragma once

#include "models/project/failure_model.h"

#include <QWidget>

#include <optional>
#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;

namespace cutwater::editor {

class QuantityRow : public QWidget {
    Q_OBJECT
public:
    QuantityRow(project::Role role, bool required, QWidget* parent);

    project::Role role() const { return m_role; }
    // `quantity` null: the number is not given. `parameters`: the project's shared numbers.
    void show(const project::Quantity* quantity, const std::vector<project::Parameter>& parameters);
    // What is entered: nothing where the value is empty or is no number (a sentence says so).
    std::optional<project::Quantity> quantity() const;
    bool isReadable() const; // the texts are numbers, or empty

signals:
    void edited();

private:
    void showState();

    project::Role m_role;
    project::Quantity m_shown; // keeps what the row has no field for
    QLineEdit* m_value;
    QComboBox* m_unit;
    QLineEdit* m_errorFactor;
    QComboBox* m_parameter;
    QLineEdit* m_document;
    QLineEdit* m_place;
    QComboBox* m_tag;
    QLabel* m_sentence;
};

// "1e-6", "0.5" and "0,5"; nothing where it is no number.
std::optional<double> numberFrom(const QString& text);
// What a role is called on a form.
QString words(project::Role role);
QString words(project::ModelKind kind);
QString words(project::Clock clock);

} // namespace cutwater::editor
