#pragma once

#include <optional>

#include "cutting/cutting.h"
#include "cutting/work.h"

namespace creasewright {

/// One kind of sheet as whoever checks a bound sees it: written plainly and apart from the search,
/// so that a fault there is not made here as well. Where sides have too many sums, blanks and sheet
/// are rounded down to a coarser step: what it says a sheet holds is then rather too much.
class PlainSheet {
 public:
  /// Where the work is given up nothing is known of it.
  PlainSheet(const CutSheet& sheet, const std::vector<BlankDemand>& demands, Work& work);

  /// The most that blanks of these worths which fit one sheet are worth together, each counted
  /// without limit; nothing when the work was given up or there is too much of it.
  std::optional<std::int64_t> most(const std::vector<std::int64_t>& worth, Work& work) const;

  /// By these worths of the blanks at most so much less than the best.
  struct Floor {
    std::vector<std::int64_t> worth;
    std::int64_t slack = 0;
  };

  /// All numbers of blanks that fit one sheet together, none above what is asked for, none covered
  /// by another; nothing when they are too many. With a floor, those are missing that are worth
  /// more than its slack less than most() says: in place of what a part holds, the best of the part
  /// would be worth so much more, and no sheet holds more than most().
  std::optional<std::vector<std::vector<int>>> allCounts(Work& work,
                                                         const Floor* floor = nullptr) const;

 private:
  /// A cut of a size: where in `sizes` its two parts stand.
  struct Cut {
    std::size_t first = 0;
    std::size_t second = 0;
  };
  /// One axis: what a part may measure, and its cuts.
  struct Axis {
    std::vector<std::int64_t> sizes;
    std::vector<std::vector<Cut>> cuts;
    std::size_t cutsInAll = 0;
  };
  struct Lying {
    std::size_t demand = 0;
    std::int64_t width = 0;
    std::int64_t height = 0;
  };

  bool lay(const CutSheet& sheet, std::int64_t step, Work& work);
  [[nodiscard]] Axis axis(bool upright, std::int64_t side, Work& work) const;

  const std::vector<BlankDemand>& demands_;
  std::vector<Lying> lying_;
  Axis across_;
  Axis up_;
  bool small_ = false;  ///< few enough sums
};

}  // namespace creasewright
