// SPDX-License-Identifier: GPL-3.0-or-later
// The forms beside the plant, with the keys, and what they make of the project.
#include "app/editor/plant/connection_dialog.h"
#include "app/editor/plant/mode_form.h"
#include "app/editor/plant/part_form.h"
#include "app/editor/plant/plant_page.h"
#include "app/editor/plant/supply_box.h"
#include "tests/models/project/edits/small_plant.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::editor;
using Kind = PlantModel::Kind;

namespace {

class Forms : public testing::Test {
protected:
    Forms() {
        session.start(smallPlant());
        page.resize(1100, 900);
        page.show();
        QApplication::setActiveWindow(&page);
        EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
        QObject::connect(&session, &Session::refused, &page,
                         [this](const QString& text) { refused = text; });
    }
    template <typename Field>
    Field& field(const char* name) {
        Field* found = nullptr;
        for (Field* each : page.findChildren<Field*>(QLatin1String(name)))
            if (each->isVisible()) found = each;
        if (!found) ADD_FAILURE() << "no visible field " << name;
        return found ? *found : *page.findChild<Field*>();
    }
    void enter(QLineEdit& edit, const QString& text) {
        edit.setFocus();
        edit.selectAll();
        QTest::keyClicks(&edit, text);
        QTest::keyClick(&edit, Qt::Key_Return);
    }
    const Project& project() { return *session.project(); }

    Session session;
    Selection selection;
    PlantPage page{session, selection};
    QString refused;
};

} // namespace

TEST_F(Forms, FactsOfAComponent) {
    page.view().reveal(Kind::component, "FP-1");
    EXPECT_EQ(field<QLineEdit>("name").text(), "fuel pump");
    enter(field<QLineEdit>("function"), "bring fuel");
    EXPECT_EQ(partOf(project(), "FP-1")->function, "bring fuel");
    enter(*field<QComboBox>("type").lineEdit(), "screw pump");
    EXPECT_EQ(partOf(project(), "FP-1")->type, "screw pump");
    enter(field<QLineEdit>("rate.value"), "2e-5");
    ASSERT_TRUE(partOf(project(), "FP-1")->failureRate);
    EXPECT_EQ(partOf(project(), "FP-1")->failureRate->value, 2e-5);
    EXPECT_EQ(session.undoStack()->count(), 3) << "one step a field";
    session.undoStack()->undo();
    EXPECT_TRUE(field<QLineEdit>("rate.value").text().isEmpty());
    page.view().reveal(Kind::component, "FP-2");
    enter(*field<QComboBox>("type").lineEdit(), "screw pump");
    EXPECT_TRUE(field<QLabel>("sameType").text().contains("FP-1"));
}

TEST_F(Forms, AnIdCarriesAllAlongAndStaysChosen) {
    page.view().reveal(Kind::component, "FP-1");
    enter(field<QLineEdit>("id"), "P101");
    EXPECT_EQ(partOf(project(), "FP-2")->suppliedBy[0].id, "P101");
    EXPECT_EQ(page.component(), "P101");
    enter(field<QLineEdit>("id"), "FP-2");
    EXPECT_TRUE(refused.contains("already")) << refused.toStdString();
    EXPECT_EQ(field<QLineEdit>("id").text(), "P101");
    page.view().reveal(Kind::mode, "P101.stops");
    enter(field<QLineEdit>("modeId"), "stopped");
    EXPECT_EQ(eventOf(project(), "pump")->mode, "stopped");
    EXPECT_EQ(field<QLineEdit>("modeId").text(), "stopped");
}

TEST_F(Forms, AFailureModeSaysWhereItStandsAndHasItsModel) {
    page.view().reveal(Kind::mode, "FP-1.stops");
    EXPECT_TRUE(field<QLabel>("places").text().contains("no tree"));
    EXPECT_TRUE(field<QLabel>("places").text().contains("row 1 of 1"));
    EXPECT_EQ(field<QLineEdit>("probability.value").text(), "0.25");
    enter(field<QLineEdit>("probability.value"), "0.5");
    EXPECT_EQ(project().modes[0].model.find(Role::probability)->value, 0.5);
    EXPECT_EQ(session.undoStack()->undoText(), "Change the failure model of stops");
    enter(field<QLineEdit>("modeName"), "stands still");
    EXPECT_EQ(project().modes[0].name, "stands still");
    emit field<QLabel>("component").linkActivated("part:FP-1");
    EXPECT_EQ(page.component(), "FP-1");
    EXPECT_TRUE(field<QLabel>("modes").text().contains("stands still"));
}

