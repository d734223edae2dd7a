#pragma once

#include <QListWidget>

#include "session/design_session.h"

class QLabel;

namespace creasewright {

/// Everything that does not hold, as sentences; a click shows the place.
class ChecksPanel : public QWidget {
  Q_OBJECT

 public:
  explicit ChecksPanel(DesignSession& session, QWidget* parent = nullptr);

  [[nodiscard]] QListWidget& list() { return *list_; }

 signals:
  /// The person clicked a problem of this parameter.
  void parameterAsked(const QString& key);
  /// How many checks fail, for a tab's title.
  void countChanged(int count);

 private:
  void showDesign();
  void showPlace(int row);

  DesignSession& session_;
  QLabel* fine_;
  QListWidget* list_;
};

/// Panels a problem is about; empty when it names none of the design's panels.
QStringList panelsOf(const Problem& problem, const BuiltDesign& built);

}  // namespace creasewright
