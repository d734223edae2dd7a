#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <cmath>
#include <set>

#include <gtest/gtest.h>

#include "bridge/language.h"
#include "bridge/stock_words.h"
#include "bridge/text.h"
#include "core/laws/random_design.h"
#include "guide/guide_time.h"
#include "guide/make_guide.h"
#include "making/hand_folds.h"
#include "papers/guide/write_guide.h"
#include "support/picture_measure.h"

// Every number that stands on a printed hand-out is read back from the file, by Poppler, and looked
// for in the plans; and every setting of the board must stand there. No sentence is known here.
namespace creasewright::testing {
namespace {

constexpr double kPrinted = 0.0051;  // measures are printed to a hundredth of a millimetre

/// `12`, `12.7`.
std::set<double> numbersIn(const QString& words) {
  static const QRegularExpression number(QStringLiteral("\\d+(?:\\.\\d+)?"));
  std::set<double> found;
  for (auto it = number.globalMatch(words); it.hasNext();)
    found.insert(it.next().captured().toDouble());
  return found;
}

QString printedWords(const BuiltDesign& built, Hand hand) {
  GuideChoices choices;
  choices.units = GuideUnits::Millimetre;
  choices.paper = *findPaper("a4");
  choices.form.hand = hand;
  const auto pdf = guidePdf(built, choices);
  EXPECT_TRUE(pdf.ok());
  if (!pdf.ok()) return {};
  const QTemporaryDir dir;
  QFile file(dir.filePath(QStringLiteral("g.pdf")));
  EXPECT_TRUE(file.open(QIODevice::WriteOnly));
  file.write(*pdf);
  file.close();
  return QString::fromUtf8(run(QStringLiteral("pdftotext"),
                               {QStringLiteral("-layout"), file.fileName(), QStringLiteral("-")}));
}

bool holdsNear(const std::set<double>& numbers, double wanted) {
  const auto next = numbers.lower_bound(wanted - kPrinted);
  return next != numbers.end() && *next <= wanted + kPrinted;
}

/// Collects what the plans hold: millimetres and counts.
class Planned {
 public:
  explicit Planned(const Guide& guide, const BuiltDesign& built) {
    for (const Length length : {guide.finishedLength, guide.finishedWidth, guide.finishedHeight})
      numbers_.insert(std::round(length.mm()));
    for (const Supply& supply : guide.supplies) {
      for (const Length length : {supply.width, supply.height}) add(length);
      add(supply.quantity);
      if (supply.kind == SupplyKind::Tape && supply.length > Length())
        addTape(supply.length.mm());
      else
        add(supply.length);
    }
    for (const GuidePiece& piece : guide.pieces) add(piece.count);
    for (const Step& step : guide.steps)
      addStep(step, built.pieces.at(static_cast<std::size_t>(step.piece)).flat.width);
    for (const BuiltPiece& piece : built.pieces) addPiece(piece);
    words(cardName(built.design.card));
    add(minutesFor(guide));
    for (int i = 1; i <= static_cast<int>(guide.steps.size()); ++i) add(i);
    for (int page = 1; page <= 12; ++page) add(page);
    // The hand-out's own: a roll of 25 m, a stylus of 1 to 1.5 mm, 1 mm from folds.
    for (const double own : {25.0, 1.0, 1.5}) numbers_.insert(own);
  }

  void words(const QString& text) { numbers_.merge(numbersIn(text)); }
  [[nodiscard]] bool hold(double number) const { return holdsNear(numbers_, number); }

