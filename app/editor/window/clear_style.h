// SPDX-License-Identifier: GPL-3.0-or-later
// ClearStyle: Fusion, but with check boxes and radio buttons whose frame is seen on any ground.
#pragma once

#include <QProxyStyle>

namespace cutwater::editor {

class ClearStyle : public QProxyStyle {
    Q_OBJECT
public:
    ClearStyle();

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
};

} // namespace cutwater::editor
