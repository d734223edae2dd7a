#include "guide/joined_folds.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace creasewright {
namespace {

/// Panels that move in one picture.
constexpr std::ptrdiff_t kMostMoved = 6;

/// Nothing is held, bent or opened: flaps are only brought to where they are needed.
bool getsReady(const Step& step) {
  return !step.folds.empty() && step.bends.empty() && !step.turn &&
         std::ranges::none_of(
             step.folds, [](const Fold& fold) { return fold.bend || fold.loop || fold.opens; }) &&
         std::ranges::all_of(
             step.joins, [](const Join& join) { return join.method == Method::Rest; });
}

/// Its picture shows the piece on its way as rigid panels, or nearly so.
bool movesStiffly(const Step& step) {
  return std::ranges::all_of(
             step.bends, [](BendCode why) { return why == BendCode::TuckSlidesIn; }) &&
         std::ranges::none_of(
             step.folds, [](const Fold& fold) { return fold.bend || fold.loop || fold.opens; });
}

/// Whether a panel is another or hangs on it.
bool hangsOn(const Net& net, int panel, int other) {
  while (panel != other) {
    const auto crease = std::ranges::find_if(
        net.creases, [panel](const Crease& each) { return !each.loop && each.child == panel; });
    if (crease == net.creases.end()) return false;
    panel = crease->parent;
  }
  return true;
}

/// Whether a panel that `ready` moves hangs on one that moves in `closing`, carries it, or meets
/// its partner there.
bool concerns(const Net& net, const Step& ready, const Step& closing) {
  return std::ranges::any_of(
      ready.folds,
      [&](const Fold& fold) {
        return std::ranges::any_of(
                   closing.folds,
                   [&fold](const Fold& other) {
                     return fold.parent == other.child || other.parent == fold.child;
                   }) ||
               std::ranges::any_of(
                   closing.joins,
                   [&](const Join& join) {
                     return hangsOn(net, join.panel, fold.child) ||
                            hangsOn(net, join.onto, fold.child);
                   });
      });
}

/// The same panel twice in one picture would need two arrows.
bool movesTwice(const Step& ready, const Step& closing) {
  return std::ranges::any_of(
      ready.folds,
      [&closing](const Fold& fold) {
        return std::ranges::find(closing.folds, fold.crease, &Fold::crease) != closing.folds.end();
      });
}

bool goTogether(const Net& net, const Step& ready, const Step& closing) {
  return getsReady(ready) && movesStiffly(closing) && concerns(net, ready, closing) &&
         !movesTwice(ready, closing) &&
         std::ssize(ready.folds) + std::ssize(closing.folds) <= kMostMoved;
}

template <class T>
void prepend(const std::vector<T>& first, std::vector<T>& list) {
  list.insert(list.begin(), first.begin(), first.end());
}

void prepend(const Step& ready, Step& closing) {
  prepend(ready.stages, closing.stages);
  prepend(ready.folds, closing.folds);
  prepend(ready.joins, closing.joins);
  prepend(ready.checks, closing.checks);
  prepend(ready.figure.panels, closing.figure.panels);
  closing.figure.progressFrom = ready.figure.progressFrom;
}

}  // namespace

std::vector<Step> joinedFolds(const Net& net, std::vector<Step> folds) {
  std::vector<Step> joined;
  for (auto step = folds.rbegin(); step != folds.rend(); ++step)
    if (!joined.empty() && goTogether(net, *step, joined.back()))
      prepend(*step, joined.back());
    else
      joined.push_back(std::move(*step));
  std::ranges::reverse(joined);
  return joined;
}

}  // namespace creasewright
