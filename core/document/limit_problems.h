#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "base/problem.h"
#include "document/design.h"

namespace creasewright {

// Whether what is to be read or written keeps to base/file_limits.h.

/// TooMany when a list holds more than `most`.
std::optional<Problem> mostOf(std::string_view list, std::size_t number, std::size_t most);

/// TextTooLong when a text has more than `longest` characters.
std::optional<Problem> longestOf(std::string_view field, std::string_view text,
                                 std::size_t longest);

/// TakersWrong when a number is not from `least` to `most`.
std::optional<Problem> countWithin(std::string_view field, std::int64_t number, std::int64_t least,
                                   std::int64_t most);

/// FileTooLarge when a file would have more than `largest` bytes.
std::optional<Problem> largestOf(std::string_view path, std::size_t bytes, std::int64_t largest);

/// What no file of ours holds. Errors: TooMany, TextTooLong; where = the field from the root.
std::optional<Problem> fileLimitProblem(const Card& card, const std::string& where);
std::optional<Problem> fileLimitProblem(const Design& design);
std::optional<Problem> editLimitProblem(const std::vector<Edit>& edits);
/// Error besides: PictureTooHeavy.
std::optional<Problem> photoLimitProblem(const std::vector<Photo>& photos);

/// The problem of a part, its place put before its field (`designs/3` and `title`), or behind the
/// name of the whole `file`.
std::optional<Problem> inPart(std::optional<Problem> problem, const std::string& part,
                              std::string_view file = {});

}  // namespace creasewright
