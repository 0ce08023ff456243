// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/editor/analyses/plot_chart.h"

#include <QWidget>

#include <memory>

class QCheckBox;
class QLabel;
class QStackedWidget;
QT_FORWARD_DECLARE_CLASS(QChartView)

namespace cutwater::editor {

// One chart of a result, its axes plain or logarithmic as wished, and its numbers as tables: for
// exact reading, and for those who cannot see the chart.
class PlotPage : public QWidget {
    Q_OBJECT

public:
    PlotPage(std::shared_ptr<const sdk::Result> result, std::vector<std::size_t> series,
             QWidget* parent = nullptr);

    QChart* chart() const;
    QByteArray svg() const;
    // Empty, or the sentence why not.
    QString saveSvg(const QString& path) const;
    QString asCsv() const;
    QString asText() const;
    void copy() const; // as a picture, SVG and text at once

signals:
    void labelChosen(const QString& label); // of a bar that was clicked

protected:
    void changeEvent(QEvent* event) override;

private:
    std::vector<const sdk::Series*> series() const;
    sdk::Result numbers() const;
    void draw();
    void watchBars();
    void askWhere();

    std::shared_ptr<const sdk::Result> m_result;
    std::vector<std::size_t> m_series;
    QChartView* m_view;
    QStackedWidget* m_stack;
    QCheckBox* m_logX;
    QCheckBox* m_logY;
    QCheckBox* m_numbers;
    QLabel* m_leftOut;
};

} // namespace cutwater::editor
