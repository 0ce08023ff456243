// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/analyses/parameter_field.h"
#include "app/editor/analyses/parameter_form.h"

#include "tests/plugins/analyses/plants.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace cutwater;
using editor::ParameterField;
using editor::ParameterForm;
using sdk::Parameter;
using sdk::ParameterType;
using testing::HasSubstr;

namespace {

std::vector<Parameter> everyType() {
    return {
        {"word", ParameterType::text, "", {}, {}, {}, {}, "a word"},
        {"count", ParameterType::integer, "", 0, 10, {}, sdk::Value(std::int64_t{3}), "how many"},
        {"mission-time", ParameterType::number, "h", 0, {}, {}, {}, "how long"},
        {"fast", ParameterType::flag, "", {}, {}, {}, {}, "in a hurry"},
        {"sort",
         ParameterType::choice,
         "",
         {},
         {},
         {"up", "down"},
         sdk::Value(std::string("down")),
         "which way"},
        {"top", ParameterType::topEvent, "", {}, {}, {"T1"}, {}, "which tree"}};
}

class Form : public testing::Test {
protected:
    Form() {
        form.show(everyType(), std::make_shared<const project::Project>(plants::twoPumps()));
        form.QWidget::show();
    }
    template <typename Widget>
    Widget* editorOf(const char* name) {
        return qobject_cast<Widget*>(form.field(name)->editor());
    }
    std::string complaint(const char* name) {
        const QLabel* const label = form.field(name)->complaint();
        return label->isVisible() ? label->text().toStdString() : std::string();
    }
    ParameterForm form;
};

} // namespace

TEST_F(Form, HasAFieldOfTheRightKindForEachParameter) {
    EXPECT_TRUE(editorOf<QLineEdit>("word"));
    EXPECT_EQ(editorOf<QLineEdit>("count")->text(), "3"); // the standard
    EXPECT_EQ(form.field("mission-time")->label()->text(), "Mission time [h]");
    EXPECT_TRUE(editorOf<QCheckBox>("fast"));
    EXPECT_EQ(editorOf<QComboBox>("sort")->currentText(), "down");
    EXPECT_EQ(editorOf<QComboBox>("top")->itemText(1), "T1  top T1");
    EXPECT_TRUE(editorOf<QComboBox>("top")->isEditable());
    for (const Parameter& parameter : everyType()) {
        const QWidget* const editor = form.field(parameter.name)->editor();
        EXPECT_THAT(editor->toolTip().toLower().toStdString(), HasSubstr(parameter.sentence));
        EXPECT_EQ(editor->accessibleDescription(), editor->toolTip());
        EXPECT_FALSE(editor->accessibleName().isEmpty());
    }
    EXPECT_THAT(form.field("count")->editor()->toolTip().toStdString(), HasSubstr("from 0 to 10"));
}

TEST_F(Form, GivesCheckedValuesWithTheStandards) {
    auto values = form.read();
    ASSERT_TRUE(values);
    EXPECT_FALSE(values->has("word")); // left empty: not given
    EXPECT_FALSE(values->has("top"));
    EXPECT_EQ(values->integer("count"), 3);
    EXPECT_EQ(values->text("sort"), "down");
    EXPECT_FALSE(values->flag("fast"));

    QTest::keyClicks(editorOf<QLineEdit>("word"), "steam");
    editorOf<QLineEdit>("mission-time")->setText("2 wk"); // another unit of time
    QTest::mouseClick(editorOf<QCheckBox>("fast"), Qt::LeftButton, {}, {5, 10});
    editorOf<QComboBox>("sort")->setCurrentText("up");
    editorOf<QComboBox>("top")->setCurrentIndex(1);
    values = form.read();
    ASSERT_TRUE(values);
    EXPECT_EQ(values->text("word"), "steam");
    EXPECT_EQ(values->number("mission-time"), 336);
    EXPECT_TRUE(values->flag("fast"));
    EXPECT_EQ(values->text("sort"), "up");
    EXPECT_EQ(values->text("top"), "T1");
    EXPECT_EQ(form.summary().toStdString(),
              "word steam, mission-time 2 wk, fast yes, sort up, top T1");
    // Any gate may be typed.
    editorOf<QComboBox>("top")->setEditText("no-flow");
    values = form.read();
    ASSERT_TRUE(values);
    EXPECT_EQ(values->text("top"), "no-flow");
}

TEST_F(Form, SaysWhatIsWrongBesideTheField) {
    form.activateWindow();
    editorOf<QLineEdit>("count")->setText("11");
    editorOf<QLineEdit>("mission-time")->setText("long");
    editorOf<QComboBox>("top")->setEditText("T9");
    const auto values = form.read();
    ASSERT_FALSE(values);
    EXPECT_EQ(values.problems().size(), 3u);
    EXPECT_THAT(complaint("count"), HasSubstr("out of range; give a whole number from 0 to 10."));
    EXPECT_THAT(complaint("mission-time"), HasSubstr("'long' is not a number"));
    EXPECT_THAT(complaint("top"), HasSubstr("no top event, gate or event 'T9'"));
    EXPECT_EQ(complaint("word"), "");
    EXPECT_EQ(form.focusWidget(), editorOf<QLineEdit>("count"));
    EXPECT_THAT(editorOf<QLineEdit>("count")->accessibleDescription().toStdString(),
                HasSubstr("out of range"));
    // Typing takes the complaint away.
    QTest::keyClick(editorOf<QLineEdit>("count"), Qt::Key_Backspace);
    EXPECT_EQ(complaint("count"), "");
}

TEST_F(Form, KeepsWhatWasTypedWhenTheProjectChanges) {
    editorOf<QLineEdit>("word")->setText("steam");
    editorOf<QComboBox>("top")->setCurrentIndex(1);
    std::vector<Parameter> parameters = everyType();
    parameters.back().choices = {"T0", "T1"};
    auto changed = plants::twoPumps();
    changed.tops.insert(changed.tops.begin(), plants::top("T0", "no-flow"));
    form.show(parameters, std::make_shared<const project::Project>(changed));
    EXPECT_EQ(form.field("word")->typed(), "steam");
    EXPECT_EQ(form.field("top")->typed(), "T1");
    // Where nothing is declared anew the fields themselves stay, and the cursor with them.
    const QWidget* const before = form.field("word")->editor();
    form.show(parameters, std::make_shared<const project::Project>(changed));
    EXPECT_EQ(form.field("word")->editor(), before);
}

TEST_F(Form, ReturnSubmits) {
    QSignalSpy submitted(&form, &ParameterForm::submitted);
    QTest::keyClick(editorOf<QLineEdit>("word"), Qt::Key_Return);
    EXPECT_EQ(submitted.count(), 1);
}

TEST_F(Form, TabWalksThroughAllFields) {
    form.activateWindow();
    editorOf<QLineEdit>("word")->setFocus();
    std::vector<QString> names;
    for (int i = 0; i < 5; ++i) {
        QTest::keyClick(form.focusWidget(), Qt::Key_Tab);
        names.push_back(form.focusWidget()->objectName());
    }
    EXPECT_EQ(names, (std::vector<QString>{"count", "mission-time", "fast", "sort", "top"}));
}
