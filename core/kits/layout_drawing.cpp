#include "kits/layout_drawing.h"

#include <algorithm>
#include <optional>
#include <span>

#include "cutting/trim_steps.h"
#include "drawing/hatching.h"
#include "drawing/veil.h"
#include "lettering/type_width.h"
#include "patterns/pattern.h"

namespace creasewright {
namespace {

constexpr double kFence = 1.2;        // mm, the thick edge
constexpr double kFenceGap = 0.4;     // mm, to the sheet
constexpr double kFenceWord = 3.2;    // mm, for the word beside it
constexpr double kLineGap = 0.4;      // mm, between a word and its line
constexpr double kEdgeGap = 0.25;     // mm, to other lines
constexpr double kAbove = 0.95;       // of the type size, as textBox says
constexpr double kBelow = 0.25;       // the same
constexpr double kLargestLetter = 4;  // mm
constexpr double kLetterShare = 0.6;  // of a blank's shorter side
constexpr double kLeastType = 0.8;    // mm; what is smaller is no letter
constexpr double kLabelStep = 0.8;    // mm between places that are tried
constexpr double kArrow = 5;          // mm, of the way up of a pattern, at best
constexpr double kWings = 0.6;        // of its height, how wide it is

Polygon ringOf(const Bounds& box) {
  return {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
}

bool overlap(const Bounds& a, const Bounds& b) {
  return a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y && b.low.y < a.high.y;
}

bool holds(const Bounds& whole, const Bounds& part) {
  return part.low.x >= whole.low.x && part.low.y >= whole.low.y && part.high.x <= whole.high.x &&
         part.high.y <= whole.high.y;
}

Bounds shrunk(const Bounds& box, double by) {
  return {box.low + Point{by, by}, box.high - Point{by, by}};
}

/// A cut as drawn, from its lower or left end.
struct Line {
  Point from;
  double length = 0;
  bool upright = false;
};

/// A word along a line, or across it from it, that starts `along` it.
struct Place {
  bool across = false;
  bool before = true;  ///< left of the line or below it, where the fence is
  double along = 0;
};

class LayoutPicture {
 public:
  LayoutPicture(const Layout& layout, double width, double height, int firstLetter,
                const Wording& wording, const LayoutLook& look)
      : steps_(trimSteps(layout)),
        swapped_(liesTurned(layout)),
        firstLetter_(firstLetter),
        wording_(wording),
        look_(look) {
    const double w = (swapped_ ? layout.sheet.height : layout.sheet.width).mm();
    const double h = (swapped_ ? layout.sheet.width : layout.sheet.height).mm();
    left_ = steps_.empty() ? 0 : kFenceWord + kFence + kFenceGap;
    scale_ = std::min((width - left_) / w, height / h);
    out_.width = left_ + w * scale_;
    out_.height = h * scale_;
    eachNode(layout.sheet, [&](const CutNode& node) {
      if (node.kind != CutNode::Kind::Cut) leaves_.push_back({boxOf(node), node.demand, {}});
    });
  }

  Drawing draw() {
    for (Leaf& leaf : leaves_)
      if (leaf.demand >= 0) letter(leaf);
    for (Leaf& leaf : leaves_)
      if (leaf.demand >= 0 && look_.up) arrow(leaf);
    std::vector<const TrimStep*> byLength;
    for (const TrimStep& step : steps_) byLength.push_back(&step);
    // Short lines have few places.
    std::ranges::stable_sort(byLength, {},
                             [](const TrimStep* step) { return step->lines.front().length; });
    for (const TrimStep* step : byLength) labels(*step);
    for (const Leaf& leaf : leaves_) leaf.demand >= 0 ? blank(leaf) : offcut(leaf);
    for (const TrimStep& step : steps_)
      for (const CutLine& cut : step.lines) {
        const Line line = lineOf(cut, step.upright);
        const Point to = line.from + (line.upright ? Point{0, line.length} : Point{line.length, 0});
        out_.paths.push_back({.role = Role::Cut, .rings = {{line.from, to}}});
      }
    fence();
    const Bounds sheet{{left_, 0}, {out_.width, out_.height}};
    out_.paths.push_back({.role = Role::Positions, .rings = {ringOf(sheet)}, .closed = true});
    return std::move(out_);
  }

 private:
  /// A blank, or an offcut (no demand), and the words that stand in it.
  struct Leaf {
    Bounds box;
    int demand = -1;
    std::vector<Bounds> words;
  };

  [[nodiscard]] Point at(Length x, Length y) const {
    const Point p = swapped_ ? Point{y.mm(), x.mm()} : Point{x.mm(), y.mm()};
    return p * scale_ + Point{left_, 0};
  }

  [[nodiscard]] Bounds boxOf(const CutNode& node) const {
    return {at(node.x, node.y), at(node.x + node.width, node.y + node.height)};
  }

  [[nodiscard]] Line lineOf(const CutLine& cut, bool upright) const {
    return {at(cut.x, cut.y), cut.length.mm() * scale_, upright != swapped_};
  }

  void letter(Leaf& leaf) {
    const std::string name = demandLetter(firstLetter_ + leaf.demand);
    const Bounds room = shrunk(leaf.box, kEdgeGap);
    const double type =
        std::min({kLargestLetter, kLetterShare * std::min(room.width(), room.height()),
                  room.width() / typeWidth(name, 1)});
    if (type < kLeastType) return;
    const Point middle = (room.low + room.high) / 2;
    const double half = typeWidth(name, type) / 2;
    const Point base = middle - Point{0, type * 0.35};
    out_.texts.push_back({Role::Legend, Label::plain(name), base, type, Anchor::Centre, 0});
    leaf.words.push_back({base - Point{half, kBelow * type}, base + Point{half, kAbove * type}});
  }

  /// Which way is up on a blank of directed paper; the word with it where both find room. A sheet
  /// that lies turned has its top at the right.
  void arrow(Leaf& leaf) {
    const Label up{"pattern-up", {}, {}};
    for (const double high : {kArrow, kArrow * 0.7, kArrow * 0.45, kArrow * 0.25}) {
      const double type = 0.6 * high;
      for (const bool worded : {true, false}) {
        if (worded && type < kLeastLayoutType) continue;
        const double word = worded ? typeWidth(wording_(up), type) : 0;
        const double gap = worded ? kLineGap : 0;
        const std::optional<Bounds> room =
            swapped_ ? freeIn(leaf, std::max(high, word),
                              kWings * high + gap + (worded ? (kAbove + kBelow) * type : 0))
                     : freeIn(leaf, kWings * high + gap + word, high);
        if (!room) continue;
        leaf.words.push_back(*room);
        drawArrow(*room, high);
        if (worded) arrowWord(*room, up, high, type);
        return;
      }
    }
  }

  /// A place for `wide` x `high` mm in a leaf where nothing stands, from its upper left corner on.
  static std::optional<Bounds> freeIn(const Leaf& leaf, double wide, double high) {
    const Bounds room = shrunk(leaf.box, kEdgeGap);
    for (double y = room.high.y - high; y >= room.low.y; y -= kLabelStep)
      for (double x = room.low.x; x + wide <= room.high.x; x += kLabelStep) {
        const Bounds box{{x, y}, {x + wide, y + high}};
        if (std::ranges::none_of(leaf.words,
                                 [&](const Bounds& word) { return overlap(word, box); }))
          return box;
      }
    return std::nullopt;
  }

  /// From the foot of `room` to its head, `high` mm; of a turned sheet from its left to its right.
  void drawArrow(const Bounds& room, double high) {
    const double half = kWings * high / 2;
    const auto put = [&](double across, double along) {
      return swapped_ ? room.low + Point{along, room.height() - across}
                      : room.low + Point{across, along};
    };
    const double head = high - 1.2 * half;
    out_.paths.push_back({.role = Role::Legend, .rings = {{put(half, 0), put(half, high)}}});
    out_.paths.push_back(
        {.role = Role::Legend,
         .rings = {{put(0.2 * half, head), put(half, high), put(1.8 * half, head)}}});
  }

  /// Upright beside the arrow, or below it.
  void arrowWord(const Bounds& room, const Label& up, double high, double type) {
    const Point at =
        swapped_ ? room.low + Point{0, kBelow * type}
                 : room.low + Point{kWings * high + kLineGap, (high - type) / 2 + kBelow * type};
    out_.texts.push_back({Role::Legend, up, at, type, Anchor::Left, 0});
  }

  /// The setting on the first line where it finds room, the number alone in all other parts.
  void labels(const TrimStep& step) {
    const Label whole{"trim-setting", {std::int64_t{step.number}, step.setting}, {}};
    const Label number = Label::plain(std::to_string(step.number));
    const std::size_t each = static_cast<std::size_t>(step.cuts);
    std::size_t told = step.lines.size();
    for (std::size_t i = 0; i < step.lines.size() && told == step.lines.size(); ++i)
      if (put(whole, lineOf(step.lines[i], step.upright))) told = i / each;
    for (std::size_t first = 0; first < step.lines.size(); first += each) {
      if (first / each == told) continue;
      for (std::size_t i = first; i < first + each; ++i)
        if (put(number, lineOf(step.lines[i], step.upright))) break;
    }
  }

  bool put(const Label& label, const Line& line) {
    const std::string words = wording_(label);
    for (double type = kLayoutType; type > kLeastLayoutType - 0.01; type -= 0.5)
      for (const bool across : {false, true})
        for (double along = 0; along < line.length; along += kLabelStep)
          for (const bool before : {true, false}) {
            const Bounds box = boxAt(line, {across, before, along}, typeWidth(words, type), type);
            Leaf* leaf = freeLeaf(box);
            if (leaf == nullptr) continue;
            leaf->words.push_back(box);
            const bool turned = line.upright != across;
            const Point base = turned ? Point{box.high.x - kBelow * type, box.low.y}
                                      : Point{box.low.x, box.low.y + kBelow * type};
            out_.texts.push_back(
                {Role::Dimension, label, base, type, Anchor::Left, turned ? 90.0 : 0.0});
            return true;
          }
    return false;
  }

  /// The room of a word that is `wide` mm, seen along the line: `u` runs along it, `v` away.
  static Bounds boxAt(const Line& line, const Place& place, double wide, double type) {
    const double high = (kAbove + kBelow) * type;
    const double u = kEdgeGap + place.along;
    const double du = place.across ? high : wide;
    const double dv = place.across ? wide : high;
    const double v = place.before ? -kLineGap - dv : kLineGap;
    if (line.upright) return {line.from + Point{v, u}, line.from + Point{v + dv, u + du}};
    return {line.from + Point{u, v}, line.from + Point{u + du, v + dv}};
  }

  Leaf* freeLeaf(const Bounds& box) {
    for (Leaf& leaf : leaves_) {
      if (!overlap(leaf.box, box)) continue;
      if (!holds(shrunk(leaf.box, kEdgeGap), box)) return nullptr;
      const bool taken =
          std::ranges::any_of(leaf.words, [&](const Bounds& other) { return overlap(other, box); });
      return taken ? nullptr : &leaf;
    }
    return nullptr;
  }

  void blank(const Leaf& leaf) {
    const Polygon ring = ringOf(leaf.box);
    out_.paths.push_back({.role = Role::Face,
                          .rings = {ring},
                          .closed = true,
                          .filled = true,
                          .colour = look_.tint});
    out_.paths.push_back({.role = Role::Edge, .rings = {ring}, .closed = true});
  }

  /// Its hatching leaves out the words.
  void offcut(const Leaf& leaf) {
    std::vector<Polygon> rings{ringOf(leaf.box)};
    for (const Bounds& word : leaf.words) rings.push_back(ringOf(word));
    PathItem lines{.role = Role::Waste, .rings = {}};
    for (const Segment& s : hatch(rings, 1.8, -45)) lines.rings.push_back({s.a, s.b});
    if (!lines.rings.empty()) out_.paths.push_back(std::move(lines));
  }

  /// Where the sheet lies against it for the first cut.
  void fence() {
    if (steps_.empty()) return;
    const Bounds bar{{kFenceWord, 0}, {kFenceWord + kFence, out_.height}};
    out_.paths.push_back(
        {.role = Role::Legend, .rings = {ringOf(bar)}, .closed = true, .filled = true});
    const Label word{"fence", {}, {}};
    const double wide = typeWidth(wording_(word), kLayoutType);
    if (wide > out_.height) return;
    out_.texts.push_back({Role::Legend,
                          word,
                          {kFenceWord - kBelow * kLayoutType, (out_.height - wide) / 2},
                          kLayoutType,
                          Anchor::Left,
                          90});
  }

  std::vector<TrimStep> steps_;
  bool swapped_;
  int firstLetter_;
  const Wording& wording_;
  const LayoutLook& look_;
  double left_ = 0;
  double scale_ = 1;
  std::vector<Leaf> leaves_;
  Drawing out_;
};

}  // namespace

bool liesTurned(const Layout& layout) {
  const CutNode& sheet = layout.sheet;
  return sheet.kind == CutNode::Kind::Cut && !sheet.upright;
}

std::string demandLetter(int demand) {
  std::string letters;
  for (int rest = demand; rest >= 0; rest = rest / 26 - 1)
    letters.insert(letters.begin(), static_cast<char>('A' + rest % 26));
  return letters;
}

Drawing drawLayout(const Layout& layout, double width, double height, int firstLetter,
                   const Wording& wording, const LayoutLook& look) {
  return LayoutPicture(layout, width, height, firstLetter, wording, look).draw();
}

LayoutLook lookOf(const CardColours& colours) {
  LayoutLook look{.up = colours.pattern && turnsOf(*colours.pattern) == Turns::None};
  const std::optional<Colour>& plain = colours.face ? colours.face : colours.back;
  if (!colours.pattern && !plain) return look;
  const Colour shown = colours.pattern ? meanColour(*colours.pattern) : *plain;
  look.tint = veiled(shown, veilFor(std::span(&shown, 1)));
  return look;
}

}  // namespace creasewright
