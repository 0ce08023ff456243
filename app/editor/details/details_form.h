// SPDX-License-Identifier: GPL-3.0-or-later
// DetailsForm: all that is said about the selected event or gate, to be changed.
#pragma once

#include "app/editor/details/model_form.h"
#include "app/editor/selection/selection.h"
#include "app/editor/session/session.h"

#include <QScrollArea>

class QCheckBox;
class QComboBox;
class QFormLayout;
class QGroupBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QSpinBox;
class QStackedWidget;

namespace cutwater::editor {

class DetailsForm : public QScrollArea {
    Q_OBJECT
public:
    DetailsForm(Session& session, Selection& selection, QWidget* parent = nullptr);

private:
    void makeFields();
    void connectFields();
    void follow(); // the selection or the project changed
    void showGate(const project::Gate& gate);
    void showEvent(const project::Event& event, const project::FailureMode* mode);
    void showPlaces();
    void showModes(const project::Id& current);
    bool apply(const Edit& edit);

    Session& m_session;
    Selection& m_selection;
    project::Id m_node;
    bool m_busy = false; // showing: what fields signal is no edit
    QStackedWidget* m_pages;
    QFormLayout* m_form;
    QLineEdit* m_text;
    QLabel* m_id;
    QComboBox* m_kind;
    QLabel* m_meaning;
    QSpinBox* m_k;
    QCheckBox* m_state;
    QLabel* m_places;
    QComboBox* m_mode;
    QLabel* m_modeFacts;
    QGroupBox* m_modelBox;
    ModelForm* m_model;
    QPlainTextEdit* m_remark;
    quint64 m_modesRevision = 0; // for which m_mode was filled
};

} // namespace cutwater::editor
