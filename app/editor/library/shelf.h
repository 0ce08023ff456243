// SPDX-License-Identifier: GPL-3.0-or-later
// Shelf: the libraries that are at hand: the user's own files, and those that come with the
// program. Files are read in a worker.
#pragma once

#include "models/library/library.h"
#include "models/project/problem.h"

#include <QObject>
#include <QStringList>

#include <memory>
#include <vector>

namespace cutwater::editor {

struct ShelfFile {
    QString path;
    bool own = false; // the user's; else it came with the program
    QString name;     // of the library; empty where it cannot be read
    QString wrong;    // one sentence; empty where it can be read
    int types = 0;
};

struct ShelfContent {
    std::vector<library::Library> libraries; // the user's own first
    std::vector<ShelfFile> files;            // in the same order, broken ones too
};

class Shelf : public QObject {
    Q_OBJECT
public:
    // `standardFolder` empty: where the program finds its own.
    explicit Shelf(const QString& standardFolder = {}, QObject* parent = nullptr);

    // Never null; empty until the first reading is done.
    std::shared_ptr<const ShelfContent> content() const { return m_content; }
    bool isReading() const { return m_reading; }
    // The user's own files, remembered in the settings.
    QStringList ownFiles() const;

    void read(); // anew, in a worker; changed() follows
    void add(const QString& path);
    void remove(const QString& path); // from the list; the file stays

signals:
    void changed();

private:
    void remember(const QStringList& files);

    QString m_folder;
    std::shared_ptr<const ShelfContent> m_content;
    quint64 m_asked = 0;
    bool m_reading = false;
};

} // namespace cutwater::editor
