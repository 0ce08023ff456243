// SPDX-License-Identifier: GPL-3.0-or-later
// PlantPage: the breakdown of the plant beside all about the chosen part or failure mode.
#pragma once

#include "app/editor/plant/plant_view.h"

#include <QAction>
#include <QList>
#include <QWidget>

class QLabel;
class QLineEdit;
class QSplitter;
class QStackedWidget;

namespace cutwater::editor {

class ModeForm;
class PartForm;

class PlantPage : public QWidget {
    Q_OBJECT
public:
    PlantPage(Session& session, Selection& selection, QWidget* parent = nullptr);

    PlantView& view() { return *m_view; }
    PartForm& partForm() { return *m_part; }
    ModeForm& modeForm() { return *m_mode; }
    QLineEdit& filterField() { return *m_filter; }
    // For a menu; null: a separator. With object names and keys; the keys work in the view.
    const QList<QAction*>& commands() const { return m_commands; }
    // The chosen component, or that of the chosen failure mode; empty: none.
    project::Id component() const;

signals:
    void sentence(const QString& text);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void makeCommands();
    void showForm();
    void showFound();

    Session& m_session;
    Selection& m_selection;
    QSplitter* m_split;
    PlantView* m_view;
    QLineEdit* m_filter;
    QLabel* m_found;
    QStackedWidget* m_forms;
    PartForm* m_part;
    ModeForm* m_mode;
    QList<QAction*> m_commands;
};

} // namespace cutwater::editor
