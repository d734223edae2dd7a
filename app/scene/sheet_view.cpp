#include "scene/sheet_view.h"

#include <QApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>
#include <cmath>
#include <map>

#include "bridge/style_text.h"
#include "bridge/text.h"
#include "scene/net_picture.h"
#include "scene/ruler.h"
#include "scene/under_mouse.h"
#include "widgets/theme.h"

namespace creasewright {

namespace {

constexpr double kZoomStep = 1.25;
constexpr double kPanStep = 40;  // pixels

QFont labelFont(const QWidget& widget) {
  QFont font = widget.font();
  font.setPixelSize(12);
  return font;
}

/// Ctrl: the product's room stays. Alt: off the tool grid.
LinePull::Grip gripOf(Qt::KeyboardModifiers keys) {
  return {keys.testFlag(Qt::ControlModifier), keys.testFlag(Qt::AltModifier)};
}

}  // namespace

SheetView::SheetView(DesignSession& session, QWidget* parent) : QWidget(parent), session_(session) {
  setMouseTracking(true);
  setFocusPolicy(Qt::StrongFocus);
  setMinimumSize(260, 200);
  setAccessibleName(tr("Sheet with the net"));
  setAccessibleDescription(tr("The panels are listed as text under “Panels”."));
  connect(&session_, &DesignSession::changed, this, &SheetView::designChanged);
  connect(&session_, &DesignSession::unitChanged, this, qOverload<>(&QWidget::update));
  connect(&session_.selection(), &Selection::changed, this, qOverload<>(&QWidget::update));
}

void SheetView::zoomIn() { zoom(kZoomStep, bench().center()); }
void SheetView::zoomOut() { zoom(1 / kZoomStep, bench().center()); }

void SheetView::fit() {
  fitted_ = true;
  if (const BuiltPiece* shown = piece()) {
    const QFontMetricsF metrics(labelFont(*this));
    const double room = dimensionRoom(metrics);
    const double small = metrics.height() + 14;
    camera_.fit(shown->flat.width, shown->flat.height,
                bench().adjusted(room + 6, small, -small, -room - 6));
  }
  update();
}

void SheetView::showPiece(int index) {
  piece_ = index;
  hovered_ = {};
  fit();
}

std::vector<DimensionLabel> SheetView::dimensionLabels() const {
  const BuiltPiece* shown = piece();
  if (shown == nullptr) return {};
  return layDimensions(*shown, camera_, session_.unit(), QFontMetricsF(labelFont(*this)));
}

void SheetView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), theme().bench);
  if (const BuiltPiece* shown = piece()) {
    painter.save();
    painter.setClipRect(bench());
    painter.setOpacity(session_.isCurrent() ? 1 : 0.45);
    paintSheet(painter, *shown, camera_);
    const Place& lit = session_.selection().lit();
    paintNet(painter, *shown, camera_, lit.piece < 0 || lit.piece == piece_ ? lit : Place());
    painter.setFont(labelFont(*this));
    paintDimensions(painter, dimensionLabels(),
                    [this](const DimensionLabel& label) { return isLit(label); });
    painter.restore();
    paintName(painter);
    paintPull(painter);
  }
  paintRulers(painter);
}

void SheetView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (fitted_) fit();
}

void SheetView::wheelEvent(QWheelEvent* event) {
  const double notches = event->angleDelta().y() / 120.0;
  zoom(std::pow(kZoomStep, notches), event->position());
  event->accept();
}

void SheetView::mousePressEvent(QMouseEvent* event) {
  pressed_ = event->position();
  pulled_ = false;
  fittedBefore_ = fitted_;
  const bool mayPull = event->button() == Qt::LeftButton && piece() != nullptr &&
                       session_.isCurrent() && bench().contains(pressed_);
  const auto handle =
      mayPull ? handleUnder(pressed_, session_.built(), piece_, camera_) : std::nullopt;
  pull_ = handle ? LinePull::take(session_, *handle) : std::nullopt;
  if (!pull_) {
    dragFrom_ = event->position();
    setCursor(Qt::ClosedHandCursor);
  }
}

void SheetView::mouseMoveEvent(QMouseEvent* event) {
  if (pull_) {
    mouse_ = event->position();
    pulled_ = pulled_ ||
              (event->position() - pressed_).manhattanLength() >= QApplication::startDragDistance();
    if (pulled_) pullTo(event->position(), event->modifiers());
    return;
  }
  if (dragFrom_) {
    pan(event->position() - *dragFrom_);
    dragFrom_ = event->position();
  }
  hover(event->position());
}

void SheetView::mouseReleaseEvent(QMouseEvent* event) {
  dragFrom_.reset();
  unsetCursor();
  const bool pulled = pulled_;
  pull_.reset();
  pulled_ = false;
  update();
  if (pulled) {
    if (fittedBefore_) fit();
    return;
  }
  if ((event->position() - pressed_).manhattanLength() < QApplication::startDragDistance())
    session_.selection().keep(placeAt(event->position()));
}

