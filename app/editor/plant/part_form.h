// SPDX-License-Identifier: GPL-3.0-or-later
// PartForm: all that is said about one component, to be changed.
#pragma once

#include "app/editor/session/session.h"

#include <QWidget>

#include <functional>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPlainTextEdit;

namespace cutwater::editor {

class QuantityRow;
class SupplyBox;

class PartForm : public QWidget {
    Q_OBJECT
public:
    explicit PartForm(Session& session, QWidget* parent = nullptr);

    // One that the project has.
    void show(const project::Id& component);
    SupplyBox& supply() { return *m_supply; }

signals:
    void componentWished(const cutwater::project::Id& component);
    void modeWished(const cutwater::project::Id& mode);
    void idChanged(const cutwater::project::Id& id); // of the component that is shown

private:
    void makeFields();
    void offerWords();
    void change(const std::function<void(project::Component&)>& what);
    void changeId();
    QString sameType(const project::Component& part) const;
    QString modesOf(const project::Component& part) const;

    Session& m_session;
    project::Id m_component;
    bool m_busy = false; // showing: what fields signal is no edit
    QFormLayout* m_form;
    QLineEdit* m_tag;
    QLineEdit* m_name;
    QLineEdit* m_id;
    QComboBox* m_type;
    QLineEdit* m_function;
    QComboBox* m_location;
    QLabel* m_same;
    QLabel* m_modes;
    QLabel* m_origin;
    SupplyBox* m_supply;
    QuantityRow* m_rate;
    QPlainTextEdit* m_remark;
    quint64 m_offered = 0;
};

} // namespace cutwater::editor
