#pragma once

#include "tools/edit_tool.h"

namespace creasewright {

/// Writes and marks on a panel.
class TextTool : public EditTool {
  Q_DECLARE_TR_FUNCTIONS(TextTool)

 public:
  TextTool() : EditTool({"text", "mark"}) {}

  [[nodiscard]] QString name() const override { return tr("Write and mark"); }
  [[nodiscard]] QString icon() const override { return QStringLiteral("text"); }
  [[nodiscard]] Qt::Key key() const override { return Qt::Key_T; }
};

}  // namespace creasewright
