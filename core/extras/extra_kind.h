#pragma once

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
  Round,   ///< slid round the box
  OnFace,  ///< glued onto the outside of faces
  InFace,  ///< glued behind the opening of a face
  Inside,  ///< laid into the box
  Hanging  ///< tied on
};

/// One card piece of an extra.
struct ExtraPiece {
  Piece part;
  Placing placing = Placing::OnFace;
  std::vector<FacePlace> faces = {};     ///< OnFace, InFace
  std::optional<Transform> around = {};  ///< Round: its panel 0 in the frame of Host::pieces[0]
};

/// Ribbon to cut: `length` in all, bow counted.
struct RibbonNeed {
  Length width;
  Length length;
  Length bow;  ///< the part of it that is tied
  bool cross = true;
  OutsideBox round;
  int extra = 0;  ///< index into Design::extras, once built
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
  std::optional<FaceOpening> opening;
  std::vector<TakenPlace> taken = {};  ///< on faces, for those that come after
  Problems warnings = {};              ///< it is made, but not well
};

/// What the hand does to add it; app/papers/guide/extra_words.cpp has a sentence for each.
enum class ExtraAct {
  SlideBandOn,
  SlideIntoSleeve,
  GlueMatsOn,
  GlueLabelOn,
  TieTagOn,
  GlueFilmIn,
  SetInsertIn,
  LaySlipIn,
  TieRibbon
};

/// Of extras that go to one place, those that others lie on or under come first: films lie on the
/// other face, labels on mats, slips under inserts.
enum class ExtraTurn { First, Second, Last };

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
  NetWords words = {};          ///< of its nets' codes, but for commonWords and those of styles
  std::vector<ParameterSpec> parameters;
  /// Errors: ExtraTooLarge, ExtraNoPlace, ExtraFaceUnknown, ParameterTooSmall, ParameterTooLarge;
  /// `where` is the kind's id or the parameter's key.
  std::function<Result<ExtraParts>(const Extra& extra, const Host& host)> build;
  /// Of what goes round the box: its ways, or none where it finds no place.
  std::function<std::vector<WrapRound>(const Extra& extra, const Host& host)> runs = {};
};

std::span<const ExtraKind> extraKinds();
/// Error: ExtraUnknown.
Result<const ExtraKind*> findExtraKind(std::string_view id);

/// Film for windows, 0.2 mm (common practice, no published source).
Card clearFilm();

/// An extra of a kind with its parameters at their defaults, of `card`, or of film
/// where it must be clear.
Extra standardExtra(const ExtraKind& kind, const Card& card);

/// Reads `text` as parameter `key`. Errors: ExtraUnknown, UnknownParameter, ParameterUnreadable.
Result<Extra> withParameter(Extra extra, std::string_view key, std::string_view text,
                            ToolGrid grid);

}  // namespace creasewright
