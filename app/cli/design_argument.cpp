#include "cli/design_argument.h"

#include "cli/output.h"
#include "document/design_file.h"

namespace creasewright {

std::optional<Design> readDesignArgument(const std::string& file) {
  if (file.empty()) {
    fail(Cli::tr("FILE: Name the design to read, such as tray.cwdesign."));
    return std::nullopt;
  }
  Result<Design> design = readDesignFile(file);
  if (!design) {
    fail(QStringLiteral("FILE"), design.problem());
    return std::nullopt;
  }
  return std::move(design).value();
}

}  // namespace creasewright
