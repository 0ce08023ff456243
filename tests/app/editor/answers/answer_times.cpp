// SPDX-License-Identifier: GPL-3.0-or-later
// How long it takes from an edit to its answer, and for how long the window stands still meanwhile:
// editor_answer_times PROJECT
#include "app/editor/answers/answer_panel.h"

#include "models/document/document.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QTest>

#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <numeric>

using namespace cutwater;
using namespace cutwater::editor;

namespace {

// The longest time between two turns of the event loop, in milliseconds.
class Pulse : public QObject {
public:
    Pulse() { startTimer(1, Qt::PreciseTimer); }
    double longest = 0;
    void begin() {
        longest = 0;
        m_since.start();
    }

protected:
    void timerEvent(QTimerEvent*) override {
        if (!m_since.isValid()) return;
        longest = std::max(longest, static_cast<double>(m_since.nsecsElapsed()) / 1e6);
        m_since.start();
    }

private:
    QElapsedTimer m_since;
};

// Gates of ten under gates of ten, or above and, until there are `events` of them.
project::Project large(int events) {
    project::Project plant;
    plant.name = "large";
    const auto gateOf = [](int level, int at) {
        return "g" + std::to_string(level) + "." + std::to_string(at);
    };
    for (int i = 0; i < events; ++i) {
        project::Event event;
        event.id = "e" + std::to_string(i);
        event.name = "part " + std::to_string(i) + " fails";
        event.model.kind = project::ModelKind::probability;
        project::Quantity quantity;
        quantity.value = 1e-4 * (1 + i % 17);
        quantity.unit = project::Unit::number;
        quantity.source.document = "invented for the measurement";
        event.model.set(project::Role::probability, quantity);
        plant.events.push_back(std::move(event));
    }
    int level = 0, below = events;
    while (below > 1) {
        const int here = (below + 9) / 10;
        for (int at = 0; at < here; ++at) {
            project::Gate gate;
            gate.id = gateOf(level, at);
            gate.kind = at % 3 == 0 ? project::GateKind::andGate : project::GateKind::orGate;
            for (int i = 10 * at; i < std::min(10 * at + 10, below); ++i)
                gate.inputs.push_back(
                    {level == 0 ? "e" + std::to_string(i) : gateOf(level - 1, i), {}});
            // Some sharing across the tree.
            if (level == 0 && at > 0) gate.inputs.push_back({"e" + std::to_string(at % 10), {}});
            plant.gates.push_back(std::move(gate));
        }
        below = here;
        ++level;
    }
    plant.gates.back().kind = project::GateKind::orGate;
    project::TopEvent top;
    top.id = "T";
    top.name = "the plant stops";
    top.node.id = plant.gates.back().id;
    plant.tops.push_back(top);
    return plant;
}

void raise(project::Project& project, std::size_t at) {
    const auto change = [](project::FailureModel& model) {
        for (project::Assignment& number : model.numbers)
            if (number.role == project::Role::probability || number.role == project::Role::rate)
                number.quantity.value *= 1.01;
    };
    if (project.modes.empty())
        change(project.events[at % project.events.size()].model);
    else
        change(project.modes[at % project.modes.size()].model);
}

void measure(const char* name, const project::Project& start, const std::string& top) {
    Selection selection;
    selection.showTop(top);
    AnswerPanel panel(&selection);
    panel.resize(360, 760);
    panel.show();
    Pulse pulse;
    QTest::qWait(50);
    auto project = std::make_shared<project::Project>(start);
    std::vector<double> delays, seconds, standstill;
    double first = 0;
    for (std::size_t edit = 0; edit <= 30; ++edit) {
        if (edit > 0) {
            project = std::make_shared<project::Project>(*project);
            if (edit % 2 == 0) {
                raise(*project, 7 * edit);
            } else { // another event in some gate
                project::Gate& gate = project->gates[(13 * edit) % project->gates.size()];
                const std::string& id = project->events[(29 * edit) % project->events.size()].id;
                const bool fits = gate.kind == project::GateKind::orGate ||
                                  gate.kind == project::GateKind::andGate;
                const bool there = std::any_of(gate.inputs.begin(), gate.inputs.end(),
                                               [&](const auto& input) { return input.id == id; });
                if (fits && !there) gate.inputs.push_back({id, {}});
            }
        }
        pulse.begin();
        panel.setProject(project);
        if (!QTest::qWaitFor([&] { return panel.answers().state() == LiveAnswers::State::current; },
                             600000))
            break;
        QTest::qWait(20); // painting included
        const double delay = static_cast<double>(panel.answers().lastDelay().count());
        if (edit == 0) {
            first = delay;
            continue;
        }
        delays.push_back(delay);
        seconds.push_back(1000 * panel.answers().answer()->seconds);
        standstill.push_back(pulse.longest);
    }
    for (auto* values : {&delays, &seconds, &standstill})
        std::sort(values->begin(), values->end());
    const auto median = [](const std::vector<double>& v) { return v[v.size() / 2]; };
    fmt::print(
        "{:<24} {:<6} first {:6.0f} ms; edit to answer {:5.0f} ms (median), {:5.0f} ms "
        "(longest), of these computing {:6.1f} ms and {:6.1f} ms; window still for {:.1f} ms "
        "at most\n",
        name, top, first, median(delays), delays.back(), median(seconds), seconds.back(),
        standstill.back());
}

} // namespace

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    if (argc != 2) {
        std::fputs("usage: editor_answer_times PROJECT\n", stderr);
        return 2;
    }
    const auto loaded = document::load(argv[1]);
    if (!loaded) {
        std::fputs("the project cannot be read\n", stderr);
        return 1;
    }
    for (const project::TopEvent& top : loaded->project.tops)
        measure("the file", loaded->project, top.id);
    measure("2,000 events", large(2000), "T");
    measure("20,000 events", large(20000), "T");
    return 0;
}
