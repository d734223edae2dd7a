#include "extras/piece_words.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "lettering/type_width.h"
#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

constexpr double kLineSpacing = 1.5;
constexpr double kLargestText = 8;       // mm
constexpr double kWidthOfLetter = 0.55;  // of the type size, on the average
constexpr double kTextShare = 0.7;       // of the piece's width and height
constexpr double kLeastMargin = 2;       // mm beside lines that keep to a side
constexpr double kLeastRim = 1;          // mm outside bent lines
constexpr int kMostPoints = 72;

using Lines = std::vector<std::string>;

/// As large as the longest line and all lines together allow in a box of this size.
double straightHeight(const Lines& lines, double width, double height) {
  std::size_t longest = 1;
  for (const std::string& line : lines) longest = std::max(longest, line.size());
  const double byWidth = kTextShare * width / (kWidthOfLetter * static_cast<double>(longest));
  const double byHeight =
      kTextShare * height /
      (kLineSpacing * static_cast<double>(std::max<std::size_t>(1, lines.size())));
  return std::min({byWidth, byHeight, kLargestText});
}

class Writer {
 public:
  Writer(const WordsLook& look, Net& net)
      : look_(look), net_(net), panel_(net.panels.front()), box_(bounds(panel_.outline)) {}

  void write(const Lines& lines) {
    if (look_.curve == WordsCurve::Straight) {
      writeStraight(lines, heightOf(straightHeight(lines, box_.width(), box_.height())));
      return;
    }
    const bool round = look_.curve == WordsCurve::Round && lines.size() > 1;
    if (!round) {
      writeBent(lines, look_.curve == WordsCurve::Lower, kOneArc);
      return;
    }
    const Lines first{lines.front()};
    const Lines last{lines.back()};
    const Lines between(lines.begin() + 1, lines.end() - 1);
    const double height =
        std::min(bentHeight(first, false, kTwoArcs), bentHeight(last, true, kTwoArcs));
    writeBent(first, false, kTwoArcs, height);
    if (!between.empty()) {
      // A square within the letters.
      const double side = std::sqrt(2.0) * (rim() - gap(height) - 1.2 * height - gap(height));
      writeStraight(between, heightOf(std::max(0.5, straightHeight(between, side, side))));
    }
    writeBent(last, true, kTwoArcs, height);
  }

 private:
  /// Degrees that a bent line may take, and those that it looks well in.
  struct Span {
    double most;
    double wanted;
  };
  static constexpr Span kOneArc{300, 200};
  static constexpr Span kTwoArcs{172, 150};

  [[nodiscard]] Point middle() const { return (box_.low + box_.high) / 2; }
  [[nodiscard]] double heightOf(double fitting) const {
    return look_.points > 0 ? look_.points * kPoint : fitting;
  }
  /// From the middle to the nearest edge.
  [[nodiscard]] double rim() const {
    double least = std::max(box_.width(), box_.height());
    const Polygon& ring = panel_.outline;
    for (std::size_t i = 0; i < ring.size(); ++i)
      least = std::min(least, distanceToSegment(middle(), {ring[i], ring[(i + 1) % ring.size()]}));
    return least;
  }
  static double gap(double height) { return std::max(kLeastRim, 0.25 * height); }

  /// The baseline of the line that is the `index`th from the rim.
  [[nodiscard]] WordsArc arcOf(std::size_t index, bool lower, double most, double height) const {
    const double outwards = lower ? kBelowBaseline : kAboveBaseline;
    const double radius = rim() - gap(height) - outwards * height -
                          kLineSpacing * height * static_cast<double>(index);
    return {std::max(0.1, radius), lower, most};
  }

  /// Lines are read from the top: over the middle the first is outermost, under it the last.
  static std::size_t fromRim(std::size_t line, std::size_t count, bool lower) {
    return lower ? count - 1 - line : line;
  }

  /// The largest at which all lines look well, though readable where they can be.
  [[nodiscard]] double bentHeight(const Lines& lines, bool lower, Span span) const {
    constexpr double kShareOfRim = 0.3;
    constexpr double kReadable = 6.5 * kPoint;
    constexpr int kSteps = 60;
    const auto fits = [&](double height, double degrees) {
      for (std::size_t i = 0; i < lines.size(); ++i) {
        const WordsArc arc = arcOf(fromRim(i, lines.size(), lower), lower, degrees, height);
        if (arc.radius < 1.5 * height ||
            typeWidth(lines[i], height, look_.face) > kWordsFill * arc.longest(height))
          return false;
      }
      return true;
    };
    const double largest = std::min(kLargestText, kShareOfRim * rim());
    const double smallest = std::min(kReadable, largest);
    for (int i = 0; i <= kSteps; ++i) {
      const double height = largest + (smallest - largest) * i / kSteps;
      if (fits(height, span.wanted)) return height;
    }
    return smallest;
  }

