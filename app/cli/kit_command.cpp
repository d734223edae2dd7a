#include "cli/kit_command.h"

#include <QDateTime>
#include <QFileInfo>
#include <optional>

#include "bridge/text.h"
#include "cli/design_argument.h"
#include "cli/output.h"
#include "document/file_io.h"
#include "kits/machine_files.h"
#include "kits/write_kit.h"
#include "units/length_text.h"

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
  if (!options.machine.empty()) {
    return QFileInfo(text(options.output)).suffix().isEmpty()
               ? QString()
               : Cli::tr("-o: With --machine name a folder, such as -o mats/.");
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

/// The text of a file that an argument names; tells when it cannot be read.
std::optional<std::string> fileOf(const QString& argument, const std::string& path) {
  constexpr std::int64_t largest = 1 << 20;
  Result<std::string> content = readFile(path, largest);
  if (!content) {
    fail(argument, content.problem());
    return std::nullopt;
  }
  return std::move(content).value();
}

/// Reads the table in the file `path` into `target`; an empty path leaves it as it is. False: the
/// problem is told.
template <class Item>
bool addTable(const QString& argument, const std::string& path,
              Result<std::vector<Item>> (*read)(std::string_view, std::string_view),
              std::vector<Item>& target) {
  if (path.empty()) {
    return true;
  }
  const std::optional<std::string> csv = fileOf(argument, path);
  if (!csv) {
    return false;
  }
  Result<std::vector<Item>> table = read(*csv, path);
  if (!table) {
    fail(argument, table.problem());
    return false;
  }
  target = std::move(table).value();
  return true;
}

bool addNames(const KitOptions& options, ClassKit& kit) {
  if (options.names.empty()) {
    return true;
  }
  const std::optional<std::string> list = fileOf(QStringLiteral("--names"), options.names);
  if (!list) {
    return false;
  }
  kit.names.clear();
  for (const QString& line : text(*list).split(QLatin1Char('\n'))) {
    if (!line.trimmed().isEmpty()) {
      kit.names.push_back(line.trimmed().toStdString());
    }
  }
  return true;
}

/// `90x50mm`; a unit after the second serves both. Tells when it cannot be read.
std::optional<std::pair<Length, Length>> readSize(const char* argument,
                                                  const std::string& written) {
  const QStringList sides = text(written).split(QLatin1Char('x'));
  if (sides.size() == 2) {
    const Unit unit = unitNamed(written).value_or(Unit::Millimetre);
    const Result<Length> width = parseLength(sides[0].toStdString(), unit);
    const Result<Length> height = parseLength(sides[1].toStdString(), unit);
    const Length least = Length::nanometres(20'000'000);
    const Length most = Length::nanometres(2'000'000'000);
    if (width && height && *width >= least && *height >= least && *width <= most &&
        *height <= most) {
      return std::pair{*width, *height};
    }
  }
  fail(Cli::tr("%1: “%2” is no size. Write something like 90x50mm, each side from 20 mm to 2 m.")
           .arg(QLatin1String(argument), text(written)));
  return std::nullopt;
}

bool readLabel(const std::string& written, KitChoices& choices) {
  if (written.empty()) {
    return true;
  }
  const auto size = readSize("--label", written);
  if (!size) {
    return false;
  }
  choices.labelWidth = size->first;
  choices.labelHeight = size->second;
  return true;
}

/// Layouts for a cutting machine instead of a plan for the trimmer.
int runMachine(const KitOptions& options, const ClassKit& kit) {
  const auto size = readSize("--machine", options.machine);
  if (!size) {
    return ExitUsage;
  }
  MachineChoices choices;
  choices.width = size->first;
  choices.height = size->second;
  if (const auto problem = writeMachineFolder(kit, text(options.output), choices)) {
    return fail(QStringLiteral("-o"), *problem);
  }
  return ExitHolds;
}

}  // namespace

int runKit(const KitOptions& options) {
  if (const QString problem = usageProblem(options); !problem.isEmpty()) {
    return fail(problem);
  }
  std::optional<ClassKit> kit = kitFrom(options);
  if (kit && !options.machine.empty()) {
    if (!addPeople(options, *kit)) {
      return ExitUsage;
    }
    kit->keepGrain = kit->keepGrain || options.keepGrain;
    return runMachine(options, *kit);
  }
  KitChoices choices;
  if (!kit || !addTable(QStringLiteral("--stock"), options.stock, readStockTable, kit->stock) ||
      !addSheets(options.sheets, *kit) ||
      !addTable(QStringLiteral("--supplies"), options.supplies, readSupplyTable, kit->supplies) ||
      !addNames(options, *kit) || !addPeople(options, *kit) || !readLabel(options.label, choices)) {
    return ExitUsage;
  }
  kit->keepGrain = kit->keepGrain || options.keepGrain;
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
