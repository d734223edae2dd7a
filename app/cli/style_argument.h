#pragma once

#include <optional>
#include <string>

#include "document/design.h"

namespace creasewright {

/// A style as it is named on the command line: by the id of a built-in one, by a `.cwstyle` file,
/// or by the id of one in the person's folder.
struct StyleArgument {
  std::string id;
  std::optional<OwnStyle> own = {};
};

/// Nothing when there is none (the problem is told).
std::optional<StyleArgument> readStyleArgument(const std::string& written);

/// A new design of it. Error: UnknownStyle.
Result<Design> startDesign(const StyleArgument& style, const std::optional<Product>& product,
                           const Card& card, Ease ease, ToolGrid grid);

/// The style in the file that a command was given; tells the problem when there is none.
std::optional<OwnStyle> readOwnStyleArgument(const char* argument, const std::string& file);

}  // namespace creasewright
