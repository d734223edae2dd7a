#pragma once

#include <memory>

#include "cutting/cutting.h"
#include "document/build.h"
#include "extras/punch.h"
#include "guide/guide.h"
#include "kits/class_kit.h"

namespace creasewright {

/// Which piece of which design a demand stands for.
struct BlankSource {
  int item = 0;        ///< index into ClassKit::items; -1 = a plain blank
  std::string piece;   ///< of the item; empty for a plain blank
  int perSet = 1;      ///< blanks in one person's bag
  bool alone = true;   ///< the only piece of its design, so the design's title names it
  std::size_t at = 0;  ///< index into the pieces of its design; without meaning for a plain blank
  std::optional<Punch> punch = {};  ///< that makes it; its blank has kPunchMargin all round
};

/// Every blank of one card.
struct CardBlanks {
  Card card;
  std::vector<BlankDemand> demands;
  std::vector<BlankSource> sources;  ///< by demand
  int firstLetter = 0;               ///< demands of all cards together are lettered on: A, B, C ...
};

/// Tape or ribbon of one width for the whole class.
struct TapeNeed {
  Length width;
  Length length;
  int strips = 0;
  std::optional<Colour> colour = {};  ///< of ribbon
};

/// A design of a class and how it is made.
struct BuiltItem {
  BuiltDesign design;
  Guide guide;
};

/// Everything that follows from a class kit before a sheet is cut. Plans, lists and layouts read
/// this and nothing else; a copy shares the built designs.
struct BuiltKit {
  ClassKit kit;
  std::vector<std::shared_ptr<const BuiltItem>> items;  ///< by ClassKit::items
  std::vector<CardBlanks> cards;
  std::vector<TapeNeed> tapes;    ///< by width
  std::vector<TapeNeed> ribbons;  ///< by width, one for each colour
  std::vector<TapeNeed> foams;    ///< `strips` foam dots of the thickness `width`
  int gluePlaces = 0;

  /// What one taker needs for an item; 0 where only a piece is cut.
  [[nodiscard]] int minutes(std::size_t item) const;
};

/// The blank of a piece (blankSize). From a paper that may only be turned upside down, or not at
/// all, it is cut as it lies on the upright paper: its width runs across that.
BlankDemand blankOf(const BuiltDesign& design, const BuiltPiece& piece, std::string name,
                    int quantity);

/// Builds every design, once, and gathers the blanks of each card for all sets; designs that
/// `known` has are taken from there. Errors: TakersWrong, NoDemand, PieceUnknown, and those of
/// build().
Result<BuiltKit> buildKit(ClassKit kit, const BuiltKit* known = nullptr);

}  // namespace creasewright
