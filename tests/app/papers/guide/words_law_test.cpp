#include <QRegularExpression>
#include <QString>
#include <cmath>
#include <map>
#include <numeric>
#include <optional>
#include <set>

#include <gtest/gtest.h>

#include "bridge/language.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "core/laws/random_design.h"
#include "document/design_file.h"
#include "extras/extra_kind.h"
#include "guide/make_guide.h"
#include "net/whole_panels.h"
#include "pages/guide_figure.h"
#include "papers/guide/guide_words.h"

// The worded steps hold every score, cut, join, fold and strip of the plans. The sentences are read
// back here and compared with the plans themselves, by code that words nothing.
namespace creasewright::testing {
namespace {

using Told = std::multiset<QString>;

std::string shown(const Told& told) {
  QStringList lines;
  for (const QString& line : told) {
    lines.append(QStringLiteral("    ") + line);
  }
  return lines.join(QLatin1Char('\n')).toStdString();
}

void expectSame(const Told& plan, const Told& told, const char* what) {
  EXPECT_TRUE(plan == told) << what << "\n  of the plan:\n"
                            << shown(plan) << "\n  told:\n"
                            << shown(told);
}

QRegularExpression pattern(const char* text) { return QRegularExpression(QString::fromUtf8(text)); }

/// One piece with its plans and all that is said about it.
struct Spoken {
  const BuiltPiece& built;
  const BuiltDesign& design;
  int index = 0;
  const Guide& guide;
  const GuideWords& words;

