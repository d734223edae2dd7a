#include "cli/kit_command.h"

#include <QDateTime>
#include <QFileInfo>
#include <memory>
#include <optional>

#include "bridge/text.h"
#include "cli/design_argument.h"
#include "cli/kit_argument.h"
#include "cli/output.h"
#include "cli/output_argument.h"
#include "cli/planning_notice.h"
#include "cli/size_argument.h"
#include "kits/first_sheet.h"
#include "kits/plan_kit.h"
#include "papers/kit/class_folder.h"
#include "papers/kit/machine_files.h"
#include "papers/kit/write_kit.h"

namespace creasewright {

namespace {

bool namesFolder(const std::string& output) {
  return QFileInfo(text(output)).suffix().isEmpty() || text(output).endsWith(QLatin1Char('/'));
}

QString usageProblem(const KitOptions& options) {
  if (options.files.empty() && options.blanks.empty())
    return Cli::tr("FILE: Name a kit or the designs everybody makes, such as tray.cwdesign.");
  if (options.output.empty()) return Cli::tr("-o: Say where to write, such as -o class.pdf.");
  if (!options.units.empty() && options.units != "in" && options.units != "mm")
    return Cli::tr("--units: “%1” is no unit here. Write in or mm.").arg(shown(options.units));
  if (namesFolder(options.output)) return {};
  if (!options.machine.empty())
    return Cli::tr("-o: With --machine name a folder, such as -o machine/.");
  return kitEndings().contains(QFileInfo(text(options.output)).suffix().toLower())
             ? QString()
             : Cli::tr(
                   "-o: “%1” names no kind of plan. Let it end in .pdf, .json, .csv or .cwkit, "
                   "or in / for a folder with all a class needs.")
                   .arg(shown(options.output));
}

/// All files it reads that must not be written over; a kit may become itself again.
std::vector<std::string> inputsOf(const KitOptions& options) {
  std::vector<std::string> inputs = options.files;
  if (text(options.output).endsWith(QLatin1String(".cwkit"), Qt::CaseInsensitive)) {
    std::erase_if(
        inputs,
        [](const std::string& file) {
          return text(file).endsWith(QLatin1String(".cwkit"), Qt::CaseInsensitive);
        });
  }
  inputs.insert(inputs.end(), {options.stock, options.supplies, options.names});
  return inputs;
}

/// Nothing when one of them cannot be read; the problem is told.
std::optional<KitChoices> choicesFor(const KitOptions& options, const ClassKit& kit) {
  KitChoices choices;
  const bool inches = options.units.empty() ? measuresInInches(kit) : options.units == "in";
  choices.unit = inches ? Unit::Inch : Unit::Millimetre;
  const Result<Paper> paper = findPaper(!options.paper.empty() ? options.paper
                                        : inches               ? "letter"
                                                               : "a4");
  if (!paper) {
    fail(QStringLiteral("--paper"), paper.problem());
    return std::nullopt;
  }
  choices.paper = *paper;
  choices.now = QDateTime::currentDateTime();
  return choices;
}

/// Nothing when the carrier's size cannot be read; the problem is told.
std::optional<MachineChoices> machineChoices(const KitOptions& options,
                                             const KitChoices& kitChoices) {
  const auto size = readSize("--machine", options.machine);
  if (!size) return std::nullopt;
  MachineChoices choices;
  choices.width = size->first;
  choices.height = size->second;
  choices.paper = kitChoices.paper;
  choices.unit = kitChoices.unit;
  choices.now = kitChoices.now;
  return choices;
}

int told(const std::optional<Problem>& problem) {
  return problem ? fail(QStringLiteral("-o"), *problem) : static_cast<int>(ExitHolds);
}

/// Layouts for a cutting machine instead of a plan for the trimmer.
std::optional<Problem> writeMachine(const KitOptions& options, const BuiltKit& kit,
                                    const MachineChoices& choices) {
  const PlanningNotice notice;
  return writeMachineFolder(kit, text(options.output), choices);
}

/// What the output asks for, planned once and written as it is.
std::optional<Problem> writePlan(const KitOptions& options, BuiltKit kit,
                                 const KitChoices& choices) {
  PlanningNotice notice;
  PlanOptions how = notice.options();
  how.trimmer = choices.unit == Unit::Inch ? ToolGrid::sixteenthInch() : ToolGrid::millimetre();
  Result<KitPlan> plan = planKit(std::move(kit), how);
  if (!plan) return plan.problem();
  const QString output = text(options.output);
  KitPlan whole = std::move(plan).value();
  if (namesFolder(options.output))
    return writeClassFolder(withFindings(std::move(whole)), output, choices);
  // A table tells nothing besides the plan, a file for other programs only what one more takes.
  const QString ending = QFileInfo(output).suffix().toLower();
  if (ending == QLatin1String("json"))
    whole.findings = KitFindings{oneMoreFor(whole), {}};
  else if (ending != QLatin1String("csv"))
    whole = withFindings(std::move(whole));
  return writeKitPlan(whole, output, choices);
}

int runKit(const KitOptions& options) {
  if (const QString problem = usageProblem(options); !problem.isEmpty()) return fail(problem);
  if (!outputServes(options.output, inputsOf(options))) return ExitUsage;
  std::optional<ClassKit> kit = readKitArguments(options);
  const std::optional<KitChoices> choices = kit ? choicesFor(options, *kit) : std::nullopt;
  if (!choices) return ExitUsage;
  std::optional<MachineChoices> machine;
  if (!options.machine.empty()) {
    machine = machineChoices(options, *choices);
    if (!machine) return ExitUsage;
  }
  if (!machine && namesKit(text(options.output)))
    return told(writeKitFile(*kit, text(options.output)));
  Result<BuiltKit> built = buildKit(std::move(*kit));
  if (!built) return told(built.problem());
  return told(machine ? writeMachine(options, *built, *machine)
                      : writePlan(options, std::move(built).value(), *choices));
}

QString kitHelp() { return Cli::tr("plan the sheets of a class"); }

/// What is written, and what is made, of what, for whom.
void addKitContents(Grammar& grammar, KitOptions& o) {
  grammar.files(o.files, Cli::tr("a kit, or the designs everybody makes"));
  grammar.value("-o,--output", "OUT.(pdf|json|csv|cwkit) | FOLDER/", o.output,
                Cli::tr("file to write"));
  grammar.values("--count", "FILE=NUMBER", o.counts,
                 Cli::tr("how many of a design each person makes; may be repeated"));
  grammar.values("--only", "FILE=PIECE", o.only,
                 Cli::tr("cut only one piece of a design; may be repeated"));
  grammar.values("--blank", "SIZE[:KEY=VALUE,...]", o.blanks,
                 Cli::tr("a rectangle for every bag, such as 4x6in:count=2,card=300gsm,"
                         "name=Panel; may be repeated"));
  grammar.value("--title", "TEXT", o.title, Cli::tr("what the class is called"));
  grammar.value("--takers", "NUMBER", o.takers, Cli::tr("how many people"));
  grammar.value("--spares", "NUMBER", o.spares, Cli::tr("sets more than people"));
  grammar.values("--sheet", "NAME|SIZE", o.sheets,
                 Cli::tr("a sheet at hand by name or size; may be repeated"));
  grammar.value("--stock", "FILE.csv", o.stock, Cli::tr("table of sheets with prices, as CSV"));
  grammar.value("--supplies", "FILE.csv", o.supplies,
                Cli::tr("table of tape, ribbon and glue, as CSV"));
  grammar.value("--names", "FILE", o.names, Cli::tr("names for the bags, one a line"));
}

/// How it is cut and printed.
void addKitMaking(Grammar& grammar, KitOptions& o) {
  grammar.value("--label", "WIDTHxHEIGHT", o.label,
                Cli::tr("size of a bag's label, such as 90x50mm"));
  grammar.value("--machine", "WIDTHxHEIGHT", o.machine,
                Cli::tr("size of a cutting machine's carrier sheet, such as 12x12in: writes its "
                        "layouts into a folder"));
  grammar.flag("--keep-grain", o.keepGrain,
               Cli::tr("turn no blank against the grain of its sheet"));
  grammar.flag("--no-extras", o.noExtras,
               Cli::tr("cut no blank that nobody needs: the last sheets only in part"));
  grammar.value("--plan", "easy|fewest", o.plan,
                Cli::tr("what the sheets are planned for: easy (to cut; for a class) or "
                        "fewest (sheets)"));
  grammar.value("--paper", "NAME", o.paper, Cli::tr("paper of a PDF: a4, letter ..."));
  grammar.value("--units", "in|mm", o.units, Cli::tr("units of printed measures"));
}

/// What is charged.
void addKitPrices(Grammar& grammar, KitOptions& o) {
  grammar.value("--currency", "TEXT", o.currency, Cli::tr("printed behind prices, such as EUR"));
  grammar.value("--rate", "MONEY", o.rate, Cli::tr("what an hour of the maker's work costs"));
  grammar.value("--overhead", "PERCENT", o.overhead,
                Cli::tr("on material and work: room, tools, waste; 10"));
  grammar.value("--margin", "PERCENT", o.margin,
                Cli::tr("of the price, not on top of the cost; 30"));
  grammar.value("--fee", "PERCENT", o.fee, Cli::tr("of the price, a market's; 0"));
  grammar.value("--class-costs", "MONEY", o.classCosts,
                Cli::tr("of one class, whoever comes: teacher, room, travel"));
}

std::function<int()> prepareKit(Grammar& grammar) {
  const auto options = std::make_shared<KitOptions>();
  addKitContents(grammar, *options);
  addKitMaking(grammar, *options);
  addKitPrices(grammar, *options);
  return [options] { return runKit(*options); };
}

bool kitPaints(std::span<const char* const>) { return true; }

}  // namespace

Command kitCommand() { return {"kit", kitHelp, prepareKit, kitPaints}; }

}  // namespace creasewright
