#include "cli/new_command.h"

#include <algorithm>
#include <memory>
#include <optional>

#include "base/file_limits.h"
#include "bridge/problem_text.h"
#include "bridge/text.h"
#include "cli/choices.h"
#include "cli/edit_argument.h"
#include "cli/extra_argument.h"
#include "cli/output.h"
#include "cli/output_argument.h"
#include "cli/pattern_argument.h"
#include "cli/settings_argument.h"
#include "cli/style_argument.h"
#include "document/build.h"
#include "document/design_file.h"
#include "document/file_io.h"
#include "document/limit_problems.h"
#include "document/with_punches.h"
#include "own_stock/stock_store.h"
#include "styles/parameter_text.h"

namespace creasewright {

namespace {

/// An empty text means that the argument was not given.
struct NewOptions {
  std::string style;
  ChoiceOptions choices;
  std::vector<std::string> settings;  ///< KEY=VALUE, in order
  std::vector<std::string> extras;    ///< KIND:KEY=VALUE,…
  std::vector<std::string> edits;     ///< KIND:KEY=VALUE,…
  std::string punches;                ///< a table
  std::string title;
  std::string notes;
  std::string output;
};

/// Applies every --set in order; nothing when one cannot be read (the problem is told).
std::optional<Design> withSettings(Design design, const std::vector<std::string>& settings) {
  for (const std::string& written : settings) {
    const Setting setting = readSetting(written);
    if (!setting.equals) {
      fail(Cli::tr("--set: “%1” has no equals sign. Write KEY=VALUE, such as --set depth=25mm.")
               .arg(shown(written)));
      return std::nullopt;
    }
    Result<Design> changed = withParameter(std::move(design), setting.key, setting.value);
    if (!changed) {
      fail(QStringLiteral("--set"), changed.problem());
      return std::nullopt;
    }
    design = std::move(changed).value();
  }
  return design;
}

/// The sentence for an argument that is missing or cannot serve, or nothing.
QString usageProblem(const NewOptions& options) {
  if (options.style.empty()) {
    return Cli::tr(
        "--style: Say which style, such as --style framed-tray. “creasewright styles” lists "
        "them.");
  }
  if (options.output.empty())
    return Cli::tr("-o: Say where to write the design, such as -o tray.cwdesign.");
  if (!options.output.ends_with(".cwdesign")) {
    return Cli::tr("-o: “%1” is no name for a design. Let it end in .cwdesign.")
        .arg(shown(options.output));
  }
  return {};
}

/// Whether a new design of the style is inside its limits without any --set.
bool startsWithinLimits(const StyleArgument& style, const Choices& choices,
                        const std::optional<Product>& product) {
  const Result<Design> design =
      startDesign(style, product, choices.card, choices.ease, choices.grid);
  return design && limitProblems(*design).empty();
}

/// The argument that brought a measure past its limit: the first without which all is well.
QString argumentBehind(const NewOptions& options, const StyleArgument& style,
                       const Choices& choices) {
  if (!options.settings.empty() && startsWithinLimits(style, choices, choices.product))
    return QStringLiteral("--set");
  if (choices.product && startsWithinLimits(style, choices, std::nullopt))
    return QStringLiteral("--product");
  return options.choices.card.empty() ? QStringLiteral("--style") : QStringLiteral("--card");
}

/// What stands against an extra, when the design can be built at all.
std::optional<Problem> extraProblem(const Design& design) {
  if (design.extras.empty()) return std::nullopt;
  const Result<BuiltDesign> with = build(design);
  Design bare = design;
  bare.extras.clear();
  const Result<BuiltDesign> without = build(bare);
  if (!with || !without) return std::nullopt;
  for (const Problem& problem : with->problems)
    if (problem.severity == Severity::Error &&
        std::ranges::find(without->problems, problem) == without->problems.end())
      return problem;
  return std::nullopt;
}

/// Layers that are punched take the sizes of the table, or of the person's own list.
bool takePunches(const NewOptions& options, Design& design) {
  Result<std::vector<Punch>> punches = std::vector<Punch>();
  if (options.punches.empty()) {
    punches = ownPunches();
    if (punches && punches->empty()) return true;
  } else {
    const Result<std::string> table = readFile(options.punches, kLargestTable);
    if (!table) return fail(QStringLiteral("--punches"), table.problem()), false;
    punches = readPunchTable(*table, options.punches);
  }
  if (!punches) return fail(QStringLiteral("--punches"), punches.problem()), false;
  design = withPunches(std::move(design), *punches);
  return true;
}

/// Why the first of the edits that cannot be made is not.
std::optional<Problem> editProblem(const Design& design) {
  if (design.edits.empty()) return std::nullopt;
  const Result<BuiltDesign> built = build(design);
  if (!built || built->brokenEdits.empty()) return std::nullopt;
  return built->brokenEdits.begin()->second;
}

int runNew(const NewOptions& options) {
  if (const QString problem = usageProblem(options); !problem.isEmpty()) return fail(problem);
  if (!outputServes(options.output, {})) return ExitUsage;
  const std::optional<Choices> choices = readChoices(options.choices, "--product");
  if (!choices) return ExitUsage;
  const std::optional<StyleArgument> style = readStyleArgument(options.style);
  if (!style) return ExitUsage;
  Result<Design> started =
      startDesign(*style, choices->product, choices->card, choices->ease, choices->grid);
  if (!started) return fail(QStringLiteral("--style"), started.problem());
  Design first = std::move(started).value();
  first.board = choices->board;
  std::optional<Design> design = withSettings(std::move(first), options.settings);
  if (!design) return ExitUsage;
  for (const std::string& argument : options.extras) {
    std::optional<Extra> extra = readExtraArgument(argument, *design);
    if (!extra) return ExitUsage;
    design->extras.push_back(std::move(*extra));
  }
  if (!takePunches(options, *design)) return ExitUsage;
  for (const std::string& argument : options.edits) {
    std::optional<Edit> edit = readEditArgument(argument, *design);
    if (!edit) return ExitUsage;
    design->edits.push_back(std::move(*edit));
  }
  if (!options.title.empty()) design->title = text(options.title).toStdString();  // UTF-8 at last
  design->notes = text(options.notes).toStdString();
  if (const auto problem = fileLimitProblem(*design)) {
    const bool ofEdits = problem->where.starts_with("edits");
    return fail(problem->where == "title"   ? QStringLiteral("--title")
                : problem->where == "notes" ? QStringLiteral("--notes")
                : ofEdits                   ? QStringLiteral("--edit")
                                            : QStringLiteral("--extra"),
                *problem);
  }
  if (const Problems limits = limitProblems(*design); !limits.empty()) {
    QStringList sentences;
    for (const Problem& limit : limits) sentences += problemSentence(limit, unitOf(design->grid));
    return fail(QStringLiteral("%1: %2").arg(argumentBehind(options, *style, *choices),
                                             sentences.join(QLatin1Char(' '))));
  }
  if (const auto problem = editProblem(*design)) return fail(QStringLiteral("--edit"), *problem);
  if (const auto problem = extraProblem(*design)) return fail(QStringLiteral("--extra"), *problem);
  if (const auto problem = writeDesignFile(*design, options.output))
    return fail(QStringLiteral("-o"), *problem);
  return ExitHolds;
}

QString newHelp() { return Cli::tr("write a new design"); }

std::function<int()> prepareNew(Grammar& grammar) {
  const auto o = std::make_shared<NewOptions>();
  grammar.value("--style", "ID", o->style,
                Cli::tr("id of a style, such as framed-tray, or a .cwstyle file"));
  addProduct(grammar, "--product", o->choices);
  grammar.values("--set", "KEY=VALUE", o->settings,
                 Cli::tr("one measure of the style; may be repeated"));
  grammar.values("--extra", "KIND[:KEY=VALUE,...]", o->extras,
                 Cli::tr("what goes with the box, such as label:shape=oval,text=Plum jam; "
                         "may be repeated"));
  grammar.value("--punches", "FILE.csv", o->punches,
                Cli::tr("table of your punches: shape, width, height; punched layers take their "
                        "sizes"));
  grammar.values("--edit", "KIND:on=PANEL,...", o->edits,
                 Cli::tr("a change to the net, such as opening:on=front,shape=heart; may be "
                         "repeated"));
  addMaterial(grammar, o->choices);
  grammar.value("--board", "WIDTH", o->choices.board,
                Cli::tr("how wide the scoring board is, such as 12in or 30cm"));
  grammar.value("--title", "TEXT", o->title, Cli::tr("title on the printed pages"));
  grammar.value("--notes", "TEXT", o->notes, Cli::tr("what to remember of the design"));
  grammar.value("-o,--output", "FILE.cwdesign", o->output, Cli::tr("file to write"));
  return [o] { return runNew(*o); };
}

/// An SVG that becomes a paper is drawn.
bool newPaints(std::span<const char* const> arguments) {
  return std::ranges::any_of(arguments, namesPicture);
}

}  // namespace

Command newCommand() { return {"new", newHelp, prepareNew, newPaints}; }

}  // namespace creasewright
