// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/cautions_dialog.h"

#include "plugins/sdk/tree/cautions.h"

#include <QCoreApplication>
#include <QDialogButtonBox>
#include <QLabel>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace cutwater::editor {

QStringList standingCautions() {
    std::vector<sdk::Note> notes;
    sdk::tree::addCautions(notes, sdk::tree::CautionScope::machine, {});
    QStringList sentences;
    for (const sdk::Note& note : notes)
        sentences.append(QCoreApplication::translate("Cautions", note.sentence.c_str()));
    return sentences;
}

SheetCautionsDialog::SheetCautionsDialog(const project::Project& project, QWidget* parent)
    : QDialog(parent), m_own(new QPlainTextEdit(this)) {
    setObjectName("worksheetCautions");
    setWindowTitle(tr("Cautions"));
    auto* standing = new QListWidget(this);
    standing->setObjectName("standing");
    standing->setWordWrap(true);
    standing->setAccessibleName(tr("Standing cautions"));
    int number = 0;
    for (const QString& sentence : standingCautions())
        standing->addItem(QStringLiteral("%1. %2").arg(++number).arg(sentence));
    auto* first = new QLabel(tr("These always stand with the worksheet, on screen, on paper and in "
                                "files:"),
                             this);
    auto* second = new QLabel(tr("Cautions of this &plant, added to them; one a line:"), this);
    for (QLabel* label : {first, second})
        label->setWordWrap(true);
    second->setBuddy(m_own);
    m_own->setObjectName("own");
    m_own->setTabChangesFocus(true);
    QStringList own;
    for (const std::string& caution : project.cautions)
        own.append(QString::fromStdString(caution).replace(u'\n', u' '));
    m_own->setPlainText(own.join(u'\n'));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(first);
    layout->addWidget(standing, 3);
    layout->addWidget(second);
    layout->addWidget(m_own, 1);
    layout->addWidget(buttons);
    resize(680, 620);
}

std::vector<std::string> SheetCautionsDialog::own() const {
    std::vector<std::string> all;
    for (const QString& line : m_own->toPlainText().split(u'\n'))
        if (!line.trimmed().isEmpty()) all.push_back(line.trimmed().toStdString());
    return all;
}

} // namespace cutwater::editor
