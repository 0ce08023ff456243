// SPDX-License-Identifier: GPL-3.0-or-later
// Look: the drawing's inks on a light or a dark screen. Paper stays white; the screen follows the
// palette.
#pragma once

#include "app/drawing/picture.h"

#include <QColor>
#include <QPalette>

namespace cutwater::editor {

class Look {
public:
    explicit Look(const QPalette& palette = {});

    bool isDark() const { return m_dark; }
    // Keeps hue, turns lightness about where the screen is dark.
    QColor colour(const drawing::Ink& ink) const;
    QColor ground() const { return m_ground; }     // around and behind the tree
    QColor paper() const { return m_paper; }       // of a sheet
    QColor selected() const { return m_selected; } // frame of what is selected
    QColor selectedFill() const;                   // behind it
    QColor hit() const { return m_hit; }           // frame of what a search found
    QColor refused() const { return m_refused; }   // a place where nothing can be dropped
    QColor words() const;                          // hints on the ground
    bool operator==(const Look&) const = default;

private:
    bool m_dark = false;
    QColor m_ground, m_paper, m_selected, m_hit, m_refused;
};

// Contrast of two colours, 1 to 21 (WCAG 2.1, relative luminance).
double contrast(const QColor& one, const QColor& other);

} // namespace cutwater::editor
