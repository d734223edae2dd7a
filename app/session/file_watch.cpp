#include "session/file_watch.h"

#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>

namespace creasewright {

namespace {

constexpr int kSettleMs = 250;  // a program that writes does so in several steps
constexpr int kLaterMs = 1500;
constexpr qint64 kMostRead = 8 * 1024 * 1024;  // more than any design may have

QByteArray fingerprint(const QString& path) {
  QFile file(path);
  if (!QFileInfo(path).isFile() || !file.open(QIODevice::ReadOnly)) return {};
  return QCryptographicHash::hash(file.read(kMostRead), QCryptographicHash::Sha256);
}

}  // namespace

FileWatch::FileWatch(DesignSession& session, QObject* parent) : QObject(parent), session_(session) {
  timer_.setSingleShot(true);
  connect(&timer_, &QTimer::timeout, this, &FileWatch::look);
  const auto soon = [this] { timer_.start(kSettleMs); };
  connect(&watcher_, &QFileSystemWatcher::fileChanged, this, soon);
  connect(&watcher_, &QFileSystemWatcher::directoryChanged, this, soon);
  // Folders of other machines tell nothing: whoever comes back to the window finds out then.
  if (auto* app = qobject_cast<QGuiApplication*>(QCoreApplication::instance())) {
    connect(
        app, &QGuiApplication::applicationStateChanged, this,
        [soon](Qt::ApplicationState now) {
          if (now == Qt::ApplicationActive) soon();
        });
  }
  connect(&session_, &DesignSession::stored, this, &FileWatch::accept);
  connect(&session_, &DesignSession::fileChanged, this, &FileWatch::follow);
  accept();
}

FileState FileWatch::state() const {
  if (path_.isEmpty()) return FileState::AsKnown;
  const QByteArray now = fingerprint(path_);
  if (now == known_) return FileState::AsKnown;
  return now.isEmpty() ? FileState::Gone : FileState::Changed;
}

void FileWatch::accept() {
  path_ = session_.path();
  known_ = path_.isEmpty() ? QByteArray() : fingerprint(path_);
  watch();
}

void FileWatch::later() { timer_.start(kLaterMs); }

void FileWatch::follow() {
  if (session_.path() != path_) accept();
}

void FileWatch::look() {
  watch();
  if (state() != FileState::AsKnown) emit changedOutside();
}

/// A watched file that is replaced is no longer watched, so this is done after each look; its
/// folder tells of the replacement.
void FileWatch::watch() {
  QStringList wanted;
  if (!path_.isEmpty()) {
    wanted = {QFileInfo(path_).absolutePath()};
    if (QFileInfo::exists(path_)) wanted += QFileInfo(path_).absoluteFilePath();
  }
  QStringList unwanted;
  for (const QString& path : watcher_.files() + watcher_.directories())
    if (!wanted.removeOne(path)) unwanted += path;
  if (!unwanted.isEmpty()) watcher_.removePaths(unwanted);
  if (!wanted.isEmpty()) watcher_.addPaths(wanted);
}

}  // namespace creasewright
