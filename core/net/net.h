#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/polygon.h"
#include "net/bend_code.h"
#include "net/inscription.h"
#include "units/angle.h"

namespace creasewright {

/// How a flap is held to its target.
enum class Method {
  Glue,  ///< adhesive between the two faces
  Tuck,  ///< slid behind, held by friction
  Lock,  ///< caught in a slit or notch
  Rest   ///< only lies there (a dust flap under a lid); orders layers, is no joint
};

/// The drawn face of a net becomes the inside of the box.
enum class Face { Inside, Outside };

/// What joins two panels.
enum class CreaseKind {
  Score,       ///< a scored fold
  Perforated,  ///< a perforated fold
  Flat         ///< no score: the card runs on, or bends along a ruling; names a part of a panel
};

/// Which way a crease folds, seen from the drawn face: towards the viewer or away.
enum class Sense { Valley, Mountain };

/// Fold angle of a crease when so many stages are done: 2.5 is the middle of the third.
struct Waypoint {
  double after = 0;
  Angle angle;
};

/// A part of the card between creases. The outline is in the panel's own frame: a child's frame has
/// its x axis along its crease (from the crease's end `q` to `p` of the parent) and y away from the
/// parent. Corners run counter-clockwise, millimetres.
struct Panel {
  std::string id;  ///< path from the root: `base/front/wall`
  Polygon outline;
  std::vector<std::string> edges;  ///< edges[i] names corner i -> corner i+1
  std::vector<Polygon> openings;   ///< clockwise holes, inside the outline
  bool shows = false;              ///< its outside face shows on the finished piece
};

/// The hinge between two panels, which index into Net::panels. Tree creases place the child by the
/// parent (parent < child). Loop creases join two panels that are both placed already, as in a
/// gable top; there the angle only says how far the fold goes. Positive angles turn the child
/// towards the viewer of the drawn face: a valley fold.
struct Crease {
  int parent = 0;
  int child = 0;
  Segment onParent;  ///< p -> q in the parent's frame, along its counter-clockwise outline
  Angle angle;       ///< final fold, deviation from flat
  int stage = 1;     ///< 1..Net::stageCount; creases of one stage move together
  CreaseKind kind = CreaseKind::Score;
  bool loop = false;
  bool driven = true;  ///< else its angle on the way follows from the loops that must stay closed
  /// Of a score whose final angle is zero: the way it is folded before it is opened again.
  Sense sense = Sense::Valley;
  /// Where it goes before its final angle, from {stages done, 0} on, in order; empty = it turns
  /// evenly in its own stage and in no other.
  std::vector<Waypoint> way = {};

  [[nodiscard]] bool isValley() const;
  /// Whether it has another angle than zero at any time.
  [[nodiscard]] bool moves() const { return angle.degrees() != 0 || !way.empty(); }
};

/// A flap, or a patch of a larger panel, that ends up against a target.
struct Mate {
  int panel = 0;             ///< the flap
  int onto = 0;              ///< the target
  Face face = Face::Inside;  ///< which face of the target the flap lies against
  Method method = Method::Glue;
  bool rim = true;     ///< the flap's own crease lands on the target's rim, else inside its outline
  Polygon patch = {};  ///< the part of the flap that meets the target (flap's frame); empty = all
  int stage = 0;  ///< in which it meets the target; 0 = when the last fold between them is made
};

/// A straight or curved cut inside the card that takes no material away (panel's own frame).
struct Slit {
  int panel = 0;
  Polyline line;
};

/// A stage in which the card must bend, so that rigid panels cannot show it without passing through
/// one another.
struct Bend {
  int stage = 1;
  BendCode why = BendCode::TuckSlidesIn;
};

/// Two cut edges that meet in the folded piece and that nothing holds together there, because such
/// boxes are made so: the style says it, and why. `why` is a code: `opens`, `layers`,
/// `held-beside`.
struct OpenEdges {
  int panel = 0;
  std::string edge;  ///< a name of Panel::edges
  int other = 0;
  std::string otherEdge;
  std::string why;
};

/// A line that is drawn on a panel (its own frame) to guide the hand: no cut and no fold.
struct GuideMark {
  int panel = 0;
  Polyline line;
};

/// A card piece as a tree of panels, with loops where one exists; panel 0 is the root and stays put
/// while folding.
struct Net {
  std::vector<Panel> panels;
  std::vector<Crease> creases;
  std::vector<Mate> mates;
  std::vector<Slit> slits;
  std::vector<Bend> bends;
  std::vector<Inscription> inscriptions;
  std::vector<GuideMark> marks;
  std::vector<OpenEdges> openEdges;
  std::vector<std::string> stages;  ///< code of each fold stage in order: `walls`, `roll-long`

  [[nodiscard]] int stageCount() const { return static_cast<int>(stages.size()); }
  /// Index of the panel called `id`, or nothing.
  [[nodiscard]] std::optional<int> find(std::string_view id) const;
  /// The tree crease whose child is `panel`, or nullptr for the root.
  [[nodiscard]] const Crease* creaseOf(int panel) const;
};

}  // namespace creasewright