  void writeBent(const Lines& lines, bool lower, Span span) {
    writeBent(lines, lower, span, bentHeight(lines, lower, span));
  }

  void writeBent(const Lines& lines, bool lower, Span span, double fitting) {
    const double height = heightOf(fitting);
    for (std::size_t i = 0; i < lines.size(); ++i) {
      const WordsArc arc = arcOf(fromRim(i, lines.size(), lower), lower, span.most, height);
      Inscription words = plain(lines[i], height);
      words.at = middle() + Point{0, lower ? -arc.radius : arc.radius};
      words.arc = arc;
      net_.inscriptions.push_back(std::move(words));
    }
  }

  [[nodiscard]] Inscription plain(const std::string& line, double height) const {
    Inscription words;
    words.height = height;
    words.text = line;
    words.face = look_.face;
    words.shrinks = look_.points == 0;
    return words;
  }

  void writeStraight(const Lines& lines, double height) {
    const double step = kLineSpacing * height;
    double y = middle().y + step * (static_cast<double>(lines.size()) - 1) / 2 - height / 3;
    const std::size_t from = net_.inscriptions.size();
    double room = box_.width();
    for (const std::string& line : lines) {
      Inscription words = plain(line, height);
      words.at = {middle().x, y};
      y -= step;
      room = std::min(room, roomFor(panel_.outline, panel_.openings, words));
      net_.inscriptions.push_back(std::move(words));
    }
    if (look_.side == WordsSide::Centre) return;
    const double margin = std::max(kLeastMargin, 0.6 * height);
    const double column = std::max(0.1, std::min(kWordsFill * room, room - 2 * margin));
    for (std::size_t i = from; i < net_.inscriptions.size(); ++i) {
      net_.inscriptions[i].side = look_.side;
      net_.inscriptions[i].column = column;
    }
  }

  const WordsLook& look_;
  Net& net_;
  const Panel& panel_;
  Bounds box_;
};

}  // namespace

std::vector<ParameterSpec> wordsParameters() {
  return {
      choice("font", worded("styles", "Font"),
             worded("styles", "Of its words. A hand is taken from the computer, where it has one."),
             typefaceWords()),
      choice("align", worded("styles", "Alignment"),
             worded("styles", "Of straight lines of words."),
             {worded("styles", "Centred"), worded("styles", "Left"), worded("styles", "Right")}),
      choice("curve", worded("styles", "Curve"),
             worded("styles",
                    "Words along a circle inside the rim. Round: the first line above, the "
                    "last one below."),
             {worded("styles", "Straight"), worded("styles", "Upper arc"),
              worded("styles", "Lower arc"), worded("styles", "Round")}),
      number("points", worded("styles", "Type size"),
             worded("styles", "In points; 0 takes what fits."))
          .from(0)
          .to(kMostPoints)};
}

std::vector<ParameterSpec> withoutWords(std::vector<ParameterSpec> specs) {
  const std::vector<ParameterSpec> words = wordsParameters();
  std::erase_if(specs, [&](const ParameterSpec& spec) {
    return std::ranges::find(words, spec.key, &ParameterSpec::key) != words.end();
  });
  return specs;
}

WordsLook wordsLookOf(const Parameters& parameters) {
  constexpr std::array kSides{WordsSide::Centre, WordsSide::Left, WordsSide::Right};
  const auto choice = [&](const char* key, std::size_t last) {
    return static_cast<std::size_t>(
        std::clamp<std::int64_t>(parameters.count(key), 0, static_cast<std::int64_t>(last)));
  };
  return {static_cast<Typeface>(choice("font", typefaceWords().size() - 1)),
          kSides.at(choice("align", kSides.size() - 1)),
          static_cast<WordsCurve>(choice("curve", 3)),
          static_cast<int>(choice("points", kMostPoints))};
}

void writeOn(const std::vector<std::string>& lines, const WordsLook& look, Net& net) {
  if (lines.empty()) return;
  Writer(look, net).write(lines);
}

}  // namespace creasewright
