#include "cli/extra_argument.h"

#include <string_view>

#include "bridge/text.h"
#include "cli/output.h"
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

/// The first `KEY=VALUE` of a list, taken off it; a text takes all the rest.
std::string_view nextSetting(std::string_view& rest) {
  const bool isText = rest.starts_with("text=");
  const std::size_t end = isText ? rest.size() : std::min(rest.find(','), rest.size());
  const std::string_view setting = rest.substr(0, end);
  rest.remove_prefix(std::min(end + 1, rest.size()));
  return setting;
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
  if (key != "card") {
    return withParameter(std::move(extra), key, value, grid);
  }
  const Result<Card> card = findCard(value);
  if (!card) {
    return card.problem();
  }
  extra.card = *card;
  return extra;
}

}  // namespace

std::optional<Extra> readExtraArgument(const std::string& argument, const Design& design) {
  std::string_view rest = argument;
  const std::size_t colon = std::min(rest.find(':'), rest.size());
  const Result<const ExtraKind*> kind = findExtraKind(rest.substr(0, colon));
  if (!kind) {
    fail(argumentName, kind.problem());
    return std::nullopt;
  }
  rest.remove_prefix(std::min(colon + 1, rest.size()));
  Extra extra = ontoGrid(standardExtra(**kind, design.card), design.grid);
  while (!rest.empty()) {
    const std::string_view setting = nextSetting(rest);
    const std::size_t equals = setting.find('=');
    if (equals == std::string_view::npos) {
      fail(Cli::tr("--extra: “%1” has no equals sign. Write KIND:KEY=VALUE,KEY=VALUE, such as "
                   "--extra label:shape=oval,text=Plum jam.")
               .arg(shown(setting)));
      return std::nullopt;
    }
    Result<Extra> changed = withSetting(std::move(extra), setting.substr(0, equals),
                                        setting.substr(equals + 1), design.grid);
    if (!changed) {
      fail(argumentName, changed.problem());
      return std::nullopt;
    }
    extra = std::move(changed).value();
  }
  return extra;
}

}  // namespace creasewright
