// SPDX-License-Identifier: GPL-3.0-or-later
// The form for an event or gate, with the keys, and what it makes of the project.
#include "app/editor/details/details_form.h"
#include "tests/models/project/edits/small_tree.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QGroupBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QSpinBox>
#include <QTest>

#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::editor;

namespace {

Project withNumbers() {
    Project project = smallTree();
    Parameter parameter;
    parameter.id = "bearing";
    parameter.name = "bearing of a small motor";
    parameter.quantity.value = 2e-6;
    parameter.quantity.unit = Unit::perHour;
    project.parameters = {parameter};
    FailureModel& model = project.modes[0].model;
    model.kind = ModelKind::tested;
    model.clock = Clock::calendarHour;
    Quantity rate;
    rate.value = 3;
    rate.unit = Unit::perMillionHours;
    rate.uncertainty = Lognormal{3, 10};
    rate.source.document = "worksheet";
    rate.source.tag = "invented";
    Quantity interval;
    interval.value = 1;
    interval.unit = Unit::weeks;
    model.set(Role::rate, rate);
    model.set(Role::interval, interval);
    return project;
}

class Details : public testing::Test {
protected:
    Details() {
        session.start(withNumbers());
        form.resize(460, 900);
        form.show();
        QApplication::setActiveWindow(&form);
        EXPECT_TRUE(QTest::qWaitForWindowActive(&form));
        QObject::connect(&session, &Session::refused, &form,
                         [this](const QString& text) { refused = text; });
    }
    template <typename Field>
    Field& field(const char* name) {
        Field* found = nullptr;
        for (Field* each : form.findChildren<Field*>(QLatin1String(name)))
            if (!each->isHidden() && each->isVisible()) found = each;
        if (!found) ADD_FAILURE() << "no visible field " << name;
        return found ? *found : *form.findChild<Field*>();
    }
    void enter(const char* name, const QString& text) {
        auto& edit = field<QLineEdit>(name);
        edit.setFocus();
        edit.selectAll();
        QTest::keyClicks(&edit, text);
        QTest::keyClick(&edit, Qt::Key_Return);
    }
    // As a person does: open the list, go to the entry, take it.
    void choose(const char* name, int data) { chooseRow(name, QVariant(data)); }
    void chooseRow(const char* name, const QVariant& data) {
        auto& box = field<QComboBox>(name);
        box.setFocus();
        const int row = box.findData(data);
        ASSERT_GE(row, 0) << name;
        for (int i = 0; i < 50 && box.currentIndex() < row; ++i)
            QTest::keyClick(&box, Qt::Key_Down);
        for (int i = 0; i < 50 && box.currentIndex() > row; ++i)
            QTest::keyClick(&box, Qt::Key_Up);
    }
    const Project& project() { return *session.project(); }

    Session session;
    Selection selection;
    DetailsForm form{session, selection};
    QString refused;
};

} // namespace

TEST_F(Details, NothingChosenIsSaid) {
    const auto labels = form.findChildren<QLabel*>();
    EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
        return label->isVisible() && label->text().startsWith("Choose an event or a gate");
    }));
}

TEST_F(Details, AGateWithItsPlaces) {
    selection.select({"fuel"});
    EXPECT_EQ(field<QLineEdit>("text").text(), "no fuel");
    EXPECT_EQ(field<QLabel>("id").text(), "fuel");
    EXPECT_TRUE(field<QLabel>("places").text().contains("boiler stops"));
    EXPECT_FALSE(form.findChild<QSpinBox*>("k")->isVisible());
    enter("text", "fuel lost");
    EXPECT_EQ(gateOf(project(), "fuel")->name, "fuel lost");
    emit field<QLabel>("places").linkActivated("stop");
    EXPECT_EQ(selection.current().node, "stop");
}

TEST_F(Details, KindAndVotes) {
    selection.select({"fuel"});
    choose("kind", static_cast<int>(GateKind::vote));
    EXPECT_EQ(gateOf(project(), "fuel")->kind, GateKind::vote);
    auto& k = field<QSpinBox>("k");
    EXPECT_EQ(k.value(), 2);
    EXPECT_EQ(k.maximum(), 2);
    k.setFocus();
    QTest::keyClick(&k, Qt::Key_Down);
    EXPECT_EQ(gateOf(project(), "fuel")->k, 1);
    session.undoStack()->undo();
    EXPECT_EQ(field<QSpinBox>("k").value(), 2) << "the form follows undo";
}

TEST_F(Details, TheModelIsThatOfTheFailureMode) {
    selection.select({"fan"});
    EXPECT_EQ(field<QLineEdit>("rate.value").text(), "3");
    EXPECT_EQ(field<QComboBox>("rate.unit").currentText(), "/1e6h");
    EXPECT_EQ(field<QLineEdit>("rate.error-factor").text(), "10");
    EXPECT_EQ(field<QLineEdit>("rate.document").text(), "worksheet");
    EXPECT_EQ(field<QLineEdit>("interval.value").text(), "1");
    enter("rate.value", "4,5");
    const Quantity* rate = project().modes[0].model.find(Role::rate);
    ASSERT_NE(rate, nullptr);
    EXPECT_EQ(rate->value, 4.5);
    EXPECT_EQ(rate->unit, Unit::perMillionHours);
    EXPECT_EQ(std::get<Lognormal>(rate->uncertainty), (Lognormal{4.5, 10}))
        << "the value was the median";
    EXPECT_EQ(rate->source.document, "worksheet");
    EXPECT_EQ(eventOf(project(), "fan")->model, FailureModel());
    EXPECT_EQ(session.undoStack()->undoText(), "Change the failure model of fan stops");
    session.undoStack()->undo();
    EXPECT_EQ(field<QLineEdit>("rate.value").text(), "3");
}

