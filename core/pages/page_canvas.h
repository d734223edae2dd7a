#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "drawing/drawing.h"
#include "pages/free_space.h"
#include "pages/page_frame.h"

namespace creasewright {

/// What stands at the head of a page.
struct PageHead {
  std::string title;                    ///< design, and the piece where there is one
  std::string details;                  ///< size, card, date
  std::string page;                     ///< `page 2 of 5 · tile B1`
  std::vector<std::string> notes = {};  ///< sentences on how the sheet is used
};

/// How far into the net something may go for want of room: never onto a line.
enum class PageRoom {
  Margin,  ///< beside the blanks
  Waste,   ///< on what is cut away
  Card     ///< on panels
};

/// One page while it is laid out: the drawing so far and the room that is left.
class PageCanvas {
 public:
  explicit PageCanvas(const PageFrame& frame);

  /// Puts `content` (page coordinates) down; nothing placed later will touch its lines.
  void put(const Drawing& content);
  /// Areas of colour that lines and words may stand on.
  void lay(const Drawing& ground);

  /// Keeps later parts out of a blank's `box`, and off its `card`, while there is room elsewhere.
  void avoid(const Bounds& box, const std::vector<Polygon>& card);

  /// Keeps parts placed from now on `gap` mm away from everything.
  void keepApart(double gap) { gap_ = gap; }

  /// Places `part` on free room near `wish` (its lower left corner), in the margin where possible,
  /// else as far in as `most` allows; only inside `within` where that is given. False: no room.
  bool place(const Drawing& part, Point wish, PageRoom most = PageRoom::Card,
             const std::optional<Bounds>& within = std::nullopt);

  /// The same in `room` alone, for one who has tried the better ones.
  bool placeIn(PageRoom room, const Drawing& part, Point wish,
               const std::optional<Bounds>& within = std::nullopt);

  /// How far into the net place() went since takeDepth() was last asked.
  PageRoom takeDepth() { return std::exchange(depth_, PageRoom::Margin); }

  /// Head lines on top; where there is none, the head as a small block, also turned. False: no
  /// room.
  bool placeHead(const PageHead& head);

  /// The four check bars, at the foot and at the left. False: no room for one of them.
  bool placeBars();

  /// What lines and placed parts leave free; what is blocked here is taken for good.
  [[nodiscard]] bool isFree(const Bounds& box) const { return spaces_.back().isFree(box); }
  void block(const Bounds& box);
  FreeSpace& lines() { return spaces_.back(); }
  [[nodiscard]] const PageFrame& frame() const { return frame_; }
  [[nodiscard]] const Drawing& drawing() const { return drawing_; }
  Drawing take() { return std::move(drawing_); }

 private:
  PageFrame frame_;
  Drawing drawing_;
  std::vector<FreeSpace> spaces_;  // by PageRoom
  double gap_ = 0;
  PageRoom depth_ = PageRoom::Margin;
};

}  // namespace creasewright
