#pragma once

#include "tools/edit_tool.h"

namespace creasewright {

/// Cuts slits and holes into a panel.
class SlitTool : public EditTool {
  Q_DECLARE_TR_FUNCTIONS(SlitTool)

 public:
  SlitTool() : EditTool({"holes", "slit", "slit-pair", "hanging-slot"}) {}

  [[nodiscard]] QString name() const override { return tr("Cut slits and holes"); }
  [[nodiscard]] QString icon() const override { return QStringLiteral("slits"); }
  [[nodiscard]] Qt::Key key() const override { return Qt::Key_H; }
};

}  // namespace creasewright
