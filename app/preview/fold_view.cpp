#include "preview/fold_view.h"

#include <QAction>
#include <QApplication>
#include <QKeyEvent>
#include <QLineF>
#include <QMouseEvent>
#include <QPainter>
#include <QTouchEvent>
#include <QWheelEvent>
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <utility>

#include "bridge/text.h"
#include "folding/surfaces/upright.h"
#include "preview/paint_shadow.h"
#include "session/places.h"
#include "widgets/theme.h"

namespace creasewright {

namespace {

constexpr double kKeyStep = 5;  // degrees
constexpr double kDegreesPerPixel = 0.5;

/// How wide a picture of the scene is at most, with its shadow, however it is turned (mm).
double reachOf(const GiftScene& scene) {
  // The lamp stands so that a shadow is longest, to the right, where one looks along the ground.
  constexpr double kShadow = -kLamp.x / kLamp.y;
  std::vector<Point3> corners;
  for (std::size_t i = 0; i < scene.shown.net.panels.size(); ++i)
    for (const Point& corner : scene.shown.net.panels[i].outline)
      corners.push_back(scene.shown.pose[i].apply(corner));
  const auto extentAlong = [&](Point3 way) {
    double low = std::numeric_limits<double>::max();
    double high = std::numeric_limits<double>::lowest();
    for (const Point3& corner : corners) {
      low = std::min(low, dot(corner, way));
      high = std::max(high, dot(corner, way));
    }
    return std::max(high - low, 0.0);
  };
  constexpr int kStep = 5;  // degrees
  double wide = 0;
  for (int turn = 0; turn < 180; turn += kStep)
    wide = std::max(wide,
                    extentAlong(camera({Angle::degrees(turn), Angle::degrees(0)}, scene.up).right));
  return wide + kShadow * extentAlong(unit(scene.up));
}

}  // namespace

FoldView::FoldView(DesignSession& session, QWidget* parent)
    : QWidget(parent), session_(session), openings_(new QActionGroup(this)) {
  setFocusPolicy(Qt::StrongFocus);
  setMinimumSize(200, 150);
  setCursor(Qt::OpenHandCursor);
  setAttribute(Qt::WA_AcceptTouchEvents);
  setMouseTracking(true);
  setAccessibleName(tr("Folded piece"));
  setToolTip(
      tr("Drag to turn it. Arrow keys turn by 5 degrees, Home shows the standard view, 1 to 3 the "
         "front, from above and three-quarter; 4 to 6 close and open the finished box."));
  addViews();
  addOpenings();
  connect(&session_, &DesignSession::changed, this, [this] {
    strip_.reset();
    showScene();
  });
  connect(&session_.selection(), &Selection::changed, this, qOverload<>(&QWidget::update));
}

void FoldView::addViews() {
  setContextMenuPolicy(Qt::ActionsContextMenu);
  const auto add = [this](const QString& words, Qt::Key key, const View& view) {
    auto* action = new QAction(words, this);
    action->setShortcut(key);
    action->setShortcutContext(Qt::WidgetShortcut);
    connect(action, &QAction::triggered, this, [this, view] { lookFrom(view); });
    addAction(action);
  };
  add(tr("From the front"), Qt::Key_1, frontalView());
  add(tr("From above"), Qt::Key_2, viewFromAbove());
  add(tr("Three-quarter view"), Qt::Key_3, standardView());
}

void FoldView::addOpenings() {
  auto* divider = new QAction(this);
  divider->setSeparator(true);
  addAction(divider);
  const auto add = [this](const QString& words, Qt::Key key, double opening) {
    auto* action = openings_->addAction(words);
    action->setCheckable(true);
    action->setChecked(opening == opening_);
    action->setShortcut(key);
    action->setShortcutContext(Qt::WidgetShortcut);
    action->setData(opening);
    connect(action, &QAction::triggered, this, [this, opening] { setOpening(opening); });
    addAction(action);
  };
  add(tr("Closed"), Qt::Key_4, kClosed);
  add(tr("Ajar"), Qt::Key_5, kAjar);
  add(tr("Open"), Qt::Key_6, kOpen);
}

void FoldView::setOpening(double opening) {
  opening_ = std::clamp(opening, kClosed, kOpen);
  for (QAction* action : openings_->actions())
    action->setChecked(action->data().toDouble() == opening_);
  showScene();
}

void FoldView::lookFrom(const View& view) {
  view_ = view;
  redraw();
}

void FoldView::setDone(double done) {
  done_ = std::max(done, 0.0);
  showScene();
}

void FoldView::showPiece(int index) {
  piece_ = index;
  strip_.reset();
  showScene();
}

const GiftStrip& FoldView::strip() {
  if (!strip_) strip_.emplace(session_.built(), shownIndex());
  return *strip_;
}

GiftSight FoldView::sight() const { return {view_, opening_, done_}; }

void FoldView::resetView() {
  view_ = standardView();
  zoom_ = 1;
  redraw();
}

int FoldView::shownIndex() const {
  return std::min(piece_, static_cast<int>(session_.built().pieces.size()) - 1);
}

void FoldView::makePicture() {
  if (!scene_) {
    scene_ = strip().at(done_, opening_);
    reach_ = reachOf(*scene_);
  }
  picture_ = pictureOf(*scene_, view_);
  shadow_ = shadowOf(*scene_, view_);
}

/// It stands in the middle with its shadow, as large as they fit times the zoom, and is no larger
/// or smaller when it is turned.
QTransform FoldView::place() const {
  constexpr double kMargin = 16;
  const QRectF room = QRectF(rect()).adjusted(kMargin, kMargin, -kMargin, -kMargin);
  const Bounds& thing = picture_->extent;
  Bounds seen = thing;
  if (!shadow_.empty()) {
    include(seen, shadow_.sharp.low);
    include(seen, shadow_.sharp.high);
  }
  const double scale = zoom_ * std::min(room.width() / std::max({seen.width(), reach_, 1.0}),
                                        room.height() / std::max(seen.height(), 1.0));
  // A shadow that comes in sight moves it aside little by little.
  constexpr double kAllThere = 15;  // degrees of tilt
  const double share = std::clamp(view_.tilt.degrees() / kAllThere, 0.0, 1.0);
  const Point middle =
      (thing.low + thing.high) * ((1 - share) / 2) + (seen.low + seen.high) * (share / 2);
  QTransform out;
  out.translate(room.center().x(), room.center().y());
  out.scale(scale, -scale);
  out.translate(-middle.x, -middle.y);
  return out;
}

FoldLight FoldView::light() const {
  const Place& lit = session_.selection().lit();
  if (lit.creases.empty() || lit.piece < 0) return {lit.piece, lit.panels, {}};
  const std::vector<PanelOwner>& owners = scene_->shown.owners;
  const auto first = std::ranges::find(owners, lit.piece, &PanelOwner::piece);
  if (first == owners.end()) return {};
  const Camera eye = camera(viewOf(*scene_, view_), scene_->up);
  const auto offset = static_cast<std::size_t>(first - owners.begin());
  const Net& net = session_.built().pieces[static_cast<std::size_t>(lit.piece)].net;
  FoldLight out;
  for (const int number : lit.creases) {
    const Crease& crease = net.creases[static_cast<std::size_t>(number)];
    const Transform& frame = scene_->shown.pose[offset + static_cast<std::size_t>(crease.parent)];
    out.lines.push_back(
        {eye.project(frame.apply(crease.onParent.a)), eye.project(frame.apply(crease.onParent.b))});
  }
  return out;
}

Place FoldView::placeAt(QPointF pixel) {
  if (shownIndex() < 0) return {};
  if (!picture_) makePicture();
  const int panel = panelSeenAt(*picture_, place(), pixel);
  if (panel < 0) return {};
  const PanelOwner owner = scene_->shown.owners[static_cast<std::size_t>(panel)];
  const BuiltDesign& built = session_.built();
  if (owner.piece >= 0 && !built.pieces[static_cast<std::size_t>(owner.piece)].role)
    return placeOfPanel(built, owner.piece, owner.panel);
  return {.panels = {text(scene_->shown.net.panels[static_cast<std::size_t>(panel)].id)}};
}

void FoldView::clearCanvas(double ratio) {
  const QSize pixels(static_cast<int>(std::ceil(width() * ratio)),
                     static_cast<int>(std::ceil(height() * ratio)));
  if (canvas_.size() != pixels) canvas_ = QImage(pixels, QImage::Format_ARGB32_Premultiplied);
  canvas_.setDevicePixelRatio(ratio);
  canvas_.fill(Qt::transparent);
}

void FoldView::paintEvent(QPaintEvent*) {
  if (shownIndex() < 0) return;
  if (!picture_) makePicture();
  QPainter painter(this);
  clearCanvas(painter.device()->devicePixelRatioF());
  paintShadow(canvas_, shadow_, place());
  paintFold(canvas_, *picture_, place(), scene_->shown, light());
  painter.setOpacity(session_.isCurrent() ? 1 : 0.45);
  painter.drawImage(0, 0, canvas_);
}

bool FoldView::event(QEvent* event) {
  constexpr std::array kTouches{QEvent::TouchBegin, QEvent::TouchUpdate, QEvent::TouchEnd,
                                QEvent::TouchCancel};
  if (std::ranges::find(kTouches, event->type()) == kTouches.end()) return QWidget::event(event);
  touch(*static_cast<QTouchEvent*>(event));
  event->accept();
  return true;
}

/// One finger turns, two come closer or go away; a tap is a click.
void FoldView::touch(QTouchEvent& event) {
  touched_ = true;
  if (event.type() == QEvent::TouchCancel) return fingers_.reset();
  std::vector<QPointF> at;
  for (const QEventPoint& point : event.points())
    if (point.state() != QEventPoint::Released) at.push_back(point.position());
  if (at.empty()) {
    if (fingers_ && fingers_->tap) session_.selection().keep(placeAt(fingers_->first));
    return fingers_.reset();
  }
  if (!fingers_) fingers_ = Fingers{at, at.front()};
  Fingers& now = *fingers_;
  const int wobble = 2 * QApplication::startDragDistance();
  if (at.size() > 1 || (at.front() - now.first).manhattanLength() > wobble) now.tap = false;
  // A finger that comes or goes moves nothing.
  const std::vector<QPointF> last = std::exchange(now.at, at);
  if (last.size() != at.size() || now.tap) return;
  if (at.size() == 1) {
    const QPointF by = at.front() - last.front();
    turn(by.x() * kDegreesPerPixel, by.y() * kDegreesPerPixel);
  } else {
    const double before = QLineF(last[0], last[1]).length();
    if (before > 0) comeCloser(QLineF(at[0], at[1]).length() / before);
  }
}

bool FoldView::isToldByTouch(const QMouseEvent& event) const {
  return touched_ && event.source() != Qt::MouseEventNotSynthesized;
}

void FoldView::mousePressEvent(QMouseEvent* event) {
  if (isToldByTouch(*event)) return;
  last_ = event->position();
  pressed_ = last_;
}

void FoldView::mouseMoveEvent(QMouseEvent* event) {
  if (isToldByTouch(*event)) return;
  if (event->buttons() == Qt::NoButton) {
    session_.selection().hover(placeAt(event->position()));
    return;
  }
  const QPointF by = event->position() - last_;
  last_ = event->position();
  turn(by.x() * kDegreesPerPixel, by.y() * kDegreesPerPixel);
}

void FoldView::mouseReleaseEvent(QMouseEvent* event) {
  if (isToldByTouch(*event)) return;
  if ((event->position() - pressed_).manhattanLength() < QApplication::startDragDistance())
    session_.selection().keep(placeAt(event->position()));
}

void FoldView::leaveEvent(QEvent*) { session_.selection().hover({}); }

void FoldView::wheelEvent(QWheelEvent* event) {
  comeCloser(std::pow(1.15, event->angleDelta().y() / 120.0));
  event->accept();
}

void FoldView::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Left:
      return turn(-kKeyStep, 0);
    case Qt::Key_Right:
      return turn(kKeyStep, 0);
    case Qt::Key_Up:
      return turn(0, kKeyStep);
    case Qt::Key_Down:
      return turn(0, -kKeyStep);
    case Qt::Key_Home:
      return resetView();
    default:
      QWidget::keyPressEvent(event);
  }
}

void FoldView::comeCloser(double factor) {
  zoom_ = std::clamp(zoom_ * factor, 0.3, 8.0);
  update();
}

void FoldView::turn(double turnDegrees, double tiltDegrees) {
  view_.turn = Angle::degrees(std::remainder(view_.turn.degrees() + turnDegrees, 360));
  view_.tilt =
      Angle::degrees(std::clamp(view_.tilt.degrees() + tiltDegrees, -kSteepestTilt, kSteepestTilt));
  redraw();
}

void FoldView::showScene() {
  scene_.reset();
  redraw();
}

void FoldView::redraw() {
  picture_.reset();
  update();
}

}  // namespace creasewright
