#include "tools/select_tool.h"

#include <QApplication>
#include <cmath>
#include <map>

#include "bridge/style_text.h"
#include "bridge/text.h"
#include "scene/note_box.h"
#include "scene/sheet_view.h"
#include "scene/under_mouse.h"
#include "tools/dimension_entry.h"

namespace creasewright {

namespace {

const QString kBetween = QStringLiteral("  ·  ");

/// Ctrl: the product's room stays. Alt: off the tool grid.
NetPull::Grip gripOf(Qt::KeyboardModifiers keys) {
  return {keys.testFlag(Qt::ControlModifier), keys.testFlag(Qt::AltModifier)};
}

/// What can be taken hold of at a pixel of the sheet: a corner, else a line.
std::vector<Movable> thingsUnder(const SheetView& sheet, QPointF at) {
  if (sheet.piece() == nullptr || !sheet.bench().contains(at)) return {};
  const BuiltDesign& built = sheet.session().built();
  const int piece = sheet.shownPiece();
  if (auto corner = cornerUnder(at, built, piece, sheet.camera()); !corner.empty()) return corner;
  const auto line = handleUnder(at, built, piece, sheet.camera());
  return line ? std::vector<Movable>{*line} : std::vector<Movable>();
}

/// The dimension at a pixel that can be typed, with a little room around its number.
std::optional<BlankDistance> distanceAt(const SheetView& sheet, QPointF at,
                                        QRectF* area = nullptr) {
  if (sheet.piece() == nullptr || !sheet.session().isCurrent()) return std::nullopt;
  for (const DimensionLabel& label : sheet.dimensionLabels()) {
    const QRectF reach = label.area().adjusted(-5, -3, 5, 3);
    if (!reach.contains(at)) continue;
    if (area != nullptr) *area = reach;
    return distanceOf(label, sheet.session().built(), sheet.shownPiece());
  }
  return std::nullopt;
}

QCursor cursorFor(const NetPull& pull) {
  if (pull.count() > 1) return Qt::SizeAllCursor;
  const Point normal = pull.normal();
  return std::abs(normal.x) > 0.9   ? Qt::SplitHCursor
         : std::abs(normal.y) > 0.9 ? Qt::SplitVCursor
                                    : Qt::SizeAllCursor;
}

}  // namespace

QString SelectTool::hint() const {
  return tr(
      "Point at a panel or a line. Pull a line or a corner to change the box; click a "
      "dimension to type it.");
}

void SelectTool::deactivate(SheetView& sheet) {
  pull_.reset();
  delete entry_;
  leave(sheet);
}

bool SelectTool::press(SheetView& sheet, const QMouseEvent& event) {
  pressed_ = event.position();
  pulled_ = false;
  wholeBefore_ = sheet.isWholeShown();
  pull_.reset();
  if (sheet.session().isCurrent())
    pull_ = NetPull::take(sheet.session(), thingsUnder(sheet, pressed_));
  return pull_.has_value();
}

void SelectTool::move(SheetView& sheet, const QMouseEvent& event, bool held) {
  mouse_ = event.position();
  if (!held || !pull_) {
    hover(sheet, mouse_);
    return;
  }
  pulled_ = pulled_ || (mouse_ - pressed_).manhattanLength() >= QApplication::startDragDistance();
  if (pulled_) pullTo(sheet, mouse_, event.modifiers());
}

void SelectTool::release(SheetView& sheet, const QMouseEvent&) {
  pull_.reset();
  if (pulled_ && wholeBefore_) sheet.fit();
  pulled_ = false;
}

void SelectTool::click(SheetView& sheet, const QMouseEvent& event) {
  sheet.session().selection().keep(sheet.placeAt(event.position()));
  typeDimension(sheet, event.position());
}

void SelectTool::leave(SheetView& sheet) {
  hovered_ = {};
  things_.clear();
  sheet.session().selection().hover({});
}

bool SelectTool::keyPress(SheetView& sheet, const QKeyEvent& event) {
  return pullKey(sheet, event) || pullByArrow(sheet, event);
}

void SelectTool::sheetChanged(SheetView&) {
  hovered_ = {};
  things_.clear();
}

void SelectTool::paint(SheetView& sheet, QPainter& painter) {
  paintName(sheet, painter);
  if (pull_ && pulled_)
    paintNote(painter, pull_->words().join(QLatin1Char('\n')), mouse_ + QPointF(18, 14),
              sheet.bench());
}

void SelectTool::pullTo(SheetView& sheet, QPointF at, Qt::KeyboardModifiers keys) {
  const QPointF way = (at - pressed_) / sheet.camera().scale();
  sheet.keepInPlace([&] { pull_->moveTo({way.x(), -way.y()}, gripOf(keys)); });
  sheet.say(pull_->words().join(kBetween));
}

/// While a line is in the hand: another measure by its number, all of them, or back.
bool SelectTool::pullKey(SheetView& sheet, const QKeyEvent& event) {
  if (!pull_) return false;
  if (event.key() == Qt::Key_Escape) {
    sheet.keepInPlace([&] { pull_->cancel(); });
    pull_.reset();
    return true;
  }
  if (event.key() < Qt::Key_0 || event.key() > Qt::Key_9) return false;
  sheet.keepInPlace([&] {
    event.key() == Qt::Key_0 ? pull_->chooseAll() : pull_->choose(event.key() - Qt::Key_1);
  });
  return true;
}

/// A kept line goes one step of the grid the way of the arrow, if it can go that way at all.
bool SelectTool::pullByArrow(SheetView& sheet, const QKeyEvent& event) {
  static const std::map<int, Point> ways{{Qt::Key_Left, {-1, 0}},
                                         {Qt::Key_Right, {1, 0}},
                                         {Qt::Key_Up, {0, 1}},
                                         {Qt::Key_Down, {0, -1}}};
  DesignSession& session = sheet.session();
  const Place& kept = session.selection().kept();
  const auto arrow = ways.find(event.key());
  if (arrow == ways.end() || kept.lines.size() != 1 || kept.piece != sheet.shownPiece() ||
      !session.isCurrent())
    return false;
  const Segment line = kept.lines.front();
  const auto handle = handleUnder(sheet.camera().toScreen((line.a + line.b) / 2), session.built(),
                                  sheet.shownPiece(), sheet.camera());
  auto pull = handle ? NetPull::take(session, {*handle}) : std::nullopt;
  if (!pull || std::abs(dot(pull->normal(), arrow->second)) < 0.7) return false;
  const ToolGrid grid = session.design().grid;
  const double step = grid.isNone() ? 1 : grid.step().mm();
  const bool whole = sheet.isWholeShown();
  // A slanting line goes as far along its normal as an upright one.
  const Point way = pull->normal() * (dot(pull->normal(), arrow->second) > 0 ? step : -step);
  sheet.keepInPlace([&] { pull->moveTo(way, gripOf(event.modifiers())); });
  if (whole) sheet.fit();
  sheet.say(pull->words().join(kBetween));
  return true;
}

bool SelectTool::typeDimension(SheetView& sheet, QPointF at) {
  DesignSession& session = sheet.session();
  QRectF area;
  const auto distance = distanceAt(sheet, at, &area);
  const auto now = distance ? distanceOf(session.design(), *distance) : std::nullopt;
  if (!now) return false;
  auto pull = NetPull::take(session, {*distance});
  if (!pull) {
    sheet.say(tr("This distance follows from no measure."));
    return false;
  }
  auto* entry = new DimensionEntry(sheet, Length::mm(*now), std::move(*pull));
  entry->showAt(area.center());
  entry_ = entry;
  return true;
}

QString SelectTool::wordsOf(const Place& place) const {
  if (place.panels.isEmpty()) return {};
  if (place.creases.empty()) {
    const QString panel = panelTitle(place.panels.front().toStdString());
    return place.lines.empty() ? panel : tr("Cut at %1").arg(panel);
  }
  if (place.creases.size() > 1)
    return tr("%n fold(s) at one setting", "", static_cast<int>(place.creases.size()));
  return tr("Fold between %1 and %2")
      .arg(panelTitle(place.panels.front().toStdString()),
           panelTitle(place.panels.back().toStdString()));
}

/// Whether what is under the mouse can be pulled: the cursor shows which way, words why not.
QString SelectTool::pullWords(SheetView& sheet, const std::vector<Movable>& things) {
  sheet.unsetCursor();
  if (things.empty()) return {};
  const auto pull = NetPull::take(sheet.session(), things);
  if (!pull) return kBetween + tr("follows from no measure");
  if (std::holds_alternative<BlankDistance>(things.front())) {
    sheet.setCursor(Qt::IBeamCursor);
    return tr("Click to type another distance.");
  }
  sheet.setCursor(cursorFor(*pull));
  return kBetween + tr("pull to change %1").arg(pull->strongest().join(QStringLiteral(", ")));
}

void SelectTool::hover(SheetView& sheet, QPointF at) {
  Place place = sheet.placeAt(at);
  std::vector<Movable> things = thingsUnder(sheet, at);
  const auto distance = things.empty() ? distanceAt(sheet, at) : std::nullopt;
  if (distance) things = {*distance};
  if (place == hovered_ && things == things_) return;
  if (place != hovered_) sheet.session().selection().hover(place);
  hovered_ = std::move(place);
  things_ = std::move(things);
  const QString words =
      distance ? pullWords(sheet, things_) : wordsOf(hovered_) + pullWords(sheet, things_);
  sheet.say(words.isEmpty() ? hint() : words);
}

/// A chip naming the panel under the mouse, at the upper left.
void SelectTool::paintName(SheetView& sheet, QPainter& painter) {
  const BuiltPiece* shown = sheet.piece();
  const auto panel = shown == nullptr || hovered_.panels.isEmpty() || !hovered_.creases.empty()
                         ? std::nullopt
                         : shown->net.find(hovered_.panels.front().toStdString());
  if (!panel) return;
  const auto index = static_cast<std::size_t>(*panel);
  const Bounds box = bounds(shown->flat.panels[index]);
  const Unit unit = sheet.session().unit();
  const QString words = tr("%1   %2 × %3")
                            .arg(panelTitle(shown->net.panels[index].id),
                                 lengthText(Length::mm(box.width()), unit, false),
                                 lengthText(Length::mm(box.height()), unit));
  paintNote(painter, words, sheet.bench().topLeft() + QPointF(8, 8), sheet.bench());
}

}  // namespace creasewright
