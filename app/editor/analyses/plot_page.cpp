// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/analyses/plot_page.h"

#include "app/editor/answers/own_words.h"

#include "app/editor/analyses/table_page.h"
#include "app/results/cell_text.h"
#include "app/results/render.h"

#include <QApplication>
#include <QBarSet>
#include <QChart>
#include <QChartView>
#include <QCheckBox>
#include <QClipboard>
#include <QEvent>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QHorizontalBarSeries>
#include <QLabel>
#include <QMessageBox>
#include <QMimeData>
#include <QPushButton>
#include <QSaveFile>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTabWidget>
#include <QToolTip>
#include <QVBoxLayout>
#include <QXYSeries>

namespace cutwater::editor {
namespace {

constexpr int kLowest = 260; // pixels of a chart
constexpr std::size_t kTextWidth = 120;

} // namespace

PlotPage::PlotPage(std::shared_ptr<const sdk::Result> result, std::vector<std::size_t> series,
                   QWidget* parent)
    : QWidget(parent), m_result(std::move(result)), m_series(std::move(series)),
      m_view(new QChartView), m_stack(new QStackedWidget(this)),
      m_logX(new QCheckBox(tr("Logarithmic across"), this)),
      m_logY(new QCheckBox(tr("Logarithmic"), this)), m_numbers(new QCheckBox(tr("Numbers"), this)),
      m_leftOut(new QLabel(this)) {
    const bool bars = this->series().front()->kind == sdk::PlotKind::bar;
    m_logX->setVisible(!bars);
    m_logY->setText(bars ? tr("Logarithmic") : tr("Logarithmic upwards"));
    m_logY->setChecked(this->series().front()->logY);
    m_logX->setObjectName("logX");
    m_logY->setObjectName("logY");
    m_numbers->setObjectName("numbers");
    m_numbers->setToolTip(tr("Shows the numbers behind the plot as a table"));
    m_leftOut->setObjectName("leftOut");
    m_leftOut->setWordWrap(true);

    auto* const copyButton = new QPushButton(tr("Copy plot"), this);
    copyButton->setToolTip(tr("Copies the plot as a picture, as SVG and as text"));
    auto* const save = new QPushButton(tr("Save SVG..."), this);
    connect(copyButton, &QPushButton::clicked, this, &PlotPage::copy);
    connect(save, &QPushButton::clicked, this, &PlotPage::askWhere);

    m_view->setRenderHint(QPainter::Antialiasing);
    m_view->setFrameShape(QFrame::NoFrame);
    m_view->setFocusPolicy(Qt::NoFocus); // nothing in it takes keys; its numbers do
    auto* const scroll = new QScrollArea(m_stack);
    scroll->setWidgetResizable(true);
    scroll->setWidget(m_view);
    scroll->setAccessibleName(plotTitle(this->series()));
    m_stack->addWidget(scroll);

    auto* const bar = new QHBoxLayout;
    for (QCheckBox* box : {m_logX, m_logY, m_numbers})
        bar->addWidget(box);
    bar->addStretch(1);
    bar->addWidget(copyButton);
    bar->addWidget(save);
    auto* const layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(bar);
    layout->addWidget(m_stack, 1);
    layout->addWidget(m_leftOut);
    connect(m_logX, &QCheckBox::toggled, this, &PlotPage::draw);
    connect(m_logY, &QCheckBox::toggled, this, &PlotPage::draw);
    connect(m_numbers, &QCheckBox::toggled, this, [this](bool on) {
        if (on && m_stack->count() == 1) {
            const auto shown = std::make_shared<const sdk::Result>(numbers());
            auto* const tabs = new QTabWidget(m_stack);
            for (std::size_t i = 0; i < shown->tables.size(); ++i)
                tabs->addTab(new TablePage(shown, i, tabs), inOwnWords(shown->tables[i].title));
            m_stack->addWidget(tabs);
        }
        m_stack->setCurrentIndex(on ? 1 : 0);
    });
    draw();
}

std::vector<const sdk::Series*> PlotPage::series() const {
    std::vector<const sdk::Series*> all;
    for (const std::size_t i : m_series)
        all.push_back(&m_result->series[i]);
    return all;
}

sdk::Result PlotPage::numbers() const {
    sdk::Result numbers;
    for (const sdk::Series* one : series())
        numbers.tables.push_back(results::tableOf(*one));
    return numbers;
}

QChart* PlotPage::chart() const {
    return m_view->chart();
}

void PlotPage::draw() {
    PlotLook look;
    look.palette = palette();
    look.logX = m_logX->isChecked();
    look.logY = m_logY->isChecked();
    const Plot plot = makePlot(series(), look);
    QChart* const old = m_view->chart();
    m_view->setChart(plot.chart);
    delete old;
    m_view->setMinimumHeight(std::max(kLowest, plot.height));
    m_view->setBackgroundBrush(palette().color(QPalette::Base));
    m_leftOut->setText(
        plot.leftOut == 0
            ? QString()
            : tr("\u26A0 Points that cannot be drawn: %1. Zero has no place on a logarithmic axis, "
                 "and what is not a number has none at all.")
                  .arg(plot.leftOut));
    m_leftOut->setVisible(plot.leftOut > 0);
    watchBars();
}

void PlotPage::watchBars() {
    for (QAbstractSeries* one : chart()->series()) {
        if (auto* const bars = qobject_cast<QAbstractBarSeries*>(one)) {
            const auto labelAt = [this](int index) {
                const auto& labels = series().front()->labels;
                const auto at = static_cast<std::size_t>(index) + 1; // from the bottom upwards
                const std::size_t count = series().front()->y.size();
                return at <= count && count - at < labels.size()
                           ? QString::fromStdString(labels[count - at])
                           : QString();
            };
            connect(bars, &QAbstractBarSeries::clicked, this,
                    [this, labelAt](int index) { emit labelChosen(labelAt(index)); });
            connect(bars, &QAbstractBarSeries::hovered, this,
                    [labelAt](bool over, int index, QBarSet* set) {
                        if (!over) return;
                        QToolTip::showText(QCursor::pos(),
                                           labelAt(index) + ": " + QString::number(set->at(index)));
                    });
        } else if (auto* const line = qobject_cast<QXYSeries*>(one)) {
            connect(line, &QXYSeries::hovered, this, [](const QPointF& at, bool over) {
                if (over)
                    QToolTip::showText(QCursor::pos(), QString("%1; %2").arg(at.x()).arg(at.y()));
            });
        }
    }
}

void PlotPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) draw();
}

