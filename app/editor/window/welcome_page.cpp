// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/welcome_page.h"

#include <QCommandLinkButton>
#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QVBoxLayout>

namespace cutwater::editor {

WelcomePage::WelcomePage(FileDesk& desk, QWidget* parent)
    : QWidget(parent), m_desk(desk), m_recent(new QVBoxLayout) {
    setObjectName("welcome");
    auto* column = new QWidget(this);
    column->setFixedWidth(fontMetrics().averageCharWidth() * 72);
    auto* layout = new QVBoxLayout(column);
    auto* title = new QLabel(tr("What can stop the machine?"), column);
    QFont large = title->font();
    large.setPointSizeF(large.pointSizeF() * 1.5);
    title->setFont(large);
    layout->addWidget(title);
    const auto offer = [&](const char* name, const QString& text, const QString& more,
                           const char* icon) {
        auto* button = new QCommandLinkButton(text, more, column);
        button->setObjectName(QLatin1String(name));
        button->setIcon(QIcon(QStringLiteral(":/icons/%1.svg").arg(QLatin1String(icon))));
        button->setIconSize(QSize(24, 24));
        button->setAccessibleDescription(more);
        layout->addWidget(button);
        return button;
    };
    connect(offer("welcomeDemo", tr("Look at the demo plant"),
                  tr("Two boilers of an invented ship, as a copy to play with."), "cutwater"),
            &QCommandLinkButton::clicked, this, [this] { m_desk.openDemo(); });
    connect(offer("welcomeType", tr("Type a tree"),
                  tr("Enter adds beside, Tab adds below, letters choose the kind."), "add-beside"),
            &QCommandLinkButton::clicked, this, &WelcomePage::typingWished);
    connect(offer("welcomeOpen", tr("Open a project"), tr("A .cutwater file; or drop it here."),
                  "open"),
            &QCommandLinkButton::clicked, this, [this] { m_desk.ask(); });
    for (const auto& [text, path] : FileDesk::templates())
        connect(offer("welcomeTemplate", text, tr("A template without numbers."), "new"),
                &QCommandLinkButton::clicked, this,
                [this, path = path] { m_desk.startFrom(path); });
    layout->addLayout(m_recent);
    auto* outer = new QVBoxLayout(this);
    outer->addStretch(1);
    outer->addWidget(column, 0, Qt::AlignHCenter);
    outer->addStretch(2);
    connect(&m_desk, &FileDesk::recentChanged, this, &WelcomePage::showRecent);
    showRecent();
}

void WelcomePage::showRecent() {
    while (QLayoutItem* item = m_recent->takeAt(0)) {
        if (item->widget()) item->widget()->deleteLater();
        delete item;
    }
    const QStringList recent = m_desk.recent().mid(0, 4);
    if (recent.isEmpty()) return;
    m_recent->addWidget(new QLabel(tr("Opened lately:"), this));
    for (const QString& path : recent) {
        auto* link = new QLabel(this);
        link->setText(
            QStringLiteral("<a href=\"#\">%1</a> &nbsp; %2")
                .arg(QFileInfo(path).fileName().toHtmlEscaped(),
                     QDir::toNativeSeparators(QFileInfo(path).absolutePath()).toHtmlEscaped()));
        link->setTextInteractionFlags(Qt::LinksAccessibleByKeyboard | Qt::LinksAccessibleByMouse);
        connect(link, &QLabel::linkActivated, this, [this, path] { m_desk.open(path); });
        m_recent->addWidget(link);
    }
}

} // namespace cutwater::editor
