#include "cli/styles_command.h"

#include <memory>

#include <nlohmann/json.hpp>

#include "bridge/style_text.h"
#include "bridge/text.h"
#include "cli/output.h"
#include "cli/suggest_command.h"
#include "document/design.h"
#include "extras/extra_kind.h"
#include "extras/layer_stack.h"
#include "styles/blank_sheet.h"
#include "styles/limits_search.h"
#include "styles/registry.h"
#include "units/length_text.h"
#include "units/millimetres.h"

namespace creasewright {

namespace {

using Json = nlohmann::ordered_json;

/// A style or a kind of extra, the values its limits are read at: the defaults, on the
/// program's default card.
struct Entry {
  std::string_view id;
  QString title;
  QString summary;
  const std::vector<ParameterSpec>& specs;
  Parameters parameters;
  Workbench bench;
  bool zeroChooses = false;  ///< a length left at 0 is chosen by the program
};

Workbench standardMaking() { return benchOf(Design()); }

std::vector<Entry> styleEntries() {
  std::vector<Entry> entries;
  const auto add = [&entries](const Style& style) {
    const Workbench bench = standardMaking();
    entries.push_back({style.id, styleTitle(style), styleSummary(style), style.parameters,
                       placedOnGrid(style.parameters, standardParameters(style), bench), bench});
  };
  for (const Style& style : styles()) add(style);
  add(blankSheet());
  return entries;
}

std::vector<Entry> extraEntries() {
  std::vector<Entry> entries;
  for (const ExtraKind& kind : extraKinds()) {
    entries.push_back({kind.id, styleText(kind.title), styleText(kind.summary), kind.parameters,
                       ontoGrid(standardExtra(kind, Design().card), Design().grid).parameters,
                       standardMaking(), true});
  }
  return entries;
}

const char* unitName(ParameterKind kind) {
  switch (kind) {
    case ParameterKind::Length:
      return "mm";
    case ParameterKind::Count:
      return "count";
    case ParameterKind::Flag:
      return "flag";
  }
  return "";
}

/// What may be set with all others as they are; lengths rounded inwards to what can be typed.
RawRange rangeOf(const ParameterSpec& spec, const Entry& entry) {
  RawRange range = possibleRange(entry.specs, entry.parameters, entry.bench, spec.key);
  if (spec.kind != ParameterKind::Length) return range;
  const std::int64_t fine = Length::inches(1, 64).nm();
  const ToolGrid readable(mm(0.01));
  if (range.least % fine != 0) range.least = readable.roundUp(Length::nanometres(range.least)).nm();
  if (range.most % fine != 0) range.most = readable.roundDown(Length::nanometres(range.most)).nm();
  return range;
}

/// Lengths in millimetres, counts and flags as whole numbers.
Json valueJson(ParameterKind kind, std::int64_t raw) {
  if (kind == ParameterKind::Length) return Length::nanometres(raw).mm();
  return raw;
}

bool isAutomatic(const ParameterSpec& spec, const Entry& entry) {
  return entry.zeroChooses && spec.kind == ParameterKind::Length && spec.standard == 0;
}

Json parameterJson(const ParameterSpec& spec, const Entry& entry) {
  const RawRange range = rangeOf(spec, entry);
  Json json{{"key", spec.key},
            {"title", parameterTitle(spec).toStdString()},
            {"hint", parameterHint(spec).toStdString()},
            {"unit", unitName(spec.kind)},
            {"default", valueJson(spec.kind, entry.parameters.raw(spec.key))},
            {"minimum", valueJson(spec.kind, range.least)},
            {"maximum", valueJson(spec.kind, range.most)}};
  if (isAutomatic(spec, entry)) json["zero"] = "automatic";
  if (!spec.choices.empty()) json["choices"] = spec.choices;
  return json;
}

/// As it is written on the command line.
QString choiceWord(std::string_view choice) { return text(choice).toLower(); }

QString choiceWords(const ParameterSpec& spec) {
  QStringList words;
  for (const std::string_view choice : spec.choices) words += choiceWord(choice);
  return words.join(QStringLiteral(", "));
}

Json entryJson(const Entry& entry) {
  Json parameters = Json::array();
  for (const ParameterSpec& spec : entry.specs) parameters.push_back(parameterJson(spec, entry));
  return {{"id", entry.id},
          {"title", entry.title.toStdString()},
          {"summary", entry.summary.toStdString()},
          {"parameters", std::move(parameters)}};
}

void printJson(const std::vector<Entry>& entries, const char* what) {
  Json list = Json::array();
  for (const Entry& entry : entries) list.push_back(entryJson(entry));
  const Json page{
      {"format", std::string("creasewright-") + what}, {"version", 1}, {what, std::move(list)}};
  printLine(QString::fromStdString(page.dump(2)));
}

QString valueWords(ParameterKind kind, std::int64_t raw) {
  switch (kind) {
    case ParameterKind::Length:
      return text(exactText(Length::nanometres(raw)));
    case ParameterKind::Count:
      return QString::number(raw);
    case ParameterKind::Flag:
      return raw != 0 ? Cli::tr("yes (1)") : Cli::tr("no (0)");
  }
  return {};
}

QString standardWords(const ParameterSpec& spec, const Entry& entry) {
  if (isAutomatic(spec, entry)) return Cli::tr("automatic (0)");
  const auto choice = static_cast<std::size_t>(spec.standard);
  return choice < spec.choices.size() ? choiceWord(spec.choices[choice])
                                      : valueWords(spec.kind, spec.standard);
}

QString parameterLine(const ParameterSpec& spec, const Entry& entry) {
  const QString start =
      QStringLiteral("    %1 %2").arg(text(spec.key).leftJustified(16), standardWords(spec, entry));
  if (!spec.choices.empty()) {
    return QStringLiteral("%1  %2 (%3)")
        .arg(start.leftJustified(34), parameterTitle(spec), choiceWords(spec));
  }
  if (spec.kind == ParameterKind::Flag)
    return QStringLiteral("%1  %2").arg(start.leftJustified(34), parameterTitle(spec));
  if (isAutomatic(spec, entry)) {
    const QString most = valueWords(spec.kind, rangeOf(spec, entry).most);
    return QStringLiteral("%1  %2 (%3)")
        .arg(start.leftJustified(34), parameterTitle(spec), Cli::tr("or up to %1").arg(most));
  }
  const RawRange limits = rangeOf(spec, entry);
  const QString range =
      Cli::tr("%1 to %2")
          .arg(valueWords(spec.kind, limits.least), valueWords(spec.kind, limits.most));
  return QStringLiteral("%1  %2 (%3)").arg(start.leftJustified(34), parameterTitle(spec), range);
}

void printText(const std::vector<Entry>& entries) {
  for (const Entry& entry : entries) {
    printLine(QStringLiteral("%1  %2").arg(text(entry.id), entry.title));
    printLine(QStringLiteral("    %1").arg(entry.summary));
    for (const ParameterSpec& spec : entry.specs) printLine(parameterLine(spec, entry));
  }
}

int run(const std::vector<Entry>& entries, const char* what, bool json) {
  json ? printJson(entries, what) : printText(entries);
  return ExitHolds;
}

struct StylesOptions {
  SuggestOptions suggest;
  bool json = false;
};

QString stylesHelp() {
  return Cli::tr("list every style and its measures, or rank them for a product");
}

std::function<int()> prepareStyles(Grammar& grammar) {
  const auto o = std::make_shared<StylesOptions>();
  addProduct(grammar, "--for", o->suggest.choices);
  addMaterial(grammar, o->suggest.choices);
  grammar.values("--sheet", "NAME", o->suggest.sheets, Cli::tr("a sheet at hand; may be repeated"));
  grammar.flag("--json", o->json, Cli::tr("for other programs"));
  return [o] {
    return o->suggest.choices.product.empty() ? run(styleEntries(), "styles", o->json)
                                              : runSuggest(o->suggest, o->json);
  };
}

Entry layerEntry() {
  static const std::vector<ParameterSpec> specs = layerParameters();
  return {
      "layer",
      Cli::tr("A layer"),
      Cli::tr("layer=SHAPE begins one on a label, a tag or a bow; keys behind it are the layer's."),
      specs,
      standardLayer(Design().card, Design().grid).parameters,
      standardMaking(),
      true};
}

/// What is set with an extra besides its own measures.
void printCommonKeys() {
  const auto line = [](const char* keys, const QString& words) {
    printLine(QStringLiteral("    %1  %2").arg(QString::fromLatin1(keys).leftJustified(28), words));
  };
  printLine(Cli::tr("With every extra, where it applies"));
  line("card=NAME", Cli::tr("what it is cut from"));
  line("colour=FACE/BACK, pattern=ID",
       Cli::tr("its colours and pattern, as --colour and --pattern"));
  line("face=PIECE:PANEL", Cli::tr("the face it belongs to, such as box:front"));
  line("host=box|NUMBER|KIND",
       Cli::tr(
           "what it lies on: the box, or another extra, such as band, or its place in the list"));
  line("text=LINE/LINE", Cli::tr("what is written on it"));
}

QString extrasHelp() {
  return Cli::tr("list what can go with a box: bands, mats, labels, windows");
}

std::function<int()> prepareExtras(Grammar& grammar) {
  const auto json = std::make_shared<bool>();
  grammar.flag("--json", *json, Cli::tr("for other programs"));
  return [json] {
    const int done = run(extraEntries(), "extras", *json);
    if (*json) return done;
    printText({layerEntry()});
    printCommonKeys();
    return done;
  };
}

}  // namespace

Command stylesCommand() { return {"styles", stylesHelp, prepareStyles}; }

Command extrasCommand() { return {"extras", extrasHelp, prepareExtras}; }

}  // namespace creasewright
