// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/table_html.h"

#include <algorithm>
#include <map>

namespace cutwater::editor {

namespace {

constexpr int kMostCells = 200'000;
constexpr int kMostSpan = 1000;

QString entity(QStringView name) {
    static const std::map<QString, QChar> known = {{"amp", '&'},
                                                   {"lt", '<'},
                                                   {"gt", '>'},
                                                   {"quot", '"'},
                                                   {"apos", '\''},
                                                   {"nbsp", QChar(0xA0)},
                                                   {"deg", QChar(0xB0)},
                                                   {"micro", QChar(0xB5)},
                                                   {"plusmn", QChar(0xB1)},
                                                   {"times", QChar(0xD7)},
                                                   {"auml", QChar(0xE4)},
                                                   {"ouml", QChar(0xF6)},
                                                   {"uuml", QChar(0xFC)},
                                                   {"Auml", QChar(0xC4)},
                                                   {"Ouml", QChar(0xD6)},
                                                   {"Uuml", QChar(0xDC)},
                                                   {"szlig", QChar(0xDF)},
                                                   {"ndash", QChar(0x2013)},
                                                   {"mdash", QChar(0x2014)},
                                                   {"hellip", QChar(0x2026)}};
    if (name.startsWith(u'#')) {
        bool good = false;
        const bool hex = name.size() > 1 && (name[1] == u'x' || name[1] == u'X');
        const uint code = hex ? name.mid(2).toUInt(&good, 16) : name.mid(1).toUInt(&good);
        if (!good || code == 0 || code > 0x10FFFF || (code >= 0xD800 && code < 0xE000)) return {};
        const char32_t character = code;
        return QString::fromUcs4(&character, 1);
    }
    const auto found = known.find(name.toString());
    return found == known.end() ? QString() : QString(found->second);
}

class Reader {
public:
    explicit Reader(const QString& html) : m_html(html) {}

    TextBlock read() {
        while (m_at < m_html.size() && m_cells < kMostCells && !m_done) {
            if (m_html[m_at] == u'<')
                tag();
            else
                text();
        }
        endCell();
        while (!m_rows.empty() && m_rows.back().isEmpty())
            m_rows.pop_back();
        return std::move(m_rows);
    }

private:
    void text() {
        const qsizetype end = m_html.indexOf(u'<', m_at);
        const QStringView piece = QStringView(m_html).mid(m_at, end < 0 ? -1 : end - m_at);
        m_at = end < 0 ? m_html.size() : end;
        if (!m_inCell) return;
        for (qsizetype i = 0; i < piece.size(); ++i) {
            const QChar c = piece[i];
            if (c == u'&') {
                const qsizetype stop = piece.indexOf(u';', i);
                const QString made =
                    stop > i && stop - i < 12 ? entity(piece.mid(i + 1, stop - i - 1)) : QString();
                if (!made.isEmpty()) {
                    m_cell += made == QString(QChar(0xA0)) ? QStringLiteral(" ") : made;
                    m_blank = false;
                    i = stop;
                    continue;
                }
            }
            if (c.isSpace() && c != QChar(0xA0) && !m_pre) { // one blank for any number of them
                if (!m_blank && !m_cell.isEmpty() && !m_cell.endsWith(u'\n')) m_cell += u' ';
                m_blank = true;
                continue;
            }
            m_cell += c == QChar(0xA0) ? QChar(u' ') : c;
            m_blank = false;
        }
    }

