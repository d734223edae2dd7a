#pragma once

#include <QCoreApplication>
#include <optional>
#include <string_view>
#include <vector>

#include "scene/sheet_tool.h"
#include "tools/edit_target.h"

namespace creasewright {

/// Adds changes of one group by a click on the panel, edge or fold that they belong to. Of several
/// kinds a number chooses one. What the click would change is marked; each click is one undo step.
class EditTool : public SheetTool {
  Q_DECLARE_TR_FUNCTIONS(EditTool)

 public:
  [[nodiscard]] QString hint() const override;

  void activate(SheetView& sheet) override;
  void deactivate(SheetView& sheet) override;
  void move(SheetView& sheet, const QMouseEvent& event, bool held) override;
  void click(SheetView& sheet, const QMouseEvent& event) override;
  void leave(SheetView& sheet) override;
  bool keyPress(SheetView& sheet, const QKeyEvent& event) override;
  void sheetChanged(SheetView& sheet) override;
  void paint(SheetView& sheet, QPainter& painter) override;

  [[nodiscard]] const EditKind& kind() const { return *kinds_.at(chosen_); }

 protected:
  /// `kinds` are ids of edit kinds, all of one place.
  explicit EditTool(const std::vector<std::string_view>& kinds);

  [[nodiscard]] std::optional<EditTarget> targetAt(const SheetView& sheet, QPointF at) const;
  /// Adds the edit to the design and says what came of it.
  void add(SheetView& sheet, Edit edit);

 private:
  std::vector<const EditKind*> kinds_;
  std::size_t chosen_ = 0;
  std::optional<EditTarget> pointed_;
};

}  // namespace creasewright
