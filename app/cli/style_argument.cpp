#include "cli/style_argument.h"

#include "cli/output.h"
#include "document/own_style_file.h"
#include "kept_styles/style_store.h"
#include "styles/registry.h"

namespace creasewright {

std::optional<OwnStyle> readOwnStyleArgument(const char* argument, const std::string& file) {
  if (file.empty()) {
    fail(Cli::tr("%1: Name the style to read, such as heart-box.cwstyle.")
             .arg(QLatin1String(argument)));
    return std::nullopt;
  }
  Result<OwnStyle> style = readOwnStyleFile(file);
  if (style) return std::move(style).value();
  fail(QLatin1String(argument), style.problem());
  return std::nullopt;
}

std::optional<StyleArgument> readStyleArgument(const std::string& written) {
  if (written.ends_with(".cwstyle")) {
    std::optional<OwnStyle> own = readOwnStyleArgument("--style", written);
    if (!own) return std::nullopt;
    const std::string id = own->id;
    return StyleArgument{id, std::move(own)};
  }
  const Result<const Style*> style = findStyle(written);
  if (style) return StyleArgument{written};
  if (std::optional<OwnStyle> own = ownStyleCalled(written))
    return StyleArgument{written, std::move(own)};
  fail(QStringLiteral("--style"), style.problem());
  return std::nullopt;
}

Result<Design> startDesign(const StyleArgument& style, const std::optional<Product>& product,
                           const Card& card, Ease ease, ToolGrid grid) {
  return style.own ? newDesign(*style.own, product, card, ease, grid)
                   : newDesign(style.id, product, card, ease, grid);
}

}  // namespace creasewright
