#include "cli/blank_argument.h"

#include <string_view>

#include "bridge/text.h"
#include "cli/number_argument.h"
#include "cli/output.h"
#include "cli/size_argument.h"
#include "stock/own_cards.h"
#include "units/millimetres.h"

namespace creasewright {

namespace {

constexpr const char* blankName = "--blank";
constexpr SideLimits blankLimits{mm(5), mm(2000)};

/// Takes in one `KEY=VALUE`. False: the problem is told.
bool takeSetting(std::string_view setting, const ClassKit& kit, PlainBlank& blank) {
  const std::size_t equals = setting.find('=');
  const std::string_view key = setting.substr(0, equals);
  const std::string_view value =
      equals == std::string_view::npos ? std::string_view() : setting.substr(equals + 1);
  if (key == "name" && !value.empty()) {
    blank.name = text(value).toStdString();  // UTF-8 at last
    return true;
  }
  if (key == "count") {
    const auto count = readNumber(blankName, std::string(value), {1, kMostPerPerson});
    blank.perPerson = count.value_or(1);
    return count.has_value();
  }
  if (key == "card") {
    const Result<Card> card = findCard(value, kit.stock);
    if (!card) {
      fail(QLatin1String(blankName), card.problem());
      return false;
    }
    blank.card = *card;
    return true;
  }
  fail(Cli::tr("--blank: “%1” will not do. Write SIZE:KEY=VALUE,KEY=VALUE with count, card or "
               "name, such as --blank 4x6in:count=2,name=Panel.")
           .arg(shown(setting)));
  return false;
}

}  // namespace

std::optional<PlainBlank> readBlankArgument(const std::string& argument, const ClassKit& kit,
                                            const Card& card) {
  std::string_view rest = argument;
  const std::size_t colon = std::min(rest.find(':'), rest.size());
  const std::string written(rest.substr(0, colon));
  const auto size = readSize(blankName, written, blankLimits);
  if (!size) {
    return std::nullopt;
  }
  PlainBlank blank{written, size->first, size->second, card, 1};
  rest.remove_prefix(std::min(colon + 1, rest.size()));
  while (!rest.empty()) {
    const std::size_t end =
        rest.starts_with("name=") ? rest.size() : std::min(rest.find(','), rest.size());
    if (!takeSetting(rest.substr(0, end), kit, blank)) {
      return std::nullopt;
    }
    rest.remove_prefix(std::min(end + 1, rest.size()));
  }
  return blank;
}

}  // namespace creasewright
