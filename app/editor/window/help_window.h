// SPDX-License-Identifier: GPL-3.0-or-later
// HelpWindow: the guide, opened at what one is looking at.
#pragma once

#include <QDialog>

class QTextBrowser;

namespace cutwater::editor {

class HelpWindow : public QDialog {
    Q_OBJECT
public:
    explicit HelpWindow(QWidget* parent);

    // A page of docs/guide without its suffix ("editor"), at a heading; empty: at its beginning.
    void open(const QString& page, const QString& heading = {});

private:
    QTextBrowser* m_text;
    QString m_page;
};

// Page and heading for the widget that has the focus, by the names of it and of those around it.
QPair<QString, QString> helpFor(const QWidget* focus);

} // namespace cutwater::editor
