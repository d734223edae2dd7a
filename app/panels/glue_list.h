#pragma once

#include <QListWidget>

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
};

}  // namespace creasewright
