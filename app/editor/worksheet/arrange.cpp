// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/arrange.h"

#include "models/worksheet/coverage.h"

#include <QCollator>
#include <QCoreApplication>
#include <QHash>
#include <QLocale>
#include <QStringList>

#include <algorithm>
#include <numeric>

namespace cutwater::editor {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(cutwater::editor::Arrange)
};

std::optional<double> numberOf(const worksheet::Cell& cell) {
    if (const auto* whole = std::get_if<std::int64_t>(&cell)) return static_cast<double>(*whole);
    if (const auto* number = std::get_if<double>(&cell)) return *number;
    return std::nullopt;
}

// What one column makes of every row, worked out once before rows are compared.
struct Keys {
    bool descending = false;
    std::vector<std::optional<double>> numbers;
    std::vector<QCollatorSortKey> texts;
    std::vector<bool> empty;

    // Below 0: a before b.
    int compare(std::size_t a, std::size_t b) const {
        if (empty[a] || empty[b]) return static_cast<int>(empty[a]) - static_cast<int>(empty[b]);
        int order = 0;
        if (numbers[a] && numbers[b])
            order = *numbers[a] < *numbers[b] ? -1 : *numbers[a] > *numbers[b] ? 1 : 0;
        else if (numbers[a] || numbers[b])
            order = numbers[a] ? -1 : 1;
        else
            order = texts[a].compare(texts[b]);
        return descending ? -order : order;
    }
};

Keys keysOf(const SheetData& data, const EffectFigures& figures, const SortKey& key,
            const std::vector<std::size_t>& rows) {
    // The C locale, where programs run without one, knows no order of people.
    const QLocale here = QLocale();
    QCollator collator(here.language() == QLocale::C ? QLocale(QLocale::English) : here);
    collator.setNumericMode(true); // P-2 before P-10
    collator.setCaseSensitivity(Qt::CaseInsensitive);
    const QCollatorSortKey nothing = collator.sortKey(QString());
    Keys keys;
    keys.descending = key.descending;
    keys.numbers.resize(data.rows());
    keys.texts.assign(data.rows(), nothing);
    keys.empty.assign(data.rows(), true);
    // A word of the risk matrix sorts by its weight, not by its letters.
    const bool bySeverity = sheetColumns()[static_cast<std::size_t>(key.column)].id == "severity";
    QHash<QString, int> known; // the same text again: one key
    std::vector<QCollatorSortKey> made;
    for (const std::size_t row : rows) {
        const worksheet::Cell cell = data.cell(row, key.column, figures);
        if (std::holds_alternative<std::monostate>(cell)) continue;
        keys.empty[row] = false;
        keys.numbers[row] = numberOf(cell);
        if (bySeverity && data.row(row).severityIndex)
            keys.numbers[row] = *data.row(row).severityIndex;
        if (keys.numbers[row]) continue;
        const QString text = QString::fromStdString(std::get<std::string>(cell));
        auto found = known.constFind(text);
        if (found == known.constEnd()) {
            found = known.insert(text, static_cast<int>(made.size()));
            made.push_back(collator.sortKey(text));
        }
        keys.texts[row] = made[static_cast<std::size_t>(*found)];
    }
    return keys;
}

bool passesFilter(const ColumnFilter& filter, const worksheet::Cell& cell) {
    if (filter.least || filter.most) {
        const auto number = numberOf(cell);
        if (!number || (filter.least && *number < *filter.least) ||
            (filter.most && *number > *filter.most))
            return false;
    }
    if (!filter.values && filter.contains.isEmpty()) return true;
    const QString text = QString::fromStdString(worksheet::toText(cell));
    if (filter.values && !filter.values->contains(text)) return false;
    return text.contains(filter.contains, Qt::CaseInsensitive);
}

bool hasWords(const SheetData& data, const EffectFigures& figures, const QStringList& words,
              std::size_t row) {
    QString all;
    for (int column = 0; column < static_cast<int>(sheetColumns().size()); ++column) {
        // The id repeats other cells, and is seldom seen: a row that passes by it alone puzzles.
        if (sheetColumns()[static_cast<std::size_t>(column)].id == "id") continue;
        const std::string text = worksheet::toText(data.cell(row, column, figures));
        if (text.empty()) continue;
        all += QString::fromStdString(text);
        all += QLatin1Char('\n'); // a word does not reach from one cell into the next
    }
    return std::all_of(words.begin(), words.end(), [&](const QString& word) {
        return all.contains(word, Qt::CaseInsensitive);
    });
}

