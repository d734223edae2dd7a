#include "styles/parts/two_lids.h"

#include <utility>

namespace creasewright {
namespace {

enum Stage { BackAndSeam = 1, Walls, BottomDust, BottomTuck, BottomLid, TopDust, TopTuck, TopLid };

}  // namespace

std::vector<Piece> boxWithTwoLids(const TuckBox& box, Shape front, Shape back, LidOn bottom) {
  NetBuilder net({"back-and-seam", "walls", "bottom-dust-flaps", "bottom-tuck", "bottom-lid",
                  "top-dust-flaps", "top-tuck", "top-lid"});
  addWalls(net, box, std::move(front), std::move(back), Walls);
  addTuckEnd(net, box, {BoxEnd::Bottom, bottom, BottomDust, BottomTuck, BottomLid});
  addTuckEnd(net, box, {BoxEnd::Top, LidOn::Back, TopDust, TopTuck, TopLid});
  return {{"box", net.take(), insideOf(box)}};
}

}  // namespace creasewright
