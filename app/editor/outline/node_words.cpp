// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/outline/node_words.h"

#include <QCoreApplication>
#include <QLocale>

namespace cutwater::editor {

namespace {

struct NodeWords {
    Q_DECLARE_TR_FUNCTIONS(NodeWords)
};

QString utf8(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

} // namespace

QString words(project::GateKind kind) {
    switch (kind) {
    case project::GateKind::andGate: return NodeWords::tr("and");
    case project::GateKind::orGate: return NodeWords::tr("or");
    case project::GateKind::vote: return NodeWords::tr("vote");
    case project::GateKind::inhibit: return NodeWords::tr("inhibit");
    case project::GateKind::exactlyOne: return NodeWords::tr("exclusive or");
    case project::GateKind::notGate: return NodeWords::tr("not");
    case project::GateKind::priorityAnd: return NodeWords::tr("priority and");
    }
    return {};
}

QString meaning(project::GateKind kind) {
    switch (kind) {
    case project::GateKind::andGate: return NodeWords::tr("all inputs must occur");
    case project::GateKind::orGate: return NodeWords::tr("one input is enough");
    case project::GateKind::vote: return NodeWords::tr("at least k of the inputs must occur");
    case project::GateKind::inhibit:
        return NodeWords::tr("the inputs count only while the condition holds");
    case project::GateKind::exactlyOne:
        return NodeWords::tr("exactly one of the inputs must occur");
    case project::GateKind::notGate: return NodeWords::tr("the input must not occur");
    case project::GateKind::priorityAnd:
        return NodeWords::tr("all inputs must occur, in their order");
    }
    return {};
}

QString words(project::EventKind kind) {
    switch (kind) {
    case project::EventKind::basic: return NodeWords::tr("basic");
    case project::EventKind::undeveloped: return NodeWords::tr("undeveloped");
    case project::EventKind::house: return NodeWords::tr("house");
    case project::EventKind::conditioning: return NodeWords::tr("condition");
    }
    return {};
}

QString meaning(project::EventKind kind) {
    switch (kind) {
    case project::EventKind::basic: return NodeWords::tr("a failure");
    case project::EventKind::undeveloped:
        return NodeWords::tr("a failure that is looked at no further here");
    case project::EventKind::house:
        return NodeWords::tr("a switch of the tree, set to true or false");
    case project::EventKind::conditioning: return NodeWords::tr("a condition of an inhibit gate");
    }
    return {};
}

QString kindWords(const project::Gate& gate) {
    if (gate.kind == project::GateKind::vote)
        return NodeWords::tr("%1 of %2")
            .arg(gate.k ? QString::number(*gate.k) : QStringLiteral("?"))
            .arg(gate.inputs.size());
    return words(gate.kind);
}

QString kindWords(const project::Event& event) {
    if (event.kind == project::EventKind::house)
        return event.state ? NodeWords::tr("house, true") : NodeWords::tr("house, false");
    return words(event.kind);
}

QString nameOf(const project::Gate& gate) {
    return QString::fromStdString(gate.name.empty() ? gate.id : gate.name);
}

QString nameOf(const project::Event& event) {
    return QString::fromStdString(event.name.empty() ? event.id : event.name);
}

QString numberWords(double value) {
    return QString::number(value, 'g', QLocale::FloatingPointShortest);
}

QString modelWords(const project::FailureModel& model) {
    if (model.kind == project::ModelKind::none) return {};
    QString text;
    for (const project::Assignment& number : model.numbers) {
        const project::Quantity& quantity = number.quantity;
        text += text.isEmpty() ? QString() : QStringLiteral(", ");
        if (!quantity.parameter.empty()) {
            text += QString::fromStdString(quantity.parameter);
            continue;
        }
        text += numberWords(quantity.value);
        if (const auto symbol = project::facts(quantity.unit).symbol; !symbol.empty())
            text += QStringLiteral(" ") + utf8(symbol);
    }
    const QString kind = NodeWords::tr(facts(model.kind).word.data());
    return text.isEmpty() ? kind : NodeWords::tr("%1: %2").arg(kind, text);
}

} // namespace cutwater::editor
