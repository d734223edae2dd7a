#pragma once

#include <functional>
#include <span>

#include "cli/grammar.h"

namespace creasewright {

/// One command of the command line.
struct Command {
  const char* name;
  QString (*help)();  ///< one line, translated
  /// Tells `grammar` what may be written after the command; what it returns runs the command with
  /// what was written, and returns the exit code (cli/output.h).
  std::function<int()> (*prepare)(Grammar& grammar);
  /// Whether it paints with what is written after it (a PDF, a PNG) and needs Qt's painting;
  /// nullptr: never.
  bool (*paints)(std::span<const char* const> arguments) = nullptr;
};

}  // namespace creasewright
