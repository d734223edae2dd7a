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
constexpr double kSmallName = 4.8;

struct Grid {
  int columns = 0;
  int rows = 0;
  double left = 0;
  double bottom = 0;
};

/// Of labels as large as the kit asks for, but at least `least` mm high.
Grid gridOn(const ClassKit& kit, const Paper& paper, double least) {
  const double width = paper.width.mm();
  const double height = paper.height.mm();
  const double high = std::max(kit.labelHeight.mm(), least);
  Grid grid;
  grid.columns = static_cast<int>((width - 2 * kEdge + 1e-6) / kit.labelWidth.mm());
  grid.rows = static_cast<int>((height - 2 * kEdge + 1e-6) / high);
  grid.left = (width - grid.columns * kit.labelWidth.mm()) / 2;
  grid.bottom = (height - grid.rows * high) / 2;
  return grid;
}

/// The name, or nothing: a line is drawn for it.
QString nameOf(const ClassKit& kit, int bag) {
  const auto index = static_cast<std::size_t>(bag);
  if (index < kit.names.size()) return text(kit.names[index]);
  return bag >= kit.takers ? KitTr::tr("Spare set") : QString();
}

constexpr double kContentsType = 2.5;  // mm
constexpr double kLeastType = 2.3;     // mm, 6.5 pt: what is smaller is hard to read
constexpr double kLeastPictured = 70;  // mm, of a label that has room for a picture
constexpr FigureRoom kBagPicture{28, 24};

/// How much a label tells, from all to little.
enum class Telling {
  Lines,    ///< a line for each blank, with its size
  Names,    ///< the same without sizes
  Letters,  ///< the letters of the blanks in one line
  Count     ///< how many blanks
};

/// How the labels of a class are set: all alike.
struct Setting {
  Telling telling = Telling::Lines;
  double type = kContentsType;  ///< mm, of the list
  double body = kBodyType;      ///< mm, of what stands above and below it
  double name = kNameType;      ///< mm
  bool pictured = true;
};

/// From the roomiest to the tightest.
std::vector<Setting> settings(bool pictured) {
  std::vector<Setting> all;
  for (const Telling telling : {Telling::Lines, Telling::Names, Telling::Letters, Telling::Count}) {
    const double name = telling == Telling::Lines ? kNameType : kSmallName;
    if (pictured) all.push_back({telling, kContentsType, kBodyType, name, true});
    all.push_back({telling, kContentsType, kBodyType, name, false});
    all.push_back({telling, kLeastType, kLeastType, name, false});
  }
  all.push_back({Telling::Count, kLeastType, kLeastType, kLeastType, false});
  return all;
}

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

int blanksInBag(const KitPlan& plan) {
  int blanks = 0;
  for (const CardPlan& card : plan.cards)
    for (const BlankSource& source : card.sources()) blanks += source.perSet;
  return blanks;
}

QStringList contentsOf(const KitPlan& plan, Unit unit, Telling telling) {
  switch (telling) {
    case Telling::Lines:
      return packingLines(plan, unit) + bagLengths(plan, unit);
    case Telling::Names:
      return packingNames(plan) + bagLengths(plan, unit);
    case Telling::Letters:
      return packingLetters(plan) + bagLengths(plan, unit);
    case Telling::Count:
      return {};
  }
  return {};
}

/// What stands on a label, and how far down the line for a name is; 0 without one.
struct LabelWords {
  Drawing words;
  double line = 0;
};

LabelWords labelWords(const KitPlan& plan, int bag, const Setting& setting,
                      const QStringList& contents) {
  const double width =
      plan.kit().labelWidth.mm() - 2 * kInside - (setting.pictured ? kBagPicture.width + 2 : 0);
  const QString name = nameOf(plan.kit(), bag);
  LabelWords out;
  TextBlock block(width);
  if (name.isEmpty()) {
    constexpr double kToWrite = 6;  // mm of height
    block.add(KitTr::tr("Name:"), setting.body);
    block.space(kToWrite);
    out.line = block.take().height;
  } else {
    block.add(name, setting.name);
  }
  block.space(1);
  if (setting.telling != Telling::Count) block.add(kitTitle(plan.kit()), setting.body);
  block.space(1);
  block.addList(contents, QStringLiteral("•"), setting.type);
  block.space(1);
  block.add(KitTr::tr("%n blank(s), see the packing list", "", blanksInBag(plan)), setting.body);
  out.words = block.take();
  return out;
}

/// The height that the labels of all bags need, mm.
double heightNeeded(const KitPlan& plan, const Setting& setting, const QStringList& contents) {
  double most = 0;
  for (int bag = 0; bag < plan.kit().sets(); ++bag)
    most = std::max(most, labelWords(plan, bag, setting, contents).words.height);
  if (setting.pictured) most = std::max(most, kBagPicture.height);
  return most + 2 * kInside;
}

Drawing label(const KitPlan& plan, int bag, const Drawing& picture, const Setting& setting,
              const QStringList& contents, double height) {
  LabelWords set = labelWords(plan, bag, setting, contents);
  Drawing out{plan.kit().labelWidth.mm(), height, {}, {}};
  out.paths.push_back(
      {.role = Role::CutMark,
       .rings = {{{0, 0}, {out.width, 0}, {out.width, out.height}, {0, out.height}}},
       .closed = true});
  const double top = out.height - kInside;
  if (set.line > 0)
    out.paths.push_back(
        {.role = Role::Positions,
         .rings = {{{kInside, top - set.line}, {kInside + set.words.width, top - set.line}}}});
  const Point at{kInside, top - set.words.height};
  append(out, moved(std::move(set.words), at));
  if (setting.pictured)
    append(out, moved(picture, {out.width - kInside - (kBagPicture.width + picture.width) / 2,
                                (out.height - picture.height) / 2}));
  return out;
}

}  // namespace

std::vector<Drawing> bagLabels(const KitPlan& plan, Unit unit, const Paper& paper) {
  const ClassKit& kit = plan.kit();
  const Drawing picture = contentsPicture(plan);
  const bool pictured = kit.labelWidth.mm() >= kLeastPictured && picture.width > 0;
  Setting setting;
  QStringList contents;
  double height = 0;  // mm
  for (const Setting& each : settings(pictured)) {
    setting = each;
    contents = contentsOf(plan, unit, each.telling);
    height = std::max(kit.labelHeight.mm(), heightNeeded(plan, each, contents));
    if (height <= kit.labelHeight.mm()) break;
  }
  const Grid grid = gridOn(kit, paper, height);
  std::vector<Drawing> pages;
  if (grid.columns < 1 || grid.rows < 1) return pages;
  const int perPage = grid.columns * grid.rows;
  for (int bag = 0; bag < kit.sets(); ++bag) {
    const int place = bag % perPage;
    if (place == 0) pages.push_back({paper.width.mm(), paper.height.mm(), {}, {}});
    const int row = place / grid.columns;
    append(pages.back(), moved(label(plan, bag, picture, setting, contents, height),
                               {grid.left + place % grid.columns * kit.labelWidth.mm(),
                                grid.bottom + (grid.rows - 1 - row) * height}));
  }
  return pages;
}

}  // namespace creasewright
