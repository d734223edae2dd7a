#pragma once

#include <QListWidget>

#include "panels/row_lights.h"
#include "session/design_session.h"

namespace creasewright {

/// Where adhesive goes, one line a place; choosing a line lights the flap.
class GlueList : public QListWidget {
  Q_OBJECT

 public:
  explicit GlueList(DesignSession& session, QWidget* parent = nullptr);

 private:
  void showDesign();

  DesignSession& session_;
  RowLights lights_{*this, session_.selection()};
};

}  // namespace creasewright
