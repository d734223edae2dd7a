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
#include "net/net.h"
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
                                                   const Making& making)>;

/// The free space inside a folded piece, measured along the product's axes. `panel` gives the
/// frame; `axes[i]` says which axis of that frame (0 x, 1 y, 2 z) is the product's length, width,
/// height.
struct Cavity {
  std::string panel;
  Point3 seed;  ///< a point inside, in the panel's frame
  std::array<int, 3> axes{0, 1, 2};
  Point3 low{-1e4, -1e4, -1e4};  ///< where the space ends on sides without a panel
  Point3 high{1e4, 1e4, 1e4};
  std::vector<std::string> through = {};  ///< panels whose openings it goes through, from outside
  bool round = false;  ///< those openings are round: a round product fills them to their bounds
};

/// What a piece's cavity must hold besides or instead of the product: the outside of another piece.
struct Over {
  std::string piece;
  std::array<Length, 3> ease;                   ///< by Axis, both sides together
  std::array<bool, 3> axes{true, true, false};  ///< which sizes must go over
};

/// What holds a piece to another piece of its design.
enum class Hold {
  Glue,  ///< adhesive between two panels
  Slot,  ///< slots pushed into slots
  Loose  ///< put on, in or round by hand, and meant to come off again
};

/// How a piece is held to another one, or that it is loose.
struct Holding {
  Hold by = Hold::Loose;
  std::string to;            ///< name of the other piece
  std::string panel = {};    ///< Glue: of this piece, it takes the adhesive
  std::string onto = {};     ///< Glue: of the other piece
  Face face = Face::Inside;  ///< Glue: face of `onto` that the panel lies against
  /// This piece's panel 0 in the frame of the other's panel 0, both folded; mm.
  std::optional<Transform> place = {};
};

/// One card piece of a design.
struct Piece {
  std::string name;  ///< `tray`, `band`, `box`
  Net net;
  std::optional<Cavity> cavity;  ///< for the product, unless `over` is set
  std::optional<Over> over = {};
  int count = 1;                     ///< how many of it one design takes
  std::optional<Holding> held = {};  ///< nothing for a piece that others are held to
};

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
  std::function<std::vector<Piece>(const Parameters& parameters, const Making& making)> build;
};

/// The style's parameters at their defaults.
Parameters standardParameters(const Style& style);

/// Least raw values that a product asks of parameters: no advice goes below them.
using Floors = std::map<std::string, std::int64_t, std::less<>>;

/// Unknown keys (UnknownParameter) and, where parameters are outside their limits, adviceFor them.
/// Empty when `build` may be called.
Problems checkLimits(const Style& style, const Parameters& parameters, const Making& making);
/// The same for whatever `owner` calls its parameters.
Problems checkLimits(std::string_view owner, const std::vector<ParameterSpec>& specs,
                     const Parameters& parameters, const Making& making);

/// What to change in `parameters` so that they are near `wanted`, inside all limits together and
/// not below `floors`: one ParameterTooSmall or ParameterTooLarge with a value for each that
/// changes, or StyleUnsuited where there are no such values.
Problems adviceFor(const std::vector<ParameterSpec>& specs, const Parameters& parameters,
                   const Parameters& wanted, const Making& making, const Floors& floors);

}  // namespace creasewright
