#pragma once

#include <string>
#include <vector>

#include "drawing/drawing.h"
#include "pages/free_space.h"
#include "pages/page_frame.h"

namespace creasewright {

/// What stands at the head of a page.
struct PageHead {
  std::string title;                    ///< design and piece
  std::string details;                  ///< size, card, date
  std::string page;                     ///< `page 2 of 5 · tile B1`
  std::vector<std::string> notes = {};  ///< sentences on how the sheet is used
};

/// One page while it is laid out: the drawing so far and the room that is left.
class PageCanvas {
 public:
  explicit PageCanvas(const PageFrame& frame);

  /// Puts `content` (page coordinates) down; nothing placed later will touch its lines and fills.
  void put(const Drawing& content);

  /// Keeps later parts out of `box` while there is room elsewhere.
  void avoid(const Bounds& box);

  /// Keeps parts placed from now on `gap` mm away from everything.
  void keepApart(double gap) { gap_ = gap; }

  /// Places `part` on free room near `wish` (its lower left corner), outside the avoided box where
  /// possible. False when there is no room.
  bool place(const Drawing& part, Point wish);

  /// Head line on top; where there is none, the head as a small block, also turned. False: no room.
  bool placeHead(const PageHead& head);

  /// The four check bars, at the foot and at the left. False: no room for one of them.
  bool placeBars();

  FreeSpace& space() { return space_; }
  [[nodiscard]] const PageFrame& frame() const { return frame_; }
  Drawing take() { return std::move(drawing_); }

 private:
  PageFrame frame_;
  Drawing drawing_;
  FreeSpace space_;
  double gap_ = 0;
  FreeSpace outside_;  // the same with the avoided box taken
};

}  // namespace creasewright
