// SPDX-License-Identifier: GPL-3.0-or-later
// A field of several lines that tells when it is left.
#pragma once

#include <QPlainTextEdit>

#include <functional>

namespace cutwater::editor {

class LeftEdit : public QPlainTextEdit {
public:
    LeftEdit(QWidget* parent, std::function<void()> left)
        : QPlainTextEdit(parent), m_left(std::move(left)) {
        setTabChangesFocus(true);
        setMaximumHeight(fontMetrics().lineSpacing() * 4);
    }

protected:
    void focusOutEvent(QFocusEvent* event) override {
        QPlainTextEdit::focusOutEvent(event);
        m_left();
    }

private:
    std::function<void()> m_left;
};

} // namespace cutwater::editor
