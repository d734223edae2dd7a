#include "cli/choices.h"

#include "cli/output.h"
#include "cli/pattern_argument.h"
#include "units/length_text.h"
#include "units/millimetres.h"

namespace creasewright {

namespace {

/// Reads `given` into `target`; an empty text leaves it as it is. False: the problem is told.
template <class T, class Target>
bool read(const char* argument, const std::string& given, Result<T> (*parse)(std::string_view),
          Target& target) {
  if (given.empty()) return true;
  Result<T> parsed = parse(given);
  if (!parsed) {
    fail(QLatin1String(argument), parsed.problem());
    return false;
  }
  target = std::move(parsed).value();
  return true;
}

/// Puts the pattern that is written onto the card. False: the problem is told.
bool readPattern(const std::string& given, Card& card) {
  if (given.empty()) return true;
  const Result<CardColours> colours = withPatternArgument(card.colours, given);
  if (!colours) {
    fail(QStringLiteral("--pattern"), colours.problem());
    return false;
  }
  card.colours = *colours;
  return true;
}

/// A board from 20 mm on.
Result<Length> parseBoard(std::string_view written) {
  const Result<Length> width = parseLength(written, Unit::Millimetre);
  if (width && *width < mm(20))
    return Problem{ProblemCode::LengthOutOfRange, {}, {std::string(written)}};
  return width;
}

}  // namespace

std::optional<Choices> readChoices(const ChoiceOptions& options, const char* productArgument) {
  Choices choices;
  if (read(productArgument, options.product, parseProduct, choices.product) &&
      read("--card", options.card, findCard, choices.card) &&
      read("--ease", options.ease, parseEase, choices.ease) &&
      read("--grid", options.grid, parseToolGrid, choices.grid) &&
      read("--colour", options.colour, parseCardColours, choices.card.colours) &&
      readPattern(options.pattern, choices.card) &&
      read("--board", options.board, parseBoard, choices.board))
    return choices;
  return std::nullopt;
}

void addProduct(Grammar& grammar, const char* name, ChoiceOptions& choices) {
  grammar.value(name, "SHAPE", choices.product,
                Cli::tr("what goes in, such as box:60x35x120mm or cylinder:40x120mm"));
}

void addMaterial(Grammar& grammar, ChoiceOptions& choices) {
  grammar.value("--card", "ID", choices.card,
                Cli::tr("card by id (the command cards lists them), or by measure: 0.3mm, 300gsm"));
  grammar.value("--colour", "FACE[/BACK]", choices.colour,
                Cli::tr("colours of the card, such as sage, sage/cream or #9AAF90"));
  grammar.value("--pattern",
                "(ID|picture:FILE)[:scale=..][:turn=..][:colours=..][:side=..][:plate=..]"
                "[:tiled=..][:right=..][:up=..]",
                choices.pattern,
                Cli::tr("what the card is printed with (the command patterns lists it), such as "
                        "dots or stripes:scale=12mm:turn=45:colours=cream,sage:side=back, or a "
                        "picture of your own: picture:leaves.png:tiled=no:right=5mm"));
  grammar.value("--ease", "snug|easy|loose", choices.ease, Cli::tr("room around the product"));
  grammar.value("--grid", "1/16in|1/8in|1mm|none", choices.grid,
                Cli::tr("what your ruler or board can hit"));
}

}  // namespace creasewright
