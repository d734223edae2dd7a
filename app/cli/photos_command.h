#pragma once

#include "cli/command.h"

namespace creasewright {

/// `creasewright photos`: keeps photos for the guide in a design, or lists those that it has.
Command photosCommand();

}  // namespace creasewright
