// SPDX-License-Identifier: GPL-3.0-or-later
// One connection of the supply network: from where to where, what flows, and through what.
#pragma once

#include "app/editor/session/session.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QLineEdit;

namespace cutwater::editor {

class ComponentBox;

class ConnectionDialog : public QDialog {
    Q_OBJECT
public:
    // `connection` with an empty id: a new one, with the ends that it has.
    ConnectionDialog(Session& session, const project::Connection& connection, QWidget* parent);

    void accept() override; // only where the edit was made

private:
    project::Connection entered(QString& wrong) const;

    Session& m_session;
    project::Connection m_connection;
    ComponentBox* m_from;
    ComponentBox* m_to;
    QComboBox* m_medium;
    QComboBox* m_path;
    QLineEdit* m_through;
    QLineEdit* m_capacity;
    QComboBox* m_unit;
    QLineEdit* m_name;
    QLabel* m_wrong;
};

} // namespace cutwater::editor
