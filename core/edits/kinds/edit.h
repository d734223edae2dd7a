#pragma once

#include <map>
#include <string>

namespace creasewright {

/// A change by hand to the net that a style makes: an opening, a notch, a shaped edge. Small and
/// saved with the design. It names its place, and its measures are formulas, so that it stays in
/// place when the sizes change.
struct Edit {
  std::string kind;   ///< id of an EditKind
  std::string piece;  ///< of the box; empty = its first
  std::string panel;  ///< id of a panel
  std::string edge;   ///< a name of Panel::edges; empty where the kind needs none
  /// By key of an EditMeasure: a formula, a whole number or a choice; others keep their standard.
  std::map<std::string, std::string, std::less<>> measures;
  bool on = true;  ///< else it is kept and not made
  bool operator==(const Edit&) const = default;
};

}  // namespace creasewright