 private:
  /// No less than the strips take, and less than a step more; how many a roll does for.
  void addTape(double strips) {
    constexpr double kHair = 1e-6;
    constexpr double kEighth = 25.4 / 8;
    numbers_.insert(std::ceil(strips - kHair));
    numbers_.insert(std::ceil(strips / kEighth - kHair) * kEighth);
    add(std::max(1, static_cast<int>(25'000 / strips)));
  }
  void add(int whole) { numbers_.insert(whole); }
  void add(Length length) { numbers_.insert(length.mm()); }

  void addStep(const Step& step, double width) {
    add(step.width);
    add(step.height);
    for (const ScoreSetup& setup : step.settings)
      for (const ScoreReading& reading : setup.readings) {
        add(reading.at);
        add(reading.to);
        add(reading.toLine);
      }
    int cuts = 0;
    for (const Cut& cut : step.cuts) {
      const int strokes = 1 + static_cast<int>(cut.repeats.size());
      cuts += strokes;
      add(cut.toLine);
    }
    for (int count = 1; count <= cuts; ++count) add(count);
    add(static_cast<int>(step.waste.size()));
    int lines = 0;
    for (const ToldStage& stage : step.stages)
      for (const HandFold& fold : handFolds(stage.folds))
        lines += stage.folds[fold.folds.front()].loop ? 0 : 1;
    add(lines);
    for (const bool valley : {true, false}) {
      int folds = 0;
      for (const HandFold& fold : handFolds(step.folds))
        folds += step.folds[fold.folds.front()].valley == valley ? 1 : 0;
      add(folds);
    }
    for (const Adhesive& adhesive : step.adhesive) add(adhesive.width);
    for (int count = 1; count <= static_cast<int>(step.adhesive.size()); ++count) add(count);
    for (int count = 1; count <= static_cast<int>(step.joins.size()); ++count) add(count);
    for (const CheckLine& check : step.checks) {
      add(check.number);
      // What a finished box measures is told to the whole millimetre, all else exactly.
      for (const Length length : {check.a, check.b, check.c})
        if (check.code == CheckCode::FinishedSize)
          numbers_.insert(std::round(length.mm()));
        else
          add(length);
    }
    for (const FreeScore& score : step.freeScores)
      for (const Point p : {score.line.a, score.line.b}) {
        // The left hand counts from the lower right corner.
        add(Length::mm(step.figure.hand == Hand::Left ? width - p.x : p.x));
        add(Length::mm(p.y));
      }
    add(static_cast<int>(step.freeScores.size()));
  }

  void addPiece(const BuiltPiece& piece) {
    add(Length::mm(piece.flat.width));
    add(Length::mm(piece.flat.height));
    words(cardName(piece.card));
    words(text(piece.name));
    // Names of panels hold numbers, and the full scores are numbered from each side.
    for (const Panel& panel : piece.net.panels) words(text(panel.id));
    for (int line = 1; line <= static_cast<int>(piece.net.creases.size()); ++line) add(line);
    for (int panels = 1; panels <= static_cast<int>(piece.net.panels.size()); ++panels) add(panels);
  }

  std::set<double> numbers_;
};

int numbersJudged = 0;

void expectNumbersOf(const BuiltDesign& built, Hand hand) {
  const Guide guide = makeGuide(built, hand);
  const Planned planned(guide, built);
  const QString words = printedWords(built, hand);
  const std::set<double> printed = numbersIn(words);
  for (const double number : printed) {
    ++numbersJudged;
    EXPECT_TRUE(planned.hold(number)) << number << " is in no plan of\n" << words.toStdString();
  }
  for (const Length length : {guide.finishedLength, guide.finishedWidth, guide.finishedHeight})
    if (length > Length()) {
      EXPECT_TRUE(holdsNear(printed, std::round(length.mm())))
          << "finished: " << length.mm() << " mm";
    }
  for (const Step& step : guide.steps)
    for (const ScoreSetup& setup : step.settings)
      for (const ScoreReading& reading : setup.readings) {
        EXPECT_TRUE(holdsNear(printed, reading.at.mm())) << reading.at.mm() << " mm is not printed";
      }
}

TEST(PrintedNumbers, EveryNumberOfAHandOutIsOneOfThePlans) {
  useLanguage(QStringLiteral("en"));
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    Design design = asItComes(style);
    design.grid = ToolGrid::millimetre();
    const auto built = build(ontoGrid(design, ToolGrid::millimetre()));
    ASSERT_TRUE(built.ok());
    for (const Hand hand : {Hand::Right, Hand::Left}) expectNumbersOf(*built, hand);
    if (HasFailure()) return;
  }
  EXPECT_GT(numbersJudged, 1000);
}

}  // namespace
}  // namespace creasewright::testing
