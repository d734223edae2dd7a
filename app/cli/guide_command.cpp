#include "cli/guide_command.h"

#include <QDateTime>
#include <QFileInfo>
#include <QLocale>
#include <memory>
#include <optional>
#include <vector>

#include "bridge/language.h"
#include "bridge/text.h"
#include "cli/output.h"
#include "cli/output_argument.h"
#include "cli/photo_argument.h"
#include "cli/several_designs.h"
#include "document/design_units.h"
#include "output/write_folder.h"
#include "papers/guide/guide_photos.h"
#include "papers/guide/readers_guide.h"
#include "papers/guide/write_guide.h"

namespace creasewright {

namespace {

/// An empty text means that the argument was not given.
struct GuideOptions {
  std::vector<std::string> files;
  std::string output;
  std::string as;
  std::string paper;
  std::string units;
  std::string language;
  std::string type;
  std::string kind;
  std::string hand;
  std::string readers;
  bool black = false;
  PhotoOptions photos;  ///< for this guide alone
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

QStringList namesOfReaders() {
  QStringList names;
  for (const ReadersName& each : readersNames()) names += text(each.name.toStdString());
  return names;
}

QStringList namesOfHands() {
  QStringList names;
  for (const HandName& each : handNames()) names += text(each.name.toStdString());
  return names;
}

QStringList kindNames() {
  QStringList names;
  for (const GuideKindName& each : guideKinds()) names += text(each.name.toStdString());
  return names;
}

/// Several designs, or a kind of file: a file for each goes into the folder.
bool intoFolder(const GuideOptions& options) {
  return options.files.size() > 1 || !options.as.empty();
}

/// Of the file that is written; empty for a folder of pictures.
QString endingOf(const GuideOptions& options) {
  if (!options.as.empty()) return text(options.as).toLower();
  if (intoFolder(options)) return QStringLiteral("pdf");
  return QFileInfo(text(options.output)).suffix().toLower();
}

/// The sentence for an argument that is missing or cannot serve, or nothing.
QString usageProblem(const GuideOptions& options) {
  const QString output = text(options.output);
  if (const QString problem =
          severalProblem(options.files, options.output, options.as, guideEndings());
      !problem.isEmpty())
    return problem;
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
  if (!options.kind.empty() && options.kind != "steps" && endingOf(options) != QLatin1String("pdf"))
    return Cli::tr("--kind: Only a guide as PDF comes in kinds. Let -o end in .pdf.");
  if (!options.type.empty() && !typeNames().contains(text(options.type))) {
    return Cli::tr("--type: “%1” is no size of type here. Write %2.")
        .arg(shown(options.type), typeNames().join(Cli::tr(" or ", "between choices")));
  }
  if (!options.hand.empty() && !namesOfHands().contains(text(options.hand))) {
    return Cli::tr("--hand: “%1” is no hand. Write %2.")
        .arg(shown(options.hand), namesOfHands().join(Cli::tr(" or ", "between choices")));
  }
  if (!options.language.empty() && !languageCodes().contains(text(options.language))) {
    return Cli::tr("--language: “%1” is no language here. Write %2.")
        .arg(shown(options.language), languageCodes().join(Cli::tr(" or ", "between choices")));
  }
  return {};
}

Hand handOf(const GuideOptions& options) {
  for (const HandName& each : handNames())
    if (each.name == options.hand.c_str()) return each.hand;
  return Hand::Right;
}

/// Photos that will not be seen are no reason to write no guide.
void tellPhotos(const BuiltDesign& built, const GuideOptions& options) {
  for (const QString& warning : photoWarnings(built, handOf(options))) fail(warning);
}

/// The same for those whom the guide is made for.
QString readersProblem(const GuideOptions& options) {
  if (options.readers.empty()) return {};
  if (!namesOfReaders().contains(text(options.readers))) {
    return Cli::tr("--for: “%1” are no readers here. Write %2.")
        .arg(shown(options.readers), namesOfReaders().join(Cli::tr(" or ", "between choices")));
  }
  if (!options.units.empty())
    return Cli::tr("--units: The readers of --for have their own units. Leave one of the two out.");
  if (!options.paper.empty())
    return Cli::tr("--paper: The readers of --for have their own paper. Leave one of the two out.");
  return {};
}

/// As the user said; else those of the design's own grid.
GuideUnits unitsFor(const GuideOptions& options, const Design& design) {
  if (options.units == "both") return GuideUnits::Both;
  const bool inches = options.units.empty() ? measuresInInches(design) : options.units == "in";
  return inches ? GuideUnits::Inch : GuideUnits::Millimetre;
}

/// Nothing when the paper is not known; the problem is told.
std::optional<GuideChoices> choicesFor(const GuideOptions& options, const Design& design) {
  GuideChoices choices;
  choices.units = unitsFor(options, design);
  const bool metric = choices.units == GuideUnits::Millimetre;
  const Result<Paper> paper = findPaper(!options.paper.empty() ? options.paper
                                        : metric               ? "a4"
                                                               : "letter");
  if (!paper) {
    fail(QStringLiteral("--paper"), paper.problem());
    return std::nullopt;
  }
  choices.paper = *paper;
  for (const GuideSizeName& each : guideSizes())
    if (each.name == options.type.c_str()) choices.form.size = each.size;
  for (const GuideKindName& each : guideKinds())
    if (each.name == options.kind.c_str()) choices.kind = each.kind;
  choices.form.hand = handOf(options);
  choices.form.black = options.black;
  choices.language = !options.language.empty()            ? text(options.language)
                     : QLocale().language() == QLocale::C ? QStringLiteral("en")
                                                          : QLocale().bcp47Name();
  choices.now = QDateTime::currentDateTime();
  return choices;
}

/// None = as the design is.
std::vector<Readers> readersOf(const GuideOptions& options) {
  for (const ReadersName& each : readersNames())
    if (each.name == options.readers.c_str()) return each.readers;
  return {};
}

/// The guide of one design, or one for each kind of readers. False: the problem is told.
bool addGuides(const NamedDesign& named, const GuideOptions& options, FolderFiles& files) {
  const std::optional<GuideChoices> choices = choicesFor(options, named.design);
  if (!choices) return false;
  const auto told = [&named](const Problem& problem) {
    fail(text(named.file), problem);
    return false;
  };
  const Result<BuiltDesign> built = build(named.design);
  if (!built) return told(built.problem());
  tellPhotos(*built, options);
  const std::vector<Readers> readers = readersOf(options);
  const QString ending = endingOf(options);
  const QString name = named.stem + QLatin1Char('.') + ending;
  const auto add = [&](const QString& file, const BuiltDesign& of, const GuideChoices& how) {
    Result<QByteArray> bytes = guideBytes(of, ending, how);
    if (!bytes) return told(bytes.problem());
    files.emplace_back(file, std::move(*bytes));
    return true;
  };
  if (readers.empty()) return add(name, *built, *choices);
  for (const Readers each : readers) {
    const Result<ReadersGuide> guide = guideFor(each, *built, *choices);
    if (!guide) return told(guide.problem());
    if (!add(readersPath(name, each, readers.size() > 1), guide->built, guide->choices))
      return false;
  }
  return true;
}

/// A file for each design, all of them or none.
int guidesIntoFolder(const std::vector<NamedDesign>& designs, const GuideOptions& options) {
  FolderFiles files;
  for (const NamedDesign& named : designs)
    if (!addGuides(named, options, files)) return ExitUsage;
  if (const auto problem = writeFolder(text(options.output), files))
    return fail(QStringLiteral("-o"), *problem);
  return ExitHolds;
}

int guideOne(const Design& design, const GuideOptions& options) {
  const std::optional<GuideChoices> choices = choicesFor(options, design);
  if (!choices) return ExitUsage;
  const std::optional<Design> whole = withPhotos(design, options.photos, handOf(options));
  if (!whole) return ExitUsage;
  const Result<BuiltDesign> built = build(*whole);
  if (!built) return fail(QStringLiteral("FILE"), built.problem());
  tellPhotos(*built, options);
  const QString path = text(options.output);
  if (const std::vector<Readers> readers = readersOf(options); !readers.empty()) {
    const auto problem = writeGuides(readers, *built, path, *choices);
    return problem ? fail(QStringLiteral("--for"), *problem) : ExitHolds;
  }
  if (const auto problem = writeGuide(*built, path, *choices))
    return fail(QStringLiteral("-o"), *problem);
  return ExitHolds;
}

int runGuide(const GuideOptions& options) {
  const std::optional<std::vector<NamedDesign>> designs = readDesignArguments(options.files);
  if (!designs) return ExitUsage;
  if (const QString problem = usageProblem(options); !problem.isEmpty()) return fail(problem);
  if (const QString problem = readersProblem(options); !problem.isEmpty()) return fail(problem);
  if (options.photos.any() && intoFolder(options))
    return fail(
        Cli::tr("--photo: Photos go into the guide of one design. Keep them in the designs "
                "with “creasewright photos”."));
  std::vector<std::string> read = options.photos.pictures();
  read.insert(read.end(), options.files.begin(), options.files.end());
  if (!outputServes(options.output, read)) return ExitUsage;
  if (!options.language.empty()) useLanguage(text(options.language));
  return intoFolder(options) ? guidesIntoFolder(*designs, options)
                             : guideOne(designs->front().design, options);
}

QString guideHelp() { return Cli::tr("write the illustrated guide"); }

std::function<int()> prepareGuide(Grammar& grammar) {
  const auto o = std::make_shared<GuideOptions>();
  grammar.files(o->files, Cli::tr("designs to explain; - is standard input"));
  grammar.value("-o,--output", "OUT.(pdf|html)|FOLDER/", o->output,
                Cli::tr("file to write, or a folder for pictures and text"));
  grammar.value("--as", guideEndings().join(QLatin1Char('|')).toUtf8(), o->as,
                Cli::tr("a file of this kind for each design in the folder, pdf for several"));
  grammar.value("--units", "in|mm|both", o->units, Cli::tr("units of all measures"));
  grammar.value("--paper", "NAME", o->paper, Cli::tr("paper of a PDF: a4, letter ..."));
  grammar.value(
      "--for", namesOfReaders().join(QLatin1Char('|')).toUtf8(), o->readers,
      Cli::tr("make the design anew for the rulers, card and paper of these readers; both "
              "writes two files"));
  grammar.value("--language", languageCodes().join(QLatin1Char('|')).toUtf8(), o->language,
                Cli::tr("language of the guide"));
  grammar.value("--kind", kindNames().join(QLatin1Char('|')).toUtf8(), o->kind,
                Cli::tr("all steps, a card of measures, or a talk sheet (PDF)"));
  grammar.value("--type", typeNames().join(QLatin1Char('|')).toUtf8(), o->type,
                Cli::tr("size of the type: 10.5, 14 or 18 points"));
  grammar.value("--hand", namesOfHands().join(QLatin1Char('|')).toUtf8(), o->hand,
                Cli::tr("hand that holds the tool: the fence and the numbers stand on its other "
                        "side"));
  addPhotos(grammar, o->photos);
  grammar.flag("--black", o->black, Cli::tr("for a printer without colours"));
  return [o] { return runGuide(*o); };
}

bool guidePaints(std::span<const char* const>) { return true; }

}  // namespace

Command guideCommand() { return {"guide", guideHelp, prepareGuide, guidePaints}; }

}  // namespace creasewright
