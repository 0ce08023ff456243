// SPDX-License-Identifier: GPL-3.0-or-later
// A field to choose a component: a list that can be typed in, any part of the name finds it.
#pragma once

#include "models/project/project.h"

#include <QComboBox>

namespace cutwater::editor {

class ComponentBox : public QComboBox {
    Q_OBJECT
public:
    explicit ComponentBox(QWidget* parent = nullptr);

    // `without`: one that cannot be chosen; may be empty.
    void offer(const project::Project& project, const project::Id& without);
    void show(const project::Id& component);
    // Empty where what is typed is no component.
    project::Id component() const;
};

} // namespace cutwater::editor
