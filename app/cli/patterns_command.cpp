#include "cli/patterns_command.h"

#include <memory>

#include <nlohmann/json.hpp>

#include "bridge/stock_words.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "cli/output.h"
#include "patterns/pattern.h"
#include "units/length_text.h"

namespace creasewright {

namespace {

using Json = nlohmann::ordered_json;

const char* turnsId(Turns turns) {
  switch (turns) {
    case Turns::Any:
      return "any";
    case Turns::Quarter:
      return "quarter";
    case Turns::Half:
      return "half";
    case Turns::None:
      return "none";
  }
  return "none";
}

QString turnsText(Turns turns) {
  switch (turns) {
    case Turns::Any:
      return Cli::tr("turned at will");
    case Turns::Quarter:
      return Cli::tr("turned by quarters");
    case Turns::Half:
      return Cli::tr("turned upside down");
    case Turns::None:
      return Cli::tr("has an up");
  }
  return {};
}

void printPatternsJson() {
  Json list = Json::array();
  for (const PatternKind& pattern : patterns()) {
    Json colours = Json::array();
    for (const Colour& colour : pattern.colours) colours.push_back(hexText(colour));
    list.push_back({{"id", pattern.id},
                    {"title", std::string(pattern.title)},
                    {"scale_mm", pattern.usual.mm()},
                    {"repeat", {1, pattern.height}},
                    {"turns", turnsId(pattern.turns)},
                    {"has_up", pattern.hasUp()},
                    {"colours", std::move(colours)}});
  }
  const Json page{
      {"format", "creasewright-patterns"}, {"version", 1}, {"patterns", std::move(list)}};
  printLine(QString::fromStdString(page.dump(2)));
}

QString patternLine(const PatternKind& pattern) {
  const QString repeat = Cli::tr("%1 mm").arg(pattern.usual.mm());
  const QString colours = Cli::tr("%n colour(s)", "", static_cast<int>(pattern.colours.size()));
  return QStringLiteral("%1%2%3%4%5")
      .arg(text(pattern.id).leftJustified(14), repeat.leftJustified(8), colours.leftJustified(12),
           turnsText(pattern.turns).leftJustified(22), styleText(pattern.title));
}

int runPatterns(bool json) {
  if (json) {
    printPatternsJson();
    return ExitHolds;
  }
  for (const PatternKind& pattern : patterns()) printLine(patternLine(pattern));
  printLine(Cli::tr(
      "Write --pattern ID:scale=12mm:turn=45:colours=sage,cream:side=back and leave out what "
      "is to stay as it is; the first colour is the ground. An extra takes "
      "pattern=ID:scale=12mm and so on."));
  return ExitHolds;
}

QString patternsHelp() {
  return Cli::tr("list the patterns that card and paper can be printed with");
}

std::function<int()> preparePatterns(Grammar& grammar) {
  const auto json = std::make_shared<bool>();
  grammar.flag("--json", *json, Cli::tr("for other programs"));
  return [json] { return runPatterns(*json); };
}

}  // namespace

Command patternsCommand() { return {"patterns", patternsHelp, preparePatterns}; }

}  // namespace creasewright
