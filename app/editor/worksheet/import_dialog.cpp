// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/import_dialog.h"

#include "app/editor/worksheet/sheet_columns.h"

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFile>
#include <QFileDialog>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPointer>
#include <QPushButton>
#include <QSaveFile>
#include <QTableWidget>
#include <QThreadPool>
#include <QVBoxLayout>

namespace cutwater::editor {

namespace {

constexpr qint64 kLargest = qint64{64} << 20; // bytes, as models/worksheet/delimited.h has it
constexpr std::size_t kMostShown = 2000;      // rows of the preview; the report has all

QString utf8(const std::string& text) {
    return QString::fromStdString(text);
}

QString titleOf(const std::string& id) {
    const int place = sheetColumn(id);
    return place < 0 ? utf8(id) : sheetColumns()[static_cast<std::size_t>(place)].title;
}

} // namespace

TableImportDialog::TableImportDialog(Snapshot project, QWidget* parent)
    : QDialog(parent), m_project(std::move(project)), m_file(new QLineEdit(this)),
      m_separator(new QComboBox(this)),
      m_makeComponents(new QCheckBox(tr("&Make components that the plant does not have"), this)),
      m_matching(new QTableWidget(0, 2, this)), m_rows(new QTableWidget(0, 4, this)),
      m_sentence(new QLabel(this)), m_copy(new QPushButton(tr("Copy the &report"), this)),
      m_save(new QPushButton(tr("&Save the report ..."), this)) {
    setObjectName("worksheetImport");
    setWindowTitle(tr("Import a table into the worksheet"));
    m_file->setReadOnly(true);
    m_file->setObjectName("file");
    m_file->setPlaceholderText(tr("a CSV or TSV file, saved by a spreadsheet as UTF-8"));
    auto* choose = new QPushButton(tr("&Choose ..."), this);
    auto* paste = new QPushButton(tr("From the c&lipboard"), this);
    connect(choose, &QPushButton::clicked, this, &TableImportDialog::chooseFile);
    connect(paste, &QPushButton::clicked, this,
            [this] { readText(QApplication::clipboard()->text(), tr("the clipboard")); });
    auto* fileLine = new QHBoxLayout;
    fileLine->addWidget(m_file, 1);
    fileLine->addWidget(choose);
    fileLine->addWidget(paste);
    m_separator->setObjectName("separator");
    m_separator->addItem(tr("the one that stands most often in the first line"), 0);
    m_separator->addItem(tr("comma"), ',');
    m_separator->addItem(tr("semicolon"), ';');
    m_separator->addItem(tr("tab"), '\t');
    connect(m_separator, &QComboBox::currentIndexChanged, this, &TableImportDialog::readHeadings);
    connect(m_makeComponents, &QCheckBox::toggled, this, &TableImportDialog::look);
    auto* form = new QFormLayout;
    form->addRow(tr("Table:"), fileLine);
    form->addRow(tr("Cells are apart by a:"), m_separator);
    form->addRow(QString(), m_makeComponents);

    m_matching->setObjectName("matching");
    m_matching->setAccessibleName(tr("Which column is which"));
    m_matching->setHorizontalHeaderLabels({tr("Column of the table"), tr("is our column")});
    m_matching->verticalHeader()->hide();
    m_matching->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_rows->setObjectName("rows");
    m_rows->setAccessibleName(tr("What becomes of each row"));
    m_rows->setHorizontalHeaderLabels(
        {tr("Line"), tr("Becomes"), tr("Row"), tr("Changes, or why not")});
    m_rows->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_rows->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_rows->verticalHeader()->hide();
    m_rows->verticalHeader()->setDefaultSectionSize(fontMetrics().lineSpacing() + 6);
    m_rows->horizontalHeader()->setStretchLastSection(true);
    m_sentence->setObjectName("sentence");
    m_sentence->setWordWrap(true);
    m_sentence->setText(tr("Choose a file. Nothing changes before you say so."));

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    m_take = buttons->addButton(tr("&Import"), QDialogButtonBox::AcceptRole);
    m_take->setObjectName("take");
    m_take->setEnabled(false);
    buttons->addButton(m_copy, QDialogButtonBox::ActionRole);
    buttons->addButton(m_save, QDialogButtonBox::ActionRole);
    connect(m_copy, &QPushButton::clicked, this,
            [this] { QApplication::clipboard()->setText(report()); });
    connect(m_save, &QPushButton::clicked, this, &TableImportDialog::saveReport);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(form);
    layout->addWidget(m_matching, 2);
    layout->addWidget(m_sentence);
    layout->addWidget(m_rows, 3);
    layout->addWidget(buttons);
    for (QPushButton* button : {m_copy, m_save})
        button->setEnabled(false);
    resize(860, 680);
}

void TableImportDialog::chooseFile() {
    const QString path = QFileDialog::getOpenFileName(
        this, tr("Import a table"), QString(), tr("Tables (*.csv *.tsv *.txt);;All files (*)"));
    if (!path.isEmpty()) readFile(path);
}

bool TableImportDialog::readFile(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly) || file.size() > kLargest) {
        m_sentence->setText(file.isOpen()
                                ? tr("! %1 is larger than 64 MB: split it.").arg(path)
                                : tr("! %1 cannot be read: %2.").arg(path, file.errorString()));
        return false;
    }
    const QByteArray bytes = file.readAll();
    m_file->setText(path);
    m_text = bytes.toStdString();
    readHeadings();
    return true;
}

