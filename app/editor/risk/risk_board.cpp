// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/risk/risk_board.h"

#include "app/drawing/paint.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace cutwater::editor {

namespace {

// "cell-5-2" is how the drawing names the cell of FI 5 and SI 2.
std::optional<RiskBoard::Cell> cellOf(const drawing::Group& group) {
    if (group.kind != "cell" || group.marks.empty()) return std::nullopt;
    const auto* path = std::get_if<drawing::Path>(&group.marks.front());
    if (!path || path->steps.empty()) return std::nullopt;
    // Indices may be negative: "cell--1-2".
    const QString id = QString::fromStdString(group.id).mid(5);
    const qsizetype dash = id.indexOf('-', 1);
    RiskBoard::Cell cell;
    cell.frequency = id.left(dash).toInt();
    cell.severity = id.mid(dash + 1).toInt();
    double left = 1e9, top = 1e9, right = -1e9, bottom = -1e9;
    for (const drawing::Step& step : path->steps) {
        if (step.kind == drawing::StepKind::close) continue;
        left = std::min(left, step.end.x);
        right = std::max(right, step.end.x);
        top = std::min(top, step.end.y);
        bottom = std::max(bottom, step.end.y);
    }
    cell.box = {left, top, right - left, bottom - top};
    cell.words = RiskBoard::tr("%1, frequency index %2, severity index %3: %4")
                     .arg(QString::fromStdString(group.title))
                     .arg(cell.frequency)
                     .arg(cell.severity)
                     .arg(QString::fromStdString(group.description));
    return cell;
}

} // namespace

RiskBoard::RiskBoard(QWidget* parent) : QWidget(parent) {
    setObjectName("riskBoard");
    setAccessibleName(tr("Risk matrix"));
    setFocusPolicy(Qt::StrongFocus);
    setMinimumSize(420, 300);
}

void RiskBoard::show(drawing::Picture picture) {
    const std::vector<Cell> before = chosen() ? std::vector{*chosen()} : std::vector<Cell>();
    m_picture = std::move(picture);
    m_cells.clear();
    m_chosen.reset();
    for (const drawing::Group& group : m_picture.groups)
        if (auto cell = cellOf(group)) {
            if (!before.empty() && before[0].frequency == cell->frequency &&
                before[0].severity == cell->severity)
                m_chosen = m_cells.size();
            m_cells.push_back(std::move(*cell));
        }
    update();
    if (!before.empty() && !m_chosen) emit chosenChanged();
}

const RiskBoard::Cell* RiskBoard::chosen() const {
    return m_chosen && *m_chosen < m_cells.size() ? &m_cells[*m_chosen] : nullptr;
}

void RiskBoard::choose(std::optional<std::size_t> cell) {
    if (cell && *cell >= m_cells.size()) cell.reset();
    if (cell == m_chosen) return;
    m_chosen = cell;
    setAccessibleDescription(chosen() ? chosen()->words : QString());
    update();
    emit chosenChanged();
}

void RiskBoard::setStale(bool stale) {
    if (stale == m_stale) return;
    m_stale = stale;
    update();
}

double RiskBoard::perPoint() const {
    if (m_picture.width <= 0 || m_picture.height <= 0) return 1;
    return std::min(width() / m_picture.width, height() / m_picture.height);
}

QPointF RiskBoard::origin() const {
    return {(width() - m_picture.width * perPoint()) / 2,
            (height() - m_picture.height * perPoint()) / 2};
}

QRectF RiskBoard::onScreen(const drawing::Box& box) const {
    const double scale = perPoint();
    return {origin() + QPointF(box.left, box.top) * scale,
            QSizeF(box.width * scale, box.height * scale)};
}

std::optional<std::size_t> RiskBoard::cellAt(const QPointF& at) const {
    for (std::size_t i = 0; i < m_cells.size(); ++i)
        if (onScreen(m_cells[i].box).contains(at)) return i;
    return std::nullopt;
}

void RiskBoard::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    if (m_picture.groups.empty()) {
        painter.setPen(palette().color(QPalette::PlaceholderText));
        painter.drawText(rect().adjusted(24, 24, -24, -24), Qt::AlignCenter | Qt::TextWordWrap,
                         tr("The risk matrix is being computed."));
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing);
    // It is paper, in the dark, too: what is seen here is what is printed.
    painter.fillRect(onScreen({0, 0, m_picture.width, m_picture.height}), Qt::white);
    painter.save();
    painter.translate(origin());
    drawing::paint(painter, m_picture, perPoint());
    painter.restore();
    if (const Cell* cell = chosen()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(Qt::black, hasFocus() ? 4 : 3));
        painter.drawRect(onScreen(cell->box).adjusted(2, 2, -2, -2));
        painter.setPen(QPen(Qt::white, 1, Qt::DashLine));
        painter.drawRect(onScreen(cell->box).adjusted(2, 2, -2, -2));
    }
    if (m_stale) {
        const QString text = tr("stale");
        QFont font = painter.font();
        font.setBold(true);
        painter.setFont(font);
        const QSize size = painter.fontMetrics().size(0, text) + QSize(16, 6);
        const QRectF box(onScreen({0, 0, m_picture.width, 0}).right() - size.width() - 6,
                         origin().y() + 6, size.width(), size.height());
        painter.setPen(Qt::black);
        painter.setBrush(Qt::white);
        painter.drawRect(box);
        painter.drawText(box, Qt::AlignCenter, text);
    }
}

void RiskBoard::mousePressEvent(QMouseEvent* event) {
    setFocus(Qt::MouseFocusReason);
    const auto cell = cellAt(event->position());
    choose(cell == m_chosen ? std::nullopt : cell); // the same one again: all of them
}

void RiskBoard::go(int frequency, int severity) {
    if (m_cells.empty()) return;
    const Cell* now = chosen();
    if (!now) return choose(0);
    // The next cell in that direction.
    std::optional<std::size_t> best;
    double nearest = 1e9;
    for (std::size_t i = 0; i < m_cells.size(); ++i) {
        const int df = m_cells[i].frequency - now->frequency;
        const int ds = m_cells[i].severity - now->severity;
        const bool there =
            frequency != 0 ? ds == 0 && df * frequency > 0 : df == 0 && ds * severity > 0;
        const double distance = std::abs(df) + std::abs(ds);
        if (!there || distance >= nearest) continue;
        nearest = distance;
        best = i;
    }
    if (best) choose(best);
}

void RiskBoard::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Up: return go(1, 0);
    case Qt::Key_Down: return go(-1, 0);
    case Qt::Key_Left: return go(0, -1);
    case Qt::Key_Right: return go(0, 1);
    case Qt::Key_Escape: return choose(std::nullopt);
    default: QWidget::keyPressEvent(event);
    }
}

void RiskBoard::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

bool RiskBoard::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        if (const auto cell = cellAt(help->pos()))
            QToolTip::showText(help->globalPos(), m_cells[*cell].words, this);
        else
            QToolTip::hideText();
        return true;
    }
    return QWidget::event(event);
}

} // namespace cutwater::editor
