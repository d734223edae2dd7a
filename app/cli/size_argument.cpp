#include "cli/size_argument.h"

#include "bridge/label_text.h"
#include "bridge/text.h"
#include "cli/output.h"
#include "units/length_text.h"

namespace creasewright {

namespace {

bool within(const Result<Length>& side, const SideLimits& limits) {
  return side && *side >= limits.least && *side <= limits.most;
}

}  // namespace

std::optional<std::pair<Length, Length>> readSize(const char* argument, const std::string& written,
                                                  const SideLimits& limits) {
  const QStringList sides = text(written).split(QLatin1Char('x'));
  if (sides.size() == 2) {
    const Unit unit = unitNamed(written).value_or(Unit::Millimetre);
    const Result<Length> width = parseLength(sides[0].trimmed().toStdString(), unit);
    const Result<Length> height = parseLength(sides[1].trimmed().toStdString(), unit);
    if (within(width, limits) && within(height, limits)) return std::pair{*width, *height};
  }
  fail(Cli::tr("%1: “%2” is no size. Write something like 90x50mm, each side from %3 to %4.")
           .arg(QLatin1String(argument), shown(written), lengthText(limits.least, Unit::Millimetre),
                lengthText(limits.most, Unit::Millimetre)));
  return std::nullopt;
}

}  // namespace creasewright
