// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/risk/risk_page.h"

#include "app/drawing/lettering.h"
#include "app/drawing/paint.h"
#include "app/drawing/risk_drawing.h"
#include "app/drawing/svg.h"
#include "app/editor/analyses/table_page.h"
#include "app/editor/risk/risk_board.h"
#include "app/editor/risk/risk_table.h"
#include "app/editor/risk/scales_page.h"

#include <QCheckBox>
#include <QClipboard>
#include <QFileDialog>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QImage>
#include <QLabel>
#include <QMimeData>
#include <QProgressBar>
#include <QPushButton>
#include <QSaveFile>
#include <QSplitter>
#include <QTabWidget>
#include <QTableView>
#include <QVBoxLayout>

namespace cutwater::editor {

namespace {

constexpr int kPngDpi = 200;
constexpr int kNarrow = 150; // letters: below that picture and table stand one above the other

} // namespace

RiskPage::RiskPage(Session& session, Selection& selection, QWidget* parent)
    : QWidget(parent), m_session(session), m_selection(selection),
      m_risks(new Background(session, riskTask(true), this)), m_board(new RiskBoard(this)),
      m_scales(new ScalesPage(session, this)), m_split(new QSplitter(this)),
      m_tablePlace(new QWidget(this)), m_cell(new QLabel(this)), m_state(new QLabel(this)),
      m_causes(new QCheckBox(tr("Count common causes"), this)), m_progress(new QProgressBar(this)),
      m_all(new QPushButton(tr("Show all"), this)),
      m_copy(new QPushButton(tr("Copy picture"), this)),
      m_picture(new QPushButton(tr("Save picture ..."), this)),
      m_csv(new QPushButton(tr("Save table ..."), this)) {
    setObjectName("riskPage");
    whereToSave = [this](const QString& title, const QString& proposed, const QString& what) {
        return QFileDialog::getSaveFileName(this, title, proposed, what);
    };
    m_state->setObjectName("riskState");
    m_state->setWordWrap(true);
    m_progress->setRange(0, 100);
    m_progress->setMaximumWidth(140);
    m_progress->setAccessibleName(tr("Computing the risk matrix"));
    m_causes->setObjectName("commonCauses");
    m_causes->setChecked(true);
    m_cell->setObjectName("riskCell");
    m_cell->setWordWrap(true);
    m_copy->setObjectName("copyPicture");
    m_picture->setObjectName("savePicture");
    m_csv->setObjectName("saveTable");
    m_all->setObjectName("showAll");
    auto* head = new QHBoxLayout;
    head->addWidget(m_state, 1);
    head->addWidget(m_progress);
    head->addWidget(m_causes);
    head->addWidget(m_copy);
    head->addWidget(m_picture);
    head->addWidget(m_csv);
    auto* line = new QHBoxLayout;
    line->addWidget(m_cell, 1);
    line->addWidget(m_all);
    auto* column = new QVBoxLayout(m_tablePlace);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(line);
    m_split->addWidget(m_board);
    m_split->addWidget(m_tablePlace);
    m_split->setStretchFactor(0, 1);
    m_split->setStretchFactor(1, 1);
    m_split->setChildrenCollapsible(false);
    auto* matrix = new QWidget(this);
    auto* inside = new QVBoxLayout(matrix);
    inside->addLayout(head);
    inside->addWidget(m_split, 1);
    auto* tabs = new QTabWidget(this);
    tabs->setDocumentMode(true);
    tabs->setObjectName("riskTabs");
    tabs->addTab(matrix, tr("Matrix"));
    tabs->addTab(m_scales, tr("Scales"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(tabs);

    connect(m_risks, &Background::changed, this, &RiskPage::showRisks);
    connect(m_causes, &QCheckBox::toggled, this,
            [this](bool counted) { m_risks->ask(riskTask(counted)); });
    connect(m_board, &RiskBoard::chosenChanged, this, &RiskPage::showTable);
    connect(m_all, &QPushButton::clicked, this, [this] { m_board->choose(std::nullopt); });
    connect(m_copy, &QPushButton::clicked, this, &RiskPage::copyPicture);
    connect(m_picture, &QPushButton::clicked, this, &RiskPage::savePicture);
    connect(m_csv, &QPushButton::clicked, this, &RiskPage::saveTable);
    showRisks();
}

RiskPage::~RiskPage() = default;

void RiskPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    m_risks->setWatched(true);
}

void RiskPage::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    m_risks->setWatched(false);
}

void RiskPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const bool narrow = width() < fontMetrics().averageCharWidth() * kNarrow;
    const Qt::Orientation wanted = narrow ? Qt::Vertical : Qt::Horizontal;
    if (m_divided && m_split->orientation() == wanted) return;
    m_divided = true;
    m_split->setOrientation(wanted);
    const int whole = narrow ? height() : width();
    m_split->setSizes({whole * 55 / 100, whole * 45 / 100});
}

