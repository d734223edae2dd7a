#pragma once

#include <QDateTime>
#include <QObject>
#include <QTimer>
#include <optional>
#include <vector>

#include "session/design_session.h"
#include "session/file_lock.h"

namespace creasewright {

/// Keeps a copy of unsaved work beside the program's data, so that a crash or a power cut loses at
/// most five seconds, also of steady work. The copy goes away when the design is saved or closed
/// properly. A file beside it, locked while this lives, says that its owner still runs and which
/// file the design belongs to.
class Autosave : public QObject {
  Q_OBJECT

 public:
  /// `folder` holds the copies and is made when needed.
  Autosave(DesignSession& session, const QString& folder, QObject* parent = nullptr);
  ~Autosave() override;

  /// Writes the copy now if there is unsaved work, else removes it. False when unsaved work could
  /// not be written.
  bool keep();
  /// Removes the copy: the person has decided.
  void discard();
  [[nodiscard]] QString file() const { return file_; }

 private:
  bool hold();

  DesignSession& session_;
  QString folder_;
  QString file_;
  std::optional<FileLock> lock_;
  QTimer timer_;
};

/// Work of a program that has ended without saving it. Held so that no other program offers it too.
struct Recovered {
  Design design;
  QString path;  ///< the file the design belongs to; empty when it never had one
  QString file;  ///< the copy
  QDateTime kept;
  FileLock lock;

  /// Removes the copy: the work is kept elsewhere, or not wanted.
  void discard() const;
};

/// The copies in `folder` whose programs no longer run, the newest first. One that cannot be read
/// stays where it is.
std::vector<Recovered> findRecovery(const QString& folder);

/// Where copies are kept for this user.
QString recoveryFolder();

}  // namespace creasewright
