#include <QRegularExpression>
#include <array>
#include <iostream>

#include <gtest/gtest.h>

#include "guide/make_guide.h"
#include "papers/guide/guide_words.h"
#include "styles/registry.h"

// What a guide says about scores, read as a person reads it and carried out on a sheet: every fold
// must lie on a line so made, and every line so made must lie on a fold or a cut.
namespace creasewright {
namespace {

constexpr double kReading = 0.06;  // mm: readings are worded to a tenth of a millimetre

BuiltDesign builtWith(const Style& style, const Parameters& parameters) {
  Design design;
  design.styleId = style.id;
  design.grid = ToolGrid::millimetre();
  design.parameters = parameters;
  const auto built = build(design);
  EXPECT_TRUE(built.ok()) << style.id;
  return *built;
}

/// A sheet and the lines scored on it as told.
class WordedSheet {
 public:
  WordedSheet(double width, double height) : width_(width), height_(height) {}

  void follow(const QString& sentence) {
    static const QRegularExpression heading(QStringLiteral("^([A-Z][^:.]*):"));
    const auto named = heading.match(sentence);
    sides_ = named.hasMatch() ? sidesOf(named.captured(1)) : std::vector<SheetSide>{};
    for (const QString& told : sentence.mid(named.hasMatch() ? named.capturedLength() : 0)
                                   .split(QStringLiteral(". "), Qt::SkipEmptyParts)) {
      follow1(told.trimmed());
    }
  }

  [[nodiscard]] bool covers(Point p, Point along) const {
    return std::any_of(lines_.begin(), lines_.end(), [&](const Segment& line) {
      return std::abs(cross(unit(line.b - line.a), along)) < 0.05 &&
             distanceToSegment(p, line) < 2 * kReading;
    });
  }
  [[nodiscard]] const std::vector<Segment>& lines() const { return lines_; }
  [[nodiscard]] bool traced() const { return traced_; }

 private:
  std::vector<SheetSide> sidesOf(const QString& words) const {
    using enum SheetSide;
    if (words == QLatin1String("All four sides")) {
      return {Left, Right, Bottom, Top};
    }
    if (words == QLatin1String("Both short sides")) {
      return width_ > height_ ? std::vector{Left, Right} : std::vector{Bottom, Top};
    }
    if (words == QLatin1String("Both long sides")) {
      return width_ > height_ ? std::vector{Bottom, Top} : std::vector{Left, Right};
    }
    std::vector<SheetSide> sides;
    for (const SheetSide side : {Left, Right, Bottom, Top}) {
      if (words.contains(nameOf(side), Qt::CaseInsensitive)) {
        sides.push_back(side);
      }
    }
    EXPECT_FALSE(sides.empty()) << words.toStdString();
    return sides;
  }

  static QString nameOf(SheetSide side) {
    static const std::array names{"left", "right", "bottom", "top"};
    return QLatin1String(names.at(static_cast<std::size_t>(side)));
  }
  static bool upright(SheetSide side) {
    return side == SheetSide::Left || side == SheetSide::Right;
  }
  static bool far(SheetSide side) { return side == SheetSide::Right || side == SheetSide::Top; }

  static std::vector<double> numbers(const QString& words) {
    static const QRegularExpression number(QStringLiteral("(\\d+(?:\\.\\d+)?) mm"));
    std::vector<double> found;
    for (auto i = number.globalMatch(words); i.hasNext();) {
      found.push_back(i.next().captured(1).toDouble());
    }
    return found;
  }

