#pragma once

#include "tools/edit_tool.h"

namespace creasewright {

/// Shapes a cut edge, or its corners.
class EdgeTool : public EditTool {
  Q_DECLARE_TR_FUNCTIONS(EdgeTool)

 public:
  EdgeTool() : EditTool({"edge", "corners"}) {}

  [[nodiscard]] QString name() const override { return tr("Shape an edge"); }
  [[nodiscard]] QString icon() const override { return QStringLiteral("edge"); }
  [[nodiscard]] Qt::Key key() const override { return Qt::Key_E; }
};

}  // namespace creasewright
