// SPDX-License-Identifier: GPL-3.0-or-later
// The panel: requests for layouts, what comes back, and what is looked at.
#include "app/editor/diagram/find_bar.h"
#include "app/editor/diagram/marked_path.h"
#include "app/editor/diagram/panel.h"
#include "app/editor/diagram/rename_field.h"
#include "app/editor/diagram/search.h"

#include <QAccessible>
#include <QComboBox>
#include <QLabel>

#include <algorithm>

namespace cutwater::editor {

project::Id DiagramPanel::topToShow() const {
    const project::Project& project = *m_session.project();
    const project::Id& wish = m_selection.top();
    const auto is = [&](const auto& each) { return each.id == wish; };
    if (std::any_of(project.tops.begin(), project.tops.end(), is) ||
        std::any_of(project.gates.begin(), project.gates.end(), is) ||
        std::any_of(project.events.begin(), project.events.end(), is))
        return wish;
    // Nothing was chosen yet, or it is gone.
    return project.tops.empty() ? project::Id() : project.tops.front().id;
}

void DiagramPanel::refresh(std::vector<Spot> reveal) {
    LayoutRequest request;
    request.project = m_session.project();
    request.top = topToShow();
    request.kind = m_kind;
    request.captionKind = m_captions;
    request.paper = m_paper;
    request.orientation = m_orientation;
    if (const auto found = m_folds.find(request.top); found != m_folds.end())
        request.folds = found->second;
    if (m_bringLater) reveal.push_back(*m_bringLater);
    if (m_marksLater)
        for (const project::Id& id : m_selection.marked())
            reveal.push_back({id});
    request.reveal = std::move(reveal);
    if (request.top.empty()) {
        // Nothing is asked of the worker, but an older answer must not come any more.
        m_drawingProblem = tr("This project has no top event yet: add one in the outline.");
        m_answer.reset();
        m_bringLater.reset();
        m_scene->showPage(nullptr, {});
        m_shownTop.clear();
        listSheets();
        showMessage();
        return;
    }
    m_worker->submit(std::move(request));
    m_busyTimer.start();
}

void DiagramPanel::take(const std::shared_ptr<const LayoutAnswer>& answer) {
    if (topToShow() != answer->request.top) return; // another one was asked for
    m_busyTimer.stop();
    m_busy->hide();
    if (m_shownTop != answer->request.top) {
        m_firstLook = true;
        m_sheet = 0;
        m_shownTop = answer->request.top;
    }
    m_drawingProblem.clear();
    if (!answer->problems.empty())
        m_drawingProblem = QString::fromStdString(project::toSentence(answer->problems.front()));
    else if (answer->foldedForRoom)
        m_drawingProblem = tr("Lower gates were folded: more than %1 boxes are not shown at once.")
                               .arg(kMostVisible);
    const bool hasPage = !answer->pages.empty();
    m_answer = answer;
    if (hasPage) m_folds[answer->request.top] = answer->folds;
    if (!hasPage && !answer->problems.empty() && answer->tree && m_scene->page() && !m_firstLook) {
        // The old picture is better than none; the message says that it is old.
        m_drawingProblem += QLatin1Char(' ') + tr("The picture is the one from before.");
        showMessage();
        emit pageShown();
        return;
    }
    m_sheet = std::clamp(m_sheet, 0, std::max(0, sheets() - 1));
    if (hasPage && m_kind == ViewKind::sheets && m_bringLater)
        if (const int there = sheetOf(*m_bringLater); there >= 0) m_sheet = there;
    listSheets();
    const bool first = m_firstLook; // what is selected is looked for in a picture that is new
    put(hasPage ? answer->pages[static_cast<std::size_t>(m_sheet)] : nullptr);
    search(false);
    followMarks(false);
    // What was asked for once and is still hidden did not find room: not asked again.
    const std::vector<Spot>& asked = answer->request.reveal;
    const bool bringNow = m_bringLater.has_value();
    m_mayAsk = !bringNow || std::find(asked.begin(), asked.end(), *m_bringLater) == asked.end();
    m_bringLater.reset();
    followSelection(bringNow || first);
    m_mayAsk = true;
    if (m_marksLater) followMarks(true);
    m_marksLater = false;
    if (!m_renameLater.empty() && m_scene->boxOf(m_renameLater, {}) != kNoBox) startRename();
    enableActions();
    showMessage();
    emit pageShown();
}

void DiagramPanel::put(std::shared_ptr<const Page> page) {
    const std::string anchor = m_firstLook ? std::string() : m_view->anchorKey();
    m_view->keepPlace(anchor, [&] { m_scene->showPage(std::move(page), anchor); });
    if (m_firstLook && m_scene->page()) {
        m_scene->finishMotion();
        firstLook();
        m_firstLook = false;
    }
}

void DiagramPanel::firstLook() {
    m_view->fitPage();
    // Type must be read: rather a part of the tree than all of it too small.
    constexpr double kReadableZoom = 0.72;
    if (m_view->zoom() < kReadableZoom && m_kind == ViewKind::tree) {
        m_view->setZoom(kReadableZoom);
        m_view->showTop();
    }
}

int DiagramPanel::sheets() const {
    return m_answer && m_kind == ViewKind::sheets ? static_cast<int>(m_answer->pages.size()) : 0;
}

void DiagramPanel::showSheet(int sheet) {
    if (sheet < 0 || sheet >= sheets() || m_kind != ViewKind::sheets) return;
    m_sheet = sheet;
    m_firstLook = true; // each sheet is looked at as a whole
    put(m_answer->pages[static_cast<std::size_t>(sheet)]);
    followSelection(false);
    followMarks(false);
    listSheets();
    enableActions();
}

void DiagramPanel::listSheets() {
    const QSignalBlocker quiet(m_sheetList);
    const int count = sheets();
    m_sheetList->setVisible(m_kind == ViewKind::sheets);
    if (m_sheetList->count() != count ||
        (count > 0 && m_sheetList->property("of").value<void*>() != m_answer.get())) {
        m_sheetList->clear();
        for (int i = 0; i < count; ++i)
            m_sheetList->addItem(tr("Sheet %1 of %2: %3")
                                     .arg(i + 1)
                                     .arg(count)
                                     .arg(QString::fromStdString(
                                         m_answer->pages[static_cast<std::size_t>(i)]->title)));
        m_sheetList->setProperty("of", QVariant::fromValue(static_cast<void*>(
                                           const_cast<LayoutAnswer*>(m_answer.get()))));
    }
    m_sheetList->setCurrentIndex(count > 0 ? m_sheet : -1);
}

int DiagramPanel::sheetOf(const Spot& spot) const {
    int best = -1, bestRank = 0;
    for (int s = 0; s < sheets(); ++s)
        for (const PageBox& box : m_answer->pages[static_cast<std::size_t>(s)]->boxes) {
            if (box.node != spot.node) continue;
            const int rank = !spot.parent.empty() && box.parent == spot.parent ? 3
                             : box.transfer                                    ? 1
                                                                               : 2;
            if (rank > bestRank) {
                best = s;
                bestRank = rank;
            }
        }
    return best;
}

bool DiagramPanel::bring(const Spot& spot) {
    if (!m_answer || !m_answer->tree || m_answer->tree->project != m_session.project() ||
        m_answer->request.top != topToShow()) {
        m_bringLater = spot; // a newer snapshot, or another tree, is on its way
        return false;
    }
    if (m_mayAsk && m_answer->tree->homeOf(spot.node) == drawing::kNoItem)
        // It stands in another tree: that one is looked at then.
        for (const project::TopEvent& top : m_answer->tree->project->tops)
            if (m_answer->tree->reaches(top.node.id, spot.node)) {
                m_bringLater = spot;
                m_selection.showTop(top.id);
                return false;
            }
    if (m_kind == ViewKind::sheets) {
        const int there = sheetOf(spot);
        const std::size_t box = m_scene->boxOf(spot.node, spot.parent);
        if (there < 0) return false;
        const bool here =
            box != kNoBox &&
            (spot.parent.empty() || m_scene->page()->boxes[box].parent == spot.parent) &&
            !(spot.parent.empty() && m_scene->page()->boxes[box].transfer);
        if (!here && there != m_sheet) showSheet(there);
        return true;
    }
    const Folds& folds = m_folds[m_shownTop];
    if (m_mayAsk && editor::isHidden(*m_answer->tree, folds, spot)) {
        m_bringLater = spot;
        refresh();
        return false;
    }
    return true;
}

void DiagramPanel::jumpTo(const Spot& spot) {
    m_selection.selectSpots({spot});
    followSelection(true);
    m_view->setFocus();
}

void DiagramPanel::followSelection(bool scroll) {
    const Spot current = m_selection.current();
    if (!m_scene->page()) {
        if (scroll && !current.node.empty() && isBusy()) m_bringLater = current;
        return;
    }
    if (scroll && !current.node.empty() && !bring(current)) return;
    std::vector<std::size_t> boxes;
    std::set<project::Id> nodes;
    for (const Spot& spot : m_selection.spots()) {
        nodes.insert(spot.node);
        const std::size_t box = m_scene->boxOf(spot.node, spot.parent);
        if (box != kNoBox) boxes.push_back(box);
    }
    m_scene->setSelected(boxes, nodes);
    if (scroll && !boxes.empty()) m_view->showBox(boxes.back());
    if (!boxes.empty()) {
        const PageBox& box = m_scene->page()->boxes[boxes.back()];
        m_view->setAccessibleDescription(
            QString::fromStdString(box.title + ": " + box.description));
        QAccessibleEvent event(m_view, QAccessible::DescriptionChanged);
        QAccessible::updateAccessibility(&event);
    }
    enableActions();
}

void DiagramPanel::followMarks(bool scroll) {
    m_markWords.clear();
    if (m_selection.marked().empty() || !m_answer || !m_answer->tree) {
        m_scene->setMarked({});
        showMessage();
        return;
    }
    const MarkedPath path = markedPath(*m_answer->tree, m_selection.marked());
    m_scene->setMarked(path.nodes);
    m_markWords = m_selection.reason().trimmed();
    if (!m_markWords.isEmpty() && !QStringLiteral(".!?").contains(m_markWords.back()))
        m_markWords += QLatin1Char('.');
    if (path.reachesTop)
        m_markWords += (m_markWords.isEmpty() ? QString() : QStringLiteral(" ")) +
                       tr("The heavy lines show how it reaches the top. Esc clears them.");
    else
        m_markWords += (m_markWords.isEmpty() ? QString() : QStringLiteral(" ")) +
                       tr("Marked with a dot and a heavy frame. Esc clears it.");
    showMessage();
    if (!scroll || !m_scene->page()) return;
    if (m_kind == ViewKind::sheets) {
        int first = -1;
        for (const project::Id& id : m_selection.marked()) {
            const int there = sheetOf({id});
            if (there >= 0 && (first < 0 || there < first)) first = there;
        }
        if (first >= 0 && first != m_sheet) showSheet(first);
        return;
    }
    std::vector<std::size_t> boxes;
    bool hidden = false;
    for (const project::Id& id : m_selection.marked()) {
        const std::size_t box = m_scene->boxOf(id, {});
        if (box != kNoBox) boxes.push_back(box);
        hidden |= editor::isHidden(*m_answer->tree, m_folds[m_shownTop], {id});
    }
    if (hidden && !m_marksLater) {
        m_marksLater = true;
        refresh();
        return;
    }
    if (path.reachesTop && !boxes.empty()) boxes.push_back(0);
    m_view->fitBoxes(boxes);
}

void DiagramPanel::search(bool jump) {
    const QString text = m_find->text();
    m_hits.clear();
    m_hit = -1;
    if (m_answer && m_answer->tree) m_hits = findNodes(*m_answer->tree, text.toStdString());
    m_scene->setHits({m_hits.begin(), m_hits.end()});
    const project::Id current = m_selection.current().node;
    for (std::size_t i = 0; i < m_hits.size(); ++i)
        if (m_hits[i] == current) m_hit = static_cast<int>(i);
    m_find->showHits(m_hit, static_cast<int>(m_hits.size()));
    if (jump && !m_hits.empty() && m_hit < 0) nextHit(1);
}

void DiagramPanel::find(const QString&) {
    search(true);
}

void DiagramPanel::nextHit(int step) {
    if (m_hits.empty()) return;
    const int count = static_cast<int>(m_hits.size());
    m_hit = m_hit < 0 ? (step > 0 ? 0 : count - 1) : (m_hit + step + count) % count;
    m_find->showHits(m_hit, count);
    m_selection.selectSpots({Spot{m_hits[static_cast<std::size_t>(m_hit)]}});
    followSelection(true);
}

void DiagramPanel::fold(const project::Id& gate, bool folded, bool allBelow) {
    if (m_kind != ViewKind::tree || !m_answer || !m_answer->tree) return;
    Folds& folds = m_folds[m_shownTop];
    std::vector<project::Id> gates{gate};
    if (allBelow) gates = gatesBelow(*m_answer->tree, gate);
    for (const project::Id& one : gates) {
        if (folded)
            folds.insert(one);
        else
            folds.erase(one);
    }
    refresh();
}

bool DiagramPanel::isFolded(const project::Id& gate) const {
    const auto found = m_folds.find(m_shownTop);
    return found != m_folds.end() && found->second.contains(gate);
}

QString DiagramPanel::message() const {
    return m_drawingProblem.isEmpty() ? m_markWords : m_drawingProblem;
}

void DiagramPanel::showMessage() {
    m_message->setText(message());
    m_message->setVisible(!message().isEmpty());
}

} // namespace cutwater::editor
