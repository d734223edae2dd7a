#pragma once

#include <optional>

#include "drawing/drawing.h"

namespace creasewright {

/// What a machine makes of a score.
enum class ScoreForm {
  Line,        ///< one line from end to end
  Dashes,      ///< the dashes of its kind as lines of their own: a pen or a blunt blade
  Perforation  ///< short cuts with bridges between them, in the layer of perforations
};

/// How wide the beam or the blade cuts, mm: outlines of cut-outs (inner) and of pieces (outer) move
/// by half of it into what falls away.
struct Kerf {
  double outer = 0;
  double inner = 0;
};

struct MachineLines {
  ScoreForm scores = ScoreForm::Line;
  Kerf kerf;
};

/// The bridges of a perforation, and its cuts, mm (common practice, no published source). A line
/// begins and ends with a bridge, so that corners hold.
inline constexpr double kPerforationCut = 2.0;
inline constexpr double kPerforationBridge = 1.0;

/// Lines as a machine works them off, in the order of the file: scores, cuts inside the pieces from
/// the innermost on, last the outlines; each closed cut a path of its own. An open cut that ends at
/// an outline follows it. Nothing when a cut-out is narrower than its kerf.
std::optional<Drawing> forMachine(Drawing drawing, const MachineLines& lines);

}  // namespace creasewright
