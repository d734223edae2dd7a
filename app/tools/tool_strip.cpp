#include "tools/tool_strip.h"

#include <QActionGroup>
#include <QToolButton>
#include <QVBoxLayout>

#include "scene/sheet_view.h"
#include "tools/edge_tool.h"
#include "tools/flap_tool.h"
#include "tools/fold_tool.h"
#include "tools/measure_tool.h"
#include "tools/notch_tool.h"
#include "tools/opening_tool.h"
#include "tools/remove_tool.h"
#include "tools/select_tool.h"
#include "tools/slit_tool.h"
#include "tools/split_tool.h"
#include "tools/text_tool.h"
#include "widgets/icon.h"

namespace creasewright {

namespace {

std::vector<std::unique_ptr<SheetTool>> allTools() {
  std::vector<std::unique_ptr<SheetTool>> tools;
  tools.push_back(std::make_unique<SelectTool>());
  tools.push_back(std::make_unique<MeasureTool>());
  tools.push_back(std::make_unique<OpeningTool>());
  tools.push_back(std::make_unique<SlitTool>());
  tools.push_back(std::make_unique<NotchTool>());
  tools.push_back(std::make_unique<EdgeTool>());
  tools.push_back(std::make_unique<FlapTool>());
  tools.push_back(std::make_unique<SplitTool>());
  tools.push_back(std::make_unique<FoldTool>());
  tools.push_back(std::make_unique<TextTool>());
  tools.push_back(std::make_unique<RemoveTool>());
  return tools;
}

}  // namespace

ToolStrip::ToolStrip(SheetView& sheet, QWidget* parent)
    : QWidget(parent), sheet_(&sheet), tools_(allTools()) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(2);
  auto* group = new QActionGroup(this);
  for (const auto& tool : tools_) {
    auto* action = new QAction(lineIcon(tool->icon()), tool->name(), this);
    const QKeySequence key(tool->key());
    action->setCheckable(true);
    action->setShortcut(key);
    action->setShortcutContext(Qt::WidgetShortcut);
    action->setIconText(key.toString(QKeySequence::NativeText));
    action->setToolTip(tr("%1 (%2)", "a tool and its key")
                           .arg(tool->name(), key.toString(QKeySequence::NativeText)));
    group->addAction(action);
    sheet.addAction(action);
    auto* button = new QToolButton(this);
    button->setDefaultAction(action);
    button->setAccessibleName(tool->name());
    button->setAutoRaise(true);
    button->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    button->setIconSize({20, 20});
    layout->addWidget(button);
    SheetTool* chosen = tool.get();
    connect(
        action, &QAction::triggered, &sheet, [view = &sheet, chosen] { view->setTool(chosen); });
    connect(&sheet, &SheetView::toolChanged, action,
            [view = &sheet, chosen, action] { action->setChecked(view->tool() == chosen); });
  }
  layout->addStretch(1);
  sheet.setTool(tools_.front().get());
}

ToolStrip::~ToolStrip() {
  if (sheet_ != nullptr) sheet_->setTool(nullptr);
}

}  // namespace creasewright
