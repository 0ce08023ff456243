// SPDX-License-Identifier: GPL-3.0-or-later
// Forms for what is said about a top event and about the project as a whole. OK makes one edit,
// which can be undone by its name; Cancel changes nothing.
#pragma once

#include "app/editor/details/quantity_row.h"
#include "app/editor/session/session.h"

#include <QDialog>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPlainTextEdit;

namespace cutwater::editor {

class FactsDialog : public QDialog {
    Q_OBJECT
protected:
    FactsDialog(Session& session, const char* name, const QString& title, QWidget* parent);

    QLineEdit* line(const char* name, const QString& label, const std::string& text,
                    const QString& tip = {});
    // Several lines; `each` is one of a list.
    QPlainTextEdit* lines(const char* name, const QString& label, const std::string& text,
                          const QString& tip = {});
    static std::string textOf(const QLineEdit* field);
    static std::vector<std::string> linesOf(const QPlainTextEdit* field);
    static std::string joined(const std::vector<std::string>& lines);
    void finishForm(); // the buttons below
    // The edit; where it refuses the sentence is shown and the form stays.
    virtual bool take() = 0;
    bool apply(const Edit& edit);

    Session& m_session;
    QFormLayout* m_form;
    QLabel* m_sentence;
};

class TopFactsDialog : public FactsDialog {
    Q_OBJECT
public:
    // `top` is there.
    TopFactsDialog(Session& session, const project::Id& top, QWidget* parent);

protected:
    bool take() override;

private:
    project::TopEvent m_facts;
    QLineEdit *m_name, *m_mode;
    QComboBox* m_severity;
    QPlainTextEdit *m_effects, *m_remark;
    QuantityRow* m_asked;
};

class ProjectFactsDialog : public FactsDialog {
    Q_OBJECT
public:
    ProjectFactsDialog(Session& session, QWidget* parent);

protected:
    bool take() override;

private:
    QLineEdit *m_name, *m_plant, *m_mode, *m_revision, *m_date, *m_prepared, *m_checked;
    QPlainTextEdit *m_description, *m_rules, *m_assumptions, *m_cautions;
};

} // namespace cutwater::editor
