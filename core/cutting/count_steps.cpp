#include "cutting/count_steps.h"

#include <algorithm>
#include <functional>
#include <utility>

namespace creasewright {
namespace {

constexpr double kCounted = 2;  // steps of work, for a blank of a pattern
constexpr int kDeepestStep = 1'000;
constexpr std::int64_t kMostStepWorth = std::int64_t{1} << 32;

class StepWalk {
 public:
  StepWalk(const CountProof& proof, const std::vector<std::vector<std::vector<int>>>& fits,
           const std::vector<int>& demand, Work& work)
      : proof_(proof), fits_(fits), demand_(demand), work_(work) {
    for (std::size_t s = 0; s < fits.size(); ++s)
      limits_.emplace_back(fits[s].size(), Limits{0, proof.sheets[s]});
  }

  bool run() { return walk(0) && at_ == proof_.steps.size(); }

 private:
  /// How often a pattern is cut.
  struct Limits {
    int least = 0;
    int most = 0;
  };

  bool walk(int depth) {
    if (at_ >= proof_.steps.size() || depth > kDeepestStep) return false;
    const CountStep& step = proof_.steps[at_++];
    if (step.stock < 0) return holdTooLittle(step.worth);
    Limits nobody;
    Limits& limits = limitsOf(step, nobody);
    const Limits before = limits;
    limits.most = std::min(before.most, step.most);
    if (!walk(depth + 1)) return false;
    limits = {std::max(before.least, step.most + 1), before.most};
    const bool holds = walk(depth + 1);
    limits = before;
    return holds;
  }

  Limits& limitsOf(const CountStep& step, Limits& nobody) {
    const auto s = static_cast<std::size_t>(step.stock);
    if (s >= fits_.size()) return nobody;
    const auto found = std::ranges::find(fits_[s], step.pattern);
    if (found == fits_[s].end()) return nobody;
    return limits_[s][static_cast<std::size_t>(found - fits_[s].begin())];
  }

  [[nodiscard]] std::int64_t worthOf(const std::vector<int>& counts,
                                     const std::vector<std::int64_t>& worth) const {
    std::int64_t sum = 0;
    for (std::size_t d = 0; d < counts.size(); ++d) sum += counts[d] * worth[d];
    return sum;
  }

  /// Whether the sheets hold less than is wanted when each kind is cut by what is worth most first.
  /// True as well where a kind would have to be cut more often than there are sheets of it.
  bool holdTooLittle(const std::vector<std::int64_t>& worth) {
    if (worth.size() != demand_.size()) return false;
    if (std::ranges::any_of(worth, [](std::int64_t w) { return w < 0 || w > kMostStepWorth; }))
      return false;
    std::int64_t held = 0;
    for (std::size_t s = 0; s < fits_.size(); ++s) {
      if (!work_.add(kCounted * static_cast<double>(fits_[s].size() * (worth.size() + 10))))
        return false;
      std::int64_t left = proof_.sheets[s];
      std::vector<std::pair<std::int64_t, int>> more;  // worth, how often
      for (std::size_t i = 0; i < fits_[s].size(); ++i) {
        const std::int64_t each = worthOf(fits_[s][i], worth);
        const Limits& limits = limits_[s][i];
        if (limits.least > limits.most) return true;
        held += each * limits.least;
        left -= limits.least;
        more.emplace_back(each, limits.most - limits.least);
      }
      if (left < 0) return true;
      std::ranges::sort(more, std::greater());
      for (const auto& [each, often] : more) {
        const std::int64_t taken = std::min<std::int64_t>(left, often);
        held += each * taken;
        left -= taken;
      }
    }
    return held < worthOf(demand_, worth);
  }

  const CountProof& proof_;
  const std::vector<std::vector<std::vector<int>>>& fits_;
  const std::vector<int>& demand_;
  Work& work_;
  std::vector<std::vector<Limits>> limits_;  // by kind and pattern
  std::size_t at_ = 0;                       // of the steps
};

}  // namespace

bool stepsHold(const CountProof& proof, const std::vector<std::vector<std::vector<int>>>& fits,
               const std::vector<int>& demand, Work& work) {
  if (proof.sheets.size() != fits.size()) return false;
  return StepWalk(proof, fits, demand, work).run();
}

}  // namespace creasewright