QByteArray PlotPage::svg() const {
    return plotSvg(series(), m_logX->isChecked(), m_logY->isChecked());
}

QString PlotPage::saveSvg(const QString& path) const {
    QSaveFile file(path);
    const QByteArray bytes = svg();
    if (file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit())
        return {};
    return tr("%1 cannot be written (%2); choose another place.").arg(path, file.errorString());
}

void PlotPage::askWhere() {
    const QString name = QString::fromStdString(series().front()->id) + ".svg";
    const QString path =
        QFileDialog::getSaveFileName(this, tr("Save plot"), name, tr("SVG pictures (*.svg)"));
    if (path.isEmpty()) return;
    const QString mistake = saveSvg(path);
    if (!mistake.isEmpty()) QMessageBox::warning(this, tr("Save plot"), mistake);
}

QString PlotPage::asCsv() const {
    sdk::Result all = numbers();
    return QString::fromStdString(results::renderCsv(all, all.tables.size() == 1));
}

QString PlotPage::asText() const {
    return QString::fromStdString(results::renderText(numbers(), kTextWidth)).trimmed() + '\n';
}

void PlotPage::copy() const {
    auto* const mime = new QMimeData; // the clipboard's
    mime->setText(asText());
    mime->setData("text/csv", asCsv().toUtf8());
    mime->setData("image/svg+xml", svg());
    mime->setImageData(m_view->grab().toImage());
    QApplication::clipboard()->setMimeData(mime);
}

} // namespace cutwater::editor
