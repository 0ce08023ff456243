// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/answers/answer_lines.h"

#include "app/editor/answers/figure_words.h"

#include <QStringList>

namespace cutwater::editor {
namespace {

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

QString chance(const std::optional<double>& probability) {
    return probability ? FigureWords::number(*probability) : QString();
}

QString joined(QStringList parts, const QString& between) {
    parts.removeAll(QString());
    return parts.join(between);
}

} // namespace

std::vector<AnswerLine> AnswerLines::of(const LiveAnswer& answer) {
    std::vector<AnswerLine> lines;
    const auto heading = [&](const QString& words) {
        lines.push_back({LineKind::heading, words, {}, {}});
    };
    const auto sentences = [&](LineKind kind, const std::vector<Said>& all) {
        for (const Said& one : all)
            lines.push_back({kind, text(one.sentence), text(one.sentence), one.nodes});
    };
    const auto notes = [&](LineKind kind, sdk::NoteKind of) {
        for (const sdk::Note& note : answer.notes)
            if (note.kind == of) lines.push_back({kind, text(note.sentence), {}, {}});
    };

    if (!answer.errors.empty()) heading(tr("Errors in this tree: mend them first"));
    sentences(LineKind::error, answer.errors);
    if (!answer.warnings.empty()) heading(tr("Warnings"));
    sentences(LineKind::warning, answer.warnings);

    if (answer.setsKnown) {
        heading(tr("Single failures: each alone brings it about (%1)").arg(answer.singleCount));
        for (const SingleFailure& one : answer.singles) {
            const QString name = joined({text(one.component), text(one.failure)}, ": ");
            const QString what = one.negated ? tr("not: %1").arg(name) : name;
            const QString more = joined({text(one.place), chance(one.probability)}, "  \u00B7  ");
            lines.push_back({LineKind::single, joined({what, more}, "\n"),
                             tr("single failure: %1").arg(what), one.nodes});
        }
        if (answer.singles.empty())
            lines.push_back(
                {LineKind::remark, tr("None: no failure alone brings it about."), {}, {}});
        else if (answer.singleCount > answer.singles.size())
            lines.push_back({LineKind::remark,
                             tr("And %1 more: the analysis Single failures lists them all.")
                                 .arg(answer.singleCount - answer.singles.size()),
                             {},
                             {}});

        heading(tr("Cut sets by order (%1 in all)").arg(text(answer.setCount)));
        for (const OrderCount& one : answer.orders) {
            const QString words = one.order == 0 ? tr("Always there, whatever the events do")
                                  : one.order == 1
                                      ? tr("Order 1: %1, the single failures").arg(text(one.sets))
                                      : tr("Order %1: %2").arg(one.order).arg(text(one.sets));
            const QString reason =
                one.everyOne ? tr("events of all cut sets of order %1").arg(one.order)
                             : tr("events of the first cut sets of order %1").arg(one.order);
            lines.push_back({LineKind::order, words, reason, one.nodes});
        }
        if (answer.orders.empty())
            lines.push_back({LineKind::remark, tr("None: it cannot happen in this tree."), {}, {}});
        if (!answer.everyOrder)
            lines.push_back(
                {LineKind::remark, tr("Higher orders are not counted one by one."), {}, {}});
    }
    if (!answer.likely.empty()) {
        heading(tr("The most probable combinations"));
        for (const LikelySet& one : answer.likely)
            lines.push_back(
                {LineKind::set, joined({text(one.words), chance(one.probability)}, "\n"),
                 tr("cut set of order %1: %2").arg(one.order).arg(text(one.words)), one.nodes});
    }
    if (!answer.elsewhere.empty()) heading(tr("Errors elsewhere in the project"));
    sentences(LineKind::error, answer.elsewhere);
    if (!answer.notes.empty()) heading(tr("What is assumed, and cautions"));
    notes(LineKind::remark, sdk::NoteKind::method);
    notes(LineKind::assumption, sdk::NoteKind::assumption);
    notes(LineKind::caution, sdk::NoteKind::caution);
    return lines;
}

QString AnswerLines::symbol(LineKind kind) {
    switch (kind) {
    case LineKind::heading: return {};
    case LineKind::error: return QStringLiteral("\u2716");
    case LineKind::warning: return QStringLiteral("\u26A0");
    case LineKind::single: return QStringLiteral("\u25CF");
    case LineKind::order: return QStringLiteral("#");
    case LineKind::set: return QStringLiteral("\u2229");
    case LineKind::remark: return QStringLiteral("\u2013");
    case LineKind::assumption: return QStringLiteral("\u2192");
    case LineKind::caution: return QStringLiteral("!");
    }
    return {};
}

QString AnswerLines::word(LineKind kind) {
    switch (kind) {
    case LineKind::heading: return {};
    case LineKind::error: return tr("Error");
    case LineKind::warning: return tr("Warning");
    case LineKind::single: return tr("Single failure");
    case LineKind::order: return tr("Cut sets");
    case LineKind::set: return tr("Combination");
    case LineKind::remark: return tr("Remark");
    case LineKind::assumption: return tr("Assumption");
    case LineKind::caution: return tr("Caution");
    }
    return {};
}

QString AnswerLines::counted(const LiveAnswer& answer) {
    QStringList groups;
    for (const std::string& id : answer.commonCauses)
        groups << text(id);
    constexpr qsizetype kMost = 4;
    QString ids = groups.mid(0, kMost).join(QStringLiteral(", "));
    if (groups.size() > kMost) ids = tr("%1 and %2 more").arg(ids).arg(groups.size() - kMost);
    if (groups.isEmpty())
        return answer.hasAssessments
                   ? tr("Counted: the plant in its normal state, without an assessment.")
                   : QString();
    return answer.hasAssessments
               ? tr("Counted: the common causes %1; the plant in its normal state, without an "
                    "assessment.")
                     .arg(ids)
               : tr("Counted: the common causes %1.").arg(ids);
}

QString AnswerLines::asText(const LiveAnswer& answer) {
    QString all = joined({text(answer.top), text(answer.topName)}, " ") + '\n';
    if (answer.figure)
        all += tr("%1 (%2; %3)")
                   .arg(FigureWords::figure(*answer.figure), text(answer.figure->words),
                        FigureWords::oneIn(*answer.figure)) +
               '\n';
    if (const QString words = counted(answer); !words.isEmpty()) all += words + '\n';
    for (const AnswerLine& line : of(answer)) {
        QString words = line.text;
        words.replace('\n', QStringLiteral("  \u00B7  "));
        all += line.kind == LineKind::heading ? '\n' + words + '\n'
               : line.kind == LineKind::single || line.kind == LineKind::order ||
                       line.kind == LineKind::set
                   ? "- " + words + '\n'
                   : "- " + word(line.kind) + ": " + words + '\n';
    }
    return all;
}

} // namespace cutwater::editor
