#pragma once

#include <functional>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "base/worded.h"
#include "edits/kinds/edit.h"
#include "net/piece.h"
#include "styles/parameters.h"

namespace creasewright {

/// What an edit changes. A fold is named by a panel and the edge of it that the fold lies on.
enum class EditPlace { Panel, Edge, Crease };

/// A measure of a kind of edit: what it is called, what may be typed, what it is at first.
struct EditMeasure {
  std::string_view key;
  Worded title;
  Worded hint;
  ParameterKind kind = ParameterKind::Length;
  std::string_view standard;         ///< a formula, a whole number or a choice
  std::int64_t least = 0;            ///< nanometres or count
  std::int64_t most = 0;             ///< the same
  std::vector<Worded> choices = {};  ///< of a count from 0: what each value stands for
  bool words = false;                ///< free text, no number
};

/// How one piece is glued to another, besides Piece::held.
struct PieceJoint {
  std::string piece;
  Holding holding;
};

/// What an edit adds to a design beside the piece that it changes.
struct EditAdds {
  std::vector<Piece> pieces = {};
  std::vector<PieceJoint> joints = {};
};

/// Where an edit is made, and its measures as they are now: lengths in nanometres, counts and
/// choices as they are.
struct EditSite {
  Piece& piece;
  int panel = 0;
  std::string_view edge;
  const Parameters& measures;
  const Edit& edit;                  ///< for what is free text
  const std::vector<Piece>& pieces;  ///< all of the design
  double caliper = 0;                ///< mm
  EditAdds& adds;
  Net& net = piece.net;

  [[nodiscard]] Panel& on() const { return net.panels[static_cast<std::size_t>(panel)]; }
};

/// A kind of edit.
struct EditKind {
  std::string_view id;
  Worded title;
  Worded summary;
  EditPlace place = EditPlace::Panel;
  std::vector<EditMeasure> measures;
  /// Changes the net. Nothing, or why it cannot: EditPlaceGone, EditUnfit, EditNoEffect; the net
  /// then may be half changed.
  std::function<std::optional<ProblemCode>(const EditSite&)> apply;
  /// Changes more than the cuts of its panel: folds, other panels, what holds them.
  bool reshapes = false;
  /// Divides its piece: made after all others, which see the piece whole.
  bool divides = false;
};

std::span<const EditKind> editKinds();
/// Error: EditUnknown.
Result<const EditKind*> findEditKind(std::string_view id);

/// Names that stand for a length in formulas.
using LengthNames = std::map<std::string, Length, std::less<>>;

/// The names of a panel's edges, each once, in their order.
std::vector<std::string> edgeNames(const Panel& panel);

/// Evaluates an edit's measures but for free text; `known` are the names of the style's measures
/// and of the place. The edit's own stand under `this-KEY`. Errors: FormulaUnreadable and the other
/// codes of formulas, UnknownParameter.
Result<Parameters> evaluateMeasures(const EditKind& kind, const Edit& edit,
                                    const LengthNames& known, Unit unitless);

}  // namespace creasewright
