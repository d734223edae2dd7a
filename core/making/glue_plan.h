#pragma once

#include <string>
#include <vector>

#include "net/flat_net.h"
#include "net/piece.h"

namespace creasewright {

/// One place for adhesive: on the flap's face that meets the target.
struct GlueArea {
  int panel = 0;
  int onto = 0;                  ///< -1: a panel of another piece
  Face face = Face::Inside;      ///< face of the target it goes onto
  Face flapFace = Face::Inside;  ///< face of the flap that takes the adhesive
  Polygon area;                  ///< blank coordinates, 1 mm from creases, edges and openings
  std::string piece = {};        ///< the other piece, and its panel, where `onto` is -1
  std::string pieceOnto = {};
};

/// Adhesive stays 1 mm away from creases, edges and the openings of both panels (common practice,
/// no published source); a flap too small for that takes a line along its middle. What runs round
/// an opening is several areas. A patch on a face of a flap that is glued all over takes none of
/// its own.
std::vector<GlueArea> planGlue(const Net& net, const FlatNet& flat);

/// Adhesive on the panel by which a whole piece is glued to another: a band along either end of it,
/// 3 mm away from creases and edges, 14 mm wide at most (common practice, no published source).
std::vector<GlueArea> planPieceGlue(const Holding& held, const Net& net, const FlatNet& flat,
                                    Face flapFace);

}  // namespace creasewright
