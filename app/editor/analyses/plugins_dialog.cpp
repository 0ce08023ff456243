// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/analyses/plugins_dialog.h"

#include <QDialogButtonBox>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

#include <set>

namespace cutwater::editor {
namespace {

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

QString kindWord(sdk::PluginKind kind) {
    switch (kind) {
    case sdk::PluginKind::analysis: return PluginsDialog::tr("Analysis");
    case sdk::PluginKind::exchange: return PluginsDialog::tr("Exchange");
    case sdk::PluginKind::layout: return PluginsDialog::tr("Layout");
    case sdk::PluginKind::report: return PluginsDialog::tr("Report");
    }
    return {};
}

// The file stands in a column of its own, and its whole path in the tip.
QString withoutFile(const sdk::Rejected& rejected) {
    const std::string& sentence = rejected.sentence;
    const std::string begin = rejected.file + ": ";
    QString words = text(sentence.starts_with(begin) ? sentence.substr(begin.size()) : sentence);
    if (!words.isEmpty()) words[0] = words[0].toUpper();
    return words;
}

} // namespace

PluginsDialog::PluginsDialog(const sdk::Host& host, const std::map<std::string, QString>& failures,
                             QWidget* parent)
    : QDialog(parent), m_table(new QTableWidget(0, 4, this)) {
    setWindowTitle(tr("Plug-ins"));
    resize(860, 460);
    m_table->setObjectName("plugins");
    m_table->setAccessibleName(tr("Plug-ins"));
    m_table->setHorizontalHeaderLabels(
        {tr("State"), tr("Plug-in"), tr("Kind"), tr("What it says")});
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setTabKeyNavigation(false);
    m_table->setWordWrap(true);
    m_table->verticalHeader()->hide();
    std::set<std::string> failed;
    // What does not work stands on top: that is why somebody looks.
    for (const sdk::Rejected& rejected : host.rejected()) {
        failed.insert(rejected.file);
        add(tr("\u2716 left out"), QFileInfo(text(rejected.file)).fileName(), {},
            withoutFile(rejected), rejected.file);
    }
    for (const auto& [file, sentence] : failures) {
        if (!failed.insert(file).second) continue;
        add(tr("\u26A0 has failed"), QFileInfo(text(file)).fileName(), {}, sentence, file);
    }
    for (const sdk::PluginFacts& facts : host.plugins()) {
        if (failed.contains(facts.file)) continue;
        add(tr("\u2714 in use"), text(facts.title + " " + facts.version), kindWord(facts.kind),
            text(facts.summary), facts.file);
    }
    m_table->horizontalHeader()->setStretchLastSection(true);
    for (int column = 0; column < 3; ++column)
        m_table->resizeColumnToContents(column);
    m_table->setColumnWidth(1, std::min(m_table->columnWidth(1), 260));
    // Once the width is settled.
    connect(m_table->horizontalHeader(), &QHeaderView::sectionResized, m_table,
            &QTableWidget::resizeRowsToContents, Qt::QueuedConnection);

    auto* const words = new QLabel(
        tr("Only plug-ins of this installation and of folders that you named are used. One that "
           "fails is left out; the rest goes on."),
        this);
    words->setWordWrap(true);
    auto* const buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* const layout = new QVBoxLayout(this);
    layout->addWidget(words);
    layout->addWidget(m_table, 1);
    layout->addWidget(buttons);
    m_table->resizeRowsToContents();
}

void PluginsDialog::add(const QString& state, const QString& name, const QString& kind,
                        const QString& says, const std::string& file) {
    const int row = m_table->rowCount();
    m_table->insertRow(row);
    int column = 0;
    for (const QString& words : {state, name, kind, says}) {
        auto* const item = new QTableWidgetItem(words);
        item->setToolTip(text(file));
        item->setTextAlignment(Qt::AlignLeft | Qt::AlignTop);
        m_table->setItem(row, column++, item);
    }
}

} // namespace cutwater::editor
