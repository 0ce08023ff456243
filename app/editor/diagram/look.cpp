// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/look.h"

#include <algorithm>
#include <cmath>

namespace cutwater::editor {

Look::Look(const QPalette& palette) : m_dark(palette.color(QPalette::Base).lightnessF() < 0.5) {
    m_ground = m_dark ? QColor(30, 33, 38) : QColor(248, 249, 250);
    m_paper = m_dark ? QColor(38, 42, 48) : QColor(255, 255, 255);
    m_selected = m_dark ? QColor(110, 190, 255) : QColor(0, 92, 175);
    m_hit = m_dark ? QColor(240, 200, 90) : QColor(150, 96, 0);
    m_refused = m_dark ? QColor(255, 150, 140) : QColor(176, 30, 30);
}

QColor Look::colour(const drawing::Ink& ink) const {
    const QColor plain(ink.red, ink.green, ink.blue);
    if (!m_dark) return plain;
    float h = 0, s = 0, l = 0;
    plain.getHslF(&h, &s, &l);
    // Black lines become light, white and light fills become dark but stay apart from the ground.
    const float turned = l > 0.7F ? 0.19F + (1 - l) * 0.55F : 0.9F - l * 0.5F;
    const float strength = l > 0.7F ? s * 0.42F : s;
    return QColor::fromHslF(std::max(h, 0.0F), strength, std::clamp(turned, 0.0F, 1.0F));
}

QColor Look::selectedFill() const {
    QColor fill = m_selected;
    fill.setAlpha(m_dark ? 70 : 44);
    return fill;
}

QColor Look::words() const {
    return m_dark ? QColor(214, 220, 226) : QColor(60, 68, 78);
}

namespace {

double luminance(const QColor& colour) {
    const auto part = [](double c) {
        return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * part(colour.redF()) + 0.7152 * part(colour.greenF()) +
           0.0722 * part(colour.blueF());
}

} // namespace

double contrast(const QColor& one, const QColor& other) {
    const double a = luminance(one), b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

} // namespace cutwater::editor
