// SPDX-License-Identifier: GPL-3.0-or-later
// ModeForm: one failure mode: its text, where it stands in the trees and in the worksheet, and its
// failure model. Its other facts are the worksheet's and are shown.
#pragma once

#include "app/editor/plant/tree_places.h"
#include "app/editor/session/session.h"

#include <QWidget>

class QLabel;
class QLineEdit;

namespace cutwater::editor {

class ModelForm;

class ModeForm : public QWidget {
    Q_OBJECT
public:
    explicit ModeForm(Session& session, QWidget* parent = nullptr);

    // One that the project has.
    void show(const project::Id& mode, const TreePlaces& places);

signals:
    void componentWished(const cutwater::project::Id& component);
    void topWished(const cutwater::project::Id& top);
    void idChanged(const cutwater::project::Id& id);

private:
    void changeId();
    QString placesOf(const project::FailureMode& mode, const TreePlaces& places) const;
    QString factsOf(const project::FailureMode& mode) const;

    Session& m_session;
    project::Id m_mode;
    bool m_busy = false;
    QLabel* m_component;
    QLineEdit* m_name;
    QLineEdit* m_id;
    QLabel* m_places;
    QLabel* m_facts;
    ModelForm* m_model;
};

} // namespace cutwater::editor
