#pragma once

#include <QTreeWidget>

#include "panels/row_lights.h"
#include "session/design_session.h"

namespace creasewright {

/// The net in words, for screen readers and for everybody who likes lists: every panel under the
/// one it hangs on, with its size and its fold.
class OutlineTree : public QTreeWidget {
  Q_OBJECT

 public:
  explicit OutlineTree(DesignSession& session, QWidget* parent = nullptr);

 private:
  void showDesign();
  void addPiece(int index);

  DesignSession& session_;
  RowLights lights_{*this, session_.selection()};
};

}  // namespace creasewright
