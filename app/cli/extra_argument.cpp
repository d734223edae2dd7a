#include "cli/extra_argument.h"

#include <string_view>

#include "bridge/text.h"
#include "cli/output.h"
#include "cli/pattern_argument.h"
#include "cli/settings_argument.h"
#include "extras/extra_kind.h"

namespace creasewright {

namespace {

const QString argumentName = QStringLiteral("--extra");

std::vector<std::string> linesOf(std::string_view written) {
  std::vector<std::string> lines;
  while (!written.empty()) {
    const std::size_t end = std::min(written.find('/'), written.size());
    lines.emplace_back(written.substr(0, end));
    written.remove_prefix(std::min(end + 1, written.size()));
  }
  return lines;
}

Result<Extra> withSetting(Extra extra, std::string_view key, std::string_view value,
                          ToolGrid grid) {
  if (key == "text") {
    extra.lines = linesOf(text(value).toStdString());  // UTF-8 at last
    return extra;
  }
  if (key == "face") {
    extra.face = value;
    return extra;
  }
  if (key == "colour") {
    const Result<CardColours> colours = parseCardColours(value);
    if (!colours) return colours.problem();
    extra.card.colours = *colours;
    return extra;
  }
  if (key == "pattern") {
    const Result<CardColours> colours = withPatternArgument(extra.card.colours, value);
    if (!colours) return colours.problem();
    extra.card.colours = *colours;
    return extra;
  }
  if (key != "card") return withParameter(std::move(extra), key, value, grid);
  const Result<Card> card = findCard(value);
  if (!card) return card.problem();
  const CardColours colours = extra.card.colours;
  extra.card = *card;
  extra.card.colours = colours;
  return extra;
}

/// The colours of a pattern may stand between commas: those that follow it belong to it.
std::vector<Setting> withListsJoined(const std::vector<Setting>& settings) {
  std::vector<Setting> out;
  for (const Setting& setting : settings) {
    // A key of an extra has no colon: `cream:scale=9mm` goes on with the pattern.
    const bool goesOn = !setting.equals || setting.key.find(':') != std::string_view::npos;
    if (out.empty() || !goesOn || out.back().key != "pattern") {
      out.push_back(setting);
      continue;
    }
    Setting& list = out.back();
    const char* end = setting.written.data() + setting.written.size();
    list.value = {list.value.data(), static_cast<std::size_t>(end - list.value.data())};
    list.written = {list.written.data(), static_cast<std::size_t>(end - list.written.data())};
  }
  return out;
}

}  // namespace

std::optional<Extra> readExtraArgument(const std::string& argument, const Design& design) {
  const auto [head, written] = readSettings(argument, "text");
  const std::vector<Setting> settings = withListsJoined(written);
  const Result<const ExtraKind*> kind = findExtraKind(head);
  if (!kind) {
    fail(argumentName, kind.problem());
    return std::nullopt;
  }
  Extra extra = ontoGrid(standardExtra(**kind, design.card), design.grid);
  for (const Setting& setting : settings) {
    if (!setting.equals) {
      fail(Cli::tr("--extra: “%1” has no equals sign. Write KIND:KEY=VALUE,KEY=VALUE, such as "
                   "--extra label:shape=oval,text=Plum jam.")
               .arg(shown(setting.written)));
      return std::nullopt;
    }
    Result<Extra> changed = withSetting(std::move(extra), setting.key, setting.value, design.grid);
    if (!changed) {
      fail(argumentName, changed.problem());
      return std::nullopt;
    }
    extra = std::move(changed).value();
  }
  return extra;
}

}  // namespace creasewright
