#pragma once

#include "edits/kinds/edit_kind.h"
#include "panels/row_column.h"
#include "session/design_session.h"

namespace creasewright {

/// Changes by hand to the net: openings, notches, slits, shaped edges, in the order in which they
/// are made.
class ChangesPanel : public RowColumn {
  Q_OBJECT

 public:
  explicit ChangesPanel(DesignSession& session, QWidget* parent = nullptr);

 private:
  void add(const EditKind& kind);
  void showDesign();

  DesignSession& session_;
};

}  // namespace creasewright
