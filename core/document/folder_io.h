#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/problem.h"

namespace creasewright {

/// Names and contents of files that belong together.
using NamedFiles = std::vector<std::pair<std::string, std::string_view>>;

/// Writes all files into a folder, which is made when it is missing, so that it is afterwards new
/// as a whole or old as a whole: also when the disk is full or several processes write there. All
/// is written beside it first, then put in place while the folder is locked; what an earlier call
/// wrote there under other names is taken away (a hidden list remembers them), files of others
/// stay. Error: FileNotWritten (path, reason).
std::optional<Problem> writeFolderAtomically(const std::string& folder, const NamedFiles& files);

}  // namespace creasewright
