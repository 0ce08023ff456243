// SPDX-License-Identifier: GPL-3.0-or-later
// Who supplies one component, and whom it supplies: single suppliers, and connections of the
// network with what they run through.
#pragma once

#include "app/editor/session/session.h"

#include <QGroupBox>

#include <vector>

class QLabel;
class QListWidget;
class QPushButton;

namespace cutwater::editor {

class ComponentBox;

class SupplyBox : public QGroupBox {
    Q_OBJECT
public:
    explicit SupplyBox(Session& session, QWidget* parent = nullptr);

    void show(const project::Id& component);

    void addSupplier(const project::Id& supplier);
    void removeCurrent();
    void openCurrent(); // its connection, or the component at the other end
    void addConnection();

signals:
    void componentWished(const cutwater::project::Id& component);

protected:
    bool eventFilter(QObject* object, QEvent* event) override;

private:
    enum class What { supplier, incoming, outgoing, supplied };
    struct Line {
        What what;
        project::Id other;      // the component at the other end
        project::Id connection; // of incoming and outgoing
    };
    void put(const Line& line, const QString& text);
    QString redundancy() const;

    Session& m_session;
    project::Id m_component;
    std::vector<Line> m_lines;
    QListWidget* m_list;
    ComponentBox* m_choice;
    QLabel* m_either;
    QPushButton* m_remove;
    QPushButton* m_open;
    quint64 m_offered = 0; // revision for which the choice was filled
};

} // namespace cutwater::editor
