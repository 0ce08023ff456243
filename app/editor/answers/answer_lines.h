// SPDX-License-Identifier: GPL-3.0-or-later
// A live answer as lines of a list: what each says, and what it shows in the tree.
#pragma once

#include "app/editor/answers/live_answer.h"

#include <QCoreApplication>
#include <QString>

#include <vector>

namespace cutwater::editor {

enum class LineKind { heading, error, warning, single, order, set, remark, assumption, caution };

struct AnswerLine {
    LineKind kind = LineKind::heading;
    QString text;   // the first row in full weight; what follows a line end says more
    QString reason; // why its nodes belong together: said where they are shown
    std::vector<std::string> nodes = {};
    bool operator==(const AnswerLine&) const = default;
};

class AnswerLines {
    Q_DECLARE_TR_FUNCTIONS(AnswerLines)

public:
    static std::vector<AnswerLine> of(const LiveAnswer& answer);
    static QString symbol(LineKind kind); // a character before the line
    static QString word(LineKind kind);   // for screen readers and copies: "Warning"
    // What is behind the figure beside the tree itself; empty: nothing.
    static QString counted(const LiveAnswer& answer);
    // The whole as text, for the clipboard.
    static QString asText(const LiveAnswer& answer);
};

} // namespace cutwater::editor
