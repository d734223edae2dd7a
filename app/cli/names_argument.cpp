#include "cli/names_argument.h"

#include "bridge/text.h"
#include "cli/output.h"
#include "kits/class_kit.h"

namespace creasewright {

namespace {

constexpr int kMostSetsInOne = 500;  // sets of templates in one file
constexpr int kLongestName = 60;     // characters

}  // namespace

std::optional<QStringList> readNames(const std::string& written) {
  if (written.empty()) return QStringList();
  const QString argument = QStringLiteral("--names");
  QStringList all = text(written).split(QLatin1Char(','));
  if (text(written).endsWith(QLatin1String(".cwkit"), Qt::CaseInsensitive)) {
    const Result<ClassKit> kit = readKitFile(written);
    if (!kit) {
      fail(argument, kit.problem());
      return std::nullopt;
    }
    all.clear();
    for (const std::string& name : kit->names) all.append(text(name));
  }
  QStringList names;
  for (const QString& name : all)
    if (const QString plain = name.simplified(); !plain.isEmpty() && !names.contains(plain))
      names.append(plain);
  if (names.isEmpty()) {
    fail(Cli::tr("--names: “%1” holds no name. Write names with commas between them.")
             .arg(shown(written)));
    return std::nullopt;
  }
  if (names.size() > kMostSetsInOne) {
    fail(Cli::tr("--names: %1 names are too many for one run, at most %2.")
             .arg(names.size())
             .arg(kMostSetsInOne));
    return std::nullopt;
  }
  for (const QString& name : names) {
    if (name.size() <= kLongestName) continue;
    fail(Cli::tr("--names: “%1” is too long for a name, at most %2 characters.")
             .arg(shown(name.toStdString()))
             .arg(kLongestName));
    return std::nullopt;
  }
  return names;
}

}  // namespace creasewright
