#include "cli/blank_argument.h"

#include "bridge/text.h"
#include "cli/number_argument.h"
#include "cli/output.h"
#include "cli/settings_argument.h"
#include "cli/size_argument.h"
#include "stock/own_cards.h"
#include "units/millimetres.h"

namespace creasewright {

namespace {

constexpr const char* kBlankName = "--blank";
constexpr SideLimits kBlankLimits{mm(5), mm(2000)};

/// Takes in one setting. False: the problem is told.
bool takeSetting(const Setting& setting, const ClassKit& kit, PlainBlank& blank) {
  const auto& [written, key, value, equals] = setting;
  if (key == "name" && !value.empty()) {
    blank.name = text(value).toStdString();  // UTF-8 at last
    return true;
  }
  if (key == "count") {
    const auto count = readNumber(kBlankName, std::string(value), {1, kMostPerPerson});
    blank.perPerson = count.value_or(1);
    return count.has_value();
  }
  if (key == "card") {
    const Result<Card> card = findCard(value, kit.stock);
    if (!card) {
      fail(QLatin1String(kBlankName), card.problem());
      return false;
    }
    blank.card = *card;
    return true;
  }
  fail(Cli::tr("--blank: “%1” will not do. Write SIZE:KEY=VALUE,KEY=VALUE with count, card or "
               "name, such as --blank 4x6in:count=2,name=Panel.")
           .arg(shown(written)));
  return false;
}

}  // namespace

std::optional<PlainBlank> readBlankArgument(const std::string& argument, const ClassKit& kit,
                                            const Card& card) {
  const auto [head, settings] = readSettings(argument, "name");
  const std::string written(head);
  const auto size = readSize(kBlankName, written, kBlankLimits);
  if (!size) return std::nullopt;
  PlainBlank blank{written, size->first, size->second, card, 1};
  for (const Setting& setting : settings)
    if (!takeSetting(setting, kit, blank)) return std::nullopt;
  return blank;
}

}  // namespace creasewright
