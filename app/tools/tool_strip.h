#pragma once

#include <QPointer>
#include <QWidget>
#include <memory>
#include <vector>

#include "scene/sheet_tool.h"

namespace creasewright {

class SheetView;

/// The tools in a narrow strip beside the sheet, one of them chosen: by a click, or by its key
/// while the sheet has the focus.
class ToolStrip : public QWidget {
  Q_OBJECT

 public:
  explicit ToolStrip(SheetView& sheet, QWidget* parent = nullptr);
  ~ToolStrip() override;

  [[nodiscard]] const std::vector<std::unique_ptr<SheetTool>>& tools() const { return tools_; }

 private:
  QPointer<SheetView> sheet_;
  std::vector<std::unique_ptr<SheetTool>> tools_;
};

}  // namespace creasewright
