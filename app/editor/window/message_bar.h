// SPDX-License-Identifier: GPL-3.0-or-later
// A sentence above the pages that stays until it is answered or put away; with what can be done.
#pragma once

#include <QFrame>

#include <functional>
#include <vector>

class QHBoxLayout;
class QLabel;

namespace cutwater::editor {

class MessageBar : public QFrame {
    Q_OBJECT
public:
    struct Offer {
        QString text;
        std::function<void()> act;
    };
    explicit MessageBar(QWidget* parent = nullptr);

    // One at a time; a newer sentence replaces the older one.
    void tell(const QString& sentence, std::vector<Offer> offers = {});
    void putAway() { hide(); }
    QString sentence() const;

private:
    QLabel* m_sentence;
    QHBoxLayout* m_offers;
};

} // namespace cutwater::editor
