#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "own_styles/style_files.h"

namespace creasewright {

/// Where the person's own styles are kept: `styles` in the program's data folder, each as
/// `<id>.cwstyle`.
QString ownStylesFolder();

/// All of them by their file names, with what cannot be read.
std::vector<StyleFile> ownStyleFiles();

/// The one with this id, or nothing.
std::optional<OwnStyle> ownStyleCalled(std::string_view id);

/// Keeps a style there, in place of one with the same id. Errors: those of ownStyleFileText,
/// FileNotWritten.
std::optional<Problem> storeOwnStyle(const OwnStyle& style);

/// Moves the file of a style to the system's trash, or away when there is none. Error:
/// FileNotWritten.
std::optional<Problem> removeOwnStyle(std::string_view id);

}  // namespace creasewright
