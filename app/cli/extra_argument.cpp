#include "cli/extra_argument.h"

#include <string_view>

#include "bridge/text.h"
#include "cli/output.h"
#include "cli/pattern_argument.h"
#include "cli/settings_argument.h"
#include "document/build_extras.h"
#include "extras/extra_kind.h"
#include "extras/hosting.h"
#include "extras/layer_stack.h"
#include "fit/card_pattern.h"

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
    const Result<CardColours> colours = withColours(extra.card.colours, value);
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

/// The value that begins another layer, or nothing.
Result<Extra> withLayer(Extra extra, std::string_view shape, const Design& design) {
  const Result<const ExtraKind*> kind = findExtraKind(extra.kind);
  if (!kind) return kind.problem();
  if (!(*kind)->layered)
    return Problem{ProblemCode::UnknownParameter, extra.kind, {std::string("layer")}};
  Result<ExtraLayer> layer =
      withParameter(standardLayer(extra.card, design.grid), "shape", shape, design.grid);
  if (!layer) return layer.problem();
  extra.layers.push_back(std::move(layer).value());
  return extra;
}

/// Sets a key of the layer that was begun last.
Result<Extra> withLayerSetting(Extra extra, std::string_view key, std::string_view value,
                               ToolGrid grid) {
  ExtraLayer& layer = extra.layers.back();
  if (key == "text" || key == "card" || key == "colour" || key == "pattern") {
    Extra like;
    like.kind = extra.kind;
    like.card = layer.card;
    Result<Extra> set = withSetting(std::move(like), key, value, grid);
    if (!set) return set;
    layer.card = set->card;
    if (key == "text") layer.lines = set->lines;
    return extra;
  }
  Result<ExtraLayer> set = withParameter(layer, key, value, grid);
  if (!set) return set.problem();
  layer = std::move(set).value();
  return extra;
}

Result<Extra> withKey(Extra extra, const Setting& setting, const Design& design) {
  if (setting.key == "layer") return withLayer(std::move(extra), setting.value, design);
  if (setting.key == "host") {
    std::vector<Extra> all = design.extras;
    all.push_back(extra);
    const Result<int> host = findHost(all, static_cast<int>(all.size()) - 1, setting.value);
    if (!host) return host.problem();
    extra.host = *host;
    return extra;
  }
  if (!extra.layers.empty())
    return withLayerSetting(std::move(extra), setting.key, setting.value, design.grid);
  return withSetting(std::move(extra), setting.key, setting.value, design.grid);
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
  Extra extra = newExtra(**kind, design);
  for (const Setting& setting : settings) {
    if (!setting.equals) {
      fail(Cli::tr("--extra: “%1” has no equals sign. Write KIND:KEY=VALUE,KEY=VALUE, such as "
                   "--extra label:shape=oval,text=Plum jam.")
               .arg(shown(setting.written)));
      return std::nullopt;
    }
    Result<Extra> changed = withKey(std::move(extra), setting, design);
    if (!changed) {
      fail(argumentName, changed.problem());
      return std::nullopt;
    }
    extra = std::move(changed).value();
  }
  return extra;
}

}  // namespace creasewright
