#include "cli/suggest_command.h"

#include <nlohmann/json.hpp>

#include "bridge/style_text.h"
#include "bridge/text.h"
#include "cli/output.h"
#include "document/suggest.h"
#include "styles/parameter_text.h"

namespace creasewright {

namespace {

using Json = nlohmann::ordered_json;

/// Nothing when a sheet is unknown (the problem is told).
std::optional<std::vector<Paper>> readSheets(std::vector<std::string> ids) {
  if (ids.empty()) ids = {"letter", "a4", "12x12"};
  std::vector<Paper> sheets;
  for (const std::string& id : ids) {
    const Result<Paper> paper = findPaper(id);
    if (!paper) {
      fail(QStringLiteral("--sheet"), paper.problem());
      return std::nullopt;
    }
    sheets.push_back(*paper);
  }
  return sheets;
}

Json blankJson(const BuiltPiece& piece) {
  return {{"piece", piece.name},
          {"count", piece.count},
          {"width_mm", piece.flat.width},
          {"height_mm", piece.flat.height}};
}

Json suggestionJson(const Suggestion& suggestion) {
  Json blanks = Json::array();
  for (const BuiltPiece& piece : suggestion.built.pieces) blanks.push_back(blankJson(piece));
  Json sheets = Json::array();
  for (const SheetFit& fit : suggestion.sheets)
    sheets.push_back({{"sheet", fit.sheet.id}, {"fits", fit.fits}, {"turned", fit.turned}});
  return {{"id", suggestion.style->id},      {"title", styleTitle(*suggestion.style).toStdString()},
          {"holds", suggestion.holds()},     {"blanks", std::move(blanks)},
          {"sheets", std::move(sheets)},     {"card_area_mm2", suggestion.cardArea},
          {"scores", suggestion.scores},     {"cuts", suggestion.cuts},
          {"glue_mm", suggestion.glue.mm()}, {"difficulty", suggestion.style->traits.difficulty}};
}

QString sheetWords(const SheetFit& fit) {
  const QString name = text(fit.sheet.name);
  return fit.turned ? Cli::tr("%1 (turned)").arg(name) : name;
}

QString sheetsLine(const Suggestion& suggestion) {
  QStringList names;
  for (const SheetFit& fit : suggestion.sheets)
    if (fit.fits) names << sheetWords(fit);
  return names.isEmpty() ? Cli::tr("fits none of the sheets")
                         : Cli::tr("fits %1").arg(names.join(QStringLiteral(", ")));
}

QString blanksLine(const Suggestion& suggestion, Unit unit) {
  QStringList blanks;
  for (const BuiltPiece& piece : suggestion.built.pieces) {
    const QString size =
        Cli::tr("%1 x %2").arg(lengthText(Length::mm(piece.flat.width), unit, false),
                               lengthText(Length::mm(piece.flat.height), unit));
    const QString name = pieceTitle(piece.name);
    blanks << (piece.count > 1 ? Cli::tr("%1 (%2 times) %3").arg(name).arg(piece.count).arg(size)
                               : QStringLiteral("%1 %2").arg(name, size));
  }
  return blanks.join(QStringLiteral(", "));
}

void printSuggestion(int place, const Suggestion& suggestion, Unit unit) {
  printLine(QStringLiteral("%1. %2  %3")
                .arg(place)
                .arg(text(suggestion.style->id), styleTitle(*suggestion.style)));
  printLine(QStringLiteral("    ") + blanksLine(suggestion, unit));
  printLine(Cli::tr("    %1; scores: %2, cuts: %3, glue: %4, difficulty: %5 of 3")
                .arg(sheetsLine(suggestion))
                .arg(suggestion.scores)
                .arg(suggestion.cuts)
                .arg(lengthText(suggestion.glue, unit))
                .arg(suggestion.style->traits.difficulty));
  if (!suggestion.holds())
    printLine(Cli::tr("    Some checks fail. “creasewright check” names them."));
}

}  // namespace

int runSuggest(const SuggestOptions& options, bool json) {
  const std::optional<Choices> choices = readChoices(options.choices, "--for");
  if (!choices) return ExitUsage;
  const auto sheets = readSheets(options.sheets);
  if (!sheets) return ExitUsage;
  const std::vector<Suggestion> all =
      suggest(*choices->product, choices->card, choices->ease, choices->grid, *sheets);
  if (json) {
    Json list = Json::array();
    for (const Suggestion& suggestion : all) list.push_back(suggestionJson(suggestion));
    const Json page{
        {"format", "creasewright-suggestions"}, {"version", 1}, {"styles", std::move(list)}};
    printLine(QString::fromStdString(page.dump(2)));
    return ExitHolds;
  }
  int place = 0;
  for (const Suggestion& suggestion : all)
    printSuggestion(++place, suggestion, unitOf(choices->grid));
  return ExitHolds;
}

}  // namespace creasewright
