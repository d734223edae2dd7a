#include "cutting/finish_layouts.h"

#include <algorithm>

#include "cutting/fewer_settings.h"
#include "cutting/neat_layout.h"
#include "cutting/strip_layout.h"
#include "cutting/trim_steps.h"

namespace creasewright {

std::vector<SheetsAlike> sheetsFor(const std::vector<int>& counts, int times,
                                   std::vector<int>& rest, bool noExtras) {
  std::vector<int> most;
  for (std::size_t d = 0; d < rest.size(); ++d)
    most.push_back(std::min(counts[d], (std::max(rest[d], 0) + times - 1) / times));
  std::vector<SheetsAlike> all;
  while (times > 0) {
    SheetsAlike alike{times, most};
    for (std::size_t d = 0; d < rest.size() && noExtras; ++d) {
      alike.counts[d] = std::min(most[d], std::max(rest[d], 0));
      if (alike.counts[d] > 0) alike.sheets = std::min(alike.sheets, rest[d] / alike.counts[d]);
    }
    for (std::size_t d = 0; d < rest.size(); ++d) rest[d] -= alike.counts[d] * alike.sheets;
    times -= alike.sheets;
    all.push_back(std::move(alike));
  }
  return all;
}

namespace {

constexpr double kSettingSteps = 0.1 * Work::kSecond;  // for each layout
constexpr double kMostSettingLayouts = 5;
constexpr double kSettingShare = 0.2;  // of what the whole plan may take

std::vector<BlankDemand> lyingOn(const CutSheet& sheet, std::vector<BlankDemand> demands) {
  for (BlankDemand& demand : demands) demand.mayTurn = mayTurn(sheet, demand);
  return demands;
}

}  // namespace

std::optional<CutNode> leastWork(const CutSheet& sheet, const std::vector<BlankDemand>& demands,
                                 const std::vector<int>& counts, std::optional<CutNode> known,
                                 Work& work) {
  const auto take = [&](std::optional<CutNode> other) {
    if (other && (!known || trimmingWork(*other) < trimmingWork(*known))) known = std::move(other);
  };
  if (!work.mayGoOn()) return known;
  const std::vector<BlankDemand> lying = lyingOn(sheet, demands);
  take(stripLayout(sheet.width, sheet.height, lying, counts, work));
  take(neatLayout(sheet.width, sheet.height, lying, counts, work));
  return known;
}

void setLessOften(std::vector<Layout>& layouts, const std::vector<CutSheet>& stock,
                  const std::vector<BlankDemand>& demands, double whole, Work& work) {
  auto left = static_cast<double>(layouts.size());
  const WorkBeyond more(
      work, std::min(kSettingSteps * std::min(left, kMostSettingLayouts), kSettingShare * whole));
  for (Layout& layout : layouts) {
    const WorkShare share(work, work.left() / left--);
    const CutSheet& sheet = stock[static_cast<std::size_t>(layout.stock)];
    if (auto fewer = fewerSettings(layout.sheet, lyingOn(sheet, demands), sheet.mayTurn, work))
      layout.sheet = *std::move(fewer);
  }
}

}  // namespace creasewright
