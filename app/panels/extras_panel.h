#pragma once

#include "panels/row_column.h"
#include "session/design_session.h"

namespace creasewright {

/// What goes with the box: bands, mats, labels and the like, each with its measures.
class ExtrasPanel : public RowColumn {
  Q_OBJECT

 public:
  explicit ExtrasPanel(DesignSession& session, QWidget* parent = nullptr);

 private:
  void addExtra(std::string_view kind);
  void showDesign();

  DesignSession& session_;
};

}  // namespace creasewright
