// Styles of one's own are listed.

#include <QFileInfo>
#include <algorithm>

#include <nlohmann/json.hpp>

#include "bridge/problem_text.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "cli/output.h"
#include "cli/problem_output.h"
#include "cli/style_options.h"
#include "kept_styles/style_store.h"
#include "styles/registry.h"

namespace creasewright {

namespace {

using StyleListJson = nlohmann::ordered_json;

std::vector<StyleFile> filesNamed(const std::vector<std::string>& names) {
  if (names.empty()) return ownStyleFiles();
  std::vector<StyleFile> files;
  for (const std::string& name : names) {
    if (!QFileInfo(QFile::decodeName(name.c_str())).isDir()) {
      files.push_back({name, readOwnStyleFile(name)});
      continue;
    }
    for (StyleFile& file : stylesIn(name)) files.push_back(std::move(file));
  }
  return files;
}

QString baseTitle(const OwnStyle& style) {
  const Result<const Style*> base = findStyle(style.base);
  return base ? styleTitle(**base) : text(style.base);
}

QString sizesText(const std::array<Length, 3>& sizes) {
  QStringList sides;
  for (const Length side : sizes) sides += lengthText(side, Unit::Millimetre, false);
  return sides.join(QStringLiteral(" × "));
}

QString seenWords(const OwnStyle& style) {
  QStringList keys;
  for (const std::string& key : style.seen) keys += text(key);
  return keys.isEmpty() ? Cli::tr("none") : keys.join(QStringLiteral(", "));
}

void printStyle(const OwnStyle& style) {
  printLine(QStringLiteral("%1  %2").arg(text(style.id), text(style.title)));
  if (!style.summary.empty()) printLine(QStringLiteral("    %1").arg(text(style.summary)));
  printLine(QStringLiteral("    ") + Cli::tr("kept %n time(s) from %1, with %2 changes by hand",
                                             nullptr, static_cast<int>(style.change))
                                         .arg(baseTitle(style))
                                         .arg(style.edits.size()));
  if (style.suits) {
    printLine(QStringLiteral("    ") +
              Cli::tr("for products from %1 to %2 mm")
                  .arg(sizesText(style.suits->least), sizesText(style.suits->most)));
  }
  printLine(QStringLiteral("    ") + Cli::tr("measures: %1").arg(seenWords(style)));
  for (const auto& [key, rule] : style.rules)
    printLine(QStringLiteral("    %1 = %2").arg(text(key), text(rule)));
}

StyleListJson sizesJson(const std::array<Length, 3>& sizes) {
  return StyleListJson::array({sizes[0].mm(), sizes[1].mm(), sizes[2].mm()});
}

StyleListJson styleJson(const StyleFile& file) {
  const OwnStyle& style = *file.style;
  StyleListJson json{{"id", style.id},
                     {"file", file.path},
                     {"change", style.change},
                     {"title", style.title},
                     {"summary", style.summary},
                     {"base", style.base},
                     {"seen", style.seen},
                     {"rules", StyleListJson::object()},
                     {"edits", style.edits.size()},
                     {"suits", nullptr}};
  for (const auto& [key, rule] : style.rules) json["rules"][key] = rule;
  if (style.suits) {
    json["suits"] = {{"least_mm", sizesJson(style.suits->least)},
                     {"most_mm", sizesJson(style.suits->most)}};
  }
  return json;
}

void printStylesJson(const std::vector<StyleFile>& files) {
  StyleListJson styles = StyleListJson::array();
  StyleListJson unreadable = StyleListJson::array();
  for (const StyleFile& file : files) {
    if (file.style)
      styles.push_back(styleJson(file));
    else
      unreadable.push_back(
          {{"file", file.path},
           {"problem", problemsJson({file.style.problem()}, Unit::Millimetre).front()}});
  }
  const StyleListJson page{{"format", "creasewright-own-styles"},
                           {"version", 1},
                           {"styles", std::move(styles)},
                           {"unreadable", std::move(unreadable)}};
  printLine(
      QString::fromStdString(page.dump(2, ' ', false, StyleListJson::error_handler_t::replace)));
}

}  // namespace

int listStyles(const StyleOptions& options) {
  const std::vector<StyleFile> files = filesNamed(options.files());
  if (options.json) {
    printStylesJson(files);
  } else {
    for (const StyleFile& file : files)
      if (file.style) printStyle(*file.style);
    if (files.empty()) printLine(Cli::tr("There is no style of your own here."));
  }
  const auto broken =
      std::ranges::find_if(files, [](const StyleFile& file) { return !file.style.ok(); });
  return broken == files.end() ? ExitHolds : fail(text(broken->path), broken->style.problem());
}

}  // namespace creasewright
