// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/exchange_place.h"

#include "app/editor/exchange/exchange_desk.h"
#include "app/editor/window/commands.h"
#include "app/editor/window/file_desk.h"

#include <QCoreApplication>
#include <QMainWindow>
#include <QMenu>
#include <QStatusBar>

namespace cutwater::editor {

ExchangeDesk* addExchange(QMainWindow& window, QMenu& file, Session& session, FileDesk& desk,
                          MessageBar& bar, Commands& commands, sdk::Host& host) {
    auto* const exchange = new ExchangeDesk(
        host, session, [&desk] { return desk.mayLeave(); }, &window);
    const auto fill = [&](const QString& title, const QString& group,
                          const std::vector<QAction*>& actions) {
        QMenu* const menu = file.addMenu(title);
        menu->setEnabled(!actions.empty());
        for (QAction* action : actions) {
            menu->addAction(action);
            window.addAction(action);
            commands.add(action, group);
        }
    };
    fill(QCoreApplication::translate("ExchangePlace", "&Import"),
         QCoreApplication::translate("ExchangePlace", "Import"), exchange->imports());
    fill(QCoreApplication::translate("ExchangePlace", "&Export"),
         QCoreApplication::translate("ExchangePlace", "Export"), exchange->exports());
    QObject::connect(exchange, &ExchangeDesk::said, &window, [&window](const QString& text) {
        window.statusBar()->showMessage(text, 10000);
    });
    QObject::connect(exchange, &ExchangeDesk::failed, &window,
                     [&bar](const QString& text) { bar.tell(text); });
    return exchange;
}

} // namespace cutwater::editor
