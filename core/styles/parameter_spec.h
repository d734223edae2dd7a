#pragma once

#include <concepts>
#include <functional>
#include <string_view>
#include <utility>
#include <vector>

#include "base/worded.h"
#include "styles/parameters.h"
#include "units/millimetres.h"
#include "units/tool_grid.h"

namespace creasewright {

/// What a style must know of the material and tools besides its own parameters.
struct Workbench {
  Length caliper;  ///< thickness of the card
  ToolGrid grid;
};

/// A limit of a parameter given the other parameters, in its raw unit (nanometres, count or flag);
/// a length is a limit that never changes.
class Limit {
 public:
  Limit() = default;
  Limit(Length always)
      : find_([nm = always.nm()](const Parameters&, const Workbench&) { return nm; }) {}
  template <std::invocable<const Parameters&, const Workbench&> Find>
  requires(!std::same_as<std::remove_cvref_t<Find>, Limit>) Limit(Find&& find)
      : find_(std::forward<Find>(find)) {}

  std::int64_t operator()(const Parameters& parameters, const Workbench& bench) const {
    return find_(parameters, bench);
  }

 private:
  std::function<std::int64_t(const Parameters&, const Workbench&)> find_;
};

/// One adjustable measure of a style; `parameter_rows.h` says how to write one down.
struct ParameterSpec {
  std::string_view key;
  Worded title;
  Worded hint;  ///< says where the limits come from
  ParameterKind kind = ParameterKind::Length;
  std::int64_t standard = 0;  ///< default: nanometres, count or flag
  Limit minimum = {};
  Limit maximum = {};
  std::vector<Worded> choices = {};  ///< of a count from 0: what each value stands for
  bool givesWay = false;  ///< a flap whose width may take the rest, so that blanks lie on the grid
};

}  // namespace creasewright