    void tag() {
        if (QStringView(m_html).mid(m_at).startsWith(u"<!--")) {
            const qsizetype end = m_html.indexOf(QLatin1String("-->"), m_at);
            m_at = end < 0 ? m_html.size() : end + 3;
            return;
        }
        const qsizetype end = m_html.indexOf(u'>', m_at);
        if (end < 0) {
            m_at = m_html.size();
            return;
        }
        const QString inside = m_html.mid(m_at + 1, end - m_at - 1);
        m_at = end + 1;
        const QString name = inside.section(QLatin1Char(' '), 0, 0)
                                 .trimmed()
                                 .toLower()
                                 .remove(inside.startsWith(u'/') ? QString() : QStringLiteral("/"));
        if (name == "style" || name == "script") return skip(name);
        if (name == "table") m_inTable = true;
        if (!m_inTable) return;
        if (name == "/table") m_done = true;
        if (name == "tr") beginRow();
        if (name == "/tr") endCell();
        if (name == "td" || name == "th") beginCell(inside);
        if (name == "/td" || name == "/th") endCell();
        if (m_inCell && (name == "br" ||
                         ((name == "p" || name == "div" || name == "li") && !m_cell.isEmpty()))) {
            while (m_cell.endsWith(u' '))
                m_cell.chop(1);
            m_cell += u'\n';
            m_blank = true;
        }
        if (name == "pre") m_pre = true;
        if (name == "/pre") m_pre = false;
    }

    void skip(const QString& name) {
        const qsizetype end = m_html.indexOf("</" + name, m_at, Qt::CaseInsensitive);
        m_at = end < 0 ? m_html.size() : end;
    }

    static int span(const QString& tag, const QString& word) {
        const qsizetype at = tag.indexOf(word, 0, Qt::CaseInsensitive);
        if (at < 0) return 1;
        QString number;
        for (qsizetype i = at + word.size(); i < tag.size(); ++i) {
            if (tag[i].isDigit())
                number += tag[i];
            else if (!number.isEmpty() || tag[i].isLetter())
                break;
        }
        return std::clamp(number.toInt(), 1, kMostSpan);
    }

    void beginRow() {
        endCell();
        m_rows.emplace_back();
        fillReached();
    }

    // Places that a cell of a row above reaches down to.
    void fillReached() {
        QStringList& row = m_rows.back();
        for (auto reached = m_down.find(row.size()); reached != m_down.end() && reached->second > 0;
             reached = m_down.find(row.size())) {
            --reached->second;
            row.append(QString());
        }
    }

    void beginCell(const QString& tag) {
        endCell();
        if (m_rows.empty()) m_rows.emplace_back();
        m_across = span(tag, QStringLiteral("colspan"));
        m_reach = span(tag, QStringLiteral("rowspan")) - 1;
        m_inCell = true;
        m_blank = true;
        m_cell.clear();
    }

    void endCell() {
        if (!m_inCell) return;
        m_inCell = false;
        while (m_cell.endsWith(u' ') || m_cell.endsWith(u'\n'))
            m_cell.chop(1);
        QStringList& row = m_rows.back();
        for (int i = 0; i < m_across && m_cells < kMostCells; ++i, ++m_cells) {
            if (m_reach > 0) m_down[row.size()] = m_reach;
            row.append(i == 0 ? m_cell : QString());
        }
        fillReached();
    }

    const QString& m_html;
    qsizetype m_at = 0;
    TextBlock m_rows;
    std::map<qsizetype, int> m_down; // by column: rows below that are reached
    QString m_cell;
    int m_across = 1, m_reach = 0, m_cells = 0;
    bool m_inTable = false, m_inCell = false, m_done = false, m_blank = true, m_pre = false;
};

} // namespace

TextBlock tableFromHtml(const QString& html) {
    return Reader(html).read();
}

QString tableToHtml(const TextBlock& block) {
    QString html = QStringLiteral("<meta charset=\"utf-8\"><table>");
    for (const QStringList& row : block) {
        html += QLatin1String("<tr>");
        for (const QString& cell : row) {
            QString text = cell.toHtmlEscaped();
            // What a reader would fold together is kept apart.
            text.replace(QLatin1String("  "), QLatin1String("&nbsp; "));
            text.replace(u'\n', QLatin1String("<br>"));
            html += QLatin1String("<td>") + text + QLatin1String("</td>");
        }
        html += QLatin1String("</tr>");
    }
    return html + QLatin1String("</table>");
}

} // namespace cutwater::editor
