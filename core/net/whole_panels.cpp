#include "net/whole_panels.h"

namespace creasewright {

std::string_view wholeId(std::string_view id) { return id.substr(0, id.find('#')); }

std::vector<int> wholePanels(const Net& net) {
  std::vector<int> whole;
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    std::size_t first = 0;
    while (first < i && wholeId(net.panels[first].id) != wholeId(net.panels[i].id)) ++first;
    whole.push_back(static_cast<int>(first));
  }
  return whole;
}

}  // namespace creasewright
