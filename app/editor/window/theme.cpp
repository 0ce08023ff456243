// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/theme.h"

#include <QColor>

namespace cutwater::editor {

namespace {

struct Shades {
    QColor window, base, other, text, faint, button, accent, onAccent, link, tip;
};

QPalette made(const Shades& s) {
    QPalette palette(s.button, s.window);
    for (const auto group : {QPalette::Active, QPalette::Inactive, QPalette::Disabled}) {
        const bool off = group == QPalette::Disabled;
        for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
            palette.setColor(group, role, off ? s.faint : s.text);
        palette.setColor(group, QPalette::Window, s.window);
        palette.setColor(group, QPalette::Base, s.base);
        palette.setColor(group, QPalette::AlternateBase, s.other);
        palette.setColor(group, QPalette::Button, s.button);
        palette.setColor(group, QPalette::PlaceholderText, s.faint);
        palette.setColor(group, QPalette::Highlight, off ? s.faint : s.accent);
        palette.setColor(group, QPalette::HighlightedText, s.onAccent);
        palette.setColor(group, QPalette::Link, s.link);
        palette.setColor(group, QPalette::LinkVisited, s.link);
        palette.setColor(group, QPalette::ToolTipBase, s.tip);
        palette.setColor(group, QPalette::ToolTipText, s.text);
        palette.setColor(group, QPalette::BrightText, s.text);
    }
    return palette;
}

} // namespace

QPalette paletteOf(Theme look, const QPalette& desktop) {
    switch (look) {
    case Theme::light:
        return made({QColor(0xee, 0xf0, 0xf2), QColor(0xff, 0xff, 0xff), QColor(0xf5, 0xf7, 0xf9),
                     QColor(0x18, 0x1e, 0x26), QColor(0x5f, 0x68, 0x73), QColor(0xe3, 0xe7, 0xea),
                     QColor(0x1d, 0x5a, 0x7a), QColor(0xff, 0xff, 0xff), QColor(0x12, 0x50, 0x8a),
                     QColor(0xfb, 0xf0, 0xcf)});
    case Theme::dark:
        return made({QColor(0x1f, 0x25, 0x2b), QColor(0x17, 0x1c, 0x21), QColor(0x1c, 0x22, 0x28),
                     QColor(0xe4, 0xe9, 0xee), QColor(0x9a, 0xa6, 0xb2), QColor(0x2b, 0x33, 0x3b),
                     QColor(0x2f, 0x6f, 0x92), QColor(0xff, 0xff, 0xff), QColor(0x8c, 0xc4, 0xe6),
                     QColor(0x3a, 0x36, 0x24)});
    case Theme::desktop: break;
    }
    return desktop;
}

} // namespace cutwater::editor
