#pragma once

#include <array>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/problem.h"
#include "geometry/transform.h"
#include "net/piece.h"
#include "styles/net_words.h"
#include "styles/parameter_spec.h"

namespace creasewright {

/// The product's own axes, in the order in which sizes are given.
enum class Axis { Length, Width, Height };

/// The room a product needs, lying as the style wants it; caliper not counted.
struct Room {
  std::array<Length, 3> product;  ///< its bounding sizes by Axis
  std::array<Length, 3> ease;     ///< added to each, both sides together
  Length lidEase = {};            ///< a lid's inside over its tray's outside, both sides together
  bool round = false;             ///< the product is round about its height
  bool ball = false;              ///< about every axis

  [[nodiscard]] Length eased(Axis axis) const {
    const auto i = static_cast<std::size_t>(axis);
    return product.at(i) + ease.at(i);
  }
};

/// The least value of a parameter for a room, caliper counted, not yet on the grid.
struct Need {
  std::string_view key;
  Axis axis;
  Length least;
};

/// The parameters that follow from the product, each with its least value for the cavity to hold
/// `room`, given the others (a number of sides).
using StyleNeeds = std::function<std::vector<Need>(const Room& room, const Parameters& chosen,
                                                   const Workbench& bench)>;

/// How a style wants a product that is not a plain box to lie.
enum class Lying {
  AsGiven,  ///< length x width x height as the user typed them
  Flat      ///< longest side along the length, shortest upright
};

/// What a chooser may filter and rank by.
struct Traits {
  bool showsProduct = false;  ///< the product is seen without opening
  bool suitsRound = false;    ///< made for round things
  int difficulty = 1;         ///< 1 a first lesson .. 3 for practised hands
  Worded suits = {};          ///< the products it suits
};

/// A parametric packaging style.
struct Style {
  std::string_view id;
  Worded title;
  Worded summary;
  Lying lying = Lying::AsGiven;
  Traits traits = {};
  NetWords words = {};  ///< of its nets' codes, but for commonWords
  std::vector<ParameterSpec> parameters;
  std::array<bool, 3> easeOn{true, true, true};  ///< axes on which the product gets ease
  StyleNeeds needs;
  /// Builds the pieces; parameters are within their limits.
  std::function<std::vector<Piece>(const Parameters& parameters, const Workbench& bench)> build;
};

/// The style's parameters at their defaults.
Parameters standardParameters(const Style& style);

/// Least raw values that a product asks of parameters: no advice goes below them.
using Floors = std::map<std::string, std::int64_t, std::less<>>;

/// Unknown keys (UnknownParameter) and, where parameters are outside their limits, adviceFor them.
/// Empty when `build` may be called.
Problems checkLimits(const Style& style, const Parameters& parameters, const Workbench& bench);
/// The same for whatever `owner` calls its parameters.
Problems checkLimits(std::string_view owner, const std::vector<ParameterSpec>& specs,
                     const Parameters& parameters, const Workbench& bench);

/// What to change in `parameters` so that they are near `wanted`, inside all limits together and
/// not below `floors`: one ParameterTooSmall or ParameterTooLarge with a value for each that
/// changes, or StyleUnsuited where there are no such values.
Problems adviceFor(const std::vector<ParameterSpec>& specs, const Parameters& parameters,
                   const Parameters& wanted, const Workbench& bench, const Floors& floors);

}  // namespace creasewright