void RiskPage::showRisks() {
    showState();
    if (m_shown == m_risks->answer<RiskAnswer>()) return;
    m_shown = m_risks->answer<RiskAnswer>();
    if (!m_shown) {
        m_board->show({});
        return showTable();
    }
    static const auto lettering = drawing::findLettering();
    if (!lettering) {
        m_state->setText(editor::sentence(lettering.problems().front()));
        return;
    }
    m_board->show(drawing::drawRisks(*m_shown->project, m_shown->picture, *lettering));
    showTable();
}

void RiskPage::showState() {
    const bool stale = m_risks->isStale();
    m_board->setStale(stale && m_shown);
    m_progress->setVisible(m_risks->isComputing());
    m_progress->setValue(static_cast<int>(m_risks->share() * 100));
    for (QPushButton* button : {m_copy, m_picture, m_csv})
        button->setEnabled(m_risks->answer<RiskAnswer>() != nullptr);
    if (!stale) {
        std::size_t placed = 0;
        const auto answer = m_risks->answer<RiskAnswer>();
        for (const auto& item : answer->picture.items)
            placed += item.riskIndex.has_value();
        const QString words = answer->picture.groups.empty()
                                  ? tr("Placed: %1, without a place: %2. Events are taken as "
                                       "independent.")
                                  : tr("Placed: %1, without a place: %2. Common causes are "
                                       "counted.");
        m_state->setText(words.arg(placed).arg(answer->picture.items.size() - placed));
    } else if (m_risks->isComputing()) {
        m_state->setText(m_risks->doing().isEmpty()
                             ? tr("Computing; what is shown is stale.")
                             : tr("Computing %1; what is shown is stale.").arg(m_risks->doing()));
    } else {
        m_state->setText(tr("Stale: the project has changed."));
    }
}

void RiskPage::showTable() {
    const RiskBoard::Cell* cell = m_board->chosen();
    m_all->setVisible(cell);
    m_cell->setText(cell ? cell->words
                         : tr("All that can stand in the matrix. Choose a cell to see "
                              "what stands in it."));
    TablePage* old = m_table;
    m_table = nullptr;
    if (m_shown) {
        const CellWish wish =
            cell ? CellWish(std::pair(cell->frequency, cell->severity)) : std::nullopt;
        m_table =
            new TablePage(riskTable(*m_shown->project, m_shown->picture, wish), 0, m_tablePlace);
        m_tablePlace->layout()->addWidget(m_table);
        connect(m_table, &TablePage::rowChosen, this,
                [this](const std::vector<std::string>& nodes) { choose(nodes); });
    }
    if (old) {
        old->hide();
        old->deleteLater();
    }
}

void RiskPage::choose(const std::vector<std::string>& nodes) {
    if (nodes.empty())
        return emit sentence(tr("This failure mode is in no tree; it stands in the plant and the "
                                "worksheet."));
    for (const project::TopEvent& top : m_session.project()->tops)
        if (nodes.size() == 1 && top.node.id == nodes.front()) m_selection.showTop(top.id);
    m_selection.select(nodes);
}

void RiskPage::copyPicture() {
    const drawing::Picture& picture = m_board->picture();
    if (picture.groups.empty()) return;
    auto mime = std::make_unique<QMimeData>();
    mime->setData("image/svg+xml", QByteArray::fromStdString(drawing::toSvg(picture)));
    if (const auto png = drawing::toPng(picture, kPngDpi))
        mime->setImageData(QImage::fromData(QByteArray::fromStdString(*png), "PNG"));
    QGuiApplication::clipboard()->setMimeData(mime.release());
    emit sentence(tr("The picture is in the clipboard."));
}

void RiskPage::savePicture() {
    const drawing::Picture& picture = m_board->picture();
    if (picture.groups.empty()) return;
    const QString path = whereToSave(tr("Save the risk matrix"), QStringLiteral("risk-matrix.svg"),
                                     tr("Pictures (*.svg *.png *.pdf)"));
    if (path.isEmpty()) return;
    if (path.endsWith(".png", Qt::CaseInsensitive) || path.endsWith(".pdf", Qt::CaseInsensitive)) {
        const auto bytes = path.endsWith(".png", Qt::CaseInsensitive)
                               ? drawing::toPng(picture, kPngDpi)
                               : drawing::toPdf({picture}, picture.title);
        if (!bytes) return emit sentence(editor::sentence(bytes.problems().front()));
        return write(path, *bytes);
    }
    write(path, drawing::toSvg(picture));
}

void RiskPage::saveTable() {
    if (!m_table) return;
    const QString path =
        whereToSave(tr("Save the table"), QStringLiteral("risk-matrix.csv"), tr("Tables (*.csv)"));
    if (!path.isEmpty()) write(path, m_table->asCsv().toStdString());
}

void RiskPage::write(const QString& path, const std::string& bytes) {
    QSaveFile file(path);
    const bool good =
        file.open(QIODevice::WriteOnly) &&
        file.write(QByteArray::fromStdString(bytes)) == static_cast<qint64>(bytes.size()) &&
        file.commit();
    emit sentence(good ? tr("Written: %1").arg(path)
                       : tr("%1 cannot be written: %2").arg(path, file.errorString()));
}

} // namespace cutwater::editor
