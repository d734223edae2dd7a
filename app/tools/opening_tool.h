#pragma once

#include "tools/edit_tool.h"

namespace creasewright {

/// Cuts an opening into a panel.
class OpeningTool : public EditTool {
  Q_DECLARE_TR_FUNCTIONS(OpeningTool)

 public:
  OpeningTool() : EditTool({"opening"}) {}

  [[nodiscard]] QString name() const override { return tr("Cut an opening"); }
  [[nodiscard]] QString icon() const override { return QStringLiteral("opening"); }
  [[nodiscard]] Qt::Key key() const override { return Qt::Key_O; }
};

}  // namespace creasewright
