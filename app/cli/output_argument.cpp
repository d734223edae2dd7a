#include "cli/output_argument.h"

#include <QRegularExpression>
#include <algorithm>
#include <filesystem>
#include <system_error>

#include "bridge/text.h"
#include "cli/output.h"

namespace creasewright {

namespace {

namespace fs = std::filesystem;

bool isOneFile(const fs::path& a, const fs::path& b) {
  std::error_code error;
  return fs::equivalent(a, b, error) && !error;
}

/// Names that the commands write into a folder.
bool isOurs(const QString& name) {
  static const QRegularExpression ours(
      QStringLiteral("^(plan\\.(pdf|csv)|mats\\.pdf|guide\\.txt|finished\\.png|step-\\d+\\.png|"
                     "photo(-\\d+)?\\.(png|jpg)|"
                     "(template|guide)-.*\\.pdf|.*-mat-\\d+-x\\d+\\.svg)$"));
  return ours.match(name).hasMatch();
}

bool replaces(const fs::path& output, const fs::path& input) {
  const fs::path folder = input.parent_path().empty() ? fs::path(".") : input.parent_path();
  return isOneFile(output, input) ||
         (isOneFile(output, folder) && isOurs(text(input.filename().string())));
}

}  // namespace

bool outputServes(const std::string& output, const std::vector<std::string>& inputs) {
  if (text(output).toStdString() != output) {
    fail(Cli::tr("-o: “%1” is no name in UTF-8. Choose another name.").arg(shown(output)));
    return false;
  }
  const bool lost = std::ranges::any_of(inputs, [&](const std::string& input) {
    return !input.empty() && !output.empty() && replaces(output, input);
  });
  if (lost) {
    fail(Cli::tr("-o: “%1” is read here and would be replaced. Choose another name.")
             .arg(shown(output)));
  }
  return !lost;
}

}  // namespace creasewright
