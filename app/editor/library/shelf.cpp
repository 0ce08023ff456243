// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/library/shelf.h"

#include "models/document/library_file.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QPointer>
#include <QSettings>
#include <QThreadPool>

#include <algorithm>

namespace cutwater::editor {

namespace {

const char* const kFiles = "library/files";

void readFile(ShelfContent& content, const QString& path, bool own) {
    ShelfFile file;
    file.path = path;
    file.own = own;
    auto loaded = document::loadLibrary(path.toStdString());
    if (!loaded) {
        file.wrong = QString::fromStdString(
            toSentence(loaded.problems().front(), QFileInfo(path).fileName().toStdString()));
    } else {
        library::Library& library = loaded->library;
        file.name = QString::fromStdString(library.name.empty() ? library.id : library.name);
        file.types = static_cast<int>(library.types.size());
        const auto twin =
            std::find_if(content.libraries.begin(), content.libraries.end(),
                         [&](const library::Library& each) { return each.id == library.id; });
        if (twin != content.libraries.end())
            file.wrong = QCoreApplication::translate(
                             "Shelf", "Another file is the library %1 already; that one counts.")
                             .arg(QString::fromStdString(library.id));
        else
            content.libraries.push_back(std::move(library));
    }
    content.files.push_back(std::move(file));
}

} // namespace

Shelf::Shelf(const QString& standardFolder, QObject* parent)
    : QObject(parent),
      m_folder(standardFolder.isEmpty() ? QDir(QCoreApplication::applicationDirPath())
                                              .absoluteFilePath("../share/cutwater/library")
                                        : standardFolder),
      m_content(std::make_shared<ShelfContent>()) {}

QStringList Shelf::ownFiles() const {
    return QSettings().value(QLatin1String(kFiles)).toStringList();
}

void Shelf::remember(const QStringList& files) {
    QSettings().setValue(QLatin1String(kFiles), files);
    read();
}

void Shelf::add(const QString& path) {
    const QString whole = QFileInfo(path).absoluteFilePath();
    QStringList files = ownFiles();
    if (!files.contains(whole)) files << whole;
    remember(files);
}

void Shelf::remove(const QString& path) {
    QStringList files = ownFiles();
    files.removeAll(path);
    remember(files);
}

void Shelf::read() {
    m_reading = true;
    const quint64 asked = ++m_asked;
    QPointer<Shelf> self(this);
    QThreadPool::globalInstance()->start([self, asked, own = ownFiles(), folder = m_folder] {
        auto content = std::make_shared<ShelfContent>();
        for (const QString& path : own)
            readFile(*content, path, true);
        const QDir standard(folder);
        for (const QString& name : standard.entryList({"*.cutlib"}, QDir::Files, QDir::Name))
            readFile(*content, QDir::cleanPath(standard.filePath(name)), false);
        QMetaObject::invokeMethod(QCoreApplication::instance(), [self, asked, content] {
            if (!self || self->m_asked != asked) return;
            self->m_content = content;
            self->m_reading = false;
            emit self->changed();
        });
    });
}

} // namespace cutwater::editor
