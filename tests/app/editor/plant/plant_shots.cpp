// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/editor/plant/plant_shots.h"

#include "app/editor/library/library_page.h"
#include "app/editor/library/shelf.h"
#include "app/editor/plant/connection_dialog.h"
#include "app/editor/plant/plant_page.h"
#include "app/editor/proposals/proposals_page.h"
#include "app/editor/proposals/skeleton_page.h"
#include "app/editor/risk/risk_board.h"
#include "app/editor/risk/risk_page.h"

#include <QApplication>
#include <QLineEdit>
#include <QTabWidget>
#include <QTest>
#include <QTreeWidget>

#include <cstdio>

namespace cutwater::test {

using namespace editor;

namespace {

template <typename Ready>
void waitFor(Ready ready, int most) {
    if (!QTest::qWaitFor(ready, most)) std::fputs("it took too long\n", stderr);
}

void save(QWidget& widget, const QDir& folder, const QString& name) {
    QTest::qWait(50);
    widget.grab().save(folder.filePath(name + ".png"));
}

void partShots(const project::Project& project, const QDir& folder, const QString& look) {
    Session session;
    Selection selection;
    PlantPage page(session, selection);
    page.resize(1180, 720);
    page.show();
    save(page, folder, "plant-empty-" + look);
    session.start(project);
    page.view().reveal(PlantModel::Kind::component, "CS-1");
    page.view().expand(page.view().currentIndex());
    save(page, folder, "plant-group-" + look);
    if (!project.modes.empty()) {
        const auto& mode = project.modes[project.modes.size() / 3];
        page.view().reveal(PlantModel::Kind::component, mode.component);
        save(page, folder, "plant-part-" + look);
        page.view().reveal(PlantModel::Kind::mode, mode.id);
        save(page, folder, "plant-mode-" + look);
    }
    if (!project.connections.empty()) {
        page.view().reveal(PlantModel::Kind::component, project.connections.front().to);
        save(page, folder, "plant-supply-" + look);
        ConnectionDialog dialog(session, project.connections.front(), &page);
        dialog.show();
        save(dialog, folder, "plant-connection-" + look);
    }
    page.filterField().setText("transformer");
    QTest::qWait(200);
    save(page, folder, "plant-found-" + look);
    page.view().setFocus();
    page.view().setCurrentIndex(page.view().rows().index(0, 0));
    page.view().addBelow();
    save(page, folder, "plant-typing-" + look);
    if (QWidget* edit = QApplication::focusWidget()) QTest::keyClick(edit, Qt::Key_Escape);
}

void libraryShots(const project::Project& project, const QDir& folder, const QString& look) {
    Session session;
    session.start(project);
    Shelf shelf(QStringLiteral(CUTWATER_LIBRARY));
    LibraryPage page(session, shelf);
    page.resize(1180, 720);
    page.show();
    waitFor([&] { return !shelf.content()->libraries.empty(); }, 10000);
    save(page, folder, "library-" + look);
    page.findChild<QLineEdit*>("typeFilter")->setText("pump");
    save(page, folder, "library-found-" + look);
    auto* tabs = page.findChild<QTabWidget*>("libraryTabs");
    for (int tab : {1, 2}) {
        tabs->setCurrentIndex(tab);
        save(page, folder, QString("library-tab%1-").arg(tab) + look);
    }
}

void riskShots(const project::Project& project, const QDir& folder, const QString& look) {
    Session session;
    Selection selection;
    session.start(project);
    RiskPage page(session, selection);
    for (const QSize size : {QSize(1280, 720), QSize(700, 800)}) {
        page.resize(size);
        page.show();
        waitFor([&] { return !page.risks().isStale(); }, 60000);
        save(page, folder, QString("risk-%1-").arg(size.width()) + look);
    }
    page.resize(1280, 720);
    if (!page.board().cells().empty()) page.board().choose(page.board().cells().size() / 2);
    save(page, folder, "risk-cell-" + look);
    page.findChild<QTabWidget*>("riskTabs")->setCurrentIndex(1);
    save(page, folder, "risk-scales-" + look);
}

void proposalShots(const project::Project& project, const QDir& folder, const QString& look) {
    Session session;
    Selection selection;
    session.start(project);
    ProposalsPage page(session, selection);
    page.resize(1180, 720);
    page.show();
    const auto ready = [&] { waitFor([&] { return !page.findings().isStale(); }, 60000); };
    ready();
    save(page, folder, "proposals-coverage-" + look);
    auto* tabs = page.findChild<QTabWidget*>("proposalsTabs");
    tabs->setCurrentIndex(1);
    save(page, folder, "proposals-tree-empty-" + look);
    for (const auto& effect : page.findings().answer<Findings>()->coverage.effects)
        if (effect.answeredBy.empty() && effect.modes.size() > 3) {
            page.skeleton().choose(QString::fromStdString(effect.text));
            break;
        }
    ready();
    save(page, folder, "proposals-tree-" + look);
    tabs->setCurrentIndex(2);
    auto* causes = page.findChild<QTreeWidget*>("causes");
    if (causes->topLevelItemCount() > 2) causes->setCurrentItem(causes->topLevelItem(2));
    save(page, folder, "proposals-causes-" + look);
}

} // namespace

void plantShots(const project::Project& project, const QDir& folder, const QString& look) {
    partShots(project, folder, look);
    libraryShots(project, folder, look);
    riskShots(project, folder, look);
    proposalShots(project, folder, look);
}

} // namespace cutwater::test
