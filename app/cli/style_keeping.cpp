// Styles of one's own are kept from a design, and opened into one.

#include <optional>

#include "bridge/text.h"
#include "cli/design_argument.h"
#include "cli/output.h"
#include "cli/output_argument.h"
#include "cli/settings_argument.h"
#include "cli/style_argument.h"
#include "cli/style_options.h"
#include "document/design_file.h"
#include "document/own_style_file.h"
#include "own_styles/keep_style.h"

namespace creasewright {

namespace {

std::string_view endOf(std::string_view text) {
  const std::size_t digit = text.find_last_of("0123456789");
  return digit == std::string_view::npos ? text : text.substr(digit + 1);
}

/// `30x20x40..90x60x160mm`; the unit after the last serves for both.
std::optional<SuitedSizes> readSuitedSizes(const std::string& written) {
  const std::size_t dots = written.find("..");
  if (dots != std::string::npos) {
    std::string least = written.substr(0, dots);
    const std::string most = written.substr(dots + 2);
    if (endOf(least).empty()) least += endOf(most);
    const Result<Product> small = parseProduct("box:" + least);
    const Result<Product> large = parseProduct("box:" + most);
    if (small && large && small->length <= large->length && small->width <= large->width &&
        small->height <= large->height)
      return SuitedSizes{{small->length, small->width, small->height},
                         {large->length, large->width, large->height}};
  }
  fail(Cli::tr("--suits: “%1” is no smallest and largest product. Write something like "
               "30x20x40..90x60x160mm.")
           .arg(shown(written)));
  return std::nullopt;
}

std::vector<std::string> parted(const std::string& list) {
  std::vector<std::string> parts;
  for (const QString& part : text(list).split(QLatin1Char(','), Qt::SkipEmptyParts))
    parts.push_back(part.trimmed().toStdString());
  return parts;
}

std::vector<std::string> seenKeys(const std::string& written, const Design& design) {
  if (written == "none") return {};
  if (written != "all") return parted(written);
  std::vector<std::string> keys;
  for (const std::string_view key : seenMeasures(freedFromStyle(design))) keys.emplace_back(key);
  return keys;
}

/// The words of `start` with what was written; nothing when it cannot be read (it is told).
std::optional<StyleWords> wordsFrom(const StyleOptions& options, const Design& design,
                                    StyleWords start) {
  if (!options.name.empty()) start.title = text(options.name).toStdString();
  if (!options.note.empty()) start.summary = text(options.note).toStdString();
  if (!options.see.empty()) start.seen = seenKeys(options.see, design);
  if (!options.suits.empty()) {
    start.suits = readSuitedSizes(options.suits);
    if (!start.suits) return std::nullopt;
  }
  for (const std::string& written : options.rules) {
    const Setting rule = readSetting(written);
    if (!rule.equals) {
      fail(Cli::tr("--rule: “%1” has no equals sign. Write KEY=FORMULA, such as --rule "
                   "tuck=width/2.")
               .arg(shown(written)));
      return std::nullopt;
    }
    start.rules[std::string(rule.key)] = std::string(rule.value);
  }
  return start;
}

/// The argument that a problem in keeping belongs to.
QString argumentOf(const Problem& problem, const StyleOptions& options) {
  if (problem.where == "title") return QStringLiteral("--name");
  if (problem.where == "summary") return QStringLiteral("--note");
  if (problem.where.starts_with("edits")) return QStringLiteral("FILE");
  if (!options.rules.empty() && problem.code != ProblemCode::UnknownParameter)
    return QStringLiteral("--rule");
  if (!options.see.empty()) return QStringLiteral("--see");
  return options.rules.empty() ? QStringLiteral("FILE") : QStringLiteral("--rule");
}

/// What is written to `output`, when that is a name of such a file.
bool endsRight(const std::string& output, const char* ending, const QString& sentence) {
  if (output.ends_with(ending)) return true;
  fail(sentence);
  return false;
}

}  // namespace

int keepStyles(const StyleOptions& options) {
  const std::vector<std::string> files = options.files();
  if (files.size() > 1)
    return fail(Cli::tr("style keep: One design at a time, not %1.").arg(files.size()));
  const std::string file = files.empty() ? std::string() : files.front();
  const std::optional<Design> design = readDesignArgument(file);
  if (!design) return ExitUsage;
  std::optional<OwnStyle> before;
  if (!options.again.empty()) {
    before = readOwnStyleArgument("--again", options.again);
    if (!before) return ExitUsage;
  }
  if (options.name.empty() && !before)
    return fail(Cli::tr("--name: Say what the style is called, such as --name \"Heart box\"."));
  if (!endsRight(options.output, ".cwstyle",
                 Cli::tr("-o: Say where to write the style, such as -o heart-box.cwstyle.")) ||
      !outputServes(options.output, files))
    return ExitUsage;
  const bool sameBase = before && before->base == design->styleId;
  const auto words = wordsFrom(options, *design, sameBase ? wordsOf(*before) : wordsFor(*design));
  if (!words) return ExitUsage;
  const Result<OwnStyle> style = keepStyle(*design, *words, before ? &*before : nullptr);
  if (!style) return fail(argumentOf(style.problem(), options), style.problem());
  if (const auto problem = writeOwnStyleFile(*style, options.output))
    return fail(QStringLiteral("-o"), *problem);
  return ExitHolds;
}

int openStyle(const StyleOptions& options) {
  const std::vector<std::string> files = options.files();
  const auto style =
      readOwnStyleArgument("style open", files.empty() ? std::string() : files.front());
  if (!style) return ExitUsage;
  ChoiceOptions choice = options.choices;
  if (!options.products.empty()) choice.product = options.products.front();
  const std::optional<Choices> choices = readChoices(choice, "--for");
  if (!choices ||
      !endsRight(options.output, ".cwdesign",
                 Cli::tr("-o: Say where to write the design, such as -o tray.cwdesign.")) ||
      !outputServes(options.output, files))
    return ExitUsage;
  Result<Design> design =
      newDesign(*style, choices->product, choices->card, choices->ease, choices->grid);
  if (!design) return fail(QStringLiteral("style open"), design.problem());
  Design freed = freedFromStyle(std::move(design).value());
  freed.title = style->title;
  if (const auto problem = writeDesignFile(freed, options.output))
    return fail(QStringLiteral("-o"), *problem);
  return ExitHolds;
}

}  // namespace creasewright
