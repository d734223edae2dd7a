#include "papers/kit/bag_labels.h"

#include <algorithm>

#include "bridge/text.h"
#include "drawing/arrange.h"
#include "output/page_flow.h"
#include "pages/figure_room.h"
#include "pages/guide_figure.h"
#include "papers/kit/kit_words.h"

namespace creasewright {

namespace {

constexpr double kEdge = 8;    // mm that a printer may not reach
constexpr double kInside = 5;  // mm from a label's rim to its text
constexpr double kNameType = 7;

struct Grid {
  int columns = 0;
  int rows = 0;
  double left = 0;
  double bottom = 0;
};

Grid gridOn(const ClassKit& kit, const Paper& paper) {
  const double width = paper.width.mm();
  const double height = paper.height.mm();
  Grid grid;
  grid.columns = static_cast<int>((width - 2 * kEdge + 1e-6) / kit.labelWidth.mm());
  grid.rows = static_cast<int>((height - 2 * kEdge + 1e-6) / kit.labelHeight.mm());
  grid.left = (width - grid.columns * kit.labelWidth.mm()) / 2;
  grid.bottom = (height - grid.rows * kit.labelHeight.mm()) / 2;
  return grid;
}

/// The name, or nothing: a line is drawn for it.
QString nameOf(const ClassKit& kit, int bag) {
  const auto index = static_cast<std::size_t>(bag);
  if (index < kit.names.size()) return text(kit.names[index]);
  return bag >= kit.takers ? KitTr::tr("Spare set") : QString();
}

constexpr double kContentsType = 2.5;  // mm
constexpr double kLeastPictured = 70;  // mm, of a label that has room for a picture
constexpr FigureRoom kBagPicture{28, 24};

/// What the bag is for: each design finished, beside one another.
Drawing contentsPicture(const KitPlan& plan) {
  std::vector<Drawing> finished;
  for (const auto& item : plan.built->items)
    if (item && finished.size() < 3) finished.push_back(finishedFigure(item->design, kBagPicture));
  Drawing all;
  for (const Drawing& each : finished) {
    append(all, moved(each, {all.width, 0}));
    all.width += each.width + 2;
    all.height = std::max(all.height, each.height);
  }
  return all.width > 0 ? fittedInto(std::move(all), kBagPicture) : all;
}

Drawing label(const KitPlan& plan, int bag, const Drawing& picture, const QStringList& contents) {
  const ClassKit& kit = plan.kit();
  const bool pictured = kit.labelWidth.mm() >= kLeastPictured && picture.width > 0;
  const double whole = kit.labelWidth.mm() - 2 * kInside;
  const double width = whole - (pictured ? kBagPicture.width + 2 : 0);
  const double height = kit.labelHeight.mm() - 2 * kInside;
  const QString name = nameOf(kit, bag);
  TextBlock block(width);
  block.add(name.isEmpty() ? KitTr::tr("Name:") : name, name.isEmpty() ? kBodyType : kNameType);
  block.space(name.isEmpty() ? kNameType : 2);
  block.add(kitTitle(kit), kBodyType);
  block.space(1);
  block.addList(contents, QStringLiteral("•"), kContentsType);
  block.space(1);
  int blanks = 0;
  for (const CardPlan& card : plan.cards)
    for (const BlankSource& source : card.sources()) blanks += source.perSet;
  block.add(KitTr::tr("%n blank(s), see the packing list", "", blanks), kBodyType);
  Drawing words = block.take();
  if (words.height > height) words = fittedInto(std::move(words), {width, height});
  Drawing out{kit.labelWidth.mm(), kit.labelHeight.mm(), {}, {}};
  out.paths.push_back(
      {.role = Role::CutMark,
       .rings = {{{0, 0}, {out.width, 0}, {out.width, out.height}, {0, out.height}}},
       .closed = true});
  const Point at{kInside, out.height - kInside - words.height};
  append(out, moved(std::move(words), at));
  if (pictured)
    append(out, moved(picture, {out.width - kInside - (kBagPicture.width + picture.width) / 2,
                                (out.height - picture.height) / 2}));
  if (name.isEmpty()) {
    const double line = out.height - kInside - kBodyType - kNameType;
    out.paths.push_back({.role = Role::Legend, .rings = {{{kInside, line}, {width, line}}}});
  }
  return out;
}

}  // namespace

std::vector<Drawing> bagLabels(const KitPlan& plan, Unit unit, const Paper& paper) {
  const ClassKit& kit = plan.kit();
  const Grid grid = gridOn(kit, paper);
  std::vector<Drawing> pages;
  if (grid.columns < 1 || grid.rows < 1) return pages;
  const int perPage = grid.columns * grid.rows;
  const Drawing picture = contentsPicture(plan);
  const QStringList contents = packingLines(plan, unit) + bagLengths(plan, unit);
  for (int bag = 0; bag < kit.sets(); ++bag) {
    const int place = bag % perPage;
    if (place == 0) pages.push_back({paper.width.mm(), paper.height.mm(), {}, {}});
    const int row = place / grid.columns;
    append(pages.back(), moved(label(plan, bag, picture, contents),
                               {grid.left + place % grid.columns * kit.labelWidth.mm(),
                                grid.bottom + (grid.rows - 1 - row) * kit.labelHeight.mm()}));
  }
  return pages;
}

}  // namespace creasewright
