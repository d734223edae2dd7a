#include "cli/folded_argument.h"

#include <QStringList>
#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>
#include <utility>

#include "bridge/problem_text.h"
#include "bridge/text.h"
#include "cli/choice_names.h"
#include "cli/output.h"
#include "fit/card_colours.h"
#include "pages/gift_strip.h"
#include "pages/opening.h"

namespace creasewright {

namespace {

struct OpeningName {
  std::string_view name;
  double opening;
};

constexpr std::array kOpenings{OpeningName{"closed", kClosed}, OpeningName{"ajar", kAjar},
                               OpeningName{"open", kOpen}};

struct ViewName {
  std::string_view name;
  View view;
};

const std::array kViews{ViewName{"front", frontalView()}, ViewName{"above", viewFromAbove()},
                        ViewName{"three-quarter", standardView()}};

/// By its name or as a percentage; nothing where it is neither.
std::optional<double> readOpening(const std::string& written) {
  const auto* named = std::ranges::find(kOpenings, written, &OpeningName::name);
  if (named != kOpenings.end()) return named->opening;
  QString number = text(written).trimmed();
  if (number.endsWith(QLatin1Char('%'))) number.chop(1);
  bool read = false;
  const int percent = number.toInt(&read);
  if (!read || percent < 0 || percent > 100) return std::nullopt;
  return kClosed + (kOpen - kClosed) * percent / 100;
}

/// A number of degrees from -most to most.
std::optional<Angle> readDegrees(const QString& written, double most) {
  bool read = false;
  const double degrees = written.trimmed().toDouble(&read);
  if (!read || !(std::abs(degrees) <= most)) return std::nullopt;
  return Angle::degrees(degrees);
}

/// By its name, or as `TURN,TILT` in degrees.
std::optional<View> readView(const std::string& written) {
  const auto* named = std::ranges::find(kViews, written, &ViewName::name);
  if (named != kViews.end()) return named->view;
  const QStringList parts = text(written).split(QLatin1Char(','));
  if (parts.size() != 2) return std::nullopt;
  const auto turn = readDegrees(parts[0], 360);
  const auto tilt = readDegrees(parts[1], kSteepestTilt);
  if (!turn || !tilt) return std::nullopt;
  return View{*turn, *tilt};
}

std::optional<int> readSide(const QString& written) {
  bool read = false;
  const int pixels = written.trimmed().toInt(&read);
  if (!read || pixels < kLeastPixels || pixels > kMostPixels) return std::nullopt;
  return pixels;
}

/// `1600x1200`, or `1600` for the longer side.
std::optional<PictureSize> readPixels(const std::string& written) {
  const QStringList sides = text(written).split(QLatin1Char('x'));
  if (sides.size() > 2) return std::nullopt;
  const auto width = readSide(sides[0]);
  const auto height = sides.size() == 2 ? readSide(sides[1]) : std::optional(0);
  if (!width || !height) return std::nullopt;
  return PictureSize{*width, *height};
}

std::optional<int> readStage(const std::string& written) {
  bool read = false;
  const int stage = text(written).toInt(&read);
  return read && stage >= 0 ? std::optional(stage) : std::nullopt;
}

/// The first argument that only a folded box has, or nothing.
QString pictureArgument(const FoldedOptions& options) {
  const std::array<std::pair<const char*, bool>, 4> asked{{{"--view", !options.view.empty()},
                                                           {"--stage", !options.stage.empty()},
                                                           {"--pixels", !options.pixels.empty()},
                                                           {"--ground", !options.ground.empty()}}};
  for (const auto& [name, there] : asked)
    if (there) return text(name);
  return {};
}

QString openProblem(const FoldedOptions& options, const std::string& piece) {
  if (options.open.empty()) return {};
  if (!options.folded) return Cli::tr("--open: Only the folded box can be opened. Add --folded.");
  if (!piece.empty())
    return Cli::tr("--open: Only the whole box can be opened. Leave out --piece.");
  if (!options.stage.empty())
    return Cli::tr("--open: Only the finished box can be opened. Leave out --stage.");
  if (!readOpening(options.open))
    return Cli::tr(
               "--open: “%1” is not how far a box is open. Write one of %2, or 0 to 100 per "
               "cent, such as 30%.")
        .arg(shown(options.open), namesOf(kOpenings, QStringLiteral(", ")));
  return {};
}

QString pixelsProblem(const FoldedOptions& options, const QString& ending) {
  if (options.pixels.empty()) return {};
  if (ending == QLatin1String("pdf"))
    return Cli::tr("--pixels: A page has no pixels. Choose its size with --paper, such as a3.");
  if (readPixels(options.pixels)) return {};
  return Cli::tr(
             "--pixels: “%1” is no size of a picture. Write its width and height, such as "
             "1600x1200, or its longer side, each from %2 to %3.")
      .arg(shown(options.pixels), QString::number(kLeastPixels), QString::number(kMostPixels));
}

QString groundProblem(const std::string& ground) {
  if (ground.empty() || ground == "transparent") return {};
  const Result<Colour> colour = parseColour(ground);
  return colour ? QString()
                : QStringLiteral("--ground: %1")
                      .arg(problemSentence(colour.problem(), Unit::Millimetre));
}

}  // namespace

void addFoldedArguments(Grammar& grammar, FoldedOptions& options) {
  grammar.flag("--folded", options.folded,
               Cli::tr("draw the folded box, not the net (PNG, SVG, PDF)"));
  grammar.value("--open", namesOf(kOpenings, QStringLiteral("|")).toUtf8() + "|PERCENT",
                options.open,
                Cli::tr("how far the folded box is open; as it tells most if left out"));
  grammar.value("--view", namesOf(kViews, QStringLiteral("|")).toUtf8() + "|TURN,TILT",
                options.view,
                Cli::tr("from where the folded box is seen; degrees, such as -30,35"));
  grammar.value("--stage", "N", options.stage,
                Cli::tr("the folded box after so many stages of the strip under it, 0 for flat"));
  grammar.value("--pixels", "WIDTHxHEIGHT|LONGER-SIDE", options.pixels,
                Cli::tr("size of the picture of the folded box (PNG, SVG)"));
  grammar.value("--ground", "transparent|white|NAME|#RRGGBB", options.ground,
                Cli::tr("what the folded box stands on: nothing, or a colour as of card"));
}

QString foldedProblem(const FoldedOptions& options, const QString& ending,
                      const std::string& piece) {
  if (options.folded && ending != QLatin1String("png") && ending != QLatin1String("svg") &&
      ending != QLatin1String("pdf"))
    return Cli::tr(
        "--folded: Only a PNG, SVG or PDF can show the folded box. Choose such an ending.");
  if (const QString name = pictureArgument(options); !options.folded && !name.isEmpty())
    return Cli::tr("%1: Only a picture of the folded box has that. Add --folded.").arg(name);
  if (const QString problem = openProblem(options, piece); !problem.isEmpty()) return problem;
  if (!options.view.empty() && !readView(options.view))
    return Cli::tr(
               "--view: “%1” is no view. Write one of %2, or the degrees of turn and tilt, such "
               "as -30,35, up to 360 and %3.")
        .arg(shown(options.view), namesOf(kViews, QStringLiteral(", ")),
             QString::number(kSteepestTilt));
  if (const QString problem = pixelsProblem(options, ending); !problem.isEmpty()) return problem;
  return groundProblem(options.ground);
}

void readFolded(const FoldedOptions& options, ExportChoices& choices) {
  choices.folded = options.folded;
  choices.sight.opening = readOpening(options.open);
  choices.sight.view = readView(options.view).value_or(standardView());
  if (const auto stage = readStage(options.stage)) choices.sight.done = *stage;
  choices.size = readPixels(options.pixels).value_or(PictureSize());
  if (options.ground.empty()) return;
  if (options.ground == "transparent")
    choices.ground.kind = PictureGround::Kind::Clear;
  else if (options.ground == "white")  // as paper is, which card never is
    choices.ground = {PictureGround::Kind::Coloured, {0xFF, 0xFF, 0xFF}};
  else if (const Result<Colour> colour = parseColour(options.ground))
    choices.ground = {PictureGround::Kind::Coloured, *colour};
}

QString stageProblem(const FoldedOptions& options, const BuiltDesign& built,
                     const std::string& piece) {
  if (options.stage.empty()) return {};
  const auto named = std::ranges::find(built.pieces, piece, &BuiltPiece::name);
  const bool whole = named == built.pieces.end();
  const GiftStrip strip(built, whole ? 0 : static_cast<int>(named - built.pieces.begin()),
                        whole ? GiftStrip::Of::Gift : GiftStrip::Of::Piece);
  const int last = static_cast<int>(strip.end());
  const auto stage = readStage(options.stage);
  if (stage && *stage <= last) return {};
  return Cli::tr("--stage: “%1” is no stage here. Write 0 for flat to %2 for finished.")
      .arg(shown(options.stage), QString::number(last));
}

}  // namespace creasewright
