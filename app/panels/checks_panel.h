#pragma once

#include <QListWidget>

#include "panels/row_lights.h"
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
  void askForParameter(int row);

  DesignSession& session_;
  QLabel* fine_;
  QListWidget* list_;
  RowLights lights_;
  QTimer later_;  ///< while a hand changes the design: once the pictures are painted
};

}  // namespace creasewright
