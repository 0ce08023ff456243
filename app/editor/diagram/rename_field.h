// SPDX-License-Identifier: GPL-3.0-or-later
// RenameField: a line to type in, on top of a box of the view.
#pragma once

#include "models/project/value.h"

#include <QLineEdit>

namespace cutwater::editor {

class RenameField : public QLineEdit {
    Q_OBJECT
public:
    explicit RenameField(QWidget* viewport);

    // `place` in the viewport's pixels.
    void start(const project::Id& node, const QString& name, const QRect& place);
    const project::Id& node() const { return m_node; }
    // Ends without a word.
    void cancel();

signals:
    // Enter, or the focus went elsewhere; not where the text is as it was.
    void renamed(const cutwater::project::Id& node, const QString& name);
    void ended(); // in every case, after renamed()

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void finish(bool take);

    project::Id m_node;
    QString m_before;
    bool m_open = false;
};

} // namespace cutwater::editor
