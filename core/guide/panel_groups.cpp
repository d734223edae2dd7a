#include "guide/panel_groups.h"

#include <algorithm>
#include <iterator>
#include <set>

namespace creasewright {
namespace {

constexpr int kFewestTogether = 3;

/// `front/near-flap-10` is a `near-flap`.
std::string kindOf(const std::string& id) {
  std::string kind = id.substr(id.find_last_of('/') + 1);
  const std::size_t end = kind.find_last_not_of("0123456789");
  if (end != std::string::npos && end + 1 < kind.size() && kind[end] == '-') kind.resize(end);
  return kind;
}

}  // namespace

std::vector<PanelGroup> panelGroups(const Net& net, const std::vector<int>& panels) {
  const std::set<int> wanted(panels.begin(), panels.end());
  std::set<std::string> together;
  std::vector<PanelGroup> groups;
  for (const int panel : panels) {
    const std::string kind = kindOf(net.panels.at(static_cast<std::size_t>(panel)).id);
    const auto alike = [&](const Panel& other) { return kindOf(other.id) == kind; };
    std::vector<int> among;
    std::ranges::copy_if(wanted, std::back_inserter(among), [&](int other) {
      return alike(net.panels.at(static_cast<std::size_t>(other)));
    });
    const bool all = std::ssize(among) >= kFewestTogether &&
                     std::ssize(among) == std::ranges::count_if(net.panels, alike);
    if (!all)
      groups.push_back({{}, {panel}});
    else if (together.insert(kind).second)
      groups.push_back({kind, std::move(among)});
  }
  return groups;
}

}  // namespace creasewright
