#pragma once

#include <optional>
#include <string>

#include "kits/class_kit.h"

namespace creasewright {

/// A plain blank as `4x6in` or `4x6in:count=2,card=300gsm,name=Panel`; a name takes all the rest.
/// `card` is used where none is named. Nothing when it cannot be read; the problem is told.
std::optional<PlainBlank> readBlankArgument(const std::string& argument, const ClassKit& kit,
                                            const Card& card);

}  // namespace creasewright
