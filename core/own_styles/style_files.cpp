#include "own_styles/style_files.h"

#include <algorithm>
#include <filesystem>
#include <system_error>

#include "base/file_limits.h"

namespace creasewright {

std::vector<StyleFile> stylesIn(const std::string& folder) {
  std::vector<std::string> paths;
  std::error_code failed;
  std::filesystem::directory_iterator entry(folder, failed);
  for (; !failed && entry != std::filesystem::directory_iterator(); entry.increment(failed))
    if (entry->path().extension() == ".cwstyle") paths.push_back(entry->path().string());
  std::ranges::sort(paths);
  if (paths.size() > kMostStyles) paths.resize(kMostStyles);
  std::vector<StyleFile> files;
  files.reserve(paths.size());
  for (const std::string& path : paths) files.push_back({path, readOwnStyleFile(path)});
  return files;
}

std::string styleFileIn(const std::string& folder, std::string_view id) {
  return (std::filesystem::path(folder) / (std::string(id) + ".cwstyle")).string();
}

}  // namespace creasewright
