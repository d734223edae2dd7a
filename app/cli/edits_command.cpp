#include "cli/edits_command.h"

#include <memory>

#include <nlohmann/json.hpp>

#include "bridge/style_text.h"
#include "bridge/text.h"
#include "cli/output.h"
#include "document/design.h"
#include "edits/kinds/edit_kind.h"
#include "styles/registry.h"

namespace creasewright {

namespace {

using EditJson = nlohmann::ordered_json;

/// What an edit names, for files.
std::string_view placeName(EditPlace place) {
  switch (place) {
    case EditPlace::Panel:
      return "panel";
    case EditPlace::Edge:
      return "edge";
    case EditPlace::Crease:
      return "fold";
  }
  return {};
}

std::string_view measureUnit(const EditMeasure& measure) {
  if (measure.words) return "text";
  return measure.kind == ParameterKind::Length ? "mm" : "count";
}

EditJson measureJson(const EditMeasure& measure) {
  const bool length = measure.kind == ParameterKind::Length;
  EditJson json{{"key", measure.key},
                {"title", styleText(measure.title).toStdString()},
                {"hint", styleText(measure.hint).toStdString()},
                {"unit", measureUnit(measure)},
                {"default", measure.standard}};
  if (!measure.choices.empty()) {
    json["choices"] = measure.choices;
    return json;
  }
  if (measure.words) return json;
  const auto limit = [length](std::int64_t raw) {
    return length ? EditJson(Length::nanometres(raw).mm()) : EditJson(raw);
  };
  json["minimum"] = limit(measure.least);
  json["maximum"] = limit(measure.most);
  return json;
}

void printKindsJson() {
  EditJson list = EditJson::array();
  for (const EditKind& kind : editKinds()) {
    EditJson measures = EditJson::array();
    for (const EditMeasure& measure : kind.measures) measures.push_back(measureJson(measure));
    list.push_back({{"id", kind.id},
                    {"title", styleText(kind.title).toStdString()},
                    {"summary", styleText(kind.summary).toStdString()},
                    {"place", placeName(kind.place)},
                    {"parameters", std::move(measures)}});
  }
  const EditJson page{{"format", "creasewright-edits"}, {"version", 1}, {"edits", std::move(list)}};
  printLine(QString::fromStdString(page.dump(2)));
}

QString measureLine(const EditMeasure& measure) {
  const QString standard =
      measure.choices.empty() ? text(measure.standard) : text(measure.standard).toLower();
  const QString start =
      QStringLiteral("    %1 %2").arg(text(measure.key).leftJustified(16), standard);
  QStringList words;
  for (const std::string_view choice : measure.choices) words += text(choice).toLower();
  const QString title = styleText(measure.title);
  return words.isEmpty()
             ? QStringLiteral("%1  %2").arg(start.leftJustified(38), title)
             : QStringLiteral("%1  %2 (%3)")
                   .arg(start.leftJustified(38), title, words.join(QStringLiteral(", ")));
}

void printKinds() {
  for (const EditKind& kind : editKinds()) {
    printLine(QStringLiteral("%1  %2").arg(text(kind.id), styleText(kind.title)));
    printLine(QStringLiteral("    %1").arg(styleText(kind.summary)));
    const QString place =
        kind.place == EditPlace::Panel ? QStringLiteral("on") : QStringLiteral("on, edge");
    printLine(QStringLiteral("    %1").arg(place));
    for (const EditMeasure& measure : kind.measures) printLine(measureLine(measure));
  }
  printLine(
      Cli::tr("A length may be arithmetic with the style's measures, panel-width, panel-height, "
              "edge-length, caliper, and the change's own measures as this-KEY."));
}

int printPlaces(const std::string& styleId) {
  const Result<const Style*> style = findStyle(styleId);
  if (!style) return fail(QStringLiteral("--style"), style.problem());
  const Result<Design> design =
      newDesign(styleId, std::nullopt, cards().front(), Ease::Easy, Design().grid);
  if (!design) return fail(QStringLiteral("--style"), design.problem());
  for (const Piece& piece : (*style)->build(design->parameters, benchOf(*design))) {
    printLine(text(piece.name));
    for (const Panel& panel : piece.net.panels) {
      QStringList names;
      for (const std::string& name : edgeNames(panel)) names += text(name);
      printLine(QStringLiteral("    %1  %2")
                    .arg(text(panel.id).leftJustified(30), names.join(QStringLiteral(", "))));
    }
  }
  return ExitHolds;
}

struct EditsOptions {
  std::string style;
  bool json = false;
};

int runEdits(const EditsOptions& options) {
  if (!options.style.empty()) return printPlaces(options.style);
  options.json ? printKindsJson() : printKinds();
  return ExitHolds;
}

QString editsHelp() {
  return Cli::tr("list the changes by hand and their measures, or a style's panels and edges");
}

std::function<int()> prepareEdits(Grammar& grammar) {
  const auto o = std::make_shared<EditsOptions>();
  grammar.value("--style", "ID", o->style, Cli::tr("list the panels and edges of a style"));
  grammar.flag("--json", o->json, Cli::tr("for other programs"));
  return [o] { return runEdits(*o); };
}

}  // namespace

Command editsCommand() { return {"edits", editsHelp, prepareEdits}; }

}  // namespace creasewright
