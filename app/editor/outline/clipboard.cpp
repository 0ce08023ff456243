// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/outline/clipboard.h"

#include "app/editor/outline/node_words.h"
#include "models/document/document.h"
#include "models/project/edits/add.h"
#include "models/project/edits/arrange.h"
#include "models/project/edits/fragment.h"
#include "models/project/edits/ids.h"
#include "models/project/index.h"

#include <QCoreApplication>
#include <QDataStream>
#include <QIODevice>
#include <QRegularExpression>
#include <QStringList>

#include <set>

namespace cutwater::editor {

namespace {

constexpr std::size_t kMostLines = 20000;

// A shared gate is written out once; after that its name says enough.
QString toLines(const project::Project& fragment) {
    const project::Index index(fragment);
    struct Line {
        project::Id id;
        int depth;
    };
    std::vector<Line> left;
    for (auto top = fragment.tops.rbegin(); top != fragment.tops.rend(); ++top)
        left.push_back({top->node.id, 0});
    std::set<project::Id> seen;
    QString text;
    std::size_t lines = 0;
    while (!left.empty() && lines++ < kMostLines) {
        const Line line = left.back();
        left.pop_back();
        const project::Gate* gate = index.gate(line.id);
        const project::Event* event = gate ? nullptr : index.event(line.id);
        if (!gate && !event) continue;
        text += QString(line.depth, '\t') + (gate ? nameOf(*gate) : nameOf(*event));
        if (gate) text += QStringLiteral("  [%1]").arg(kindWords(*gate));
        text += '\n';
        if (!gate || !seen.insert(line.id).second) continue;
        if (!gate->condition.id.empty()) left.push_back({gate->condition.id, line.depth + 1});
        for (auto input = gate->inputs.rbegin(); input != gate->inputs.rend(); ++input)
            left.push_back({input->id, line.depth + 1});
    }
    return text;
}

int depthOf(const QString& line) {
    int depth = 0;
    for (const QChar character : line) {
        if (character == '\t')
            depth += 4;
        else if (character == ' ')
            depth += 1;
        else
            break;
    }
    return depth;
}

// "no fuel  [and]": takes the kind off the end, as toLines() writes it. With k of a vote, else 0.
std::optional<std::pair<project::GateKind, int>> takeKind(QString& text) {
    static const QRegularExpression pattern(QStringLiteral("\\s+\\[([^\\[\\]]+)\\]$"));
    static const QRegularExpression vote(QStringLiteral("^(\\d+)\\D+\\d+$"));
    const auto match = pattern.match(text);
    if (!match.hasMatch()) return std::nullopt;
    const QString kind = match.captured(1);
    std::optional<std::pair<project::GateKind, int>> found;
    for (const auto each : {project::GateKind::andGate, project::GateKind::orGate,
                            project::GateKind::inhibit, project::GateKind::exactlyOne,
                            project::GateKind::notGate, project::GateKind::priorityAnd})
        if (kind == words(each)) found = {each, 0};
    if (const auto k = vote.match(kind); k.hasMatch())
        found = {project::GateKind::vote, k.captured(1).toInt()};
    if (found) text.truncate(match.capturedStart());
    return found;
}

} // namespace

std::unique_ptr<QMimeData> toMime(const project::Project& project,
                                  const std::vector<project::Id>& nodes) {
    const auto fragment = project::edits::copyNodes(project, nodes);
    if (!fragment || fragment->tops.empty()) return nullptr;
    const auto text = document::write(*fragment);
    if (!text) return nullptr;
    auto data = std::make_unique<QMimeData>();
    data->setData(kFragmentType, QByteArray::fromStdString(*text));
    data->setText(toLines(*fragment));
    return data;
}

std::optional<project::Project> fromLines(const QString& whole) {
    project::Project fragment;
    struct Open {
        int depth;
        std::size_t gate;
    };
    std::vector<Open> open;
    std::set<project::Id> ids;
    const QStringList lines = whole.split('\n');
    if (lines.size() > static_cast<qsizetype>(kMostLines)) return std::nullopt;
    for (qsizetype i = 0; i < lines.size(); ++i) {
        QString text = lines[i].trimmed();
        if (text.isEmpty()) continue;
        const auto kind = takeKind(text);
        const int depth = depthOf(lines[i]);
        qsizetype next = i + 1;
        while (next < lines.size() && lines[next].trimmed().isEmpty())
            ++next;
        const bool isGate = kind || (next < lines.size() && depthOf(lines[next]) > depth);
        const project::Id id =
            project::edits::uniqueId(project::edits::slug(text.toStdString()),
                                     [&](const project::Id& each) { return ids.contains(each); });
        ids.insert(id);
        while (!open.empty() && open.back().depth >= depth)
            open.pop_back();
        if (open.empty()) {
            project::TopEvent top;
            top.id = "T" + std::to_string(fragment.tops.size() + 1);
            top.node.id = id;
            fragment.tops.push_back(std::move(top));
        } else {
            fragment.gates[open.back().gate].inputs.push_back({id, {}});
        }
        if (isGate) {
            project::Gate gate;
            gate.id = id;
            gate.name = text.toStdString();
            if (kind) gate.kind = kind->first;
            if (kind && kind->second > 0) gate.k = kind->second;
            open.push_back({depth, fragment.gates.size()});
            fragment.gates.push_back(std::move(gate));
        } else {
            project::Event event;
            event.id = id;
            event.name = text.toStdString();
            fragment.events.push_back(std::move(event));
        }
    }
    if (fragment.tops.empty()) return std::nullopt;
    return fragment;
}

std::optional<project::Project> fromMime(const QMimeData& data) {
    if (data.hasFormat(kFragmentType)) {
        auto loaded = document::parse(data.data(kFragmentType).toStdString());
        if (loaded) return std::move(loaded->project);
    }
    return data.hasText() ? fromLines(data.text()) : std::nullopt;
}

namespace {

// This process and this session in it.
QByteArray tagOf(const Session& session) {
    return QByteArray::number(QCoreApplication::applicationPid()) + ':' +
           QByteArray::number(reinterpret_cast<quintptr>(&session));
}

} // namespace

std::unique_ptr<QMimeData> dragMime(const Session& session,
                                    const std::vector<project::edits::Use>& uses) {
    std::vector<project::Id> nodes;
    for (const auto& use : uses)
        nodes.push_back(use.node);
    auto mime = toMime(*session.project(), nodes);
    if (!mime) mime = std::make_unique<QMimeData>();
    mime->setData(kUsesType, usesToBytes(uses));
    mime->setData(kSessionType, tagOf(session));
    return mime;
}

std::vector<project::edits::Use> usesOf(const Session& session, const QMimeData& data) {
    if (!data.hasFormat(kUsesType) || data.data(kSessionType) != tagOf(session)) return {};
    return usesFromBytes(data.data(kUsesType));
}

project::edits::Result putUses(const project::Project& project,
                               const std::vector<project::edits::Use>& uses,
                               const project::edits::Place& place, bool share) {
    namespace edits = project::edits;
    if (!share) return edits::moveUses(project, uses, place);
    edits::Result result = edits::shareNode(project, place, uses.front().node);
    edits::Place next = place;
    std::vector<project::Id> touched{uses.front().node};
    for (std::size_t i = 1; result && i < uses.size(); ++i) {
        if (next.row < edits::kLoose) ++next.row;
        result = edits::shareNode(result->project, next, uses[i].node);
        touched.push_back(uses[i].node);
    }
    if (result) result->touched = touched;
    return result;
}

QByteArray usesToBytes(const std::vector<project::edits::Use>& uses) {
    QByteArray bytes;
    QDataStream stream(&bytes, QIODevice::WriteOnly);
    for (const auto& use : uses)
        stream << QByteArray::fromStdString(use.node) << QByteArray::fromStdString(use.parent)
               << static_cast<quint64>(use.row);
    return bytes;
}

std::vector<project::edits::Use> usesFromBytes(const QByteArray& bytes) {
    std::vector<project::edits::Use> uses;
    QDataStream stream(bytes);
    while (!stream.atEnd()) {
        QByteArray node, parent;
        quint64 row = 0;
        stream >> node >> parent >> row;
        if (stream.status() != QDataStream::Ok) break;
        uses.push_back({node.toStdString(), parent.toStdString(), static_cast<std::size_t>(row)});
    }
    return uses;
}

} // namespace cutwater::editor