  [[nodiscard]] const Net& net() const { return built.net; }
  [[nodiscard]] QString name(int panel) const {
    return panelTitle(net().panels.at(static_cast<std::size_t>(panel)).id);
  }
  /// Sentences of the piece's steps of a kind.
  [[nodiscard]] QStringList sentences(const std::function<bool(const Step&)>& of) const {
    QStringList list;
    for (std::size_t i = 0; i < guide.steps.size(); ++i) {
      if (guide.steps[i].piece == index && of(guide.steps[i])) {
        list += spelledOut(i);
      }
    }
    return list;
  }
  /// What a step tells, names of panels for the letters of its figure; every letter there is told.
  [[nodiscard]] QStringList spelledOut(std::size_t step) const {
    QStringList told = words.steps[step].told();
    for (const PanelLetter& letter : StepFigure(design, guide.steps[step]).letters()) {
      const QString sign = QStringLiteral("“%1”").arg(QChar::fromLatin1(letter.letter));
      EXPECT_TRUE(told.join(QLatin1Char(' ')).contains(sign)) << letter.letter;
      told.replaceInStrings(sign, QStringLiteral("“%1”").arg(name(letter.panel)));
    }
    static const QRegularExpression left = pattern("“[a-z]”");
    EXPECT_FALSE(told.join(QLatin1Char(' ')).contains(left)) << "a letter that no panel has";
    return told;
  }
  /// The names in a list of panels, `“tab” (all 4)` told as all four of that kind.
  [[nodiscard]] QStringList names(const QString& list) const {
    static const QRegularExpression one = pattern("“([^”]*)”(?: \\(all (\\d+)\\))?");
    QStringList found;
    for (auto it = one.globalMatch(list); it.hasNext();) {
      const QRegularExpressionMatch match = it.next();
      if (match.captured(2).isEmpty()) {
        found.append(match.captured(1));
        continue;
      }
      QStringList all;
      for (const Panel& panel : net().panels) {
        const QString last = text(panel.id).section(QLatin1Char('/'), -1);
        const QString kind = QString(last).remove(QRegularExpression(QStringLiteral("-\\d+$")));
        if (panelTitle(kind.toStdString()) == match.captured(1)) {
          all.append(panelTitle(panel.id));
        }
      }
      EXPECT_EQ(all.size(), match.captured(2).toInt()) << list.toStdString();
      found += all;
    }
    return found;
  }
};

bool isUpright(SheetSide side) { return side == SheetSide::Left || side == SheetSide::Right; }

QString sideName(SheetSide side) {
  return QStringList{QStringLiteral("left"), QStringLiteral("right"), QStringLiteral("bottom"),
                     QStringLiteral("top")}
      .at(static_cast<int>(side));
}

QString inches(Length length) { return lengthText(length, Unit::Inch); }

QString scoreRecord(const QString& side, const QString& purpose, const QString& where,
                    const QString& at) {
  return QStringList{side, purpose, where, at}.join(QStringLiteral(" | "));
}

Told plannedScores(const ScorePlan& scores) {
  Told plan;
  for (const ScoreSetup& setup : scores.setups) {
    for (const SheetSide side : setup.sides) {
      for (const ScoreReading& r : setup.readings) {
        QString where = QStringLiteral("across");
        if (r.run == ScoreRun::Short) {
          where = sideName(r.measuredFrom) + QLatin1Char(' ') +
                  (r.toLine > 0 ? QString::number(r.toLine) : inches(r.to));
        }
        plan.insert(scoreRecord(
            sideName(side),
            r.purpose == ScorePurpose::Fold ? QStringLiteral("Score") : QStringLiteral("Mark"),
            where, inches(r.at)));
      }
    }
  }
  return plan;
}

/// `Both short sides` are the left and right one of a sheet that is wider than high.
QStringList sidesOf(const QString& heading, const FlatNet& flat) {
  if (heading.contains(QLatin1String("four"))) {
    return {QStringLiteral("left"), QStringLiteral("right"), QStringLiteral("bottom"),
            QStringLiteral("top")};
  }
  if (heading.contains(QLatin1String("short")) || heading.contains(QLatin1String("long"))) {
    const bool upright = heading.contains(QLatin1String("short")) == (flat.width > flat.height);
    return upright ? QStringList{QStringLiteral("left"), QStringLiteral("right")}
                   : QStringList{QStringLiteral("bottom"), QStringLiteral("top")};
  }
  QStringList sides;
  for (const SheetSide side :
       {SheetSide::Left, SheetSide::Right, SheetSide::Bottom, SheetSide::Top}) {
    if (heading.contains(sideName(side), Qt::CaseInsensitive)) {
      sides.append(sideName(side));
    }
  }
  return sides;
}

Told toldScores(const Spoken& piece) {
  static const QRegularExpression across =
      pattern("(Score|Mark) all the way across at (.+?)(?:, only to guide a cut)?\\.(?: |$)");
  static const QRegularExpression shorts = pattern(
      "(Score|Mark) at ((?:(?! from ).)+) from the (\\w+) corner, "
      "(?:from the edge down to line (\\d+)|down to a depth of (.+?))(?:, only to guide a cut)?\\."
      "(?: |$)");
  Told told;
  for (const QString& sentence :
       piece.sentences([](const Step& step) { return !step.settings.empty(); })) {
    const QString heading = sentence.section(QStringLiteral(": "), 0, 0);
    const QString rest = sentence.section(QStringLiteral(": "), 1);
    for (const QString& side : sidesOf(heading, piece.built.flat)) {
      for (auto it = across.globalMatch(rest); it.hasNext();) {
        const QRegularExpressionMatch match = it.next();
        for (const QString& at : match.captured(2).split(QStringLiteral(", "))) {
          told.insert(scoreRecord(side, match.captured(1), QStringLiteral("across"), at));
        }
      }
      for (auto it = shorts.globalMatch(rest); it.hasNext();) {
        const QRegularExpressionMatch match = it.next();
        const QString end = match.captured(4).isEmpty() ? match.captured(5) : match.captured(4);
        for (const QString& at : match.captured(2).split(QStringLiteral(", "))) {
          told.insert(
              scoreRecord(side, match.captured(1), match.captured(3) + QLatin1Char(' ') + end, at));
        }
      }
    }
  }
  return told;
}

/// The first number after `before` and before `after` in any sentence, summed.
int numberIn(const QStringList& sentences, const char* expression) {
  int sum = 0;
  const QRegularExpression number = pattern(expression);
  for (const QString& sentence : sentences) {
    for (auto it = number.globalMatch(sentence); it.hasNext();) {
      sum += it.next().captured(1).toInt();
    }
  }
  return sum;
}

/// Groups of creases that lie on one line or run on softly, by plain comparison of all pairs.
class Lines {
 public:
  explicit Lines(std::vector<std::pair<Segment, int>> parts) : parts_(std::move(parts)) {
    group_.resize(parts_.size());
    std::iota(group_.begin(), group_.end(), 0U);
    for (std::size_t i = 0; i < parts_.size(); ++i) {
      for (std::size_t k = 0; k < i; ++k) {
        if (parts_[i].second == parts_[k].second && together(i, k)) {
          const std::size_t from = group_[i];
          const std::size_t to = group_[k];
          std::ranges::replace(group_, from, to);
        }
      }
    }
  }
  [[nodiscard]] int count(int kind) const { return static_cast<int>(sizes(kind).size()); }
  /// Whether the pieces of a group, more than two, point more than one way.
  [[nodiscard]] bool turns(std::size_t group) const {
    std::vector<Point> ways;
    for (std::size_t i = 0; i < parts_.size(); ++i) {
      if (group_[i] == group) {
        ways.push_back(unit(parts_[i].first.b - parts_[i].first.a));
      }
    }
    return ways.size() > 2 && std::ranges::any_of(ways, [&](const Point& way) {
             return std::abs(cross(way, ways.front())) > 1e-3;
           });
  }
  [[nodiscard]] std::map<std::size_t, int> sizes(int kind) const {
    std::map<std::size_t, int> sizes;
    for (std::size_t i = 0; i < parts_.size(); ++i) {
      if (parts_[i].second == kind) {
        ++sizes[group_[i]];
      }
    }
    return sizes;
  }

