// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/message_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace cutwater::editor {

MessageBar::MessageBar(QWidget* parent)
    : QFrame(parent), m_sentence(new QLabel(this)), m_offers(new QHBoxLayout) {
    setObjectName("messageBar");
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::ToolTipBase);
    m_sentence->setForegroundRole(QPalette::ToolTipText);
    m_sentence->setWordWrap(true);
    m_sentence->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(10, 4, 6, 4);
    layout->addWidget(m_sentence, 1);
    layout->addLayout(m_offers);
    hide();
}

QString MessageBar::sentence() const {
    return m_sentence->text();
}

void MessageBar::tell(const QString& sentence, std::vector<Offer> offers) {
    while (QLayoutItem* item = m_offers->takeAt(0)) {
        if (item->widget()) {
            item->widget()->hide();
            item->widget()->deleteLater(); // it may be the button that was pressed
        }
        delete item;
    }
    offers.push_back({tr("Put away"), {}});
    for (Offer& offer : offers) {
        auto* button = new QPushButton(offer.text, this);
        connect(button, &QPushButton::clicked, this, [this, act = std::move(offer.act)] {
            putAway();
            if (act) act();
        });
        m_offers->addWidget(button);
    }
    m_sentence->setText(sentence);
    setAccessibleName(sentence);
    show();
}

} // namespace cutwater::editor
