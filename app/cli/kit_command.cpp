#include "cli/kit_command.h"

#include <QDateTime>
#include <QFileInfo>
#include <optional>

#include "bridge/text.h"
#include "cli/design_argument.h"
#include "cli/output.h"
#include "kits/write_kit.h"

namespace creasewright {

namespace {

bool namesKit(const std::string& file) {
  return text(file).endsWith(QLatin1String(".cwkit"), Qt::CaseInsensitive);
}

QString usageProblem(const KitOptions& options) {
  if (options.files.empty()) {
    return Cli::tr("FILE: Name a kit or the designs everybody makes, such as tray.cwdesign.");
  }
  if (options.output.empty()) {
    return Cli::tr("-o: Say where to write, such as -o class.pdf.");
  }
  if (!kitEndings().contains(QFileInfo(text(options.output)).suffix().toLower())) {
    return Cli::tr("-o: “%1” names no kind of plan. Let it end in .pdf, .json, .csv or .cwkit.")
        .arg(text(options.output));
  }
  if (!options.units.empty() && options.units != "in" && options.units != "mm") {
    return Cli::tr("--units: “%1” is no unit here. Write in or mm.").arg(text(options.units));
  }
  return {};
}

/// A whole number from an argument; tells when it is none.
std::optional<int> number(const char* argument, const std::string& words, int least) {
  bool fine = false;
  const int value = text(words).toInt(&fine);
  if (!fine || value < least || value > kMostTakers) {
    fail(Cli::tr("%1: “%2” will not do. Write a whole number from %3 to %4.")
             .arg(QLatin1String(argument), text(words))
             .arg(least)
             .arg(kMostTakers));
    return std::nullopt;
  }
  return value;
}

std::optional<ClassKit> kitFrom(const KitOptions& options) {
  if (options.files.size() == 1 && namesKit(options.files.front())) {
    Result<ClassKit> kit = readKitFile(options.files.front());
    if (!kit) {
      fail(QStringLiteral("FILE"), kit.problem());
      return std::nullopt;
    }
    return std::move(kit).value();
  }
  ClassKit kit;
  for (const std::string& file : options.files) {
    std::optional<Design> design = readDesignArgument(file);
    if (!design) {
      return std::nullopt;
    }
    kit.items.push_back({std::move(*design), 1});
  }
  return kit;
}

bool addSheets(const std::vector<std::string>& sheets, ClassKit& kit) {
  if (!sheets.empty()) {
    kit.stock.clear();
  }
  for (const std::string& sheet : sheets) {
    const Result<Paper> paper = findPaper(sheet);
    if (!paper) {
      fail(QStringLiteral("--sheet"), paper.problem());
      return false;
    }
    kit.stock.push_back({std::string(paper->name), paper->width, paper->height, 0, -1});
  }
  if (kit.stock.empty()) {
    fail(Cli::tr("--sheet: Say which sheets there are, such as --sheet 12x12."));
    return false;
  }
  return true;
}

bool addPeople(const KitOptions& options, ClassKit& kit) {
  if (!options.takers.empty()) {
    const auto takers = number("--takers", options.takers, 1);
    if (!takers) {
      return false;
    }
    kit.takers = *takers;
  }
  if (!options.spares.empty()) {
    const auto spares = number("--spares", options.spares, 0);
    if (!spares) {
      return false;
    }
    kit.spares = *spares;
  }
  return true;
}

}  // namespace

int runKit(const KitOptions& options) {
  if (const QString problem = usageProblem(options); !problem.isEmpty()) {
    return fail(problem);
  }
  std::optional<ClassKit> kit = kitFrom(options);
  if (!kit || !addSheets(options.sheets, *kit) || !addPeople(options, *kit)) {
    return ExitUsage;
  }
  KitChoices choices;
  choices.unit = options.units == "in" ? Unit::Inch : Unit::Millimetre;
  const bool inches = choices.unit == Unit::Inch;
  const Result<Paper> paper = findPaper(!options.paper.empty() ? options.paper
                                        : inches               ? "letter"
                                                               : "a4");
  if (!paper) {
    return fail(QStringLiteral("--paper"), paper.problem());
  }
  choices.paper = *paper;
  choices.now = QDateTime::currentDateTime();
  if (const auto problem = writeKitPlan(*kit, text(options.output), choices)) {
    return fail(QStringLiteral("-o"), *problem);
  }
  return ExitHolds;
}

}  // namespace creasewright