 private:
  static double angleBetween(const Segment& a, const Segment& b) {
    const Point u = a.b - a.a;
    const Point v = b.b - b.a;
    return std::abs(std::atan2(cross(u, v), dot(u, v)));
  }
  /// Where the line from `from` to `end` goes on to, turning softly, in another piece.
  [[nodiscard]] std::optional<Point> beyond(Point from, Point end, std::size_t i,
                                            std::size_t k) const {
    for (std::size_t n = 0; n < parts_.size(); ++n) {
      if (n == i || n == k || parts_[n].second != parts_[i].second) {
        continue;
      }
      const Segment& next = parts_[n].first;
      for (const auto& [near, far] : {std::pair{next.a, next.b}, std::pair{next.b, next.a}}) {
        if (distance(near, end) < 1e-2 && angleBetween({from, end}, {near, far}) < 0.304) {
          return far;
        }
      }
    }
    return std::nullopt;
  }
  /// Two arcs that come to a tip bend one way before it, another in it, and the first way again.
  [[nodiscard]] bool isTip(std::size_t i, std::size_t k, Point farA, Point at, Point farB) const {
    const auto before = beyond(at, farA, i, k);
    const auto after = beyond(at, farB, i, k);
    if (!before || !after) {
      return false;
    }
    const double in = cross(farA - *before, at - farA);
    const double here = cross(at - farA, farB - at);
    const double out = cross(farB - at, *after - farB);
    return in * here < 0 && here * out < 0;
  }
  [[nodiscard]] bool together(std::size_t i, std::size_t k) const {
    const Segment& a = parts_[i].first;
    const Segment& b = parts_[k].first;
    double turn = angleBetween(a, b);
    turn = std::min(turn, std::acos(-1.0) - turn);
    for (const Point& p : {a.a, a.b}) {
      for (const Point& q : {b.a, b.b}) {
        const Point farA = distance(p, a.a) < 1e-9 ? a.b : a.a;
        const Point farB = distance(q, b.a) < 1e-9 ? b.b : b.a;
        if (distance(p, q) < 1e-2 && turn < 0.304 && dot(p - farA, farB - q) > 0 &&
            !isTip(i, k, farA, p, farB)) {
          return true;
        }
      }
    }
    return !bends(i) && !bends(k) && onOneLine(a, b);
  }
  static bool onOneLine(const Segment& a, const Segment& b) {
    const Segment& longer = length(a) >= length(b) ? a : b;
    const Segment& other = length(a) >= length(b) ? b : a;
    const Point along = unit(longer.b - longer.a);
    return std::abs(cross(along, other.a - longer.a)) < 1e-2 &&
           std::abs(cross(along, other.b - longer.a)) < 1e-2;
  }
  /// Whether the piece goes on in another that turns a little.
  [[nodiscard]] bool bends(std::size_t i) const {
    const Segment& a = parts_[i].first;
    for (std::size_t k = 0; k < parts_.size(); ++k) {
      const Segment& b = parts_[k].first;
      const double turn = angleBetween(a, b);
      const double soft = std::min(turn, std::acos(-1.0) - turn);
      const bool meets = distance(a.a, b.a) < 1e-2 || distance(a.a, b.b) < 1e-2 ||
                         distance(a.b, b.a) < 1e-2 || distance(a.b, b.b) < 1e-2;
      if (k != i && parts_[k].second == parts_[i].second && meets && soft < 0.304 &&
          !onOneLine(a, b)) {
        return true;
      }
    }
    return false;
  }

