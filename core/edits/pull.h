#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "edits/gauge.h"

namespace creasewright {

/// A measure that moves a thing.
struct PullWay {
  std::string_view key;
  double perMm = 0;        ///< how far the thing goes, mm for each mm of the measure
  bool ofProduct = false;  ///< the product asks for this measure: changing it changes the cavity
};

/// Which measures move a line along its normal, or change a distance, and how far, the strongest
/// first; of equals the style's order. The middle of the piece's first panel stays where it is.
/// Found by making the net with each measure a little larger or smaller. Empty when the thing
/// follows from no measure, or is not there.
std::vector<PullWay> waysToPull(const Design& design, const Movable& thing);

/// What came of a pull.
struct Pulled {
  Length value;                    ///< of the measure
  double gone = 0;                 ///< how far the thing comes to lie from where it was, mm
  std::optional<Problem> stopped;  ///< the limit that the hand ran into
};

/// A thing of a design that a hand holds, as long as it does; what is the same for all its moves is
/// found once.
class HeldThing {
 public:
  /// Nothing where the thing is not there.
  static std::optional<HeldThing> take(const Design& design, const Movable& thing,
                                       Blanks blanks = Blanks::OnGrid);

  /// As the function of this name.
  [[nodiscard]] Pulled pull(const PullWay& way, double byMm, bool offGrid) const;
  /// How far the thing lies from where it was, for a value of a measure (mm). Nothing beyond a
  /// limit, or where it is another one.
  [[nodiscard]] std::optional<double> goneAt(std::string_view key, double mm) const;

 private:
  HeldThing(const Style& style, const Design& design, Gauge gauge);
  [[nodiscard]] double valueFor(std::string_view key, double perMm, double by) const;
  [[nodiscard]] bool isLost(std::string_view key, double mm) const;

  /// What was asked last: a pull ends by asking for the value that it found.
  struct Asked {
    std::string key;
    std::int64_t nm = 0;
    std::optional<double> gone;
  };

  const Style* style_;
  Design design_;
  Gauge gauge_;
  double start_ = 0;
  mutable std::optional<Asked> last_;
};

/// The value of `way`, one of waysToPull(design, thing), with which a line comes to lie `byMm`
/// farther along its outward normal, or a distance is `byMm` larger (mm), as near as its limits and
/// its shape let it and, unless `offGrid`, on the tool grid. `design` is the one before the pull.
Pulled pull(const Design& design, const Movable& thing, const PullWay& way, double byMm,
            bool offGrid);

}  // namespace creasewright
