#include "cli/number_argument.h"

#include "bridge/text.h"
#include "cli/output.h"

namespace creasewright {

std::optional<int> readNumber(const char* argument, const std::string& written,
                              std::pair<int, int> limits) {
  bool fine = false;
  const int value = text(written).toInt(&fine);
  if (fine && value >= limits.first && value <= limits.second) return value;
  fail(Cli::tr("%1: “%2” will not do. Write a whole number from %3 to %4.")
           .arg(QLatin1String(argument), shown(written), QString::number(limits.first),
                QString::number(limits.second)));
  return std::nullopt;
}

}  // namespace creasewright
