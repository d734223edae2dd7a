#pragma once

#include <array>
#include <functional>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "extras/extra.h"
#include "extras/host.h"

namespace creasewright {

/// Where an extra's piece ends up.
enum class Placing {
  Round,     ///< slid round the box
  OnFace,    ///< glued onto the outside of faces
  InFace,    ///< glued behind the opening of a face
  OnInside,  ///< glued onto the inside of faces
  Inside,    ///< laid into the box
  Hanging    ///< tied on
};

/// How a layer is held to what is under it.
enum class LayerHold { Glue, Tape, Foam };

/// What a layer of a stack has besides its outline.
struct LayerFacts {
  int number = 0;  ///< in the stack of its extra, from 0 at the bottom
  LayerHold hold = LayerHold::Glue;
  Length foam = {};        ///< thickness of the foam under it
  int foamDots = 0;        ///< how many
  bool punched = false;    ///< by a punch of its size
  bool stamped = false;    ///< a blank that words are stamped onto
  bool overhangs = false;  ///< meant to reach over the edge of what is under it
};

/// One card piece of an extra.
struct ExtraPiece {
  Piece part;
  Placing placing = Placing::OnFace;
  std::vector<FacePlace> faces = {};  ///< OnFace, InFace, OnInside
  /// Round, Hanging: its panel 0 in the frame of Host::pieces[0].
  std::optional<Transform> around = {};
  std::optional<Card> card = {};         ///< where it is not the extra's
  std::optional<LayerFacts> layer = {};  ///< of a stack
};

/// One way of a ribbon, in the plane through the middle of the box that is square to an axis.
struct RibbonWay {
  std::size_t axis = 0;  ///< of OutsideBox
  /// All that it goes over, about the middle of the box along the axes after `axis`; mm,
  /// counter-clockwise.
  Polygon outline = {};
};

enum class BowForm { TwoLoops, Flat, Layered };

/// A bow made for itself and glued on.
struct BowShape {
  BowForm form = BowForm::TwoLoops;
  double span = 0;  ///< mm from tip to tip of its largest layer
  double tail = 0;  ///< mm
  int layers = 1;
  std::optional<FacePlace> face = {};      ///< its middle on a face, z inwards
  std::optional<Transform> crossing = {};  ///< the same where ribbons cross, in the first piece
};

/// The bow that a ribbon round a box is tied in.
struct TiedBow {
  double span = 0;      ///< mm from tip to tip of its loops, pressed flat
  double tail = 0;      ///< mm of each
  double aside = 0;     ///< degrees that a tail leans to its side
  Transform knot = {};  ///< its middle: x to the right, y up, z into the box
  /// What its tails lie on, from under the knot down: mm along -y, and out of the knot's plane.
  Polyline drape = {};
};

/// A short ribbon through holes of a face, to pull by.
struct RibbonPull {
  FacePlace face;      ///< the middle of its holes on the card: x along them, z inwards
  int holes = 2;       ///< one or two
  double spacing = 0;  ///< mm between the middles of two holes
  double hole = 0;     ///< mm across
  double reach = 0;    ///< mm that its loop stands out when it is pulled
  double end = 0;      ///< mm of each end inside, knots counted
  bool taped = false;  ///< its ends are stuck flat, else knotted
  double caliper = 0;  ///< mm of the card it goes through
};

/// Ribbon to cut: `length` in all, bow counted.
struct RibbonNeed {
  Length width;
  Length length;
  Length bow;  ///< the part of it that is tied
  bool cross = true;
  OutsideBox round;
  int extra = 0;      ///< index into Design::extras, once built
  int host = kOnBox;  ///< what it lies on, by its index, once built
  std::vector<RibbonWay> ways = {};
  std::optional<TiedBow> tied = {};     ///< once built, where `bow` is long enough for one
  std::optional<BowShape> shape = {};   ///< of a bow that is no part of a ribbon round the box
  std::optional<RibbonPull> pull = {};  ///< of one to pull by
};

/// What parts the room of the product, one piece of the product in each part.
struct ProductCells {
  Product item;                ///< one piece
  std::vector<Point> middles;  ///< about the middle of the room, along its length and width, mm
};

/// An opening to cut into a face of the box, in the panel's frame.
struct FaceOpening {
  int piece = 0;
  int panel = 0;
  Polygon outline;  ///< clockwise
};

/// What an extra takes.
struct ExtraParts {
  std::vector<ExtraPiece> pieces;
  std::optional<RibbonNeed> ribbon;
  std::vector<FaceOpening> openings = {};
  std::optional<ProductCells> cells = {};
  std::optional<WrapBody> body = {};   ///< of what goes round
  std::optional<Raised> raised = {};   ///< of what stands out from a face of its host
  std::vector<TakenPlace> taken = {};  ///< on faces, for those that come after
  Problems warnings = {};              ///< it is made, but not well
};

/// What the hand does to add it; app/papers/guide/extra_words.cpp has a sentence for each.
enum class ExtraAct {
  SlideBandOn,
  SlideIntoSleeve,
  GlueMatsOn,
  GlueMatsIn,
  GlueLabelOn,
  TieTagOn,
  GlueFilmIn,
  SetInsertIn,
  SetPartitionIn,
  LaySlipIn,
  ThreadPull,
  TieRibbon,
  GlueBowOn
};

/// Of extras that go to one place, those that others lie on or under come first: films lie on the
/// other face, labels on mats, slips under inserts.
enum class ExtraTurn { First, Second, Last };

/// What may carry an extra.
enum class Carrier {
  Box,
  Face,     ///< an extra with faces: a band, a label
  Wrap,     ///< card that goes round the box
  RibbonOn  ///< a ribbon
};

/// A kind of extra, and what others must know of it.
struct ExtraKind {
  std::string_view id;
  Worded title;
  Worded summary;
  ExtraAct act;
  ExtraTurn turn = ExtraTurn::Last;
  bool ofCard = true;           ///< cut from card
  bool ofFilm = false;          ///< its card is clear film
  bool onFace = false;          ///< belongs to one face, which may be chosen
  bool onEveryFace = false;     ///< where no face is chosen, to all of them
  bool opensFace = false;       ///< cuts an opening into its face, before all others are made
  bool carriesProduct = false;  ///< the product stands in it
  bool written = false;         ///< may carry lines of text
  bool layered = false;         ///< may carry layers
  bool hasFaces = false;        ///< others may lie on it
  std::vector<Carrier> carriers = {Carrier::Box};  ///< what may carry it
  NetWords words = {};  ///< of its nets' codes, but for commonWords and those of styles
  std::vector<ParameterSpec> parameters;
  /// Errors: ExtraTooLarge, ExtraNoPlace, ExtraFaceUnknown, ParameterTooSmall, ParameterTooLarge;
  /// `where` is the kind's id or the parameter's key.
  std::function<Result<ExtraParts>(const Extra& extra, const Host& host)> build;
  /// Of what goes round the box: its ways, or none where it finds no place.
  std::function<std::vector<WrapRound>(const Extra& extra, const Host& host)> runs = {};
  /// The faces that may be chosen for it, where they are not those of facesOf.
  std::function<std::vector<HostFace>(const Host& host)> faces = {};
};

std::span<const ExtraKind> extraKinds();
/// Error: ExtraUnknown.
Result<const ExtraKind*> findExtraKind(std::string_view id);

/// Film for windows, 0.2 mm (common practice, no published source).
Card clearFilm();

/// An extra of a kind with its parameters at their defaults, of `card`, or of film
/// where it must be clear.
Extra standardExtra(const ExtraKind& kind, const Card& card);

/// A raw value (nanometres, count or flag) or the name of a choice. Errors: ParameterUnreadable,
/// with the choices where there are some.
Result<std::int64_t> readSpec(const ParameterSpec& spec, std::string_view text, ToolGrid grid);

/// Reads `text` as parameter `key`. Errors: ExtraUnknown, UnknownParameter, ParameterUnreadable.
Result<Extra> withParameter(Extra extra, std::string_view key, std::string_view text,
                            ToolGrid grid);

}  // namespace creasewright
