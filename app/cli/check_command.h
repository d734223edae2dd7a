#pragma once

#include <string>

namespace creasewright {

/// Builds the design in `file` and lists every problem: 0 all checks hold, 1 some fail, 2
/// unreadable.
int runCheck(const std::string& file, bool json);

}  // namespace creasewright
