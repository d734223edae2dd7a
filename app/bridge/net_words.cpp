#include "bridge/net_words.h"

#include <map>

#include "bridge/style_text.h"
#include "bridge/text.h"
#include "edits/kinds/kinds.h"
#include "extras/extra_kind.h"
#include "styles/parts/common_words.h"
#include "styles/registry.h"

namespace creasewright {

namespace {

using Table = std::map<std::string_view, CodeWords>;

struct Tables {
  Table stages;
  Table panels;
  Table pieces;
};

void add(const std::vector<CodeWords>& words, Table& table) {
  for (const CodeWords& word : words) table.emplace(word.code, word);
}

void add(const NetWords& words, Tables& tables) {
  add(words.stages, tables.stages);
  add(words.panels, tables.panels);
  add(words.pieces, tables.pieces);
}

const Tables& tables() {
  static const Tables kTables = [] {
    Tables all;
    add(commonWords(), all);
    add(editWords(), all);
    for (const Style& style : styles()) add(style.words, all);
    for (const ExtraKind& kind : extraKinds()) add(kind.words, all);
    return all;
  }();
  return kTables;
}

std::optional<QString> find(const Table& table, std::string_view code) {
  const auto found = table.find(code);
  return found == table.end() ? std::nullopt : std::optional(styleText(found->second.words));
}

}  // namespace

std::optional<QString> stageWords(std::string_view code) { return find(tables().stages, code); }

QString stageSays(std::string_view code) {
  const auto found = tables().stages.find(code);
  return found == tables().stages.end() || found->second.says.empty()
             ? QString()
             : styleText(found->second.says);
}

std::optional<QString> panelWords(std::string_view part) {
  const std::size_t dash = part.find_last_not_of("0123456789");
  if (dash != std::string_view::npos && dash + 1 < part.size() && part[dash] == '-') {
    const auto kind = find(tables().panels, part.substr(0, dash));
    const QString number = text(part.substr(dash + 1));
    return kind ? std::optional(QStringLiteral("%1 %2").arg(*kind, number)) : std::nullopt;
  }
  return find(tables().panels, part);
}

std::optional<QString> placeTitle(std::string_view part) {
  for (const CodeWords& place : placeWords())
    if (place.code == part) return styleText(place.words);
  return {};
}

std::optional<QString> pieceWords(std::string_view name) { return find(tables().pieces, name); }

}  // namespace creasewright
