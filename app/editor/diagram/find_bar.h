// SPDX-License-Identifier: GPL-3.0-or-later
// FindBar: where to type what is looked for, how many were found, and on to the next.
#pragma once

#include <QWidget>

class QLabel;
class QLineEdit;
class QToolButton;

namespace cutwater::editor {

class FindBar : public QWidget {
    Q_OBJECT
public:
    explicit FindBar(QWidget* parent = nullptr);

    void begin(); // takes the focus
    QString text() const;
    // `at` counts from 0; -1: none.
    void showHits(int at, int hits);

signals:
    void textChanged(const QString& text);
    void nextAsked();
    void previousAsked();
    void left(); // Escape

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QLineEdit* m_field;
    QLabel* m_count;
    QToolButton *m_previous, *m_next;
};

} // namespace cutwater::editor
