// SPDX-License-Identifier: GPL-3.0-or-later
// SheetFindBar: find and replace below the grid. It knows no cells: whoever owns it counts them.
#pragma once

#include "app/editor/worksheet/find_cells.h"

#include <QFrame>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace cutwater::editor {

enum class SearchScope { all, column, selection };

class SheetFindBar : public QFrame {
    Q_OBJECT
public:
    explicit SheetFindBar(QWidget* parent);

    CellSearch search() const;
    SearchScope scope() const;
    QString replacement() const;
    // `text` empty: what was looked for last. `inSelection`: several cells are chosen.
    void begin(const QString& text, bool inSelection);
    // What was found, and what a replacement would change.
    void tellCount(int cells, int places, int changes);

signals:
    void changed();
    void nextWished(int direction);
    void replaceAllWished();
    void closed();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QLineEdit* m_find;
    QLineEdit* m_replace;
    QComboBox* m_scope;
    QCheckBox* m_whole;
    QCheckBox* m_case;
    QLabel* m_count;
    QPushButton* m_replaceAll;
};

} // namespace cutwater::editor
