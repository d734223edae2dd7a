#include "cli/several_designs.h"

#include <QFileInfo>
#include <algorithm>
#include <array>
#include <iostream>
#include <set>

#include "base/file_limits.h"
#include "bridge/text.h"
#include "cli/design_argument.h"
#include "cli/output.h"
#include "document/design_file.h"

namespace creasewright {

namespace {

/// All of standard input, or as much as shows that it is too large.
std::string standardInput() {
  std::string all;
  std::array<char, 1 << 16> part{};
  while (static_cast<std::int64_t>(all.size()) <= kLargestDesignFile && std::cin) {
    std::cin.read(part.data(), part.size());
    all.append(part.data(), static_cast<std::size_t>(std::cin.gcount()));
  }
  return all;
}

std::optional<Design> readOne(const std::string& file) {
  if (file != "-") return readDesignArgument(file);
  Result<Design> design = readDesign(standardInput(), "-");
  if (design) return std::move(design).value();
  fail(QStringLiteral("-"), design.problem());
  return std::nullopt;
}

/// `name`, or `name-2` where another file of the run is called so already.
QString freeStem(const QString& name, std::set<QString>& taken) {
  QString free = name;
  for (int number = 2; !taken.insert(free.toCaseFolded()).second; ++number)
    free = QStringLiteral("%1-%2").arg(name).arg(number);
  return free;
}

}  // namespace

std::optional<std::vector<NamedDesign>> readDesignArguments(const std::vector<std::string>& files) {
  if (std::ranges::count(files, "-") > 1) {
    fail(Cli::tr("-: Standard input can be read once only. Write - once."));
    return std::nullopt;
  }
  std::vector<NamedDesign> designs;
  std::set<QString> taken;
  for (const std::string& file : files.empty() ? std::vector<std::string>{{}} : files) {
    std::optional<Design> design = readOne(file);
    if (!design) return std::nullopt;
    const QString own =
        file == "-" ? QStringLiteral("design") : QFileInfo(text(file)).completeBaseName();
    designs.push_back({file, freeStem(own, taken), std::move(*design)});
  }
  return designs;
}

QString severalProblem(const std::vector<std::string>& files, const std::string& output,
                       const std::string& as, const QStringList& endings) {
  if (!as.empty() && !endings.contains(text(as)))
    return Cli::tr("--as: “%1” names no kind of file. Choose one of: %2.")
        .arg(shown(as), endings.join(QStringLiteral(", ")));
  const bool folder = text(output).endsWith(QLatin1Char('/'));
  if (files.size() > 1 && !output.empty() && !folder)
    return Cli::tr("-o: Several designs go into a folder. Let “%1” end in /.").arg(shown(output));
  if (!as.empty() && !output.empty() && !folder)
    return Cli::tr("--as: Only files in a folder are named for you. Let -o end in /.");
  return {};
}

}  // namespace creasewright
