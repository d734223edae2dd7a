#pragma once

#include <QObject>
#include <QTimer>
#include <optional>

#include "session/design_session.h"

namespace creasewright {

/// Keeps a copy of unsaved work beside the program's data, so that a crash or a power cut loses at
/// most a few seconds. The copy goes away when the design is saved or closed properly.
class Autosave : public QObject {
  Q_OBJECT

 public:
  /// `folder` holds the copies and is made when needed.
  Autosave(DesignSession& session, const QString& folder, QObject* parent = nullptr);

  /// Writes the copy now if there is unsaved work, else removes it.
  void keep();
  /// Removes the copy: the person has decided.
  void discard();
  [[nodiscard]] QString file() const { return file_; }

 private:
  DesignSession& session_;
  QString folder_;
  QString file_;
  QTimer timer_;
};

struct Recovered {
  Design design;
  QString file;
};

/// The newest copy in `folder` left behind by a program that no longer runs.
std::optional<Recovered> findRecovery(const QString& folder);

/// Where copies are kept for this user.
QString recoveryFolder();

}  // namespace creasewright
