#pragma once

#include <QListWidget>

#include "panels/row_lights.h"
#include "session/design_session.h"

namespace creasewright {

/// All steps of the guide in order; one under the mouse, or chosen, lights the panels it works at.
class StepList : public QListWidget {
  Q_OBJECT

 public:
  explicit StepList(DesignSession& session, QWidget* parent = nullptr);

 private:
  void showDesign();

  DesignSession& session_;
  RowLights lights_{*this, session_.selection()};
};

}  // namespace creasewright
