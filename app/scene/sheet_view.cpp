#include "scene/sheet_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>
#include <cmath>

#include "bridge/style_text.h"
#include "bridge/text.h"
#include "scene/net_picture.h"
#include "scene/ruler.h"
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
  connect(&session_, &DesignSession::unitChanged, this, qOverload<>(&QWidget::update));
  connect(&session_, &DesignSession::highlightChanged, this, qOverload<>(&QWidget::update));
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
  hoveredPanel_ = -1;
  fit();
}

std::vector<DimensionLabel> SheetView::dimensionLabels() const {
  const BuiltPiece* shown = piece();
  if (shown == nullptr) {
    return {};
  }
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
    paintNet(painter, *shown, camera_, session_.highlight());
    painter.setFont(labelFont(*this));
    paintDimensions(painter, dimensionLabels());
    painter.restore();
    paintName(painter);
  }
  paintRulers(painter);
}

void SheetView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (fitted_) {
    fit();
  }
}

void SheetView::wheelEvent(QWheelEvent* event) {
  const double notches = event->angleDelta().y() / 120.0;
  zoom(std::pow(kZoomStep, notches), event->position());
  event->accept();
}

void SheetView::mousePressEvent(QMouseEvent* event) {
  dragFrom_ = event->position();
  setCursor(Qt::ClosedHandCursor);
}

void SheetView::mouseMoveEvent(QMouseEvent* event) {
  if (dragFrom_) {
    pan(event->position() - *dragFrom_);
    dragFrom_ = event->position();
  }
  hover(event->position());
}

void SheetView::mouseReleaseEvent(QMouseEvent*) {
  dragFrom_.reset();
  unsetCursor();
}

void SheetView::leaveEvent(QEvent*) {
  mouse_.reset();
  hoveredPanel_ = -1;
  session_.hoverHighlight({});
  emit hovered({});
  update();
}

void SheetView::keyPressEvent(QKeyEvent* event) {
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

void SheetView::hover(QPointF at) {
  mouse_ = at;
  const BuiltPiece* shown = piece();
  const int panel =
      shown != nullptr && bench().contains(at) ? panelAt(*shown, camera_.toSheet(at)) : -1;
  if (panel != hoveredPanel_) {
    hoveredPanel_ = panel;
    const QString id =
        panel < 0 ? QString() : text(shown->piece.net.panels[static_cast<std::size_t>(panel)].id);
    session_.hoverHighlight(panel < 0 ? QStringList() : QStringList(id));
    emit hovered(panel < 0 ? QString() : panelTitle(id.toStdString()));
  }
  update();
}

void SheetView::designChanged() {
  hoveredPanel_ = -1;
  if (piece_ >= static_cast<int>(session_.built().pieces.size())) {
    piece_ = 0;
  }
  if (fitted_) {
    fit();
  }
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
  for (const Ruler& ruler : rulers) {
    paintRuler(painter, ruler, camera_, session_.unit(), mouse_);
  }
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
  if (shown == nullptr || hoveredPanel_ < 0) {
    return;
  }
  const auto index = static_cast<std::size_t>(hoveredPanel_);
  const Bounds box = bounds(shown->flat.panels[index]);
  const QString words = tr("%1   %2 × %3")
                            .arg(panelTitle(shown->piece.net.panels[index].id),
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

}  // namespace creasewright
