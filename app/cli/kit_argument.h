#pragma once

#include <optional>

#include "cli/kit_command.h"
#include "kits/class_kit.h"

namespace creasewright {

/// The kit that the arguments describe: a saved one or one of designs and blanks, with what the
/// other arguments change. Nothing when one of them cannot be read; the problem is told.
std::optional<ClassKit> readKitArguments(const KitOptions& options);

}  // namespace creasewright
