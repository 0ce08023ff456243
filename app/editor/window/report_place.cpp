// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/report_place.h"

#include "app/editor/analyses/analyses_pane.h"
#include "app/editor/analyses/analysis_page.h"
#include "app/editor/report/report_page.h"
#include "app/editor/window/file_desk.h"
#include "app/paper/report_content.h"

#include <QCoreApplication>
#include <QTabWidget>

namespace cutwater::editor {

ReportPage* addReport(QTabWidget& pages, Session& session, FileDesk& desk, AnalysesPane& analyses,
                      sdk::Host& host) {
    auto* const page = new ReportPage(host, &pages);
    pages.addTab(page, QCoreApplication::translate("ReportPlace", "Report"));
    const auto count = [&pages, page] {
        pages.setTabText(
            pages.indexOf(page),
            QCoreApplication::translate("ReportPlace", "Report (%1)").arg(page->list().rowCount()));
    };
    QObject::connect(&page->list(), &ReportList::changed, page, count);
    count();
    QObject::connect(&analyses, &AnalysesPane::sentToReport, page, [page](const SentResult& sent) {
        ReportItem item;
        item.result = sent.result;
        item.method = QString::fromStdString(paper::methodOf(sent.facts));
        item.analysis = sent.facts.id;
        item.parameters = sent.parameters;
        item.of = sent.of;
        page->list().add(std::move(item));
    });
    const auto follow = [page, &session, &desk] {
        page->setProject(session.project(), desk.name());
    };
    QObject::connect(&session, &Session::replaced, page, &ReportPage::startAnew);
    QObject::connect(&session, &Session::projectChanged, page, follow);
    QObject::connect(&session, &Session::pathChanged, page, follow);
    follow();
    return page;
}

} // namespace cutwater::editor