TEST_F(Forms, SuppliersAreAddedAndTakenAway) {
    page.view().reveal(Kind::component, "FP-2");
    auto& list = field<QListWidget>("supplies");
    EXPECT_TRUE(list.item(0)->text().contains("FP-1"));
    EXPECT_TRUE(list.item(1)->text().contains("through FP-1"))
        << list.item(1)->text().toStdString();
    auto& choice = field<QComboBox>("newSupplier");
    choice.setFocus();
    QTest::keyClicks(choice.lineEdit(), "PS");
    QTest::keyClick(choice.lineEdit(), Qt::Key_Escape); // the list of fitting ones
    QTest::mouseClick(&field<QPushButton>("addSupplier"), Qt::LeftButton);
    ASSERT_EQ(partOf(project(), "FP-2")->suppliedBy.size(), 2u);
    EXPECT_EQ(partOf(project(), "FP-2")->suppliedBy[1].id, "PS");
    list.setCurrentRow(0);
    list.setFocus();
    QTest::keyClick(&list, Qt::Key_Delete);
    ASSERT_EQ(partOf(project(), "FP-2")->suppliedBy.size(), 1u);
    EXPECT_EQ(partOf(project(), "FP-2")->suppliedBy[0].id, "PS");
    list.setCurrentRow(0);
    QTest::mouseClick(&field<QPushButton>("openSupply"), Qt::LeftButton);
    EXPECT_EQ(page.component(), "PS");
    EXPECT_EQ(field<QListWidget>("supplies").count(), 3) << "two connections, one that needs it";
    QTest::mouseClick(&field<QPushButton>("addSupplier"), Qt::LeftButton);
    EXPECT_TRUE(refused.contains("no component is chosen", Qt::CaseInsensitive));
}

TEST_F(Forms, TwoOfOneTypeAreSaidToBeRedundant) {
    Project project = smallPlant();
    project.components[1].type = project.components[4].type = "source";
    project.components[3].suppliedBy.push_back({"PS", {}});
    session.start(project);
    page.view().reveal(Kind::component, "FP-2");
    EXPECT_TRUE(field<QLabel>("either").text().contains("any one of"));
}

TEST_F(Forms, AConnectionIsEnteredWhole) {
    Connection wanted;
    wanted.to = "B1";
    ConnectionDialog dialog(session, wanted, &page);
    dialog.show();
    const auto edit = [&](const char* name) { return dialog.findChild<QLineEdit*>(name); };
    dialog.accept();
    auto* wrong = dialog.findChild<QLabel*>("wrong");
    EXPECT_TRUE(wrong->text().contains("two ends")) << wrong->text().toStdString();
    dialog.findChild<QComboBox*>("medium")->setEditText("24 V DC");
    dialog.findChild<QComboBox*>("from")->setEditText("PS");
    edit("through")->setText("SEAL, nowhere");
    dialog.accept();
    EXPECT_TRUE(wrong->text().contains("nowhere"));
    edit("through")->setText("SEAL");
    edit("capacity")->setText("many");
    dialog.accept();
    EXPECT_TRUE(wrong->text().contains("many"));
    edit("capacity")->setText("10");
    dialog.accept();
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    const Connection& made = project().connections.back();
    EXPECT_EQ(made.from, "PS");
    EXPECT_EQ(made.through[0].id, "SEAL");
    EXPECT_EQ(made.capacity->value, 10);
    session.undoStack()->undo();
    EXPECT_EQ(project(), smallPlant());
}

TEST_F(Forms, EveryFieldHasAName) {
    for (const auto& [kind, id] :
         {std::pair{Kind::component, "FP-1"}, {Kind::mode, "FP-1.stops"}}) {
        page.view().reveal(kind, id);
        for (const QWidget* widget : page.findChildren<QWidget*>()) {
            if (!widget->isVisible() || !(widget->focusPolicy() & Qt::TabFocus)) continue;
            if (widget->objectName().startsWith("qt_") || widget->inherits("QHeaderView")) continue;
            if (widget->inherits("QPushButton")) continue; // its text is its name
            const QWidget* box = widget->parentWidget();
            if (widget->inherits("QLineEdit") && box->inherits("QComboBox")) continue;
            EXPECT_FALSE(widget->accessibleName().isEmpty())
                << widget->metaObject()->className() << ' ' << widget->objectName().toStdString();
        }
    }
}