void SheetView::leaveEvent(QEvent*) {
  mouse_.reset();
  hovered_ = {};
  session_.selection().hover({});
  emit hovered({});
  update();
}

void SheetView::keyPressEvent(QKeyEvent* event) {
  if (pullKey(*event) || pullByArrow(*event)) return;
  switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      return zoomIn();
    case Qt::Key_Minus:
      return zoomOut();
    case Qt::Key_0:
    case Qt::Key_Home:
      return fit();
    case Qt::Key_Left:
      return pan({kPanStep, 0});
    case Qt::Key_Right:
      return pan({-kPanStep, 0});
    case Qt::Key_Up:
      return pan({0, kPanStep});
    case Qt::Key_Down:
      return pan({0, -kPanStep});
    default:
      QWidget::keyPressEvent(event);
  }
}

QPointF SheetView::firstPanelOnScreen() const {
  const Bounds first = bounds(piece()->flat.panels.front());
  return camera_.toScreen((first.low + first.high) / 2);
}

void SheetView::pullTo(QPointF at, Qt::KeyboardModifiers keys) {
  const QPointF way = at - pressed_;
  const Point normal = pull_->normal();
  const double by = (way.x() * normal.x - way.y() * normal.y) / camera_.scale();
  fitted_ = false;
  const QPointF before = firstPanelOnScreen();
  pull_->moveTo(by, gripOf(keys));
  camera_.move(before - firstPanelOnScreen());
  emit hovered(pull_->words().join(QStringLiteral("  ·  ")));
  update();
}

/// While a line is in the hand: another measure by its number, or back.
bool SheetView::pullKey(const QKeyEvent& event) {
  if (!pull_) return false;
  const QPointF before = firstPanelOnScreen();
  if (event.key() == Qt::Key_Escape) {
    pull_->cancel();
    camera_.move(before - firstPanelOnScreen());
    pull_.reset();
  } else if (event.key() >= Qt::Key_1 && event.key() <= Qt::Key_9) {
    pull_->choose(event.key() - Qt::Key_1);
    camera_.move(before - firstPanelOnScreen());
  } else {
    return false;
  }
  update();
  return true;
}

/// A kept line goes one step of the grid the way of the arrow, if it can go that way at all.
bool SheetView::pullByArrow(const QKeyEvent& event) {
  static const std::map<int, Point> ways{{Qt::Key_Left, {-1, 0}},
                                         {Qt::Key_Right, {1, 0}},
                                         {Qt::Key_Up, {0, 1}},
                                         {Qt::Key_Down, {0, -1}}};
  const Place& kept = session_.selection().kept();
  const auto arrow = ways.find(event.key());
  if (arrow == ways.end() || kept.lines.size() != 1 || kept.piece != piece_ ||
      !session_.isCurrent())
    return false;
  const Segment line = kept.lines.front();
  const auto handle =
      handleUnder(camera_.toScreen((line.a + line.b) / 2), session_.built(), piece_, camera_);
  auto pull = handle ? LinePull::take(session_, *handle) : std::nullopt;
  const double along = pull ? dot(pull->normal(), arrow->second) : 0;
  if (std::abs(along) < 0.7) return false;
  const ToolGrid grid = session_.design().grid;
  const double step = grid.isNone() ? 1 : grid.step().mm();
  const QPointF before = firstPanelOnScreen();
  fitted_ = false;
  pull->moveTo(along > 0 ? step : -step, gripOf(event.modifiers()));
  camera_.move(before - firstPanelOnScreen());
  emit hovered(pull->words().join(QStringLiteral("  ·  ")));
  return true;
}

const BuiltPiece* SheetView::piece() const {
  const auto& pieces = session_.built().pieces;
  const auto index = static_cast<std::size_t>(piece_);
  return index < pieces.size() ? &pieces[index] : nullptr;
}

QRectF SheetView::bench() const {
  return QRectF(rect()).adjusted(kRulerThickness, kRulerThickness, -kRulerThickness,
                                 -kRulerThickness);
}

void SheetView::zoom(double factor, QPointF at) {
  fitted_ = false;
  camera_.zoom(factor, at);
  update();
}

void SheetView::pan(QPointF by) {
  fitted_ = false;
  camera_.move(by);
  update();
}

Place SheetView::placeAt(QPointF at) const {
  if (piece() == nullptr) return {};
  const BuiltDesign& built = session_.built();
  if (bench().contains(at)) return placeUnder(at, built, piece_, camera_, dimensionLabels());
  const bool beside = at.x() < bench().left() || at.x() > bench().right();
  const Point there = camera_.toSheet(at);
  return placeAtTick(beside ? there.y : there.x, !beside, kLineReach / camera_.scale(), built,
                     piece_);
}

