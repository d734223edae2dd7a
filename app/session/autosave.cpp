#include "session/autosave.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QStandardPaths>

#include "document/design_file.h"

namespace creasewright {

namespace {

constexpr int delayMs = 3000;

/// `recovery-<pid>.cwdesign`
QString ownFile(const QString& folder) {
  return QDir(folder).filePath(
      QStringLiteral("recovery-%1.cwdesign").arg(QCoreApplication::applicationPid()));
}

bool isRunning(qint64 pid) {
  return pid == QCoreApplication::applicationPid() ||
         QFile::exists(QStringLiteral("/proc/%1").arg(pid));
}

}  // namespace

Autosave::Autosave(DesignSession& session, const QString& folder, QObject* parent)
    : QObject(parent), session_(session), folder_(folder), file_(ownFile(folder)) {
  timer_.setSingleShot(true);
  timer_.setInterval(delayMs);
  connect(&timer_, &QTimer::timeout, this, &Autosave::keep);
  connect(&session_, &DesignSession::changed, this, [this] { timer_.start(); });
  connect(&session_, &DesignSession::fileChanged, this, [this] {
    if (!session_.isDirty()) {
      discard();
    }
  });
}

void Autosave::keep() {
  if (!session_.isDirty()) {
    discard();
    return;
  }
  QDir().mkpath(folder_);
  // A copy that cannot be written must not disturb the work; the guard at closing still asks.
  (void)writeDesignFile(session_.design(), QFile::encodeName(file_).toStdString());
}

void Autosave::discard() {
  timer_.stop();
  QFile::remove(file_);
}

std::optional<Recovered> findRecovery(const QString& folder) {
  const QDir dir(folder);
  const auto found =
      dir.entryInfoList({QStringLiteral("recovery-*.cwdesign")}, QDir::Files, QDir::Time);
  for (const QFileInfo& info : found) {
    const qint64 pid = info.completeBaseName().section(QLatin1Char('-'), 1).toLongLong();
    if (isRunning(pid)) {
      continue;
    }
    auto design = readDesignFile(QFile::encodeName(info.filePath()).toStdString());
    if (design) {
      return Recovered{std::move(design).value(), info.filePath()};
    }
  }
  return {};
}

QString recoveryFolder() {
  return QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation) +
         QStringLiteral("/recovery");
}

}  // namespace creasewright
