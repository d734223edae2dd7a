#include "shell/tool_bar.h"

#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QToolButton>

#include "bridge/text.h"
#include "commands/edits.h"
#include "scene/sheet_view.h"
#include "session/preferences.h"
#include "shell/columns.h"
#include "shell/file_actions.h"
#include "units/millimetres.h"
#include "widgets/history_actions.h"
#include "widgets/icon.h"

namespace creasewright {

namespace {

const std::vector<ToolGrid>& grids() {
  static const std::vector<ToolGrid> all{ToolGrid::eighthInch(), ToolGrid::sixteenthInch(),
                                         ToolGrid::millimetre(), ToolGrid::none()};
  return all;
}

QString gridTitle(ToolGrid grid) {
  if (grid.isNone()) return ToolBar::tr("Grid: none");
  const Unit unit = grid == ToolGrid::millimetre() ? Unit::Millimetre : Unit::Inch;
  return ToolBar::tr("Grid: %1").arg(lengthText(grid.step(), unit));
}

const std::vector<Length>& boards() {
  static const std::vector<Length> all{Length(), Length::inches(12), mm(300)};
  return all;
}

QString boardTitle(Length board) {
  if (board == Length()) return ToolBar::tr("Board: any width");
  const Unit unit = board == Length::inches(12) ? Unit::Inch : Unit::Centimetre;
  return ToolBar::tr("Board: %1").arg(lengthText(board, unit));
}

}  // namespace

ToolBar::ToolBar(DesignSession& session, FileActions& files, Columns& columns, QMenu* papers,
                 QWidget* parent)
    : QToolBar(tr("Tools"), parent), session_(session) {
  setMovable(false);
  setIconSize({20, 20});
  setContextMenuPolicy(Qt::PreventContextMenu);
  addFile(files, papers);
  addHistory();
  addUnits();
  addGrid();
  addBoard();
  addZoom(columns);
}

void ToolBar::addFile(FileActions& files, QMenu* papers) {
  addAction(files.newAction());
  addAction(files.openAction());
  addAction(files.saveAction());
  auto* button = new QToolButton(this);
  button->setText(tr("Papers"));
  button->setIcon(lineIcon(QStringLiteral("papers")));
  button->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  button->setProperty("words", true);
  button->setPopupMode(QToolButton::InstantPopup);
  button->setMenu(papers);
  button->setToolTip(tr("Template, guide, class and files of this design"));
  addWidget(button);
  addSeparator();
}

void ToolBar::addHistory() {
  auto* undo = undoAction(session_.history(), this);
  undo->setIcon(lineIcon(QStringLiteral("undo")));
  auto* redo = redoAction(session_.history(), this);
  redo->setIcon(lineIcon(QStringLiteral("redo")));
  addAction(undo);
  addAction(redo);
  addSeparator();
}

void ToolBar::addUnits() {
  auto* unit = new QComboBox(this);
  unit->addItem(tr("mm"));
  unit->addItem(tr("inches"));
  unit->setAccessibleName(tr("Units"));
  unit->setToolTip(tr("Units shown and typed"));
  const auto show = [this, unit] { unit->setCurrentIndex(session_.unit() == Unit::Inch ? 1 : 0); };
  show();
  connect(unit, &QComboBox::activated, this, [this](int index) {
    session_.setUnit(index == 1 ? Unit::Inch : Unit::Millimetre);
    setPreferredUnit(session_.unit());
  });
  connect(&session_, &DesignSession::unitChanged, this, show);
  addWidget(unit);
}

void ToolBar::addGrid() {
  auto* grid = new QComboBox(this);
  for (const ToolGrid step : grids()) grid->addItem(gridTitle(step));
  grid->setAccessibleName(tr("Tool grid"));
  grid->setToolTip(tr("What your board, trimmer or ruler can hit. Fitted measures snap to it."));
  const auto show = [this, grid] {
    for (std::size_t i = 0; i < grids().size(); ++i)
      if (grids()[i] == session_.design().grid) grid->setCurrentIndex(static_cast<int>(i));
  };
  show();
  connect(grid, &QComboBox::activated, this,
          [this](int index) { changeGrid(session_, grids()[static_cast<std::size_t>(index)]); });
  connect(&session_, &DesignSession::changed, this, show);
  addWidget(grid);
}

void ToolBar::addBoard() {
  auto* board = new QComboBox(this);
  for (const Length width : boards())
    board->addItem(boardTitle(width), static_cast<qlonglong>(width.nm()));
  board->setAccessibleName(tr("Scoring board"));
  board->setToolTip(
      tr("How wide your scoring board is: longer readings come from the other side."));
  const auto show = [this, board] {
    const auto width = static_cast<qlonglong>(session_.design().board.nm());
    if (board->findData(width) < 0) {
      board->addItem(boardTitle(session_.design().board), width);
    }
    board->setCurrentIndex(board->findData(width));
  };
  show();
  connect(board, &QComboBox::activated, this, [this, board](int index) {
    changeBoard(session_, Length::nanometres(board->itemData(index).toLongLong()));
  });
  connect(&session_, &DesignSession::changed, this, show);
  addWidget(board);
  addSeparator();
}

void ToolBar::addZoom(Columns& columns) {
  SheetView* sheet = &columns.sheet();
  const auto add = [&](const char* icon, const QString& words, void (SheetView::*act)()) {
    auto* action = addAction(lineIcon(QLatin1String(icon)), words);
    connect(action, &QAction::triggered, sheet, act);
  };
  add("zoom-out", tr("Zoom out"), &SheetView::zoomOut);
  add("zoom-in", tr("Zoom in"), &SheetView::zoomIn);
  add("fit", tr("Show the whole sheet"), &SheetView::fit);
}

}  // namespace creasewright
