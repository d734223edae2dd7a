#pragma once

#include "tools/edit_tool.h"

namespace creasewright {

/// Changes a fold, locks it, or takes it away.
class FoldTool : public EditTool {
  Q_DECLARE_TR_FUNCTIONS(FoldTool)

 public:
  FoldTool() : EditTool({"fold", "slit-lock", "merge", "seam"}) {}

  [[nodiscard]] QString name() const override { return tr("Change a fold"); }
  [[nodiscard]] QString icon() const override { return QStringLiteral("fold"); }
  [[nodiscard]] Qt::Key key() const override { return Qt::Key_G; }
};

}  // namespace creasewright
