// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of the diagram, to be looked at: `diagram_screenshots PROJECT FOLDER`.
#include "tests/app/editor/diagram/stage.h"

#include "app/editor/diagram/find_bar.h"
#include "models/document/document.h"

#include <QApplication>
#include <QLineEdit>
#include <QMouseEvent>
#include <QStyleFactory>
#include <QTest>

#include <cstdio>

namespace {

using namespace cutwater;

QPalette darkPalette() {
    QPalette dark;
    const QColor window(38, 42, 48), base(28, 31, 36), text(228, 232, 236);
    dark.setColor(QPalette::Window, window);
    dark.setColor(QPalette::WindowText, text);
    dark.setColor(QPalette::Base, base);
    dark.setColor(QPalette::AlternateBase, window.lighter(115));
    dark.setColor(QPalette::Text, text);
    dark.setColor(QPalette::Button, window);
    dark.setColor(QPalette::ButtonText, text);
    dark.setColor(QPalette::ToolTipBase, window.lighter(130));
    dark.setColor(QPalette::ToolTipText, text);
    dark.setColor(QPalette::PlaceholderText, text.darker(150));
    dark.setColor(QPalette::Highlight, QColor(60, 130, 200));
    dark.setColor(QPalette::HighlightedText, Qt::white);
    dark.setColor(QPalette::Disabled, QPalette::Text, text.darker(200));
    dark.setColor(QPalette::Disabled, QPalette::ButtonText, text.darker(200));
    dark.setColor(QPalette::Disabled, QPalette::WindowText, text.darker(200));
    return dark;
}

class Camera {
public:
    Camera(QString folder, QString tone) : m_folder(std::move(folder)), m_tone(std::move(tone)) {}
    void take(test::Stage& stage, const char* name) const {
        stage.settle();
        QTest::qWait(50);
        const QString path = QStringLiteral("%1/%2-%3.png").arg(m_folder, name, m_tone);
        if (!stage.panel->grab().save(path)) std::fprintf(stderr, "%s\n", qPrintable(path));
    }

private:
    QString m_folder, m_tone;
};

void shoot(const project::Project& demo, const Camera& camera) {
    {
        test::Stage stage(demo, demo.tops.front().id, QSize(1180, 760));
        camera.take(stage, "whole");
        stage.panel->view().fitPage();
        camera.take(stage, "fit");
        stage.panel->view().setZoom(1);
        stage.panel->setCaptions(editor::CaptionKind::probabilities);
        stage.key(Qt::Key_Home);
        stage.key(Qt::Key_Down);
        stage.key(Qt::Key_Down);
        camera.take(stage, "walk-probabilities");
        stage.panel->setCaptions(editor::CaptionKind::tags);
        camera.take(stage, "tags");
        auto* field = stage.panel->findChild<QLineEdit*>("findField");
        field->setText("fuel");
        camera.take(stage, "find");
        field->clear();
        stage.panel->setKind(editor::ViewKind::sheets);
        camera.take(stage, "sheet");
        stage.panel->showSheet(1);
        camera.take(stage, "sheet-2");
        stage.panel->setKind(editor::ViewKind::tree);
        stage.settle();
        // A cut set: one event that is enough, by the look of the tree.
        const auto& boxes = stage.panel->scene().page()->boxes;
        std::set<project::Id> marked;
        for (const editor::PageBox& box : boxes)
            if (!box.isGate && !box.transfer && !box.beside && marked.empty() &&
                box.symbol == drawing::SymbolKind::basic)
                marked.insert(box.node);
        stage.selection.mark(marked, "Cut set 1 of 40.");
        camera.take(stage, "marked");
        stage.panel->setKind(editor::ViewKind::sheets);
        camera.take(stage, "marked-sheet");
    }
    {
        test::Stage stage(test::largeTree(2000), "T1", QSize(1180, 760));
        camera.take(stage, "large");
        stage.panel->fold("G1", false);
        stage.selection.mark({"E1000", "E1001"}, "Two events.");
        camera.take(stage, "large-marked");
    }
    {
        test::Stage stage(test::smallTree(), "T1", QSize(900, 600));
        camera.take(stage, "small");
        stage.panel->fold("a", true);
        stage.settle();
        stage.click(stage.box("c"));
        stage.panel->rename("c");
        camera.take(stage, "rename");
        stage.key(Qt::Key_Escape);
        QWidget* viewport = stage.panel->view().viewport();
        const QPoint from = stage.middle(stage.box("z")), to = stage.middle(stage.box("c"));
        QTest::mousePress(viewport, Qt::LeftButton, {}, from);
        for (int i = 1; i <= 4; ++i) {
            const QPoint place = from + (to - from) * i / 4;
            QMouseEvent move(QEvent::MouseMove, place, viewport->mapToGlobal(place), Qt::NoButton,
                             Qt::LeftButton, Qt::NoModifier);
            QCoreApplication::sendEvent(viewport, &move);
        }
        camera.take(stage, "drag");
    }
}

} // namespace

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    if (argc != 3) {
        std::fputs("usage: diagram_screenshots PROJECT FOLDER\n", stderr);
        return 2;
    }
    QApplication::setStyle(QStyleFactory::create("Fusion"));
    const project::Outcome<document::Loaded> loaded = document::load(argv[1]);
    if (!loaded) {
        std::fputs("the project cannot be read\n", stderr);
        return 1;
    }
    const QPalette light = QApplication::palette();
    shoot(loaded->project, Camera(argv[2], "light"));
    QApplication::setPalette(darkPalette());
    shoot(loaded->project, Camera(argv[2], "dark"));
    QApplication::setPalette(light);
    return 0;
}
