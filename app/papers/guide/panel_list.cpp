#include "papers/guide/panel_list.h"

#include <QStringList>
#include <algorithm>
#include <set>

#include "bridge/style_text.h"
#include "papers/guide/guide_words.h"

namespace creasewright {

namespace {

constexpr int kFewestTogether = 3;

/// The last name of a panel's path without its number: `front/near-flap-10` is a `near-flap`.
std::string kindOf(const std::string& id) {
  std::string kind = id.substr(id.find_last_of('/') + 1);
  const std::size_t end = kind.find_last_not_of("0123456789");
  if (end != std::string::npos && end + 1 < kind.size() && kind[end] == '-') kind.resize(end);
  return kind;
}

}  // namespace

QString panelList(const BuiltPiece& piece, const std::vector<int>& panels) {
  const std::vector<Panel>& all = piece.net.panels;
  const auto id = [&](int panel) { return all.at(static_cast<std::size_t>(panel)).id; };
  const std::set<int> wanted(panels.begin(), panels.end());
  std::set<std::string> together;
  QStringList names;
  for (const int panel : panels) {
    const std::string kind = kindOf(id(panel));
    const auto alike = [&](const Panel& other) { return kindOf(other.id) == kind; };
    const auto among = std::ranges::count_if(
        wanted, [&](int other) { return alike(all.at(static_cast<std::size_t>(other))); });
    if (among >= kFewestTogether && among == std::ranges::count_if(all, alike)) {
      if (together.insert(kind).second) {
        names.append(
            GuideTr::tr("“%1” (all %n)", "", static_cast<int>(among)).arg(panelTitle(kind)));
      }
      continue;
    }
    const QString name = GuideTr::tr("“%1”", "name of a panel").arg(panelTitle(id(panel)));
    if (!names.contains(name)) names.append(name);
  }
  return names.join(QStringLiteral(", "));
}

}  // namespace creasewright
