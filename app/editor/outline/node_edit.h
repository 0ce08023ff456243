// SPDX-License-Identifier: GPL-3.0-or-later
// The line in which an event is typed: Enter goes on beside it, Tab below it, Shift+Tab one level
// up, Esc gives up. While typing, a short list offers what is there already.
#pragma once

#include "app/editor/outline/reuse_list.h"

#include <QLineEdit>

class QCompleter;

namespace cutwater::editor {

// Where typing goes on.
enum class Next { nowhere, beside, below, above };

class NodeEdit : public QLineEdit {
    Q_OBJECT
public:
    explicit NodeEdit(QWidget* parent);

    // Offers `list`, which the edit takes over.
    void offer(ReuseList* list);
    QCompleter* offered() const { return m_completer; }
    // What was chosen from the list; `nothing` where the text counts.
    const Reuse& choice() const { return m_choice; }

signals:
    void accepted(cutwater::editor::Next next);
    void cancelled();

protected:
    bool event(QEvent* event) override;

private:
    void choose(const QModelIndex& completion);
    void accept(Next next);

    QCompleter* m_completer = nullptr;
    ReuseList* m_list = nullptr;
    Reuse m_choice;
};

} // namespace cutwater::editor
