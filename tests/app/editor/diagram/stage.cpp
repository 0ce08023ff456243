// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/editor/diagram/stage.h"

#include "plugins/graphviz-layout/placement.h"

#include <QElapsedTimer>
#include <QMouseEvent>
#include <QTest>

#include <stdexcept>
#include <thread>

namespace cutwater::test {

using editor::kNoBox;

namespace {

project::Event event(const std::string& id, const std::string& name) {
    project::Event result;
    result.id = id;
    result.name = name;
    project::Quantity quantity;
    quantity.value = 1e-3;
    result.model.kind = project::ModelKind::probability;
    result.model.set(project::Role::probability, quantity);
    return result;
}

project::Gate gate(const std::string& id, project::GateKind kind, const std::string& name,
                   const std::vector<std::string>& inputs) {
    project::Gate result;
    result.id = id;
    result.kind = kind;
    result.name = name;
    for (const std::string& input : inputs)
        result.inputs.push_back({input, {}});
    return result;
}

project::TopEvent top(const std::string& node) {
    project::TopEvent result;
    result.id = "T1";
    result.name = "No steam";
    result.node.id = node;
    return result;
}

} // namespace

project::Project largeTree(std::size_t events) {
    project::Project project;
    project.name = "A large plant (invented)";
    std::vector<std::string> level;
    for (std::size_t i = 1; i <= events; ++i) {
        const std::string id = "E" + std::to_string(i);
        project.events.push_back(event(id, "Valve " + id + " of the fuel line fails to open"));
        level.push_back(id);
    }
    std::uint64_t state = 88172645463325252ULL;
    const auto random = [&](std::size_t below) {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        return static_cast<std::size_t>(state % below);
    };
    std::size_t number = 0;
    while (level.size() > 1) {
        std::vector<std::string> next;
        for (std::size_t i = 0; i < level.size();) {
            const std::size_t take = std::min(2 + random(4), level.size() - i);
            std::vector<std::string> inputs(level.begin() + static_cast<std::ptrdiff_t>(i),
                                            level.begin() + static_cast<std::ptrdiff_t>(i + take));
            i += take;
            if (level.size() - i == 1) inputs.push_back(level[i++]);
            const std::string id = "G" + std::to_string(++number);
            const std::string more = "E" + std::to_string(1 + random(events));
            if (number % 10 == 0 && std::find(inputs.begin(), inputs.end(), more) == inputs.end())
                inputs.push_back(more);
            project.gates.push_back(
                gate(id, random(3) == 0 ? project::GateKind::andGate : project::GateKind::orGate,
                     "Function " + id + " lost at the start of the boiler", inputs));
            next.push_back(id);
        }
        level = std::move(next);
    }
    project.tops.push_back(top(level.front()));
    return project;
}

project::Project smallTree() {
    project::Project project;
    project.name = "A small plant (invented)";
    for (const auto& [id, name] :
         std::vector<std::pair<std::string, std::string>>{{"x", "Pump A stops"},
                                                          {"y", "Pump B stops"},
                                                          {"z", "Tank empty"},
                                                          {"s", "Main switch open"}})
        project.events.push_back(event(id, name));
    project.gates.push_back(gate("top", project::GateKind::orGate, "No fuel oil", {"a", "c", "s"}));
    project.gates.push_back(gate("a", project::GateKind::andGate, "Both pumps stop", {"x", "y"}));
    project.gates.push_back(gate("b", project::GateKind::orGate, "No suction", {"y", "z"}));
    project.gates.push_back(gate("c", project::GateKind::andGate, "Reserve lost", {"b", "a"}));
    project.tops.push_back(top("top"));
    return project;
}

sdk::Answer<sdk::LayoutGraph> Layout::place(const sdk::LayoutGraph& graph,
                                            const sdk::Values& values, const sdk::Job& job) const {
    ++calls;
    const int now = ++inside;
    if (now > most) most = now;
    if (sleepMs > 0) std::this_thread::sleep_for(std::chrono::milliseconds(sleepMs));
    struct Leave {
        std::atomic<int>& count;
        ~Leave() { --count; }
    } leave{inside};
    if (throws) throw std::runtime_error("out of paper");
    if (fails) {
        project::Problem problem;
        problem.what = "the boxes do not fit";
        problem.remedy = "take fewer";
        return sdk::Answer<sdk::LayoutGraph>::failed({problem});
    }
    return graphviz::place(graph, values, job);
}

Stage::Stage(project::Project project, const project::Id& top, QSize size) {
    session.start(std::move(project));
    selection.showTop(top);
    panel = std::make_unique<editor::DiagramPanel>(session, selection, &layout);
    panel->setAnimated(false);
    panel->resize(size);
    panel->show();
    (void)QTest::qWaitForWindowExposed(panel.get());
    panel->view().setFocus();
    settle();
}

Stage::~Stage() = default;

bool Stage::settle(int ms) {
    QElapsedTimer clock;
    clock.start();
    while (panel->isBusy() || panel->scene().isMoving()) {
        if (clock.elapsed() > ms) return false;
        QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
    }
    QCoreApplication::processEvents();
    return true;
}

std::size_t Stage::box(const std::string& node, const std::string& parent) const {
    if (parent.empty()) return panel->scene().boxOf(node, {});
    const std::size_t found = panel->scene().boxOf(node, parent);
    return found != kNoBox && at(found).parent == parent ? found : kNoBox;
}

const editor::PageBox& Stage::at(std::size_t box) const {
    return panel->scene().page()->boxes.at(box);
}

QPoint Stage::middle(std::size_t box) const {
    return panel->view().boxOnScreen(box).center();
}

QPoint Stage::handle(std::size_t box) const {
    const editor::BoxItem* item = panel->scene().item(box);
    return panel->view().mapFromScene(item->pos() + item->handle().center());
}

void Stage::click(std::size_t box, Qt::KeyboardModifiers modifiers) {
    QTest::mouseClick(panel->view().viewport(), Qt::LeftButton, modifiers, middle(box));
}

void Stage::doubleClick(std::size_t box) {
    QTest::mouseDClick(panel->view().viewport(), Qt::LeftButton, Qt::NoModifier, middle(box));
}

void Stage::key(int key, Qt::KeyboardModifiers modifiers) {
    QTest::keyClick(&panel->view(), static_cast<Qt::Key>(key), modifiers);
}

void Stage::drag(QPoint from, QPoint to, Qt::KeyboardModifiers modifiers) {
    QWidget* viewport = panel->view().viewport();
    QTest::mousePress(viewport, Qt::LeftButton, {}, from);
    for (int i = 1; i <= 4; ++i) {
        // QTest's own mouseMove holds no button.
        const QPoint place = from + (to - from) * i / 4;
        QMouseEvent move(QEvent::MouseMove, place, viewport->mapToGlobal(place), Qt::NoButton,
                         Qt::LeftButton, modifiers);
        QCoreApplication::sendEvent(viewport, &move);
    }
    QTest::mouseRelease(viewport, Qt::LeftButton, modifiers, to);
}

std::vector<std::string> Stage::inputs(const std::string& id) const {
    std::vector<std::string> result;
    for (const project::Gate& one : session.project()->gates)
        if (one.id == id)
            for (const project::Reference& input : one.inputs)
                result.push_back(input.id);
    return result;
}

} // namespace cutwater::test