  void follow1(const QString& told) {
    static const QRegularExpression full(
        QStringLiteral("^(?:Score|Mark) all the way across at (.*mm)"));
    static const QRegularExpression part(QStringLiteral(
        "^(?:Score|Mark) at (.*) from the (left|right|bottom|top) corner, "
        "(?:from the edge down to line (\\d+)|down to a depth of ([^,.]*(?:\\.\\d+)? mm))"));
    static const QRegularExpression free(QStringLiteral("^Score from \\(.*\\) to \\(.*\\)"));
    const auto across = full.match(told);
    const auto inwards = part.match(told);
    if (across.hasMatch()) {
      scoreAcross(numbers(across.captured(1)));
    } else if (inwards.hasMatch()) {
      scoreInwards(inwards);
    } else if (free.match(told).hasMatch()) {
      const std::vector<double> n = numbers(told);
      ASSERT_EQ(n.size(), 4U) << told.toStdString();
      lines_.push_back({{n[0], n[1]}, {n[2], n[3]}});
    } else if (told.startsWith(QLatin1String("Trace "))) {
      traced_ = true;
    } else {
      ADD_FAILURE() << "not understood: " << told.toStdString();
    }
  }

  void scoreAcross(const std::vector<double>& readings) {
    for (const SheetSide side : sides_) {
      for (const double at : readings) {
        add(side, at, 0, along(side));
        full_.push_back({side, at});
      }
    }
  }

  /// Readings, corner, and the line or depth where the score stops.
  void scoreInwards(const QRegularExpressionMatch& told) {
    const SheetSide corner = sideNamed(told.captured(2));
    for (const SheetSide side : sides_) {
      const double depth = told.captured(3).isEmpty() ? numbers(told.captured(4)).at(0)
                                                      : lineFrom(side, told.captured(3).toInt());
      const double deep = upright(side) ? width_ : height_;
      for (const double at : numbers(told.captured(1))) {
        add(corner, at, far(side) ? deep - depth : 0, far(side) ? deep : depth);
      }
    }
  }

  static SheetSide sideNamed(const QString& name) {
    for (const SheetSide side : {SheetSide::Left, SheetSide::Right, SheetSide::Bottom}) {
      if (name == nameOf(side)) {
        return side;
      }
    }
    return SheetSide::Top;
  }
  [[nodiscard]] double along(SheetSide side) const { return upright(side) ? height_ : width_; }
  [[nodiscard]] double across(SheetSide side) const { return upright(side) ? width_ : height_; }

  /// The n-th full score counted from a side, by all full scores parallel to it.
  [[nodiscard]] double lineFrom(SheetSide side, int n) const {
    std::vector<double> found;
    for (const auto& [measured, at] : full_) {
      if (upright(measured) == upright(side)) {
        found.push_back(far(measured) == far(side) ? at : across(side) - at);
      }
    }
    std::sort(found.begin(), found.end());
    found.erase(std::unique(found.begin(), found.end(),
                            [](double a, double b) { return b - a < 2 * kReading; }),
                found.end());
    if (n < 1 || static_cast<std::size_t>(n) > found.size()) {
      ADD_FAILURE() << "there is no line " << n;
      return 0;
    }
    return found[static_cast<std::size_t>(n - 1)];
  }

  /// A line `at` from a side, from `low` to `high` along it.
  void add(SheetSide side, double at, double low, double high) {
    const double place = far(side) ? across(side) - at : at;
    if (upright(side)) {
      lines_.push_back({{place, low}, {place, high}});
    } else {
      lines_.push_back({{low, place}, {high, place}});
    }
  }