  std::vector<std::pair<Segment, int>> parts_;
  std::vector<std::size_t> group_;
};

void expectFreeScores(const Spoken& piece) {
  std::vector<std::pair<Segment, int>> parts;
  for (const FreeScore& score : piece.built.scorePlan.freeScores) {
    parts.emplace_back(score.line, score.valley ? 1 : 0);
  }
  const Lines lines(parts);
  int straight = 0;
  int curved = 0;
  for (const int kind : {0, 1}) {
    for (const auto& [group, size] : lines.sizes(kind)) {
      (lines.turns(group) ? curved : straight) += lines.turns(group) ? 1 : size;
    }
  }
  const QStringList said =
      piece.sentences([](const Step& step) { return !step.freeScores.empty(); });
  const int byPoints =
      static_cast<int>(said.join(QLatin1Char(' ')).count(QStringLiteral("Score from (")));
  EXPECT_EQ(byPoints + numberIn(said, "Trace (\\d+) slanting"), straight);
  EXPECT_EQ(numberIn(said, "Trace (\\d+) curved"), curved);
}

void expectCuts(const Spoken& piece) {
  const CutPlan plan = planCuts(piece.net(), piece.built.flat, piece.built.waste);
  const std::map<CutKind, const char*> words{
      {CutKind::Opening, "Cut out (\\d+) opening"},
      {CutKind::Slit, "Cut (\\d+) slit"},
      {CutKind::Straight, "Make (\\d+) straight cut"},
      {CutKind::Mitre, "Make (\\d+) slanting cuts?, each"},
      {CutKind::Taper, "Make (\\d+) slanting cuts?, so"},
      {CutKind::Notch, "(?:Cut off|Make) (\\d+) (?:small corner|slanting cuts?; two meet)"},
      {CutKind::Curve, "Make (\\d+) curved cut"}};
  const QStringList said = piece.sentences([](const Step& step) { return !step.cuts.empty(); });
  Told planned;
  for (const auto& [kind, expression] : words) {
    int count = 0;
    for (const Cut& cut : plan.cuts) {
      count += cut.kind == kind ? 1 + static_cast<int>(cut.repeats.size()) : 0;
    }
    EXPECT_EQ(numberIn(said, expression), count) << expression;
  }
  // Cuts from an edge to a score: by where they lie.
  std::map<std::pair<SheetSide, int>, int> fromEdges;
  const double width = piece.built.flat.width;
  const double height = piece.built.flat.height;
  const auto distancesFrom = [&](SheetSide edge) {
    std::set<long> places;  // micrometres
    for (const ScoreSetup& setup : piece.built.scorePlan.setups) {
      for (const SheetSide side : setup.sides) {
        for (const ScoreReading& r : setup.readings) {
          if (r.run == ScoreRun::Full && isUpright(side) == isUpright(edge)) {
            const double across = isUpright(side) ? width : height;
            const double at = side == edge ? r.at.mm() : across - r.at.mm();
            const long micrometres = std::lround(at * 1000);
            if (!places.count(micrometres - 1) && !places.count(micrometres + 1)) {
              places.insert(micrometres);
            }
          }
        }
      }
    }
    return std::vector<long>(places.begin(), places.end());
  };
  for (const Cut& cut : plan.cuts) {
    if (!cut.fromEdge || cut.toLine == 0) {
      continue;
    }
    std::vector<Polyline> strokes{cut.line};
    for (const CutRepeat repeat : cut.repeats) {
      strokes.push_back(repeated(cut.line, repeat, width, height));
    }
    for (const Polyline& stroke : strokes) {
      const Point p = stroke.front();
      const SheetSide edge = isUpright(cut.edge)
                                 ? (p.x < width / 2 ? SheetSide::Left : SheetSide::Right)
                                 : (p.y < height / 2 ? SheetSide::Bottom : SheetSide::Top);
      const std::vector<long> places = distancesFrom(edge);
      const long reach = std::lround(distance(stroke.front(), stroke.back()) * 1000);
      const auto line = std::ranges::find_if(
          places, [reach](long place) { return std::abs(place - reach) <= 2; });
      EXPECT_NE(line, places.end());
      ++fromEdges[{edge, static_cast<int>(line - places.begin()) + 1}];
    }
  }
  std::map<std::pair<SheetSide, int>, int> told;
  static const QRegularExpression from =
      pattern("Cut in from the (\\w+) edge up to score line (\\d+), (?:once|(\\d+) times?)");
  for (const QString& sentence : said) {
    const QRegularExpressionMatch match = from.match(sentence);
    if (!match.hasMatch()) {
      continue;
    }
    for (const SheetSide side :
         {SheetSide::Left, SheetSide::Right, SheetSide::Bottom, SheetSide::Top}) {
      if (sideName(side) == match.captured(1)) {
        told[{side, match.captured(2).toInt()}] +=
            match.captured(3).isEmpty() ? 1 : match.captured(3).toInt();
      }
    }
  }
  EXPECT_TRUE(told == fromEdges) << said.join(QLatin1Char('|')).toStdString();
}

QString joinRecord(const QString& verb, const QString& flap, const QString& onto) {
  return QStringList{verb, flap, onto}.join(QStringLiteral(" | "));
}

void expectJoins(const Spoken& piece) {
  const std::map<std::pair<Method, Face>, QString> verbs{
      {{Method::Glue, Face::Inside}, QStringLiteral("press inside")},
      {{Method::Glue, Face::Outside}, QStringLiteral("press outside")},
      {{Method::Tuck, Face::Inside}, QStringLiteral("tuck")},
      {{Method::Tuck, Face::Outside}, QStringLiteral("slide")},
      {{Method::Lock, Face::Inside}, QStringLiteral("lock")},
      {{Method::Lock, Face::Outside}, QStringLiteral("lock")},
      {{Method::Rest, Face::Inside}, QStringLiteral("lie inside")},
      {{Method::Rest, Face::Outside}, QStringLiteral("lie outside")}};
  const std::vector<std::pair<const char*, QString>> sentences{
      {"^Press .*the inside of", QStringLiteral("press inside")},
      {"^Press .*the outside of", QStringLiteral("press outside")},
      {"^Tuck ", QStringLiteral("tuck")},
      {"^Slide ", QStringLiteral("slide")},
      {"^Lock ", QStringLiteral("lock")},
      {"to lie inside", QStringLiteral("lie inside")},
      {"to lie on the outside", QStringLiteral("lie outside")}};
  std::set<QString> planned;
  for (const Mate& mate : piece.net().mates) {
    planned.insert(joinRecord(verbs.at({mate.method, mate.face}), piece.name(mate.panel),
                              piece.name(mate.onto)));
  }
  std::set<QString> told;
  for (const QString& sentence :
       piece.sentences([](const Step& step) { return step.code == StepCode::FoldStage; })) {
    for (const auto& [expression, verb] : sentences) {
      if (!pattern(expression).match(sentence).hasMatch()) {
        continue;
      }
      const QString list = sentence.contains(QStringLiteral("→"))
                               ? sentence.section(QStringLiteral(": "), 1)
                               : QString();
      if (list.isEmpty()) {
        const QStringList both = piece.names(sentence);
        EXPECT_EQ(both.size(), 2) << sentence.toStdString();
        if (both.size() == 2) {
          told.insert(joinRecord(verb, both[0], both[1]));
        }
      }
      for (const QString& pair : list.split(QStringLiteral("; "), Qt::SkipEmptyParts)) {
        const QStringList target = piece.names(pair.section(QStringLiteral(" → "), 1));
        EXPECT_EQ(target.size(), 1) << pair.toStdString();
        for (const QString& flap : piece.names(pair.section(QStringLiteral(" → "), 0, 0))) {
          told.insert(joinRecord(verb, flap, target.value(0)));
        }
      }
    }
  }
  expectSame({planned.begin(), planned.end()}, {told.begin(), told.end()}, "joins");
}

/// One step tells every line of the stages that it holds, as the plan has them, and what moves.
void expectFoldsOf(const Spoken& piece, const Step& step, const QStringList& words,
                   const FoldPlan& plan) {
  int handled = 0;
  int following = 0;
  std::set<QString> moved;
  for (const ToldStage& held : step.stages) {
    const auto stage = std::ranges::find(plan.stages, held.code, &FoldStage::code);
    ASSERT_NE(stage, plan.stages.end()) << held.code;
    std::vector<std::pair<Segment, int>> parts;
    for (const Fold& fold : stage->folds) {
      if (fold.bend) {
        continue;
      }
      parts.emplace_back(fold.line, (fold.valley ? 1 : 0) + (fold.loop ? 2 : 0));
      if (!fold.loop) {
        moved.insert(piece.name(fold.child));
      }
    }
    const Lines lines(parts);
    handled += lines.count(0) + lines.count(1);
    following += lines.count(2) + lines.count(3);
  }
  EXPECT_EQ(numberIn(words, "^(?:Fold|Open) (\\d+) lines?(?: as the arrow|:)"), handled)
      << step.stage;
  EXPECT_EQ(numberIn(words, "^(\\d+) more lines? fold"), following) << step.stage;
  std::set<QString> named;
  for (const QString& sentence : words) {
    if (pattern("^(Fold|Open) \\d+ line").match(sentence).hasMatch()) {
      const QStringList list = piece.names(sentence);
      named.insert(list.begin(), list.end());
    }
  }
  EXPECT_TRUE(named == moved) << step.stage << ": " << words.join(QLatin1Char('|')).toStdString();
}

void expectFolds(const Spoken& piece) {
  const FoldPlan plan = planFolds(piece.net(), piece.built.flat);
  std::vector<std::pair<Segment, int>> burnished;
  for (const Fold& fold : plan.burnish) {
    burnished.emplace_back(fold.line, (fold.valley ? 1 : 0) + (fold.loop ? 2 : 0));
  }
  const Lines all(burnished);
  const QStringList said =
      piece.sentences([](const Step& step) { return step.code == StepCode::FoldAndBurnish; });
  EXPECT_EQ(numberIn(said, "Fold (\\d+) lines? towards you"), all.count(1) + all.count(3));
  EXPECT_EQ(numberIn(said, "Fold (\\d+) lines? away from you"), all.count(0) + all.count(2));
  std::size_t told = 0;
  for (std::size_t i = 0; i < piece.guide.steps.size(); ++i) {
    const Step& step = piece.guide.steps[i];
    if (step.piece != piece.index || step.code != StepCode::FoldStage) {
      continue;
    }
    expectFoldsOf(piece, step, piece.spelledOut(i), plan);
    for (const ToldStage& stage : step.stages) {
      while (told < plan.stages.size() && plan.stages[told].folds.empty() &&
             plan.stages[told].mates.empty()) {
        ++told;
      }
      ASSERT_LT(told, plan.stages.size());
      EXPECT_EQ(plan.stages[told++].code, stage.code);
    }
  }
  while (told < plan.stages.size() && plan.stages[told].folds.empty() &&
         plan.stages[told].mates.empty()) {
    ++told;
  }
  EXPECT_EQ(told, plan.stages.size());
}

void expectAdhesive(const Spoken& piece, ToolGrid grid) {
  const AdhesivePlan plan = planAdhesive(piece.net(), piece.built.gluePlan,
                                         planFolds(piece.net(), piece.built.flat), grid);
  std::map<QString, int> strips;
  std::set<QString> panels;
  for (const GlueStrip& strip : plan.strips) {
    ++strips[strip.liquid() ? QStringLiteral("liquid") : inches(strip.width)];
    panels.insert(piece.name(piece.built.gluePlan[static_cast<std::size_t>(strip.area)].panel));
  }
  std::map<QString, int> told;
  std::set<QString> named;
  static const QRegularExpression tape = pattern("Stick (\\d+) strips? of (.+?) tape on: ");
  static const QRegularExpression glue = pattern("liquid glue ready for (\\d+) place");
  for (const QString& sentence :
       piece.sentences([](const Step& step) { return step.code == StepCode::ApplyAdhesive; })) {
    if (const auto match = tape.match(sentence); match.hasMatch()) {
      told[match.captured(2)] += match.captured(1).toInt();
    } else if (const auto liquid = glue.match(sentence); liquid.hasMatch()) {
      told[QStringLiteral("liquid")] += liquid.captured(1).toInt();
    } else {
      continue;
    }
    const QStringList list = piece.names(sentence);
    named.insert(list.begin(), list.end());
  }
  EXPECT_TRUE(strips == told);
  EXPECT_TRUE(panels == named);
}

QStringList sorted(QStringList list) {
  list.sort();
  return list;
}

QStringList all(const QRegularExpression& expression, const QString& sentence) {
  QStringList found;
  for (auto it = expression.globalMatch(sentence); it.hasNext();) {
    found.append(it.next().captured(1));
  }
  return sorted(found);
}

/// The same steps, sentences, numbers and names.
void expectGermanAgrees(const GuideWords& english, const GuideWords& german,
                        const std::map<QString, QString>& names) {
  static const QRegularExpression digits = pattern("([0-9]+)");
  ASSERT_EQ(english.steps.size(), german.steps.size());
  for (std::size_t i = 0; i < english.steps.size(); ++i) {
    const QStringList source = english.steps[i].told();
    const QStringList other = german.steps[i].told();
    ASSERT_EQ(source.size(), other.size()) << english.steps[i].title.toStdString();
    for (qsizetype k = 0; k < source.size(); ++k) {
      EXPECT_EQ(all(digits, source[k]), all(digits, other[k])) << source[k].toStdString() << "\n"
                                                               << other[k].toStdString();
      QStringList expected;
      for (const QString& name : all(pattern("“([^”]*)”"), source[k])) {
        const auto found = names.find(name);
        expected.append(found == names.end() ? name : found->second);
      }
      EXPECT_EQ(sorted(expected), all(pattern("„([^“]*)“"), other[k]))
          << source[k].toStdString() << "\n"
          << other[k].toStdString();
    }
  }
}

std::vector<std::string> idsOf(const BuiltDesign& built) {
  std::vector<std::string> ids;
  for (const BuiltPiece& piece : built.pieces) {
    for (const Panel& panel : piece.net.panels) {
      ids.push_back(panel.id);
      // Kinds, as they are named when all of one are told together.
      std::string kind = panel.id.substr(panel.id.find_last_of('/') + 1);
      kind.resize(kind.find_last_not_of("-0123456789") + 1);
      ids.push_back(kind);
    }
  }
  return ids;
}

void expectLaw(const BuiltDesign& built, Hand hand = Hand::Right) {
  const Guide guide = makeGuide(built, hand);
  const GuideWords words = wordGuide(guide, built, GuideUnits::Inch);
  for (std::size_t i = 0; i < built.pieces.size(); ++i) {
    const Spoken piece{built.pieces[i], built, static_cast<int>(i), guide, words};
    SCOPED_TRACE(piece.built.name);
    std::set<QString> names;
    const std::vector<int> whole = wholePanels(piece.net());
    for (std::size_t k = 0; k < piece.net().panels.size(); ++k) {
      // The strips of a bent panel are one panel in all words.
      if (whole[k] != static_cast<int>(k)) {
        EXPECT_EQ(piece.name(static_cast<int>(k)), piece.name(whole[k]));
        continue;
      }
      EXPECT_TRUE(names.insert(piece.name(static_cast<int>(k))).second)
          << "two panels are called " << piece.name(static_cast<int>(k)).toStdString();
    }
    const ScorePlan scores =
        planScoresFor(hand, piece.net(), piece.built.flat, built.design.grid, built.design.board);
    expectSame(plannedScores(scores), toldScores(piece), "scores");
    expectFreeScores(piece);
    expectCuts(piece);
    expectJoins(piece);
    expectFolds(piece);
    expectAdhesive(piece, built.design.grid);
  }
  std::map<QString, QString> names;
  std::vector<QString> english;
  const std::vector<std::string> ids = idsOf(built);
  for (const std::string& id : ids) {
    english.push_back(panelTitle(id));
  }
  std::vector<QString> piecesEnglish;
  for (const BuiltPiece& piece : built.pieces) {
    piecesEnglish.push_back(pieceTitle(piece.name));
  }
  useLanguage(QStringLiteral("de"));
  for (std::size_t i = 0; i < ids.size(); ++i) {
    names[english[i]] = panelTitle(ids[i]);
  }
  for (std::size_t i = 0; i < built.pieces.size(); ++i) {
    names.insert({piecesEnglish[i], pieceTitle(built.pieces[i].name)});
  }
  const GuideWords german = wordGuide(guide, built, GuideUnits::Inch);
  useLanguage(QStringLiteral("en"));
  expectGermanAgrees(words, german, names);
}

TEST(WordsLaw, EveryStyleAsItComes) {
  useLanguage(QStringLiteral("en"));
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    const auto built = build(testing::asItComes(style));
    ASSERT_TRUE(built);
    expectLaw(*built);
  }
}

/// The left hand is told as wholly as the right one, from the other edge.
TEST(WordsLaw, EveryStyleForTheLeftHand) {
  useLanguage(QStringLiteral("en"));
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    const auto built = build(testing::withItsExtras(style));
    ASSERT_TRUE(built);
    expectLaw(*built, Hand::Left);
    const Guide right = makeGuide(*built);
    const Guide left = makeGuide(*built, Hand::Left);
    ASSERT_EQ(right.steps.size(), left.steps.size());
    for (std::size_t i = 0; i < left.steps.size(); ++i) {
      EXPECT_EQ(right.steps[i].cuts.size(), left.steps[i].cuts.size());
      EXPECT_EQ(right.steps[i].figure.panels, left.steps[i].figure.panels);
    }
  }
}

/// Bands, labels and inserts are told as wholly as the box.
TEST(WordsLaw, EveryStyleWithItsExtras) {
  useLanguage(QStringLiteral("en"));
  int extras = 0;
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    const Design design = testing::withItsExtras(style);
    extras += static_cast<int>(design.extras.size());
    const auto built = build(design);
    ASSERT_TRUE(built);
    expectLaw(*built);
  }
  EXPECT_GT(extras, 60);
}

TEST(WordsLaw, EveryStyleAtRandom) {
  useLanguage(QStringLiteral("en"));
  Random random(1517);
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    int done = 0;
    for (int i = 0; i < 20 && done < 6; ++i) {
      const auto design = randomInsideLimits(random, style);
      if (!design) {
        continue;
      }
      const auto built = build(*design);
      ASSERT_TRUE(built);
      ++done;
      SCOPED_TRACE(writeDesign(*design));
      expectLaw(*built);
      if (HasFailure()) {
        return;
      }
    }
    EXPECT_GT(done, 0);
  }
}

}  // namespace
}  // namespace creasewright::testing
