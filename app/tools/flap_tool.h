#pragma once

#include "tools/edit_tool.h"

namespace creasewright {

/// Puts a flap on a cut edge.
class FlapTool : public EditTool {
  Q_DECLARE_TR_FUNCTIONS(FlapTool)

 public:
  FlapTool() : EditTool({"flap"}) {}

  [[nodiscard]] QString name() const override { return tr("Add a flap"); }
  [[nodiscard]] QString icon() const override { return QStringLiteral("flap"); }
  [[nodiscard]] Qt::Key key() const override { return Qt::Key_F; }
};

}  // namespace creasewright
