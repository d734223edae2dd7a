#include "preview/fold_view.h"

#include <QAction>
#include <QApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "bridge/text.h"
#include "folding/loop_closure.h"
#include "folding/surfaces/upright.h"
#include "session/places.h"
#include "widgets/theme.h"

namespace creasewright {

namespace {

constexpr double kKeyStep = 5;  // degrees
constexpr double kDegreesPerPixel = 0.5;
constexpr double kSteepest = 89;

/// Largest distance in mm between two corners of the posed net's bounding cuboid: however it is
/// turned, the picture is no wider.
double reachOf(const Net& net, const Pose& posed) {
  Point3 low{1e9, 1e9, 1e9};
  Point3 high{-1e9, -1e9, -1e9};
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    for (const Point& corner : net.panels[i].outline) {
      const Point3 p = posed[i].apply(corner);
      low = {std::min(low.x, p.x), std::min(low.y, p.y), std::min(low.z, p.z)};
      high = {std::max(high.x, p.x), std::max(high.y, p.y), std::max(high.z, p.z)};
    }
  }
  return distance(low, high);
}

}  // namespace

FoldView::FoldView(DesignSession& session, QWidget* parent)
    : QWidget(parent), session_(session), openings_(new QActionGroup(this)) {
  setFocusPolicy(Qt::StrongFocus);
  setMinimumSize(200, 150);
  setCursor(Qt::OpenHandCursor);
  setMouseTracking(true);
  setAccessibleName(tr("Folded piece"));
  setToolTip(
      tr("Drag to turn it. Arrow keys turn by 5 degrees, Home shows the standard view, 1 to 3 the "
         "front, from above and three-quarter; 4 to 6 close and open the finished box."));
  addViews();
  addOpenings();
  connect(&session_, &DesignSession::changed, this, [this] {
    product_.reset();
    gift_.reset();
    redraw();
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
  add(tr("From the front"), Qt::Key_1, {Angle::degrees(0), Angle::degrees(0)});
  add(tr("From above"), Qt::Key_2, {Angle::degrees(0), Angle::degrees(kSteepest)});
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
  redraw();
}

void FoldView::setGift(std::optional<GiftState> state) {
  state_ = std::move(state);
  redraw();
}

void FoldView::lookFrom(const View& view) {
  view_ = view;
  redraw();
}

void FoldView::setProgress(double progress) {
  progress_ = std::clamp(progress, 0.0, 1.0);
  redraw();
}

void FoldView::showPiece(int index) {
  piece_ = index;
  redraw();
}

void FoldView::resetView() {
  view_ = standardView();
  zoom_ = 1;
  redraw();
}

const BuiltPiece* FoldView::piece() const {
  const auto& pieces = session_.built().pieces;
  return pieces.empty() ? nullptr
                        : &pieces[std::min(static_cast<std::size_t>(piece_), pieces.size() - 1)];
}

void FoldView::makeScene() {
  const BuiltDesign& built = session_.built();
  const BuiltPiece& shown = *piece();
  // Folded pieces of the box are seen where they go; those of extras by themselves.
  if (progress_ >= 1 && !shown.role) {
    if (!gift_) gift_.emplace(built);
    if (gift_->holds(shown)) {
      GiftState state = state_.value_or(GiftState());
      if (!state_) state.opening = opening_;
      scene_ = gift_->at(state);
      return;
    }
  }
  scene_.shown = progress_ < 1 ? undressed(built, shown, foldedPose(shown.net, progress_))
                               : dressed(built, shown);
  scene_.up = uprightOf(shown);
  if (!product_) product_.emplace(productInBox(built));
  const int index = static_cast<int>(&shown - built.pieces.data());
  scene_.solids = productAt(*product_, index, scene_.shown.pose, progress_);
}

void FoldView::makePicture() {
  makeScene();
  picture_ = drawFolded(scene_.shown.net, scene_.shown.pose, frontView(view_, scene_.up), scene_.up,
                        scene_.solids);
  reach_ = reachOf(scene_.shown.net, scene_.shown.pose);
}

FoldPlace FoldView::place() const {
  constexpr double kMargin = 16;
  return {reach_, QRectF(rect()).adjusted(kMargin, kMargin, -kMargin, -kMargin), zoom_};
}

FoldLight FoldView::light() const {
  const Place& lit = session_.selection().lit();
  if (lit.creases.empty() || lit.piece < 0) return {lit.piece, lit.panels, {}};
  const std::vector<PanelOwner>& owners = scene_.shown.owners;
  const auto first = std::ranges::find(owners, lit.piece, &PanelOwner::piece);
  if (first == owners.end()) return {};
  const Camera eye = camera(frontView(view_, scene_.up), scene_.up);
  const auto offset = static_cast<std::size_t>(first - owners.begin());
  const Net& net = session_.built().pieces[static_cast<std::size_t>(lit.piece)].net;
  FoldLight out;
  for (const int number : lit.creases) {
    const Crease& crease = net.creases[static_cast<std::size_t>(number)];
    const Transform& frame = scene_.shown.pose[offset + static_cast<std::size_t>(crease.parent)];
    out.lines.push_back(
        {eye.project(frame.apply(crease.onParent.a)), eye.project(frame.apply(crease.onParent.b))});
  }
  return out;
}

Place FoldView::placeAt(QPointF pixel) {
  if (piece() == nullptr) return {};
  if (!picture_) makePicture();
  const int panel = panelSeenAt(*picture_, place(), pixel);
  if (panel < 0) return {};
  const PanelOwner owner = scene_.shown.owners[static_cast<std::size_t>(panel)];
  const BuiltDesign& built = session_.built();
  if (owner.piece >= 0 && !built.pieces[static_cast<std::size_t>(owner.piece)].role)
    return placeOfPanel(built, owner.piece, owner.panel);
  return {.panels = {text(scene_.shown.net.panels[static_cast<std::size_t>(panel)].id)}};
}

void FoldView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  if (piece() == nullptr) return;
  if (!picture_) makePicture();
  painter.setOpacity(session_.isCurrent() ? 1 : 0.45);
  paintFold(painter, *picture_, place(), scene_.shown, light());
}

void FoldView::mousePressEvent(QMouseEvent* event) {
  last_ = event->position();
  pressed_ = last_;
}

void FoldView::mouseMoveEvent(QMouseEvent* event) {
  if (event->buttons() == Qt::NoButton) {
    session_.selection().hover(placeAt(event->position()));
    return;
  }
  const QPointF by = event->position() - last_;
  last_ = event->position();
  turn(by.x() * kDegreesPerPixel, by.y() * kDegreesPerPixel);
}

void FoldView::mouseReleaseEvent(QMouseEvent* event) {
  if ((event->position() - pressed_).manhattanLength() < QApplication::startDragDistance())
    session_.selection().keep(placeAt(event->position()));
}

void FoldView::leaveEvent(QEvent*) { session_.selection().hover({}); }

void FoldView::wheelEvent(QWheelEvent* event) {
  zoom_ = std::clamp(zoom_ * std::pow(1.15, event->angleDelta().y() / 120.0), 0.3, 8.0);
  event->accept();
  update();
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

void FoldView::turn(double turnDegrees, double tiltDegrees) {
  view_.turn = Angle::degrees(std::remainder(view_.turn.degrees() + turnDegrees, 360));
  view_.tilt =
      Angle::degrees(std::clamp(view_.tilt.degrees() + tiltDegrees, -kSteepest, kSteepest));
  redraw();
}

void FoldView::redraw() {
  picture_.reset();
  update();
}

}  // namespace creasewright
