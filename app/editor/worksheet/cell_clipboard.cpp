// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/cell_clipboard.h"

#include "models/worksheet/delimited.h"

#include <algorithm>

namespace cutwater::editor {

namespace {

QString delimited(const TextBlock& block, char separator) {
    std::string text;
    for (const QStringList& row : block) {
        std::vector<std::string> cells;
        for (const QString& cell : row)
            cells.push_back(cell.toStdString());
        text += worksheet::writeRecord(cells, separator);
    }
    return QString::fromStdString(text);
}

TextBlock fromDelimited(const QString& text, char separator, bool& good) {
    const auto records = worksheet::readDelimited(text.toStdString(), separator);
    good = static_cast<bool>(records);
    TextBlock block;
    if (!good) return block;
    int line = 1;
    for (const worksheet::Record& record : *records) {
        for (; line < record.line; ++line) // an empty line is an empty cell, too
            block.push_back({QString()});
        QStringList row;
        for (const std::string& cell : record.cells) {
            row.append(QString::fromStdString(cell));
            line += static_cast<int>(std::count(cell.begin(), cell.end(), '\n'));
        }
        ++line;
        block.push_back(row);
    }
    const auto all = text.count(u'\n') + (text.endsWith(u'\n') ? 0 : 1);
    for (; line <= static_cast<int>(all); ++line)
        block.push_back({QString()});
    return block;
}

// As it stands: a quotation mark is a quotation mark.
TextBlock plain(QString text) {
    text.replace(QLatin1String("\r\n"), QLatin1String("\n")).replace(u'\r', u'\n');
    if (text.endsWith(u'\n')) text.chop(1);
    TextBlock block;
    for (const QString& line : text.split(u'\n'))
        block.push_back(line.split(u'\t'));
    return block;
}

void asTyped(TextBlock& block) {
    for (QStringList& row : block)
        for (QString& cell : row)
            cell = QString::fromStdString(worksheet::asTyped(cell.toStdString()));
}

} // namespace

QMimeData* cellsToMime(const TextBlock& block, const std::vector<bool>& isText) {
    TextBlock safe = block;
    for (QStringList& row : safe)
        for (qsizetype i = 0; i < row.size(); ++i)
            if (isText[static_cast<std::size_t>(i)])
                row[i] = QString::fromStdString(worksheet::harmless(row[i].toStdString()));
    auto* data = new QMimeData;
    data->setData(kCellsFormat, delimited(block, '\t').toUtf8());
    QString tsv = delimited(safe, '\t');
    if (tsv.endsWith(u'\n')) tsv.chop(1);
    // One cell alone goes into other programs as the text that it is.
    if (safe.size() == 1 && safe.front().size() == 1) tsv = safe.front().front();
    data->setText(tsv);
    data->setData(QStringLiteral("text/csv"), delimited(safe, ',').toUtf8());
    data->setHtml(tableToHtml(safe));
    return data;
}

TextBlock cellsFromMime(const QMimeData& data, bool asCsv) {
    bool good = false;
    TextBlock block;
    if (asCsv) {
        const QString text = data.hasFormat(QStringLiteral("text/csv")) && !data.hasText()
                                 ? QString::fromUtf8(data.data(QStringLiteral("text/csv")))
                                 : data.text();
        block = fromDelimited(text, 0, good);
        asTyped(block);
        return block;
    }
    if (data.hasFormat(kCellsFormat)) {
        block = fromDelimited(QString::fromUtf8(data.data(kCellsFormat)), '\t', good);
        if (good) return block;
    }
    if (data.hasHtml()) {
        block = tableFromHtml(data.html());
        asTyped(block);
        if (!block.empty()) return block;
    }
    if (data.hasText()) {
        if (data.text().isEmpty()) return {};
        const bool table = data.text().contains(u'\t') || data.text().contains(u'\n');
        if (table) block = fromDelimited(data.text(), '\t', good);
        if (!good) block = plain(data.text());
        asTyped(block);
        return block;
    }
    if (data.hasFormat(QStringLiteral("text/csv"))) {
        block = fromDelimited(QString::fromUtf8(data.data(QStringLiteral("text/csv"))), ',', good);
        asTyped(block);
    }
    return block;
}

} // namespace cutwater::editor