  double width_;
  double height_;
  std::vector<SheetSide> sides_;
  std::vector<std::pair<SheetSide, double>> full_;
  std::vector<Segment> lines_;
  bool traced_ = false;
};

bool isScoreStep(StepCode code) {
  return code == StepCode::ScoreSides || code == StepCode::ShortScores ||
         code == StepCode::ScoreFreely;
}

bool slants(const Segment& line) {
  return std::abs(line.a.x - line.b.x) > 1e-3 && std::abs(line.a.y - line.b.y) > 1e-3;
}

/// Whether a line of the sheet lies on a fold or a cut for some of its length.
bool meansSomething(const Segment& line, const FlatNet& flat) {
  std::vector<Segment> known = flat.creases;
  for (const Polyline& cut : cutLines(flat)) {
    for (std::size_t i = 0; i + 1 < cut.size(); ++i) {
      known.push_back({cut[i], cut[i + 1]});
    }
  }
  return std::any_of(known.begin(), known.end(), [&](const Segment& s) {
    return length(s) > 0 && std::abs(cross(unit(line.b - line.a), unit(s.b - s.a))) < 0.05 &&
           distanceToSegment((s.a + s.b) / 2, line) < 2 * kReading;
  });
}

void expectAllScored(const BuiltDesign& built) {
  const Guide guide = makeGuide(built);
  const GuideWords words = wordGuide(guide, built, GuideUnits::Millimetre);
  for (std::size_t i = 0; i < built.pieces.size(); ++i) {
    const BuiltPiece& piece = built.pieces[i];
    WordedSheet sheet(piece.flat.width, piece.flat.height);
    QStringList told;
    for (std::size_t k = 0; k < guide.steps.size(); ++k) {
      if (guide.steps[k].piece != static_cast<int>(i) || !isScoreStep(guide.steps[k].code)) {
        continue;
      }
      for (const QString& sentence : words.steps[k].sentences) {
        sheet.follow(sentence);
        told.append(sentence);
      }
    }
    SCOPED_TRACE(std::string(built.style->id) + " " + piece.name + "\n" +
                 told.join(QLatin1Char('\n')).toStdString());
    for (std::size_t c = 0; c < piece.flat.creases.size(); ++c) {
      if (piece.net.creases[c].kind == CreaseKind::Flat) {
        continue;
      }
      const Segment& crease = piece.flat.creases[c];
      for (const double share : {0.02, 0.5, 0.98}) {
        const Point p = crease.a + (crease.b - crease.a) * share;
        EXPECT_TRUE(sheet.covers(p, unit(crease.b - crease.a)) || sheet.traced())
            << "not told: (" << crease.a.x << ", " << crease.a.y << ") to (" << crease.b.x << ", "
            << crease.b.y << ")";
      }
    }
    for (const Segment& line : sheet.lines()) {
      EXPECT_TRUE(slants(line) || meansSomething(line, piece.flat))
          << "told without need: (" << line.a.x << ", " << line.a.y << ") to (" << line.b.x << ", "
          << line.b.y << ")";
    }
  }
}

/// Standard parameters with one of them moved so that the first blank is square; nothing when none
/// can do that inside its limits.
std::optional<Parameters> squareBlank(const Style& style) {
  const Workbench bench{Design().card.caliper, ToolGrid::millimetre()};
  const auto lean = [&](const Parameters& parameters) {
    const FlatNet flat = flatten(style.build(parameters, bench)[0].net);
    return flat.width - flat.height;
  };
  for (const ParameterSpec& spec : style.parameters) {
    if (spec.kind != ParameterKind::Length) {
      continue;
    }
    Parameters low = standardParameters(style);
    Parameters high = low;
    const std::int64_t most = 400'000'000;
    low.setCount(spec.key, spec.minimum(low, bench));
    high.setCount(spec.key, std::min(spec.maximum(high, bench), most));
    if ((lean(low) < 0) == (lean(high) < 0)) {
      continue;
    }
    while (high.raw(spec.key) - low.raw(spec.key) > 1) {
      Parameters middle = low;
      middle.setCount(spec.key, (low.raw(spec.key) + high.raw(spec.key)) / 2);
      ((lean(middle) < 0) == (lean(low) < 0) ? low : high) = middle;
    }
    if (std::abs(lean(low)) < 1e-5 && checkLimits(style, low, bench).empty()) {
      return low;
    }
  }
  return std::nullopt;
}

TEST(WordedScores, EveryFoldOfEveryStyleIsTold) {
  for (const Style& style : styles()) {
    expectAllScored(builtWith(style, standardParameters(style)));
  }
}

/// Short and long sides cannot be told apart there: each side has to be named.
TEST(WordedScores, EveryFoldIsToldOnSquareBlanks) {
  int squares = 0;
  for (const Style& style : styles()) {
    const auto parameters = squareBlank(style);
    if (!parameters) {
      std::cout << style.id << " has no square blank\n";
      continue;
    }
    ++squares;
    expectAllScored(builtWith(style, *parameters));
  }
  EXPECT_GE(squares, 25);
}

}  // namespace
}  // namespace creasewright
