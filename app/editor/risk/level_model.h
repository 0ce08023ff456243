// SPDX-License-Identifier: GPL-3.0-or-later
// LevelModel: the steps of a rating scale, of an axis of the risk matrix, or its bands, as rows
// that are typed in.
#pragma once

#include "app/editor/session/session.h"
#include "models/project/worksheet.h"

#include <QAbstractTableModel>

#include <optional>
#include <string>
#include <vector>

namespace cutwater::editor {

enum class LevelList { severity, occurrence, detection, frequencies, severities, bands };

class LevelModel : public QAbstractTableModel {
    Q_OBJECT
public:
    explicit LevelModel(Session& session, QObject* parent = nullptr);

    void setList(LevelList list);
    LevelList list() const { return m_list; }
    bool isOwn() const; // the project's; else the standard one counts

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

    bool addStep(); // behind the last one
    bool removeStep(int row);
    bool reset(); // the standard one counts again

signals:
    void refused(const QString& sentence); // why a change was not made
    void ownChanged();

private:
    // One step of whatever list.
    struct Step {
        std::optional<int> number;
        std::string word, meaning;
        std::optional<double> value;
        project::SourceLine line;
        project::Kept kept;
    };
    bool hasValue() const;
    void follow();
    std::vector<Step> steps() const;
    bool write(std::vector<Step> steps);
    bool apply(const Edit& edit);

    Session& m_session;
    LevelList m_list = LevelList::frequencies;
    std::vector<Step> m_steps;
};

} // namespace cutwater::editor
