#include "cli/export_command.h"

#include <QDateTime>
#include <QFileInfo>
#include <QStringList>
#include <algorithm>
#include <array>
#include <memory>
#include <optional>
#include <string_view>
#include <utility>
#include <vector>

#include "base/excerpt.h"
#include "bridge/label_text.h"
#include "bridge/text.h"
#include "cli/choice_names.h"
#include "cli/folded_argument.h"
#include "cli/names_argument.h"
#include "cli/output.h"
#include "cli/output_argument.h"
#include "cli/several_designs.h"
#include "cli/size_argument.h"
#include "document/design_units.h"
#include "pages/calibration_page.h"
#include "pages/print_correction.h"
#include "papers/template/export.h"
#include "units/length_text.h"
#include "units/millimetres.h"

namespace creasewright {

namespace {

/// An empty text means that the argument was not given.
struct ExportOptions {
  std::vector<std::string> files;
  std::string output;
  std::string as;
  std::string names;
  std::string piece;
  std::string paper;
  std::string units;
  std::string kind;
  std::string margin;
  std::string printed;
  std::string scores;
  std::string kerf;
  std::string innerKerf;
  std::string sheet;
  std::string bleed;
  std::string side;
  bool noCuts = false;
  bool black = false;
  bool outlines = false;
  FoldedOptions picture;
};

struct ScoreName {
  std::string_view name;
  ScoreForm form;
};

constexpr std::array kScoreForms{ScoreName{"lines", ScoreForm::Line},
                                 ScoreName{"dashes", ScoreForm::Dashes},
                                 ScoreName{"perforation", ScoreForm::Perforation}};

struct KindName {
  std::string_view name;
  TemplateKind kind;
};

constexpr std::array kTemplateKinds{KindName{"scored", TemplateKind::CutAndScore},
                                    KindName{"coloured", TemplateKind::Coloured},
                                    KindName{"tracing", TemplateKind::Tracing},
                                    KindName{"mirrored", TemplateKind::Mirrored},
                                    KindName{"ink-saving", TemplateKind::InkSaving},
                                    KindName{"strips", TemplateKind::ScoreStrips},
                                    KindName{"calibration", TemplateKind::Calibration},
                                    KindName{"printed", TemplateKind::Printed}};

struct SideName {
  std::string_view name;
  PrintedSides sides;
};

constexpr std::array kPrintedSides{SideName{"face", PrintedSides::Face},
                                   SideName{"back", PrintedSides::Back},
                                   SideName{"both", PrintedSides::Both}};

bool intoFolder(const ExportOptions& options) {
  return text(options.output).endsWith(QLatin1Char('/'));
}

/// Of the files that are written: templates as PDF where only a folder is named.
QString endingOf(const ExportOptions& options) {
  if (!options.as.empty()) return text(options.as).toLower();
  if (intoFolder(options)) return QStringLiteral("pdf");
  return QFileInfo(text(options.output)).suffix().toLower();
}

/// The same for what only machines ask for.
QString machineProblem(const ExportOptions& options, const QString& ending) {
  const bool machine = ending == QLatin1String("svg") || ending == QLatin1String("dxf");
  const std::array<std::pair<const char*, bool>, 5> asked{
      {{"--scores", !options.scores.empty()},
       {"--kerf", !options.kerf.empty()},
       {"--inner-kerf", !options.innerKerf.empty()},
       {"--sheet", !options.sheet.empty()},
       {"--outlines", options.outlines}}};
  for (const auto& [name, there] : asked) {
    if (there && (!machine || options.picture.folded))
      return Cli::tr("%1: Only a net as SVG or DXF is made for a machine.").arg(text(name));
    if (there && options.kind == "coloured")
      return Cli::tr("%1: A net in colours is not made for a machine. Leave out --kind coloured.")
          .arg(text(name));
  }
  if (!options.scores.empty() &&
      std::ranges::find(kScoreForms, options.scores, &ScoreName::name) == kScoreForms.end())
    return Cli::tr("--scores: “%1” is no form of score. Choose one of: %2.")
        .arg(shown(options.scores), namesOf(kScoreForms, QStringLiteral(", ")));
  if (!options.names.empty() && ending != QLatin1String("pdf"))
    return Cli::tr("--names: Only a template as PDF is made for somebody. Let -o end in .pdf.");
  return {};
}

/// The same for what only printed papers ask for.
QString printedProblem(const ExportOptions& options, const QString& ending) {
  const bool printed = options.kind == "printed";
  const std::array<std::pair<const char*, bool>, 4> asked{{{"--bleed", !options.bleed.empty()},
                                                           {"--side", !options.side.empty()},
                                                           {"--no-cuts", options.noCuts},
                                                           {"--black", options.black}}};
  for (const auto& [name, there] : asked)
    if (there && !printed)
      return Cli::tr("%1: Only printed papers have that. Add --kind printed.").arg(text(name));
  if (!options.side.empty() &&
      std::ranges::find(kPrintedSides, options.side, &SideName::name) == kPrintedSides.end())
    return Cli::tr("--side: “%1” is no side of a printed paper. Choose one of: %2.")
        .arg(shown(options.side), namesOf(kPrintedSides, QStringLiteral(", ")));
  const bool pages = ending == QLatin1String("pdf") || ending == QLatin1String("svg") ||
                     ending == QLatin1String("png");
  if (printed && (!pages || options.picture.folded))
    return Cli::tr("--kind: Printed papers are pages. Let -o end in .pdf, .svg or .png.");
  if (options.kind == "coloured" && ending == QLatin1String("svg") && !options.picture.folded)
    return {};
  if (!options.kind.empty() && !printed && ending != QLatin1String("pdf"))
    return Cli::tr("--kind: Only a template as PDF comes in kinds. Let -o end in .pdf.");
  return {};
}

/// The sentence for an argument that is missing or cannot serve, or nothing.
QString usageProblem(const ExportOptions& options) {
  if (options.output.empty()) return Cli::tr("-o: Say where to write, such as -o tray.pdf.");
  if (const QString problem =
          severalProblem(options.files, options.output, options.as, exportEndings());
      !problem.isEmpty())
    return problem;
  const QString ending = endingOf(options);
  if (!exportEndings().contains(ending)) {
    return Cli::tr("-o: “%1” names no kind of file. Let it end in .%2.")
        .arg(shown(options.output), exportEndings().join(Cli::tr(" or .", "between file endings")));
  }
  if (const QString problem = foldedProblem(options.picture, ending, options.piece);
      !problem.isEmpty())
    return problem;
  if (!options.kind.empty() &&
      std::ranges::find(kTemplateKinds, options.kind, &KindName::name) == kTemplateKinds.end())
    return Cli::tr("--kind: “%1” is no kind of template. Choose one of: %2.")
        .arg(shown(options.kind), namesOf(kTemplateKinds, QStringLiteral(", ")));
  if (const QString problem = printedProblem(options, ending); !problem.isEmpty()) return problem;
  if (!options.printed.empty() && ending != QLatin1String("pdf"))
    return Cli::tr("--printed: Only a PDF is corrected for a printer. Let -o end in .pdf.");
  if (!options.units.empty() && options.units != "in" && options.units != "mm")
    return Cli::tr("--units: “%1” is no unit here. Write in or mm.").arg(shown(options.units));
  return machineProblem(options, ending);
}

/// A paper by name, or one of the person's own by its sides. Nothing: the problem is told.
std::optional<Paper> exportPaper(const ExportOptions& options, bool inches) {
  const std::string_view usual = inches ? "letter" : "a4";
  const Result<Paper> paper = findPaper(options.paper.empty() ? usual : options.paper);
  if (paper) return *paper;
  const bool sides =
      std::ranges::any_of(options.paper, [](char c) { return c >= '0' && c <= '9'; });
  if (sides && options.paper.find('x') != std::string::npos) {
    const auto size = readSize("--paper", options.paper, {mm(80), mm(2000)});
    if (!size) return std::nullopt;
    return ownPaper(size->first, size->second);
  }
  fail(QStringLiteral("--paper"), paper.problem());
  return std::nullopt;
}

/// Takes over how the bars of the calibration page came out. False: the problem is told.
bool correct(const std::string& printed, ExportChoices& choices) {
  if (printed.empty()) return true;
  const auto sizes = readSize("--printed", printed, {mm(20), mm(2000)});
  if (!sizes) return false;
  const CalibrationPage bars =
      calibrationPage(choices.setup, choices.unit, wordingIn(choices.unit));
  const Result<PrintCorrection> correction =
      correctionFor({bars.across, sizes->first}, {bars.down, sizes->second});
  if (correction)
    choices.setup.correction = *correction;
  else
    fail(QStringLiteral("--printed"), correction.problem());
  return correction.ok();
}

/// A width of cut from none to 5 mm. False: the problem is told.
bool readKerf(const char* argument, const std::string& written, Unit unit, double& kerf) {
  if (written.empty()) return true;
  const Result<Length> length = parseLength(written, unit);
  if (!length) {
    fail(QString::fromLatin1(argument), length.problem());
    return false;
  }
  if (*length < Length() || *length > mm(5)) {
    fail(Cli::tr("%1: “%2” is no width of a cut here. Write 0 to 5 mm.")
             .arg(QString::fromLatin1(argument), shown(written)));
    return false;
  }
  kerf = length->mm();
  return true;
}

/// What a machine is to be given. False: the problem is told.
bool readMachine(const ExportOptions& options, ExportChoices& choices) {
  MachineExport& machine = choices.machine;
  for (const ScoreName& each : kScoreForms)
    if (each.name == options.scores) machine.lines.scores = each.form;
  Kerf& kerf = machine.lines.kerf;
  if (!readKerf("--kerf", options.kerf, choices.unit, kerf.outer)) return false;
  kerf.inner = kerf.outer;
  if (!readKerf("--inner-kerf", options.innerKerf, choices.unit, kerf.inner)) return false;
  machine.outlines = options.outlines;
  if (options.sheet.empty()) return true;
  const auto size = readSize("--sheet", options.sheet, {mm(50), mm(3000)});
  if (size) machine.sheet = PartSize{size->first.mm(), size->second.mm()};
  return size.has_value();
}

/// What printed papers are to be like. False: the problem is told.
bool readPrinted(const ExportOptions& options, ExportChoices& choices) {
  for (const SideName& each : kPrintedSides)
    if (each.name == options.side) choices.printed.sides = each.sides;
  choices.printed.cuts = !options.noCuts;
  choices.printed.black = options.black;
  if (options.bleed.empty()) return true;
  const Result<Length> bleed = parseLength(options.bleed, choices.unit);
  const bool within = bleed && *bleed >= Length() && *bleed <= Length::mm(kMostBleed);
  if (within)
    choices.printed.bleed = bleed->mm();
  else
    fail(QStringLiteral("--bleed"),
         Problem{ProblemCode::BleedOff, {}, {excerpt(options.bleed), Length::mm(kMostBleed)}});
  return within;
}

/// Nothing when the paper or the margin is not known; the problem is told.
std::optional<ExportChoices> choicesFor(const ExportOptions& options, const Design& design) {
  const bool inches = options.units.empty() ? measuresInInches(design) : options.units == "in";
  const std::optional<Paper> paper = exportPaper(options, inches);
  if (!paper) return std::nullopt;
  ExportChoices choices;
  choices.piece = text(options.piece);
  choices.setup.paper = *paper;
  if (!options.margin.empty()) {
    const Result<Length> margin =
        parseLength(options.margin, inches ? Unit::Inch : Unit::Millimetre);
    if (!margin) {
      fail(QStringLiteral("--margin"), margin.problem());
      return std::nullopt;
    }
    choices.setup.margin = margin->mm();
  }
  for (const KindName& each : kTemplateKinds)
    if (each.name == options.kind) choices.kind = each.kind;
  readFolded(options.picture, choices);
  choices.unit = inches ? Unit::Inch : Unit::Millimetre;
  choices.now = QDateTime::currentDateTime();
  if (!correct(options.printed, choices) || !readMachine(options, choices) ||
      !readPrinted(options, choices))
    return std::nullopt;
  const std::optional<QStringList> names = readNames(options.names);
  if (!names) return std::nullopt;
  choices.names = *names;
  return choices;
}

/// The sentence for a piece or a stage that the design does not have, or nothing.
QString missingProblem(const ExportOptions& options, const BuiltDesign& built) {
  const std::string& name = options.piece;
  QStringList names;
  for (const BuiltPiece& piece : built.pieces) names.append(text(piece.name));
  if (name.empty() || names.contains(text(name))) return stageProblem(options.picture, built, name);
  return Cli::tr("--piece: The design has no piece “%1”. Its pieces are: %2.")
      .arg(shown(name), names.join(QStringLiteral(", ")));
}

/// Builds one design and makes its files. Nothing: the problem is told.
std::optional<FolderFiles> filesOf(const NamedDesign& named, const ExportOptions& options) {
  const std::optional<ExportChoices> choices = choicesFor(options, named.design);
  if (!choices) return std::nullopt;
  const Result<BuiltDesign> built = build(named.design);
  if (!built) {
    fail(text(named.file), built.problem());
    return std::nullopt;
  }
  if (const QString problem = missingProblem(options, *built); !problem.isEmpty()) {
    fail(problem);
    return std::nullopt;
  }
  Result<FolderFiles> files =
      exportedFiles(*built, named.stem + QLatin1Char('.') + endingOf(options), *choices);
  if (files) return std::move(*files);
  fail(text(named.file), files.problem());
  return std::nullopt;
}

/// One file for each design, all of them or none.
int exportIntoFolder(const std::vector<NamedDesign>& designs, const ExportOptions& options) {
  FolderFiles all;
  for (const NamedDesign& named : designs) {
    const std::optional<FolderFiles> files = filesOf(named, options);
    if (!files) return ExitUsage;
    all.insert(all.end(), files->begin(), files->end());
  }
  if (const auto problem = writeFolder(text(options.output), all))
    return fail(QStringLiteral("-o"), *problem);
  return ExitHolds;
}

int exportOne(const Design& design, const ExportOptions& options) {
  const std::optional<ExportChoices> choices = choicesFor(options, design);
  if (!choices) return ExitUsage;
  const Result<BuiltDesign> built = build(design);
  if (!built) return fail(QStringLiteral("FILE"), built.problem());
  if (const QString problem = missingProblem(options, *built); !problem.isEmpty())
    return fail(problem);
  if (const auto problem = exportDesign(*built, text(options.output), *choices))
    return fail(QStringLiteral("-o"), *problem);
  return ExitHolds;
}

int runExport(const ExportOptions& options) {
  const std::optional<std::vector<NamedDesign>> designs = readDesignArguments(options.files);
  if (!designs) return ExitUsage;
  if (const QString problem = usageProblem(options); !problem.isEmpty()) return fail(problem);
  if (!outputServes(options.output, options.files)) return ExitUsage;
  return intoFolder(options) ? exportIntoFolder(*designs, options)
                             : exportOne(designs->front().design, options);
}

QString exportHelp() { return Cli::tr("write the template or the net"); }

std::function<int()> prepareExport(Grammar& grammar) {
  const auto o = std::make_shared<ExportOptions>();
  grammar.files(o->files, Cli::tr("designs to export; - is standard input"));
  grammar.value("-o,--output", "OUT.(svg|dxf|pdf|png|json)|FOLDER/", o->output,
                Cli::tr("file to write, or a folder for a file of each design"));
  grammar.value("--as", exportEndings().join(QLatin1Char('|')).toUtf8(), o->as,
                Cli::tr("kind of the files in a folder, pdf"));
  grammar.value("--names", "NAME,...|FILE.cwkit", o->names,
                Cli::tr("a set of template pages for each taker, in one PDF"));
  grammar.value("--scores", namesOf(kScoreForms, QStringLiteral("|")).toUtf8(), o->scores,
                Cli::tr("what a machine makes of scores (SVG, DXF)"));
  grammar.value("--kerf", "LENGTH", o->kerf,
                Cli::tr("how wide the machine cuts: outlines move by half of it (SVG, DXF)"));
  grammar.value("--inner-kerf", "LENGTH", o->innerKerf,
                Cli::tr("the same for openings, where it differs"));
  grammar.value(
      "--sheet", "WIDTHxHEIGHT", o->sheet,
      Cli::tr("all pieces, as often as they are made, on sheets of this size (SVG, DXF)"));
  grammar.flag("--outlines", o->outlines, Cli::tr("words as outlines, not as type (SVG, DXF)"));
  grammar.value("--piece", "NAME", o->piece, Cli::tr("only this piece"));
  grammar.value("--paper", "NAME", o->paper,
                Cli::tr("paper of a PDF: a4, letter ..., or its sides, such as 200x250mm"));
  grammar.value("--margin", "LENGTH", o->margin, Cli::tr("what the printer leaves white, 5mm"));
  grammar.value("--printed", "ACROSSxDOWN", o->printed,
                Cli::tr("how the bars of the calibration page came out of the printer, such as "
                        "159.5x240.5mm: corrects a PDF for it"));
  grammar.value("--kind", namesOf(kTemplateKinds, QStringLiteral("|")).toUtf8(), o->kind,
                Cli::tr("kind of template, score guide strips, the calibration page (PDF), or "
                        "colours and patterns to print and cut (PDF, SVG, PNG); coloured: the "
                        "template over the colours of its card (PDF), and so the net (SVG)"));
  grammar.value("--bleed", "LENGTH", o->bleed,
                Cli::tr("how far printed papers run beyond the cuts, 3mm"));
  grammar.value("--side", namesOf(kPrintedSides, QStringLiteral("|")).toUtf8(), o->side,
                Cli::tr("side of printed papers; both: front and back in turn, to print on both "
                        "sides of the card"));
  grammar.flag("--no-cuts", o->noCuts, Cli::tr("printed papers without their cut lines"));
  grammar.flag("--black", o->black, Cli::tr("printed papers for a printer without colours"));
  grammar.value("--units", "in|mm", o->units, Cli::tr("units of printed measures"));
  addFoldedArguments(grammar, o->picture);
  return [o] { return runExport(*o); };
}

/// Other files are written without Qt's painting, and quicker.
bool exportPaints(std::span<const char* const> arguments) {
  return std::ranges::any_of(
      arguments,
      [](std::string_view argument) {
        return argument.ends_with(".pdf") || argument.ends_with(".png") ||
               argument.ends_with('/') || argument == "--outlines";
      });
}

}  // namespace

Command exportCommand() { return {"export", exportHelp, prepareExport, exportPaints}; }

}  // namespace creasewright
