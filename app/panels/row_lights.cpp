#include "panels/row_lights.h"

#include <QAbstractItemView>
#include <QEvent>
#include <functional>

#include "session/selection.h"
#include "widgets/theme.h"

namespace creasewright {

namespace {

Place placeAt(const QModelIndex& row, int role = kPlaceRole) {
  return row.siblingAtColumn(0).data(role).value<Place>();
}

/// The list itself does not tell when the mouse has gone.
class LeaveWatch : public QObject {
 public:
  LeaveWatch(QAbstractItemView& list, Selection& selection)
      : QObject(&list), selection_(selection) {
    list.viewport()->installEventFilter(this);
  }

 protected:
  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() == QEvent::Leave || event->type() == QEvent::Hide) selection_.hover({});
    return false;
  }

 private:
  Selection& selection_;
};

void forEachRow(const QAbstractItemModel& model, const QModelIndex& parent,
                const std::function<void(const QModelIndex&)>& visit) {
  for (int row = 0; row < model.rowCount(parent); ++row) {
    const QModelIndex index = model.index(row, 0, parent);
    visit(index);
    forEachRow(model, index, visit);
  }
}

QColor tintOf(const Theme& theme) {
  QColor tint = theme.halo;
  tint.setAlpha(90);
  return tint;
}

}  // namespace

RowLights::RowLights(QAbstractItemView& list, Selection& selection)
    : list_(list), selection_(selection) {
  list.setMouseTracking(true);
  new LeaveWatch(list, selection);
  QObject::connect(
      &list, &QAbstractItemView::entered, &selection,
      [&selection](const QModelIndex& at) { selection.hover(placeAt(at)); });
  QObject::connect(
      &list, &QAbstractItemView::viewportEntered, &selection,
      [&selection] { selection.hover({}); });
  QObject::connect(
      &list, &QAbstractItemView::clicked, &selection,
      [&selection](const QModelIndex& at) { selection.keep(placeAt(at)); });
  QObject::connect(
      list.selectionModel(), &QItemSelectionModel::currentChanged, &selection,
      [&selection](const QModelIndex& at) {
        if (at.isValid()) {
          selection.keep(placeAt(at));
        }
      });
  QObject::connect(&selection, &Selection::changed, &list, [this] { tint(); });
}

void RowLights::tint() {
  const Place& lit = selection_.lit();
  const QBrush brush(tintOf(theme()));
  QAbstractItemModel& model = *list_.model();
  const QSignalBlocker quiet(&list_);
  forEachRow(model, {}, [&](const QModelIndex& row) {
    const bool asFold = !lit.creases.empty() && lights(lit, placeAt(row, kAlsoLitRole));
    const bool on = !lit.isEmpty() && (lights(lit, placeAt(row)) || asFold);
    if (row.data(Qt::BackgroundRole).isValid() == on) return;
    for (int column = 0; column < model.columnCount(row.parent()); ++column)
      model.setData(row.siblingAtColumn(column), on ? QVariant(brush) : QVariant(),
                    Qt::BackgroundRole);
  });
}

}  // namespace creasewright