bool passesWith(const SheetData& data, const EffectFigures& figures, const Arrangement& arrangement,
                const QStringList& words, std::size_t row) {
    if (arrangement.dormantOnly && !data.row(row).dormant) return false;
    for (const auto& [column, filter] : arrangement.filters)
        if (!passesFilter(filter, data.cell(row, column, figures))) return false;
    return words.isEmpty() || hasWords(data, figures, words, row);
}

QStringList wordsOf(const Arrangement& arrangement) {
    return arrangement.words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
}

} // namespace

bool passes(const SheetData& data, const EffectFigures& figures, const Arrangement& arrangement,
            std::size_t row) {
    return passesWith(data, figures, arrangement, wordsOf(arrangement), row);
}

std::vector<std::size_t> arranged(const SheetData& data, const EffectFigures& figures,
                                  const Arrangement& arrangement) {
    const QStringList words = wordsOf(arrangement);
    std::vector<std::size_t> rows;
    for (std::size_t row = 0; row < data.rows(); ++row)
        if (passesWith(data, figures, arrangement, words, row)) rows.push_back(row);
    std::vector<Keys> keys;
    for (const SortKey& key : arrangement.keys)
        keys.push_back(keysOf(data, figures, key, rows));
    if (!keys.empty())
        std::stable_sort(rows.begin(), rows.end(), [&](std::size_t a, std::size_t b) {
            for (const Keys& key : keys)
                if (const int order = key.compare(a, b); order != 0) return order < 0;
            return false;
        });
    return grouped(data, std::move(rows), arrangement.group);
}

QString groupOf(const SheetData& data, std::size_t at, GroupBy group) {
    const worksheet::Row& row = data.row(at);
    const auto orNone = [](const std::string& text, const QString& none) {
        return text.empty() ? none : QString::fromStdString(text);
    };
    switch (group) {
    case GroupBy::none: return {};
    case GroupBy::component: {
        if (!row.component) return orNone(row.facts->component, Words::tr("(no component)"));
        const std::string& tag =
            row.component->tag.empty() ? row.component->id : row.component->tag;
        if (row.component->name.empty()) return QString::fromStdString(tag);
        return QStringLiteral("%1: %2").arg(QString::fromStdString(tag),
                                            QString::fromStdString(row.component->name));
    }
    case GroupBy::endEffect: return orNone(row.facts->endEffect, Words::tr("(no end effect)"));
    case GroupBy::severity: return orNone(row.facts->severity, Words::tr("(no severity)"));
    case GroupBy::location:
        return orNone(row.component ? row.component->location : std::string(),
                      Words::tr("(no location)"));
    }
    return {};
}

QString groupKey(const SheetData& data, std::size_t row, GroupBy group) {
    if (group == GroupBy::endEffect)
        return QString::fromStdString(worksheet::plainEffect(data.row(row).facts->endEffect));
    return groupOf(data, row, group).toLower();
}

std::vector<std::size_t> grouped(const SheetData& data, std::vector<std::size_t> rows,
                                 GroupBy group) {
    if (group == GroupBy::none) return rows;
    QHash<QString, int> places;
    std::vector<std::vector<std::size_t>> groups;
    for (const std::size_t row : rows) {
        const QString key = groupKey(data, row, group);
        auto found = places.constFind(key);
        if (found == places.constEnd()) {
            found = places.insert(key, static_cast<int>(groups.size()));
            groups.emplace_back();
        }
        groups[static_cast<std::size_t>(*found)].push_back(row);
    }
    if (group == GroupBy::severity)
        std::stable_sort(groups.begin(), groups.end(), [&](const auto& a, const auto& b) {
            return data.row(a.front()).severityIndex.value_or(-1000) >
                   data.row(b.front()).severityIndex.value_or(-1000);
        });
    rows.clear();
    for (const auto& each : groups)
        rows.insert(rows.end(), each.begin(), each.end());
    return rows;
}

} // namespace cutwater::editor
