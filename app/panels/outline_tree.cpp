#include "panels/outline_tree.h"

#include <QHeaderView>
#include <QLocale>
#include <cmath>

#include "bridge/style_text.h"
#include "bridge/text.h"
#include "net/whole_panels.h"
#include "panels/keeps_up.h"
#include "session/places.h"

namespace creasewright {

namespace {

QString sizeText(const Polygon& outline, Unit unit) {
  const Bounds box = bounds(outline);
  return OutlineTree::tr("%1 × %2").arg(lengthText(Length::mm(box.width()), unit, false),
                                        lengthText(Length::mm(box.height()), unit));
}

QString foldText(const Crease* crease) {
  if (crease == nullptr) return OutlineTree::tr("stays put");
  if (crease->kind == CreaseKind::Flat) return OutlineTree::tr("no fold");
  const QString angle = QLocale().toString(std::abs(crease->angle.degrees()), 'g', 4);
  return crease->isValley() ? OutlineTree::tr("valley, %1°").arg(angle)
                            : OutlineTree::tr("mountain, %1°").arg(angle);
}

}  // namespace

OutlineTree::OutlineTree(DesignSession& session, QWidget* parent)
    : QTreeWidget(parent), session_(session) {
  setColumnCount(3);
  setHeaderLabels({tr("Panel"), tr("Width × height"), tr("Fold")});
  header()->setSectionResizeMode(QHeaderView::ResizeToContents);
  setAccessibleName(tr("Panels of the net"));
  new KeepsUp(session_, *this, [this] { showDesign(); });
}

void OutlineTree::showDesign() {
  const QSignalBlocker quiet(this);
  clear();
  for (std::size_t i = 0; i < session_.built().pieces.size(); ++i) addPiece(static_cast<int>(i));
  expandAll();
  lights_.tint();
}

void OutlineTree::addPiece(int index) {
  const BuiltDesign& built = session_.built();
  const BuiltPiece& piece = built.pieces[static_cast<std::size_t>(index)];
  const Net& net = piece.net;
  const std::vector<int> whole = wholePanels(net);
  std::vector<QTreeWidgetItem*> items;  // a parent comes before its children
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    // The strips of a bent panel have one row.
    if (whole[i] != static_cast<int>(i)) {
      items.push_back(items[static_cast<std::size_t>(whole[i])]);
      continue;
    }
    const Crease* crease = net.creaseOf(static_cast<int>(i));
    auto* item = crease != nullptr
                     ? new QTreeWidgetItem(items[static_cast<std::size_t>(crease->parent)])
                     : new QTreeWidgetItem(this);
    Polygon corners;  // in the frame of the first strip
    for (std::size_t k = i; k < net.panels.size(); ++k) {
      if (whole[k] != static_cast<int>(i)) continue;
      const Transform seen = piece.flat.frames[i].inverse().after(piece.flat.frames[k]);
      for (const Point& p : net.panels[k].outline) {
        const Point3 at = seen.apply(p);
        corners.push_back({at.x, at.y});
      }
    }
    item->setText(0, panelTitle(net.panels[i].id));
    item->setText(1, sizeText(corners, session_.unit()));
    item->setText(2, foldText(crease));
    item->setData(0, kPlaceRole, rowPlace(placeOfPanel(built, index, static_cast<int>(i))));
    if (crease != nullptr && crease->kind != CreaseKind::Flat) {
      const auto number = static_cast<int>(crease - net.creases.data());
      item->setData(0, kAlsoLitRole, rowPlace(placeOfCreases(built, index, {number})));
    }
    items.push_back(item);
  }
}

}  // namespace creasewright
