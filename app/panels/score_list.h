#pragma once

#include <QSet>
#include <QTreeWidget>

#include "panels/row_lights.h"
#include "session/design_session.h"

namespace creasewright {

/// The score plan as a list to work down: one heading a setting of the board, its readings below. A
/// reading under the mouse, or chosen, lights its lines in all views; it can be ticked off when it
/// is scored, and stays so while it reads the same.
class ScoreList : public QTreeWidget {
  Q_OBJECT

 public:
  explicit ScoreList(DesignSession& session, QWidget* parent = nullptr);

 private:
  void showDesign();
  void addPlan(int index);
  [[nodiscard]] QString tickOf(const QTreeWidgetItem& row) const;

  DesignSession& session_;
  QSet<QString> done_;  // rows ticked off, by their words
  RowLights lights_{*this, session_.selection()};
};

}  // namespace creasewright
