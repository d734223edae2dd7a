#include "cli/kit_argument.h"

#include <algorithm>
#include <array>

#include "base/file_limits.h"
#include "bridge/text.h"
#include "cli/blank_argument.h"
#include "cli/design_argument.h"
#include "cli/number_argument.h"
#include "cli/output.h"
#include "cli/settings_argument.h"
#include "cli/size_argument.h"
#include "document/file_io.h"
#include "papers/kit/write_kit.h"
#include "units/millimetres.h"
#include "units/paper.h"

namespace creasewright {

namespace {

constexpr SideLimits kSheetLimits{mm(20), mm(5000)};

std::optional<ClassKit> savedKit(const std::string& file) {
  Result<ClassKit> kit = readKitFile(file);
  if (!kit) {
    fail(QStringLiteral("FILE"), kit.problem());
    return std::nullopt;
  }
  return std::move(kit).value();
}

bool addDesigns(const std::vector<std::string>& files, ClassKit& kit) {
  for (const std::string& file : files) {
    std::optional<Design> design = readDesignArgument(file);
    if (!design) return false;
    kit.items.push_back({std::move(*design), 1});
  }
  return true;
}

/// The item of the file that a `FILE=VALUE` names, and the value; tells when there is none.
std::optional<std::pair<KitItem*, std::string>> itemNamed(const char* argument,
                                                          const std::string& written,
                                                          const KitOptions& options,
                                                          ClassKit& kit) {
  const Setting setting = readSetting(written, true);
  if (setting.equals && options.files.size() == kit.items.size()) {
    const auto file = std::ranges::find(options.files, setting.key);
    if (file != options.files.end()) {
      return std::pair{&kit.items[static_cast<std::size_t>(file - options.files.begin())],
                       std::string(setting.value)};
    }
  }
  fail(Cli::tr("%1: “%2” will not do. Write one of the designs given, an equals sign and a value, "
               "such as tray.cwdesign=2.")
           .arg(QLatin1String(argument), shown(written)));
  return std::nullopt;
}

bool addCounts(const KitOptions& options, ClassKit& kit) {
  for (const std::string& written : options.counts) {
    const auto named = itemNamed("--count", written, options, kit);
    const auto count =
        named ? readNumber("--count", named->second, {1, kMostPerPerson}) : std::optional<int>();
    if (!count) return false;
    named->first->perPerson = *count;
  }
  for (const std::string& written : options.only) {
    const auto named = itemNamed("--only", written, options, kit);
    if (!named) return false;
    named->first->piece = named->second;
  }
  return true;
}

bool addSheets(const std::vector<std::string>& sheets, ClassKit& kit) {
  if (!sheets.empty()) kit.stock.clear();
  for (const std::string& sheet : sheets) {
    if (const Result<Paper> paper = findPaper(sheet)) {
      kit.stock.push_back({std::string(paper->name), paper->width, paper->height, 0, -1});
    } else if (sheet.find('x') == std::string::npos) {
      fail(QStringLiteral("--sheet"), paper.problem());
      return false;
    } else if (const auto size = readSize("--sheet", sheet, kSheetLimits)) {
      kit.stock.push_back({text(sheet).toStdString(), size->first, size->second, 0, -1});
    } else {
      return false;
    }
  }
  return true;
}

bool addBlanks(const std::vector<std::string>& blanks, ClassKit& kit) {
  const Card card = kit.items.empty() ? cards().front() : kit.items.front().design.card;
  for (const std::string& written : blanks) {
    std::optional<PlainBlank> blank = readBlankArgument(written, kit, card);
    if (!blank) return false;
    kit.blanks.push_back(std::move(*blank));
  }
  return true;
}

bool addPeople(const KitOptions& options, ClassKit& kit) {
  if (!options.takers.empty()) {
    const auto takers = readNumber("--takers", options.takers, {1, kMostTakers});
    if (!takers) return false;
    kit.takers = *takers;
  }
  if (!options.spares.empty()) {
    const auto spares = readNumber("--spares", options.spares, {0, kMostTakers});
    if (!spares) return false;
    kit.spares = *spares;
  }
  return true;
}

bool readMoney(const char* argument, const std::string& written, std::int64_t& target) {
  if (written.empty()) return true;
  const std::optional<std::int64_t> coins = readPrice(written);
  if (coins)
    target = *coins;
  else
    fail(Cli::tr("%1: “%2” is no amount of money. Write one such as 12.50.")
             .arg(QLatin1String(argument), shown(written)));
  return coins.has_value();
}

bool readPercent(const char* argument, const std::string& written, int most, int& target) {
  if (written.empty()) return true;
  const auto percent = readNumber(argument, written, {0, most});
  if (percent) target = *percent;
  return percent.has_value();
}

/// Prices are asked for by any of their arguments. False: the problem is told.
bool addPricing(const KitOptions& options, ClassKit& kit) {
  const bool asked =
      std::ranges::any_of(std::array{&options.currency, &options.rate, &options.classCosts,
                                     &options.overhead, &options.margin, &options.fee},
                          [](const std::string* written) { return !written->empty(); });
  if (!asked) return true;
  Pricing pricing = kit.pricing.value_or(Pricing{});
  if (!options.currency.empty()) pricing.currency = text(options.currency).toStdString();
  if (!readMoney("--rate", options.rate, pricing.hourlyRate) ||
      !readMoney("--class-costs", options.classCosts, pricing.classCosts) ||
      !readPercent("--overhead", options.overhead, kMostOverhead, pricing.overhead) ||
      !readPercent("--margin", options.margin, kMostMargin, pricing.margin) ||
      !readPercent("--fee", options.fee, kMostFee, pricing.fee))
    return false;
  kit.pricing = pricing;
  return true;
}

/// The text of a file that an argument names; tells when it cannot be read.
std::optional<std::string> fileOf(const QString& argument, const std::string& path,
                                  std::int64_t largest) {
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
  if (path.empty()) return true;
  const std::optional<std::string> csv = fileOf(argument, path, kLargestTable);
  if (!csv) return false;
  Result<std::vector<Item>> table = read(*csv, path);
  if (!table) {
    fail(argument, table.problem());
    return false;
  }
  target = std::move(table).value();
  return true;
}

bool addNames(const KitOptions& options, ClassKit& kit) {
  if (options.names.empty()) return true;
  const std::optional<std::string> list =
      fileOf(QStringLiteral("--names"), options.names, kLargestNamesFile);
  if (!list) return false;
  kit.names.clear();
  for (const QString& line : text(*list).split(QLatin1Char('\n')))
    if (!line.trimmed().isEmpty()) kit.names.push_back(line.trimmed().toStdString());
  return true;
}

/// The argument that brought what no kit holds.
QString argumentOverLimit(const Problem& problem) {
  constexpr std::pair<std::string_view, const char*> kArguments[] = {
      {"names", "--names"},       {"title", "--title"}, {"blanks", "--blank"},
      {"supplies", "--supplies"}, {"stock", "--stock"}, {"pricing/currency", "--currency"}};
  for (const auto& [field, argument] : kArguments)
    if (problem.where.starts_with(field)) return QLatin1String(argument);
  return QStringLiteral("FILE");
}

bool addGoal(const KitOptions& options, ClassKit& kit) {
  if (options.plan.empty()) return true;
  const std::optional<PlanGoal> goal = findPlanGoal(options.plan);
  if (!goal) {
    fail(Cli::tr("--plan: “%1” is no plan here. Write easy or fewest.").arg(shown(options.plan)));
    return false;
  }
  kit.goal = *goal;
  return true;
}

bool needsSheets(const KitOptions& options, const ClassKit& kit) {
  if (!kit.stock.empty() || !options.machine.empty()) return false;
  fail(Cli::tr("--sheet: Say which sheets there are, such as --sheet 12x12."));
  return true;
}

}  // namespace

std::optional<ClassKit> readKitArguments(const KitOptions& options) {
  ClassKit kit;
  kit.goal = kClassGoal;
  if (options.files.size() == 1 && namesKit(text(options.files.front()))) {
    std::optional<ClassKit> saved = savedKit(options.files.front());
    if (!saved) return std::nullopt;
    kit = std::move(*saved);
  } else if (!addDesigns(options.files, kit)) {
    return std::nullopt;
  }
  if (!addCounts(options, kit) ||
      !addTable(QStringLiteral("--stock"), options.stock, readStockTable, kit.stock) ||
      !addSheets(options.sheets, kit) || !addBlanks(options.blanks, kit) ||
      !addTable(QStringLiteral("--supplies"), options.supplies, readSupplyTable, kit.supplies) ||
      !addNames(options, kit) || !addPeople(options, kit) || !addGoal(options, kit) ||
      !addPricing(options, kit) || needsSheets(options, kit))
    return std::nullopt;
  if (!options.label.empty()) {
    const auto size = readSize("--label", options.label, {kSmallestLabel, kLargestLabel});
    if (!size) return std::nullopt;
    std::tie(kit.labelWidth, kit.labelHeight) = *size;
  }
  kit.keepGrain = kit.keepGrain || options.keepGrain;
  kit.noExtras = kit.noExtras || options.noExtras;
  if (!options.title.empty()) kit.title = text(options.title).toStdString();
  if (const auto problem = fileLimitProblem(kit)) {
    fail(argumentOverLimit(*problem), *problem);
    return std::nullopt;
  }
  return kit;
}

}  // namespace creasewright
