#include "scene/sheet_view.h"

#include <QApplication>
#include <QWheelEvent>
#include <cmath>

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

}  // namespace

SheetView::SheetView(DesignSession& session, QWidget* parent) : QWidget(parent), session_(session) {
  setMouseTracking(true);
  setFocusPolicy(Qt::StrongFocus);
  setMinimumSize(260, 200);
  setAccessibleName(tr("Sheet with the net"));
  setAccessibleDescription(tr("The panels are listed as text under “Panels”."));
  connect(&session_, &DesignSession::changed, this, &SheetView::designChanged);
  connect(&session_, &DesignSession::unitChanged, this, &SheetView::tellTool);
  connect(&session_.selection(), &Selection::changed, this, qOverload<>(&QWidget::update));
}

void SheetView::setTool(SheetTool* tool) {
  if (tool == tool_) return;
  if (tool_ != nullptr) tool_->deactivate(*this);
  held_ = false;
  unsetCursor();
  tool_ = tool;
  if (tool_ != nullptr) {
    tool_->activate(*this);
    say(tool_->hint());
  }
  emit toolChanged();
  update();
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
  fit();
  tellTool();
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
    paintSheet(painter, session_.built(), *shown, camera_);
    const Place& lit = session_.selection().lit();
    paintNet(painter, *shown, camera_, lit.piece < 0 || lit.piece == piece_ ? lit : Place());
    painter.setFont(labelFont(*this));
    paintDimensions(painter, dimensionLabels(),
                    [this](const DimensionLabel& label) { return isLit(label); });
    painter.setOpacity(1);
    if (tool_ != nullptr) tool_->paint(*this, painter);
    painter.restore();
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
  const bool moves = space_ || event->button() == Qt::MiddleButton;
  held_ = !moves && event->button() == Qt::LeftButton && tool_ != nullptr &&
          tool_->press(*this, *event);
  if (held_) return;
  dragFrom_ = pressed_;
  setCursor(Qt::ClosedHandCursor);
}

void SheetView::mouseMoveEvent(QMouseEvent* event) {
  mouse_ = event->position();
  if (dragFrom_) {
    pan(event->position() - *dragFrom_);
    dragFrom_ = event->position();
  }
  if (tool_ != nullptr && !space_) tool_->move(*this, *event, held_);
  update();
}

void SheetView::mouseReleaseEvent(QMouseEvent* event) {
  unsetCursor();
  dragFrom_.reset();
  if (tool_ != nullptr && held_) tool_->release(*this, *event);
  held_ = false;
  const bool still =
      (event->position() - pressed_).manhattanLength() < QApplication::startDragDistance();
  if (tool_ != nullptr && still && event->button() == Qt::LeftButton && !space_)
    tool_->click(*this, *event);
  update();
}

void SheetView::leaveEvent(QEvent*) {
  mouse_.reset();
  if (tool_ != nullptr) tool_->leave(*this);
  emit hovered({});
  update();
}

void SheetView::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
    space_ = true;
    setCursor(Qt::OpenHandCursor);
    return;
  }
  if (tool_ != nullptr && tool_->keyPress(*this, *event)) return;
  if (!viewKey(event->key())) QWidget::keyPressEvent(event);
}

void SheetView::keyReleaseEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
    space_ = false;
    unsetCursor();
    return;
  }
  QWidget::keyReleaseEvent(event);
}

bool SheetView::viewKey(int key) {
  switch (key) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      zoomIn();
      return true;
    case Qt::Key_Minus:
      zoomOut();
      return true;
    case Qt::Key_0:
    case Qt::Key_Home:
      fit();
      return true;
    case Qt::Key_Left:
      pan({kPanStep, 0});
      return true;
    case Qt::Key_Right:
      pan({-kPanStep, 0});
      return true;
    case Qt::Key_Up:
      pan({0, kPanStep});
      return true;
    case Qt::Key_Down:
      pan({0, -kPanStep});
      return true;
    default:
      return false;
  }
}

QPointF SheetView::firstPanelOnScreen() const {
  const BuiltPiece* shown = piece();
  if (shown == nullptr) return {};
  const Bounds first = bounds(shown->flat.panels.front());
  return camera_.toScreen((first.low + first.high) / 2);
}

void SheetView::keepInPlace(const std::function<void()>& change) {
  fitted_ = false;
  const QPointF before = firstPanelOnScreen();
  change();
  camera_.move(before - firstPanelOnScreen());
  update();
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

bool SheetView::isLit(const DimensionLabel& label) const {
  const Place& lit = session_.selection().lit();
  if (!label.ofScore || lit.creases.empty() || (lit.piece >= 0 && lit.piece != piece_))
    return false;
  return lights(lit, placeAtTick(label.mm, label.turned, 1e-3, session_.built(), piece_));
}

void SheetView::designChanged() {
  if (piece_ >= static_cast<int>(session_.built().pieces.size())) piece_ = 0;
  if (fitted_) fit();
  tellTool();
}

void SheetView::tellTool() {
  if (tool_ != nullptr) tool_->sheetChanged(*this);
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

}  // namespace creasewright
