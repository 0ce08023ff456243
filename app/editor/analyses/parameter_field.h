// SPDX-License-Identifier: GPL-3.0-or-later
// ParameterField: where one declared parameter is typed or chosen, and told what is wrong with it.
#pragma once

#include "models/project/project.h"
#include "plugins/sdk/parameter.h"

#include <QObject>
#include <QString>

#include <optional>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QWidget;

namespace cutwater::editor {

class ParameterField : public QObject {
    Q_OBJECT

public:
    // Its widgets become children of `form`. `project` may be null; it names the top events.
    ParameterField(const sdk::Parameter& parameter, const project::Project* project, QWidget* form);

    const sdk::Parameter& parameter() const { return m_parameter; }
    QLabel* label() const { return m_label; }
    QWidget* editor() const { return m_editor; }
    QLabel* complaint() const { return m_complaint; }

    // What is in it: nothing where it is left empty. Says beside the field what is wrong, in the
    // words that the shell uses.
    project::Outcome<std::optional<sdk::Value>> read();
    // As somebody would have typed it; for a form that is made anew.
    QString typed() const;
    void type(const QString& text);
    QString standard() const;               // what is in it to begin with
    void complain(const QString& sentence); // empty: all is well

signals:
    void changed();

private:
    void makeChoice();
    void makeTop(const project::Project* project);

    sdk::Parameter m_parameter;
    QLabel* m_label;
    QWidget* m_editor = nullptr;
    QLabel* m_complaint;
    QLineEdit* m_line = nullptr;
    QComboBox* m_box = nullptr;
    QCheckBox* m_check = nullptr;
};

} // namespace cutwater::editor
