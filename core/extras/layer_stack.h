#pragma once

#include <string>
#include <vector>

#include "extras/extra_kind.h"
#include "extras/label_shapes.h"
#include "extras/piece_words.h"

namespace creasewright {

/// Given way, so that what just fits does, mm.
inline constexpr double kHair = 1e-4;

/// A layer of a stack about the middle of the whole, as it lies on a face that stands upright.
struct StackLayer {
  std::string name;  ///< of its piece
  Polygon outline;   ///< from (0, 0), not turned
  Point middle;      ///< of the outline's bounds
  Angle turn;
  Card card;
  std::vector<std::string> lines;
  LayerFacts facts;
  WordsLook words = {};
};

/// What a layer of a stack can be told; 0 for width and height leaves `inset` all round.
std::vector<ParameterSpec> layerParameters();

/// How an extra's own piece is held: its parameters `hold` and `foam`.
std::vector<ParameterSpec> holdParameters();
LayerFacts factsOf(const Parameters& parameters, const Polygon& outline);

/// A layer with its parameters at their defaults, on the tool grid, of `card`.
ExtraLayer standardLayer(const Card& card, ToolGrid grid = ToolGrid::none());
/// Reads `text` as parameter `key` of a layer. Errors: UnknownParameter, ParameterUnreadable.
Result<ExtraLayer> withParameter(ExtraLayer layer, std::string_view key, std::string_view text,
                                 ToolGrid grid);

/// The layers on top of the last of `stack`, each on the one before. Errors: LayerTooLarge,
/// ParameterTooSmall, ParameterTooLarge.
Result<std::vector<StackLayer>> withLayers(std::vector<StackLayer> stack, const Extra& extra,
                                           ToolGrid grid);

/// Where the card of a layer is, about the middle of the stack.
Polygon placedOutline(const StackLayer& layer);

/// Card and foam together, mm.
double heightOf(const std::vector<StackLayer>& stack);

/// Foam dots under a piece of card: one in each corner, 3 mm inside the edge, then every 40 mm, at
/// least three, one below 20 mm (common practice, no published source).
int foamDotsFor(const Polygon& outline);

}  // namespace creasewright
