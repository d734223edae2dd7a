#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "document/design.h"

namespace creasewright {

inline constexpr int kBundleVersion = 1;

/// Several designs in one file to hand on: UTF-8 JSON with whole designs.
std::string writeBundle(const std::vector<Design>& designs);

/// Reads what writeBundle wrote. `where` names the file in problems. Errors: FileTooLarge,
/// NotADesign, NewerVersion and what readDesign tells of the first design that cannot be read;
/// nothing is taken from a broken bundle, and its problem
/// names the design by its place, such as `designs/3/card/caliper`.
Result<std::vector<Design>> readBundle(std::string_view text, std::string_view where);
Result<std::vector<Design>> readBundleFile(const std::string& path);

}  // namespace creasewright
