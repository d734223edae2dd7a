#include "cli/guide_command.h"

#include <QDateTime>
#include <QFileInfo>
#include <QLocale>
#include <memory>
#include <optional>

#include "bridge/language.h"
#include "bridge/text.h"
#include "cli/design_argument.h"
#include "cli/output.h"
#include "cli/output_argument.h"
#include "document/design_units.h"
#include "papers/guide/write_guide.h"

namespace creasewright {

namespace {

/// An empty text means that the argument was not given.
struct GuideOptions {
  std::string file;
  std::string output;
  std::string paper;
  std::string units;
  std::string language;
  std::string type;
  std::string kind;
  bool black = false;
};

QStringList languageCodes() {
  QStringList codes;
  for (const Language& language : languages()) codes += language.code;
  return codes;
}

QStringList typeNames() {
  QStringList names;
  for (const GuideSizeName& each : guideSizes()) names += text(each.name.toStdString());
  return names;
}

QStringList kindNames() {
  QStringList names;
  for (const GuideKindName& each : guideKinds()) names += text(each.name.toStdString());
  return names;
}

/// The sentence for an argument that is missing or cannot serve, or nothing.
QString usageProblem(const GuideOptions& options) {
  const QString output = text(options.output);
  if (output.isEmpty()) return Cli::tr("-o: Say where to write, such as -o guide.pdf.");
  if (!namesGuideFolder(output) && !guideEndings().contains(QFileInfo(output).suffix().toLower())) {
    return Cli::tr(
               "-o: “%1” names no kind of guide. Let it end in .pdf or .html, or in / for a "
               "folder of pictures.")
        .arg(shown(options.output));
  }
  if (!options.units.empty() && options.units != "in" && options.units != "mm" &&
      options.units != "both") {
    return Cli::tr("--units: “%1” is no unit here. Write in, mm or both.")
        .arg(shown(options.units));
  }
  if (!options.kind.empty() && !kindNames().contains(text(options.kind))) {
    return Cli::tr("--kind: “%1” is no kind of guide. Write %2.")
        .arg(shown(options.kind), kindNames().join(Cli::tr(" or ", "between choices")));
  }
  if (!options.kind.empty() && options.kind != "steps" &&
      QFileInfo(output).suffix().toLower() != QLatin1String("pdf"))
    return Cli::tr("--kind: Only a guide as PDF comes in kinds. Let -o end in .pdf.");
  if (!options.type.empty() && !typeNames().contains(text(options.type))) {
    return Cli::tr("--type: “%1” is no size of type here. Write %2.")
        .arg(shown(options.type), typeNames().join(Cli::tr(" or ", "between choices")));
  }
  if (!options.language.empty() && !languageCodes().contains(text(options.language))) {
    return Cli::tr("--language: “%1” is no language here. Write %2.")
        .arg(shown(options.language), languageCodes().join(Cli::tr(" or ", "between choices")));
  }
  return {};
}

/// As the user said; else those of the design's own grid.
GuideUnits unitsFor(const GuideOptions& options, const Design& design) {
  if (options.units == "both") return GuideUnits::Both;
  const bool inches = options.units.empty() ? measuresInInches(design) : options.units == "in";
  return inches ? GuideUnits::Inch : GuideUnits::Millimetre;
}

int runGuide(const GuideOptions& options) {
  const std::optional<Design> design = readDesignArgument(options.file);
  if (!design) return ExitUsage;
  if (const QString problem = usageProblem(options); !problem.isEmpty()) return fail(problem);
  if (!outputServes(options.output, {options.file})) return ExitUsage;
  GuideChoices choices;
  choices.units = unitsFor(options, *design);
  const bool metric = choices.units == GuideUnits::Millimetre;
  const Result<Paper> paper = findPaper(!options.paper.empty() ? options.paper
                                        : metric               ? "a4"
                                                               : "letter");
  if (!paper) return fail(QStringLiteral("--paper"), paper.problem());
  choices.paper = *paper;
  for (const GuideSizeName& each : guideSizes())
    if (each.name == options.type.c_str()) choices.form.size = each.size;
  for (const GuideKindName& each : guideKinds())
    if (each.name == options.kind.c_str()) choices.kind = each.kind;
  choices.form.black = options.black;
  if (!options.language.empty()) useLanguage(text(options.language));
  choices.language = !options.language.empty()            ? text(options.language)
                     : QLocale().language() == QLocale::C ? QStringLiteral("en")
                                                          : QLocale().bcp47Name();
  choices.now = QDateTime::currentDateTime();
  const Result<BuiltDesign> built = build(*design);
  if (!built) return fail(QStringLiteral("FILE"), built.problem());
  if (const auto problem = writeGuide(*built, text(options.output), choices))
    return fail(QStringLiteral("-o"), *problem);
  return ExitHolds;
}

QString guideHelp() { return Cli::tr("write the illustrated guide"); }

std::function<int()> prepareGuide(Grammar& grammar) {
  const auto o = std::make_shared<GuideOptions>();
  grammar.file(o->file, Cli::tr("design to explain"));
  grammar.value("-o,--output", "OUT.(pdf|html)|FOLDER/", o->output,
                Cli::tr("file to write, or a folder for pictures and text"));
  grammar.value("--units", "in|mm|both", o->units, Cli::tr("units of all measures"));
  grammar.value("--paper", "NAME", o->paper, Cli::tr("paper of a PDF: a4, letter ..."));
  grammar.value("--language", languageCodes().join(QLatin1Char('|')).toUtf8(), o->language,
                Cli::tr("language of the guide"));
  grammar.value("--kind", kindNames().join(QLatin1Char('|')).toUtf8(), o->kind,
                Cli::tr("all steps, a card of measures, or a talk sheet (PDF)"));
  grammar.value("--type", typeNames().join(QLatin1Char('|')).toUtf8(), o->type,
                Cli::tr("size of the type: 10.5, 14 or 18 points"));
  grammar.flag("--black", o->black, Cli::tr("for a printer without colours"));
  return [o] { return runGuide(*o); };
}

bool guidePaints(std::span<const char* const>) { return true; }

}  // namespace

Command guideCommand() { return {"guide", guideHelp, prepareGuide, guidePaints}; }

}  // namespace creasewright
