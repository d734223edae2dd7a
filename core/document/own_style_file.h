#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/result.h"
#include "document/own_style.h"

namespace creasewright {

/// The newest `.cwstyle` version, the one that is written.
constexpr int kOwnStyleVersion = 1;

/// The `.cwstyle` text of a style: UTF-8 JSON, the same bytes for the same style. Texts that are
/// not UTF-8 are written with replacement characters.
std::string writeOwnStyle(const OwnStyle& style);

/// Reads `.cwstyle` text; unknown fields are passed over. `where` names the file in problems about
/// the whole of it; others name the field by its path, such as `suits/least/length`. Whether its
/// changes and rules hold is for build to say.
/// Errors: FileTooLarge, NotAStyle, NewerVersion, TooMany, TextTooLong, FieldMissing,
/// FieldUnreadable, UnknownStyle (where = base), UnknownParameter, EditUnknown.
Result<OwnStyle> readOwnStyle(std::string_view json, std::string_view where);

/// readFile and readOwnStyle in one.
Result<OwnStyle> readOwnStyleFile(const std::string& path);

/// What writeOwnStyle makes, if readOwnStyle takes it back. Errors: TooMany, TextTooLong,
/// FileTooLarge.
Result<std::string> ownStyleFileText(const OwnStyle& style, std::string_view where);

/// ownStyleFileText and writeFileAtomically in one.
std::optional<Problem> writeOwnStyleFile(const OwnStyle& style, const std::string& path);

/// What no file of ours holds. Errors: TooMany, TextTooLong; where = the field from the root.
std::optional<Problem> fileLimitProblem(const OwnStyle& style);

}  // namespace creasewright
