#pragma once

#include "tools/edit_tool.h"

namespace creasewright {

/// Leaves a panel out.
class RemoveTool : public EditTool {
  Q_DECLARE_TR_FUNCTIONS(RemoveTool)

 public:
  RemoveTool() : EditTool({"remove"}) {}

  [[nodiscard]] QString name() const override { return tr("Leave a panel out"); }
  [[nodiscard]] QString icon() const override { return QStringLiteral("remove"); }
  [[nodiscard]] Qt::Key key() const override { return Qt::Key_X; }
};

}  // namespace creasewright