void TableImportDialog::readText(const QString& text, const QString& name) {
    m_file->setText(name);
    m_text = text.toStdString();
    readHeadings();
}

// The first line says which columns there are; guesses can be changed.
void TableImportDialog::readHeadings() {
    m_header.clear();
    m_matching->setRowCount(0);
    if (m_text.empty() && m_file->text().isEmpty()) return;
    const auto records =
        worksheet::readDelimited(m_text, static_cast<char>(m_separator->currentData().toInt()));
    if (!records || records->empty())
        return showOutcome(std::make_shared<project::Outcome<worksheet::Import>>(
            records ? project::Problems{{project::Severity::error,
                                         "the table is empty",
                                         "give it a line of headings and rows below it",
                                         {},
                                         0}}
                    : records.problems()));
    m_header = records->front().cells;
    tellSeparator();
    m_matching->setRowCount(static_cast<int>(m_header.size()));
    for (int row = 0; row < m_matching->rowCount(); ++row) {
        const std::string& heading = m_header[static_cast<std::size_t>(row)];
        auto* item = new QTableWidgetItem(heading.empty() ? tr("(no heading)") : utf8(heading));
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
        m_matching->setItem(row, 0, item);
        auto* choice = new QComboBox(m_matching);
        const worksheet::Column* meant = worksheet::columnCalled(heading);
        const bool cannot = meant && !worksheet::isImported(*meant);
        choice->addItem(cannot ? tr("(not taken: it is worked out)") : tr("(not taken)"),
                        QStringLiteral("-"));
        for (const worksheet::Column& column : worksheet::columns()) {
            if (!worksheet::isImported(column)) continue;
            const std::string id(column.id);
            choice->addItem(titleOf(id), utf8(id));
            if (meant == &column) choice->setCurrentIndex(choice->count() - 1);
        }
        choice->setAccessibleName(tr("Our column for %1").arg(item->text()));
        connect(choice, &QComboBox::currentIndexChanged, this, &TableImportDialog::look);
        m_matching->setCellWidget(row, 1, choice);
    }
    look();
}

// Which one "most often" is here.
void TableImportDialog::tellSeparator() {
    if (m_separator->currentData().toInt() != 0) return;
    for (int i = 1; i < m_separator->count(); ++i) {
        const auto as =
            worksheet::readDelimited(m_text, static_cast<char>(m_separator->itemData(i).toInt()));
        if (as && !as->empty() && as->front().cells == m_header)
            return m_separator->setItemText(
                0, tr("%1 (seen in the first line)").arg(m_separator->itemText(i)));
    }
}

QComboBox* TableImportDialog::choiceFor(int column) const {
    return qobject_cast<QComboBox*>(m_matching->cellWidget(column, 1));
}

worksheet::ImportWish TableImportDialog::wish() const {
    worksheet::ImportWish wish;
    wish.makeComponents = m_makeComponents->isChecked();
    wish.separator = static_cast<char>(m_separator->currentData().toInt());
    for (std::size_t i = 0; i < m_header.size(); ++i)
        wish.matching.emplace_back(
            m_header[i], choiceFor(static_cast<int>(i))->currentData().toString().toStdString());
    return wish;
}

// In a worker: a table may be long.
void TableImportDialog::look() {
    if (m_header.empty()) return;
    const quint64 number = ++m_number;
    m_looking = true;
    m_take->setEnabled(false);
    QPointer<TableImportDialog> self(this);
    QThreadPool::globalInstance()->start(
        [self, number, project = m_project, text = m_text, wish = wish()] {
            auto outcome = std::make_shared<project::Outcome<worksheet::Import>>(
                worksheet::importRows(*project, text, wish));
            QMetaObject::invokeMethod(QCoreApplication::instance(), [self, number, outcome] {
                if (self && self->m_number == number) self->showOutcome(outcome);
            });
        });
}

