#pragma once

#include <QFileSystemWatcher>
#include <QObject>
#include <QTimer>

#include "session/design_session.h"

namespace creasewright {

/// How the open design's file stands to what was last read from it or written to it.
enum class FileState { AsKnown, Changed, Gone };

/// Notices when somebody else changes or removes the file of the open design.
class FileWatch : public QObject {
  Q_OBJECT

 public:
  explicit FileWatch(DesignSession& session, QObject* parent = nullptr);

  /// Looks at the file now. A design without a file is AsKnown.
  [[nodiscard]] FileState state() const;
  /// Takes the file as it is now for known: the person has been asked about it.
  void accept();
  /// Asks again in a while what could not be asked now.
  void later();

 signals:
  /// Once for each change or removal: accept() ends it.
  void changedOutside();

 private:
  void follow();
  void look();
  void watch();

  DesignSession& session_;
  QString path_;
  QByteArray known_;  ///< fingerprint of the file's bytes; empty = not there
  QFileSystemWatcher watcher_;
  QTimer timer_;
};

}  // namespace creasewright
