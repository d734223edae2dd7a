#include "session/autosave.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>
#include <QUuid>

#include "document/design_file.h"

namespace creasewright {

namespace {

constexpr int kDelayMs = 3000;  // with the time to write, within the five seconds promised

const QString copyEnding = QStringLiteral(".cwdesign");

QString newFile(const QString& folder) {
  const QString name = QUuid::createUuid().toString(QUuid::Id128);
  return QDir(folder).filePath(QStringLiteral("recovery-") + name + copyEnding);
}

QString lockFile(const QString& copy) {
  return copy.chopped(copyEnding.size()) + QStringLiteral(".lock");
}

std::optional<Recovered> readCopy(const QFileInfo& copy) {
  const QString file = copy.filePath();
  auto lock = FileLock::take(lockFile(file));
  if (!lock) return {};
  auto design = readDesignFile(QFile::encodeName(file).toStdString());
  if (!design) return {};
  QString path = lock->words();
  return Recovered{std::move(design).value(), std::move(path), file, copy.lastModified(),
                   std::move(*lock)};
}

}  // namespace

Autosave::Autosave(DesignSession& session, const QString& folder, QObject* parent)
    : QObject(parent), session_(session), folder_(folder), file_(newFile(folder)) {
  timer_.setSingleShot(true);
  timer_.setInterval(kDelayMs);
  connect(&timer_, &QTimer::timeout, this, &Autosave::keep);
  // Not started anew at each change: who works without a pause must not wait for one.
  connect(
      &session_, &DesignSession::changed, this,
      [this] {
        if (!timer_.isActive()) timer_.start();
      });
  connect(&session_, &DesignSession::fileChanged, this, [this] {
    if (!session_.isDirty()) {
      discard();
    } else if (!timer_.isActive()) {
      timer_.start();
    }
  });
}

Autosave::~Autosave() {
  if (lock_ && !QFile::exists(file_)) QFile::remove(lockFile(file_));
}

bool Autosave::keep() {
  if (!session_.isDirty()) {
    discard();
    return true;
  }
  // A copy that cannot be written must not disturb the work; the guard at closing still asks.
  return hold() && !writeDesignFile(session_.design(), QFile::encodeName(file_).toStdString());
}

void Autosave::discard() {
  timer_.stop();
  QFile::remove(file_);
  if (lock_) {
    QFile::remove(lockFile(file_));
    lock_.reset();
  }
}

/// The lock comes before the copy, so that no other program takes the copy for an orphan.
bool Autosave::hold() {
  QDir().mkpath(folder_);
  if (!lock_) lock_ = FileLock::take(lockFile(file_));
  return lock_ && lock_->write(session_.path());
}

void Recovered::discard() const {
  QFile::remove(file);
  QFile::remove(lockFile(file));
}

std::vector<Recovered> findRecovery(const QString& folder) {
  std::vector<Recovered> found;
  const auto copies = QDir(folder).entryInfoList({QStringLiteral("recovery-*") + copyEnding},
                                                 QDir::Files, QDir::Time);
  for (const QFileInfo& copy : copies)
    if (auto work = readCopy(copy)) found.push_back(std::move(*work));
  return found;
}

QString recoveryFolder() {
  return QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation) +
         QStringLiteral("/recovery");
}

}  // namespace creasewright
