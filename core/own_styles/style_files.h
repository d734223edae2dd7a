#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "document/own_style_file.h"

namespace creasewright {

/// A `.cwstyle` file, and what it holds or why it cannot be read.
struct StyleFile {
  std::string path;
  Result<OwnStyle> style;
};

/// The `.cwstyle` files of a folder by their names, kMostStyles at most; none where there is no
/// such folder.
std::vector<StyleFile> stylesIn(const std::string& folder);

/// The file of a style in a folder: named by its id.
std::string styleFileIn(const std::string& folder, std::string_view id);

}  // namespace creasewright