QString SheetView::wordsOf(const Place& place) const {
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

bool SheetView::isLit(const DimensionLabel& label) const {
  const Place& lit = session_.selection().lit();
  if (!label.ofScore || lit.creases.empty() || (lit.piece >= 0 && lit.piece != piece_))
    return false;
  return lights(lit, placeAtTick(label.mm, label.turned, 1e-3, session_.built(), piece_));
}

/// Whether the line under the mouse can be pulled: the cursor shows which way, words why not.
QString SheetView::pullWords(QPointF at) {
  unsetCursor();
  if (hovered_.lines.size() != 1 || piece() == nullptr || !bench().contains(at)) return {};
  const auto handle = handleUnder(at, session_.built(), piece_, camera_);
  const auto pull = handle ? LinePull::take(session_, *handle) : std::nullopt;
  if (!pull) return tr("  ·  follows from no measure");
  const Point normal = pull->normal();
  setCursor(std::abs(normal.x) > 0.9   ? Qt::SplitHCursor
            : std::abs(normal.y) > 0.9 ? Qt::SplitVCursor
                                       : Qt::SizeAllCursor);
  return tr("  ·  pull to change %1").arg(pull->measure());
}

void SheetView::hover(QPointF at) {
  mouse_ = at;
  Place place = placeAt(at);
  if (place != hovered_) {
    hovered_ = std::move(place);
    session_.selection().hover(hovered_);
    emit hovered(wordsOf(hovered_) + pullWords(at));
  }
  update();
}

void SheetView::designChanged() {
  hovered_ = {};
  if (piece_ >= static_cast<int>(session_.built().pieces.size())) piece_ = 0;
  if (fitted_) fit();
  update();
}

void SheetView::paintRulers(QPainter& painter) {
  const BuiltPiece* shown = piece();
  const double t = kRulerThickness;
  const double w = width();
  const double h = height();
  const double wide = shown != nullptr ? shown->flat.width : 0;
  const double high = shown != nullptr ? shown->flat.height : 0;
  const Ruler rulers[] = {{SheetSide::Top, {t, 0, w - 2 * t, t}, wide, high},
                          {SheetSide::Bottom, {t, h - t, w - 2 * t, t}, wide, high},
                          {SheetSide::Left, {0, t, t, h - 2 * t}, wide, high},
                          {SheetSide::Right, {w - t, t, t, h - 2 * t}, wide, high}};
  painter.fillRect(QRectF(0, 0, w, t), theme().surface);
  painter.fillRect(QRectF(0, h - t, w, t), theme().surface);
  for (const Ruler& ruler : rulers) paintRuler(painter, ruler, camera_, session_.unit(), mouse_);
  painter.setPen(QPen(theme().hairline, 1));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(bench());
  QFont font = labelFont(*this);
  font.setPixelSize(10);
  painter.setFont(font);
  painter.setPen(theme().quietInk);
  painter.drawText(QRectF(0, 0, t, t), Qt::AlignCenter,
                   session_.unit() == Unit::Inch ? tr("in") : tr("mm"));
}

/// A chip naming the panel under the mouse, at the upper left.
void SheetView::paintName(QPainter& painter) {
  const BuiltPiece* shown = piece();
  const auto panel = shown == nullptr || hovered_.panels.isEmpty() || !hovered_.creases.empty()
                         ? std::nullopt
                         : shown->net.find(hovered_.panels.front().toStdString());
  if (!panel) return;
  const auto index = static_cast<std::size_t>(*panel);
  const Bounds box = bounds(shown->flat.panels[index]);
  const QString words = tr("%1   %2 × %3")
                            .arg(panelTitle(shown->net.panels[index].id),
                                 lengthText(Length::mm(box.width()), session_.unit(), false),
                                 lengthText(Length::mm(box.height()), session_.unit()));
  painter.setFont(labelFont(*this));
  const QSizeF size(painter.fontMetrics().horizontalAdvance(words) + 16, 24);
  const QRectF chip(bench().topLeft() + QPointF(8, 8), size);
  painter.setPen(QPen(theme().hairline, 1));
  painter.setBrush(theme().surface);
  painter.drawRoundedRect(chip, 6, 6);
  painter.setPen(theme().ink);
  painter.drawText(chip, Qt::AlignCenter, words);
}

/// Beside the pointer: the measure that follows, its limit, and the others to choose from.
void SheetView::paintPull(QPainter& painter) {
  if (!pull_ || !pulled_ || !mouse_) return;
  const QString words = pull_->words().join(QLatin1Char('\n'));
  painter.setFont(labelFont(*this));
  constexpr int kWidest = 280;
  QRectF box = painter.boundingRect(QRectF(0, 0, kWidest, 400), Qt::TextWordWrap, words);
  box.adjust(-8, -5, 8, 5);
  box.moveTopLeft(*mouse_ + QPointF(18, 14));
  box.moveRight(std::min(box.right(), bench().right() - 4));
  box.moveBottom(std::min(box.bottom(), bench().bottom() - 4));
  painter.setPen(QPen(theme().hairline, 1));
  painter.setBrush(theme().surface);
  painter.drawRoundedRect(box, 6, 6);
  painter.setPen(theme().ink);
  painter.drawText(box.adjusted(8, 5, -8, -5), Qt::TextWordWrap, words);
}

}  // namespace creasewright
