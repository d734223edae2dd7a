#include "cutting/check_plan.h"

#include <algorithm>

namespace creasewright {
namespace {

Problem faulty(std::string where, std::string what) {
  return {ProblemCode::PlanFaulty, std::move(where), {std::move(what)}};
}

bool fills(const CutNode& part, Length x, Length y, Length width, Length height) {
  return part.x == x && part.y == y && part.width == width && part.height == height;
}

class Judge {
 public:
  Judge(const std::vector<CutSheet>& stock, const std::vector<BlankDemand>& demands)
      : stock_(stock), demands_(demands), have_(demands.size(), 0), used_(stock.size(), 0) {}

  void layout(const Layout& layout) {
    if (layout.stock < 0 || layout.stock >= static_cast<int>(stock_.size()) || layout.count < 1)
      return fault({}, "sheets");
    const auto s = static_cast<std::size_t>(layout.stock);
    used_[s] += layout.count;
    if (!fills(layout.sheet, {}, {}, stock_[s].width, stock_[s].height))
      return fault(numberOf(stock_[s]), "cut");
    node(layout.sheet, stock_[s], layout.count);
  }

  void totals(const CuttingPlan& plan) {
    for (std::size_t d = 0; d < demands_.size(); ++d)
      if (have_[d] < demands_[d].quantity) fault(demands_[d].name, "short");
    std::int64_t cost = 0;
    std::int64_t sheets = 0;
    for (std::size_t s = 0; s < stock_.size(); ++s) {
      if (stock_[s].atHand >= 0 && used_[s] > stock_[s].atHand)
        fault(numberOf(stock_[s]), "at-hand");
      cost += used_[s] * (plan.priced ? stock_[s].cost : 1);
      sheets += used_[s];
    }
    if (sheets != plan.sheets) fault({}, "sheets");
    if (cost != plan.cost) fault({}, "cost");
    if (plan.bound > cost) fault({}, "bound");
  }

  [[nodiscard]] const std::optional<Problem>& found() const { return found_; }

 private:
  void fault(const std::string& where, const char* what) {
    if (!found_) found_ = faulty(where, what);
  }

  /// A sheet's place on the list, from 1.
  [[nodiscard]] std::string numberOf(const CutSheet& sheet) const {
    return std::to_string(&sheet - stock_.data() + 1);
  }

  void node(const CutNode& n, const CutSheet& sheet, int count) {
    if (n.kind == CutNode::Kind::Blank) return blank(n, sheet, count);
    if (n.kind == CutNode::Kind::Offcut) return;
    const Length side = n.upright ? n.width : n.height;
    if (n.parts.size() != 2 || n.at <= Length() || n.at >= side)
      return fault(numberOf(sheet), "cut");
    const bool parted = n.upright
                            ? fills(n.parts[0], n.x, n.y, n.at, n.height) &&
                                  fills(n.parts[1], n.x + n.at, n.y, n.width - n.at, n.height)
                            : fills(n.parts[0], n.x, n.y, n.width, n.at) &&
                                  fills(n.parts[1], n.x, n.y + n.at, n.width, n.height - n.at);
    if (!parted) return fault(numberOf(sheet), "cut");
    for (const CutNode& part : n.parts) node(part, sheet, count);
  }

  void blank(const CutNode& n, const CutSheet& sheet, int count) {
    if (n.demand < 0 || n.demand >= static_cast<int>(demands_.size()))
      return fault(numberOf(sheet), "size");
    const BlankDemand& wanted = demands_[static_cast<std::size_t>(n.demand)];
    if (n.turned && !(wanted.mayTurn && sheet.mayTurn)) return fault(wanted.name, "turned");
    if (n.width != (n.turned ? wanted.height : wanted.width) ||
        n.height != (n.turned ? wanted.width : wanted.height))
      return fault(wanted.name, "size");
    have_[static_cast<std::size_t>(n.demand)] += count;
  }

  const std::vector<CutSheet>& stock_;
  const std::vector<BlankDemand>& demands_;
  std::vector<std::int64_t> have_;
  std::vector<std::int64_t> used_;
  std::optional<Problem> found_;
};

}  // namespace

std::optional<Problem> checkPlan(const CuttingPlan& plan, const std::vector<CutSheet>& stock,
                                 const std::vector<BlankDemand>& demands) {
  Judge judge(stock, demands);
  for (const Layout& layout : plan.layouts) judge.layout(layout);
  judge.totals(plan);
  return judge.found();
}

}  // namespace creasewright
