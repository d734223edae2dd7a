#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "base/result.h"

namespace creasewright {

/// The bytes of a regular file, at most `limit` of them. Never waits: pipes and devices are
/// refused. Errors: FileUnreadable, FileTooLarge.
Result<std::string> readFile(const std::string& path, std::int64_t limit);

/// Writes a file so that other programs see either the old bytes or all of the new ones: a
/// temporary file in the same directory is filled, flushed to the disk and renamed. A symbolic link
/// keeps pointing where it did and its target is written; an existing file keeps its permissions;
/// nothing is left behind when writing fails. Pipes and devices are refused. Error: FileNotWritten.
std::optional<Problem> writeFileAtomically(const std::string& path, std::string_view bytes);

}  // namespace creasewright
