// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/help_window.h"

#include <QFile>
#include <QRegularExpression>
#include <QScrollBar>
#include <QTextBlock>
#include <QTextBrowser>
#include <QTextDocument>
#include <QUrl>
#include <QVBoxLayout>

#include <map>

namespace cutwater::editor {

namespace {

// Pictures of the window, for readers who do not have it before them.
QString withoutPictures(QString markdown) {
    static const QRegularExpression picture(QStringLiteral("!\\[[^\\]]*\\]\\([^)]*\\)\\n*"));
    return markdown.remove(picture);
}

} // namespace

HelpWindow::HelpWindow(QWidget* parent) : QDialog(parent), m_text(new QTextBrowser(this)) {
    setObjectName("help");
    setWindowTitle(tr("Guide"));
    resize(720, 640);
    m_text->setAccessibleName(tr("Guide"));
    m_text->setOpenLinks(false);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_text);
    connect(m_text, &QTextBrowser::anchorClicked, this, [this](const QUrl& url) {
        if (url.path().endsWith(QStringLiteral(".md"))) open(url.fileName().chopped(3));
    });
}

void HelpWindow::open(const QString& page, const QString& heading) {
    if (page != m_page) {
        QFile file(QStringLiteral(":/guide/%1.md").arg(page));
        if (file.open(QIODevice::ReadOnly))
            m_text->setMarkdown(withoutPictures(QString::fromUtf8(file.readAll())));
        else
            m_text->setPlainText(tr("The guide has no page %1.").arg(page));
        m_page = page;
    }
    show();
    raise();
    QTextCursor cursor(m_text->document());
    for (QTextBlock block = m_text->document()->begin(); block.isValid(); block = block.next())
        if (!heading.isEmpty() && block.blockFormat().headingLevel() > 0 && block.text() == heading)
            cursor = QTextCursor(block);
    m_text->setTextCursor(cursor);
    // The heading at the upper edge, not just somewhere in sight.
    m_text->verticalScrollBar()->setValue(m_text->verticalScrollBar()->value() +
                                          m_text->cursorRect(cursor).top() - 8);
}

QPair<QString, QString> helpFor(const QWidget* focus) {
    // The headings are those of docs/guide/editor.md; a test holds them together.
    static const std::map<QString, QString> headings = {
        {"outline", "The outline"},
        {"details", "All about an event"},
        {"answersDock", "Live answers"},
        {"problems", "Problems"},
        {"finder", "Find anything"},
        {"shortcuts", "Keys of your own"},
        {"welcome", "Begin"},
        {"diagram", "The diagram"},
        {"analysesPage", "Analyses"},
        {"topFacts", "About a top event, about the project"},
        {"projectFacts", "About a top event, about the project"},
    };
    static const std::map<QString, QPair<QString, QString>> pages = {
        {"reportPage", {"report", "The report"}},
        {"importDialog", {"report", "Import and export"}},
        {"worksheetPage", {"worksheet", "The page of the editor"}},
        {"plantPage", {"plant", {}}},
        {"libraryPage", {"library", "In the editor"}},
        {"riskPage", {"risk", {}}},
        {"proposalsPage", {"proposals", {}}},
    };
    for (; focus; focus = focus->parentWidget()) {
        if (const auto found = pages.find(focus->objectName()); found != pages.end())
            return found->second;
        if (const auto found = headings.find(focus->objectName()); found != headings.end())
            return {"editor", found->second};
    }
    return {"editor", {}};
}

} // namespace cutwater::editor
