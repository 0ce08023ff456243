// SPDX-License-Identifier: GPL-3.0-or-later
// The pages about plant, library, risks and proposals in the whole window: they are there, have
// help, and show each other what they find.
#include "tests/app/editor/window/room.h"

#include "app/editor/library/library_page.h"
#include "app/editor/plant/plant_page.h"
#include "app/editor/proposals/proposals_page.h"
#include "app/editor/risk/risk_page.h"
#include "app/editor/window/help_window.h"

#include <QElapsedTimer>
#include <QFile>
#include <QTabWidget>

using namespace cutwater::test;
using namespace cutwater::editor;

namespace {

class Pages : public Room {
protected:
    template <typename Page>
    Page& page() {
        auto* found = window->findChild<Page*>();
        EXPECT_NE(found, nullptr);
        return *found;
    }
    void openDemo() {
        openPath(QStringLiteral(CUTWATER_SOURCE_DIR "/share/examples/sandpiper-bay.cutwater"));
    }
};

} // namespace

TEST_F(Pages, EachHasAPageOfTheGuide) {
    for (const char* name : {"plantPage", "libraryPage", "riskPage", "proposalsPage"}) {
        const auto* found = window->findChild<QWidget*>(name);
        ASSERT_NE(found, nullptr) << name;
        EXPECT_GE(window->pages().indexOf(const_cast<QWidget*>(found)), 0) << name;
        const QString guide = helpFor(found).first;
        EXPECT_TRUE(QFile::exists(QStringLiteral(":/guide/%1.md").arg(guide)))
            << guide.toStdString();
    }
}

TEST_F(Pages, WhatIsTakenFromTheLibraryIsShownInThePlant) {
    open(smallTree());
    page<PlantPage>().view().reveal(PlantModel::Kind::component, "FAN");
    window->pages().setCurrentWidget(&page<LibraryPage>());
    emit page<LibraryPage>().taken("PLANT");
    EXPECT_EQ(page<PlantPage>().component(), "PLANT");
}

TEST_F(Pages, AModeThatIsInNoTreeIsShownInThePlant) {
    open(smallTree());
    window->pages().setCurrentWidget(&page<ProposalsPage>());
    emit page<ProposalsPage>().modeWished("FAN.no-start");
    EXPECT_EQ(window->pages().currentWidget(), &page<PlantPage>());
    EXPECT_EQ(page<PlantPage>().view().rows().idAt(page<PlantPage>().view().currentRow()),
              "FAN.no-start");
}

TEST_F(Pages, TheDemosRisksAreComputedInTheBackground) {
    openDemo();
    window->pages().setCurrentWidget(&page<RiskPage>());
    EXPECT_TRUE(QTest::qWaitFor([&] { return !page<RiskPage>().risks().isStale(); }, 30000));
    EXPECT_EQ(page<RiskPage>().risks().answer<RiskAnswer>()->picture.items.size(), 244u);
}

TEST_F(Pages, AnEditOfThePlantAnswersAtOnce) {
    // 1,000 components with 2 failure modes each; the plant's page is the one that is shown.
    Project large;
    for (int i = 0; i < 1000; ++i) {
        Component part;
        part.id = "C" + std::to_string(i);
        part.tag = part.id;
        part.name = "part";
        if (i > 0) part.parent = "C" + std::to_string((i - 1) / 5);
        large.components.push_back(part);
        for (const char* name : {"stops", "leaks"}) {
            FailureMode mode;
            mode.component = part.id;
            mode.name = name;
            mode.id = part.id + "." + name;
            large.modes.push_back(mode);
        }
    }
    open(large);
    window->pages().setCurrentWidget(&page<PlantPage>());
    page<PlantPage>().view().reveal(PlantModel::Kind::component, "C999");
    QElapsedTimer timer;
    timer.start();
    EXPECT_TRUE(session().apply([](const Project& p) {
        return cutwater::project::edits::addPart(p, {"C999", {}}, "X1 new");
    }));
    QApplication::processEvents();
    const qint64 took = timer.elapsed();
    std::printf("1,000 components, 2,000 failure modes: a new part takes %lld ms\n",
                static_cast<long long>(took));
    EXPECT_LT(took, 200); // 50 wanted, on a machine that is not busy with other things
}
