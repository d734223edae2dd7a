#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/result.h"
#include "document/design.h"

namespace creasewright {

/// The newest `.cwdesign` version, the one that is written.
constexpr int kDesignVersion = 10;

/// The `.cwdesign` text of a design: UTF-8 JSON, lengths as exact text. Texts of the design that
/// are not UTF-8 are written with replacement characters.
std::string writeDesign(const Design& design);

/// Reads `.cwdesign` text. Lengths are texts parseLength knows (a bare number in one is
/// millimetres) or whole numbers of nanometres; unknown fields are passed over. `where` names the
/// file in problems about the whole of it; problems with a field name its path, such as
/// `card/caliper`. Whether the values make a sound design is for limitProblems and build to say.
/// Errors: FileTooLarge, NotADesign, NewerVersion, TooMany, TextTooLong, FieldMissing,
/// FieldUnreadable, UnknownStyle, UnknownParameter, and those of findStyle, parseProduct, parseEase
/// and parseToolGrid.
Result<Design> readDesign(std::string_view json, std::string_view where);

/// readFile and readDesign in one.
Result<Design> readDesignFile(const std::string& path);

/// What writeDesign makes, if readDesign takes it back: nothing in it passes base/file_limits.h.
/// `where` names the file in problems. Errors: TooMany, TextTooLong, FileTooLarge.
Result<std::string> designFileText(const Design& design, std::string_view where);

/// designFileText and writeFileAtomically in one.
std::optional<Problem> writeDesignFile(const Design& design, const std::string& path);

}  // namespace creasewright
