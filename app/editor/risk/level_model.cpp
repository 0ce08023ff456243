// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/risk/level_model.h"

#include "app/editor/details/quantity_row.h"
#include "app/editor/outline/node_words.h"
#include "models/project/edits/scales.h"
#include "models/worksheet/risk_matrix.h"
#include "models/worksheet/scales.h"

namespace cutwater::editor {

namespace edits = project::edits;
using project::RatingLevel;
using project::RiskBand;
using project::RiskLevel;

namespace {

enum Column { numberColumn, wordColumn, meaningColumn, valueColumn };

edits::Scale scaleOf(LevelList list) {
    return list == LevelList::severity     ? edits::Scale::severity
           : list == LevelList::occurrence ? edits::Scale::occurrence
                                           : edits::Scale::detection;
}

bool isScale(LevelList list) {
    return list == LevelList::severity || list == LevelList::occurrence ||
           list == LevelList::detection;
}

// The matrix that counts, as one of the project's own: what is changed is no longer what its source
// says.
project::RiskMatrix ownMatrix(const project::Project& project) {
    project::RiskMatrix matrix = worksheet::matrixOf(project);
    if (project.worksheet.matrix.empty()) {
        matrix.name = "of this project, after " + matrix.name;
        matrix.source = {};
    }
    return matrix;
}

} // namespace

LevelModel::LevelModel(Session& session, QObject* parent)
    : QAbstractTableModel(parent), m_session(session) {
    m_steps = steps();
    connect(&m_session, &Session::projectChanged, this, &LevelModel::follow);
}

void LevelModel::follow() {
    beginResetModel();
    m_steps = steps();
    endResetModel();
    emit ownChanged();
}

void LevelModel::setList(LevelList list) {
    m_list = list;
    follow();
}

bool LevelModel::hasValue() const {
    return m_list == LevelList::occurrence || m_list == LevelList::frequencies ||
           m_list == LevelList::severities;
}

bool LevelModel::isOwn() const {
    const project::Worksheet& own = m_session.project()->worksheet;
    switch (m_list) {
    case LevelList::severity: return !own.severityScale.empty();
    case LevelList::occurrence: return !own.occurrenceScale.empty();
    case LevelList::detection: return !own.detectionScale.empty();
    case LevelList::frequencies:
    case LevelList::severities:
    case LevelList::bands: break;
    }
    return !own.matrix.empty();
}

std::vector<LevelModel::Step> LevelModel::steps() const {
    std::vector<Step> made;
    const auto rating = [&](const std::vector<RatingLevel>& levels) {
        for (const RatingLevel& each : levels)
            made.push_back(
                {each.rating, each.word, each.meaning, each.limit, each.line, each.kept});
    };
    const auto axis = [&](const std::vector<RiskLevel>& levels) {
        for (const RiskLevel& each : levels)
            made.push_back({each.index, each.word, each.meaning, each.value, each.line, each.kept});
    };
    const Snapshot project = m_session.project();
    if (isScale(m_list)) {
        const worksheet::Scales scales = worksheet::scalesOf(*project);
        rating(m_list == LevelList::severity     ? scales.severity
               : m_list == LevelList::occurrence ? scales.occurrence
                                                 : scales.detection);
        return made;
    }
    const project::RiskMatrix matrix = worksheet::matrixOf(*project);
    if (m_list == LevelList::frequencies) axis(matrix.frequencies);
    if (m_list == LevelList::severities) axis(matrix.severities);
    if (m_list == LevelList::bands)
        for (const RiskBand& each : matrix.bands)
            made.push_back({each.from, each.word, each.meaning, {}, each.line, each.kept});
    return made;
}

bool LevelModel::write(std::vector<Step> steps) {
    if (isScale(m_list)) {
        std::vector<RatingLevel> levels;
        for (Step& each : steps)
            levels.push_back(
                {each.number, each.word, each.meaning, each.value, each.line, each.kept});
        return apply(
            [&](const project::Project& p) { return edits::setScale(p, scaleOf(m_list), levels); });
    }
    project::RiskMatrix matrix = ownMatrix(*m_session.project());
    if (m_list == LevelList::bands) {
        matrix.bands.clear();
        for (Step& each : steps)
            matrix.bands.push_back({each.number, each.word, each.meaning, each.line, each.kept});
    } else {
        auto& axis = m_list == LevelList::frequencies ? matrix.frequencies : matrix.severities;
        axis.clear();
        for (Step& each : steps)
            axis.push_back(
                {each.number, each.word, each.meaning, each.value, each.line, each.kept});
    }
    return apply([&](const project::Project& p) {
        return edits::setMatrix(p, matrix, worksheet::imoMatrix());
    });
}

bool LevelModel::apply(const Edit& edit) {
    // Said beside the table, too: the status bar is far away.
    const auto result = edit(*m_session.project());
    if (!result) {
        emit refused(sentence(result.problems().front()));
        return false;
    }
    emit refused({});
    return m_session.apply(edit);
}

bool LevelModel::addStep() {
    std::vector<Step> steps = m_steps;
    Step step;
    step.number = steps.empty() ? 1 : steps.back().number.value_or(0) + 1;
    step.word = tr("new").toStdString();
    if (steps.empty() || !steps.back().value)
        step.value.reset();
    else
        step.value = *steps.back().value * 10;
    // Of an occurrence scale the last step has no limit: the one before it gets one.
    if (m_list == LevelList::occurrence && steps.size() > 1 && !steps.back().value &&
        steps[steps.size() - 2].value)
        steps.back().value = *steps[steps.size() - 2].value * 10;
    steps.push_back(std::move(step));
    return write(std::move(steps));
}

bool LevelModel::removeStep(int row) {
    if (row < 0 || row >= rowCount()) return false;
    std::vector<Step> steps = m_steps;
    steps.erase(steps.begin() + row);
    // A scale without steps would be the standard one: that is what reset() is for.
    if (steps.empty() && m_list != LevelList::bands) {
        emit refused(tr("This is the last step: a list without steps is none."));
        return false;
    }
    return write(std::move(steps));
}

bool LevelModel::reset() {
    if (!isOwn()) return false;
    if (isScale(m_list))
        return apply(
            [&](const project::Project& p) { return edits::setScale(p, scaleOf(m_list), {}); });
    return apply(
        [&](const project::Project& p) { return edits::setMatrix(p, {}, worksheet::imoMatrix()); });
}

int LevelModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_steps.size());
}

int LevelModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : hasValue() ? 4 : 3;
}

QVariant LevelModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || (role != Qt::DisplayRole && role != Qt::EditRole)) return {};
    const Step& step = m_steps[static_cast<std::size_t>(index.row())];
    switch (index.column()) {
    case numberColumn: return step.number ? QVariant(QString::number(*step.number)) : QVariant();
    case wordColumn: return QString::fromStdString(step.word);
    case meaningColumn: return QString::fromStdString(step.meaning);
    case valueColumn: return step.value ? numberWords(*step.value) : QString();
    default: return {};
    }
}

QVariant LevelModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    const bool scale = isScale(m_list);
    switch (section) {
    case numberColumn:
        return scale                        ? tr("Rating")
               : m_list == LevelList::bands ? tr("From risk index")
                                            : tr("Index");
    case wordColumn: return tr("Word");
    case meaningColumn: return tr("Meaning");
    case valueColumn:
        return m_list == LevelList::occurrence    ? tr("At most, per year")
               : m_list == LevelList::frequencies ? tr("Per ship-year")
                                                  : tr("Equivalent fatalities");
    default: return {};
    }
}

Qt::ItemFlags LevelModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return {};
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsEditable;
}

bool LevelModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!index.isValid() || role != Qt::EditRole) return false;
    const QString text = value.toString().trimmed();
    if (text == data(index, Qt::EditRole).toString()) return true;
    std::vector<Step> steps = m_steps;
    Step& step = steps[static_cast<std::size_t>(index.row())];
    bool good = true;
    switch (index.column()) {
    case numberColumn:
        step.number = text.toInt(&good);
        if (!good) emit refused(tr("\"%1\" is no whole number.").arg(text));
        break;
    case wordColumn: step.word = text.toStdString(); break;
    case meaningColumn: step.meaning = text.toStdString(); break;
    case valueColumn:
        step.value = text.isEmpty() ? std::nullopt : numberFrom(text);
        good = text.isEmpty() || step.value;
        if (!good) emit refused(tr("\"%1\" is no number; type for example 0.01.").arg(text));
        break;
    default: return false;
    }
    return good && write(std::move(steps));
}

} // namespace cutwater::editor
