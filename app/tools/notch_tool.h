#pragma once

#include "tools/edit_tool.h"

namespace creasewright {

/// Cuts a notch into an edge.
class NotchTool : public EditTool {
  Q_DECLARE_TR_FUNCTIONS(NotchTool)

 public:
  NotchTool() : EditTool({"notch"}) {}

  [[nodiscard]] QString name() const override { return tr("Cut a notch"); }
  [[nodiscard]] QString icon() const override { return QStringLiteral("notch"); }
  [[nodiscard]] Qt::Key key() const override { return Qt::Key_N; }
};

}  // namespace creasewright