void TableImportDialog::showOutcome(std::shared_ptr<project::Outcome<worksheet::Import>> outcome) {
    m_looking = false;
    m_import.reset();
    if (*outcome)
        m_import = std::make_shared<const worksheet::Import>(std::move(**outcome));
    else
        m_sentence->setText(QStringLiteral("! ") + sentence(outcome->problems().front()));
    fillRows();
    const bool some = m_import && m_import->taken() > 0;
    m_take->setEnabled(some);
    m_copy->setEnabled(m_import != nullptr);
    m_save->setEnabled(m_import != nullptr);
    if (!m_import) return;
    const int taken = static_cast<int>(m_import->taken());
    const int refused = static_cast<int>(m_import->rejected());
    const int made = static_cast<int>(m_import->newComponents.size());
    QStringList words{tr("Rows that can be taken: %1.").arg(taken)};
    if (made > 0) words.append(tr("Components that are made: %1.").arg(made));
    if (refused > 0)
        words.append(tr("! Rows that cannot: %1; they stand first, with the reason.").arg(refused));
    if (taken + refused == 0) words = {tr("! There is no row below the headings.")};
    m_sentence->setText(words.join(u' '));
}

void TableImportDialog::fillRows() {
    m_rows->setRowCount(0);
    if (!m_import) return;
    std::vector<const worksheet::ImportRow*> order; // what was refused first
    for (const bool taken : {false, true})
        for (const worksheet::ImportRow& row : m_import->rows)
            if (row.taken == taken && order.size() < kMostShown) order.push_back(&row);
    m_rows->setRowCount(static_cast<int>(order.size()));
    for (int i = 0; i < m_rows->rowCount(); ++i) {
        const worksheet::ImportRow& row = *order[static_cast<std::size_t>(i)];
        QString becomes = tr("changed"), words;
        if (!row.taken) {
            becomes = tr("! refused");
            words = utf8(row.why);
        } else {
            if (row.isNew)
                becomes = tr("new");
            else if (row.changes.empty())
                becomes = tr("as it was");
            QStringList changes;
            for (const worksheet::CellChange& change : row.changes)
                changes.append(
                    QStringLiteral("%1: %2").arg(titleOf(change.column), utf8(change.after)));
            words = changes.join(QStringLiteral("; "));
        }
        const QString texts[] = {QString::number(row.line), becomes, utf8(row.mode), words};
        for (int column = 0; column < 4; ++column) {
            auto* item = new QTableWidgetItem(QString(texts[column]).replace(u'\n', u' '));
            item->setToolTip(texts[column]);
            m_rows->setItem(i, column, item);
        }
    }
    for (int column = 0; column < 3; ++column)
        m_rows->resizeColumnToContents(column);
}

QString TableImportDialog::report() const {
    if (!m_import) return {};
    const auto plain = [](QString text) { return text.replace(u'\n', u' ').replace(u'\t', u' '); };
    QString all =
        QStringList{tr("Line"), tr("Becomes"), tr("Row"), tr("Changes, or why not")}.join(u'\t') +
        u'\n';
    for (const worksheet::ImportRow& row : m_import->rows) {
        QStringList changes;
        for (const worksheet::CellChange& change : row.changes)
            changes.append(
                QStringLiteral("%1: %2").arg(titleOf(change.column), utf8(change.after)));
        all += QStringList{QString::number(row.line),
                           !row.taken  ? tr("refused")
                           : row.isNew ? tr("new")
                                       : tr("changed"),
                           utf8(row.mode),
                           plain(row.taken ? changes.join(QStringLiteral("; ")) : utf8(row.why))}
                   .join(u'\t') +
               u'\n';
    }
    for (const std::string& ignored : m_import->matching.ignored)
        all += tr("Not taken: column %1").arg(utf8(ignored)) + u'\n';
    return all;
}

void TableImportDialog::saveReport() {
    const QString path = QFileDialog::getSaveFileName(this, tr("Save the report"),
                                                      QStringLiteral("import-report.txt"));
    if (path.isEmpty()) return;
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(report().toUtf8()) < 0 || !file.commit())
        m_sentence->setText(tr("! %1 cannot be written: %2.").arg(path, file.errorString()));
}

} // namespace cutwater::editor