TEST_F(Details, UnitSourceTrustAndClock) {
    selection.select({"fan"});
    choose("rate.unit", static_cast<int>(Unit::perYear));
    enter("rate.place", "table 3");
    chooseRow("rate.tag", QString("from memory"));
    choose("modelClock", static_cast<int>(Clock::firingHour));
    const FailureModel& model = project().modes[0].model;
    EXPECT_EQ(model.find(Role::rate)->unit, Unit::perYear);
    EXPECT_EQ(model.find(Role::rate)->source.place, "table 3");
    EXPECT_EQ(model.find(Role::rate)->source.tag, "from memory");
    EXPECT_EQ(model.clock, Clock::firingHour);
}

TEST_F(Details, AnEventAloneGetsAModelStepByStep) {
    selection.select({"pump-a"});
    EXPECT_TRUE(field<QLabel>("modelProblems").text().contains("is not quantified"));
    choose("modelKind", static_cast<int>(ModelKind::perDemand));
    enter("probability.value", "0.02");
    const Event* event = eventOf(project(), "pump-a");
    EXPECT_EQ(event->model.kind, ModelKind::perDemand);
    ASSERT_NE(event->model.find(Role::probability), nullptr);
    EXPECT_EQ(event->model.find(Role::probability)->value, 0.02);
    enter("probability.value", "2");
    EXPECT_TRUE(field<QLabel>("modelProblems").text().startsWith("Probability is 2"))
        << field<QLabel>("modelProblems").text().toStdString();
}

TEST_F(Details, WhatIsNoNumberIsSaidAndChangesNothing) {
    selection.select({"fan"});
    const auto before = session.project();
    enter("rate.value", "about 3");
    EXPECT_EQ(session.project(), before);
    const auto labels = form.findChildren<QLabel*>();
    EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
        return label->isVisible() && label->text().contains("\"about 3\" is no number");
    }));
    enter("rate.value", "3e-6");
    EXPECT_EQ(project().modes[0].model.find(Role::rate)->value, 3e-6);
}

TEST_F(Details, ASharedNumber) {
    selection.select({"fan"});
    chooseRow("rate.parameter", QString("bearing"));
    EXPECT_EQ(project().modes[0].model.find(Role::rate)->parameter, "bearing");
    EXPECT_FALSE(field<QLineEdit>("rate.value").isEnabled());
}

TEST_F(Details, GivingAFailureModeThatAnotherEventIs) {
    selection.select({"pump-a"});
    auto& mode = field<QComboBox>("mode");
    mode.setCurrentIndex(mode.findData("FAN.stops"));
    emit mode.activated(mode.currentIndex());
    EXPECT_TRUE(refused.contains("is that failure mode already")) << refused.toStdString();
    EXPECT_EQ(field<QComboBox>("mode").currentIndex(), 0) << "back to what is";
    // From the opened list, so that what stands between is passed and not taken.
    mode.showPopup();
    mode.view()->setCurrentIndex(mode.model()->index(mode.findData("FAN.no-start"), 0));
    QTest::keyClick(mode.view(), Qt::Key_Return);
    EXPECT_EQ(eventOf(project(), "pump-a")->mode, "FAN.no-start");
}

TEST_F(Details, AHouseEventHasAStateAndNoModel) {
    selection.select({"pump-a"});
    choose("kind", 100 + static_cast<int>(EventKind::house));
    auto& state = field<QCheckBox>("state");
    QTest::keyClick(&state, Qt::Key_Space);
    EXPECT_TRUE(eventOf(project(), "pump-a")->state);
    EXPECT_FALSE(form.findChild<QGroupBox*>()->isVisible());
}

TEST_F(Details, TheRemarkIsTakenWhenItIsLeft) {
    selection.select({"fuel"});
    auto& remark = field<QPlainTextEdit>("remark");
    remark.setFocus();
    QTest::keyClicks(&remark, "seen in the log");
    field<QLineEdit>("text").setFocus();
    EXPECT_EQ(gateOf(project(), "fuel")->remark, "seen in the log");
    EXPECT_EQ(session.undoStack()->count(), 1);
}

TEST_F(Details, EveryFieldHasAName) {
    selection.select({"fan"});
    for (const QWidget* widget : form.findChildren<QWidget*>()) {
        if (!widget->isVisible() || !(widget->focusPolicy() & Qt::TabFocus)) continue;
        if (widget->objectName().startsWith("qt_")) continue; // parts of fields
        EXPECT_FALSE(widget->accessibleName().isEmpty())
            << widget->metaObject()->className() << ' ' << widget->objectName().toStdString();
    }
}
