#pragma once

#include <QTreeWidget>

#include "session/design_session.h"

namespace creasewright {

/// The score plan as a list to work down: one heading a setting of the board, its readings below. A
/// reading under the mouse, or chosen, lights the panels at its lines.
class ScoreList : public QTreeWidget {
  Q_OBJECT

 public:
  explicit ScoreList(DesignSession& session, QWidget* parent = nullptr);

 private:
  void showDesign();
  void addPlan(const BuiltPiece& piece);

  DesignSession& session_;
};

}  // namespace creasewright
