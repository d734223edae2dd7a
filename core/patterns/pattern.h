#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "base/worded.h"
#include "geometry/polygon.h"
#include "patterns/paper_pattern.h"

namespace creasewright {

/// By how much a patterned paper may be turned and still look right.
enum class Turns {
  Any,      ///< by any angle
  Quarter,  ///< by a quarter and a half
  Half,     ///< upside down
  None      ///< it has an up
};

/// What is printed in one go: shapes in one colour, over the layers before it.
struct PatternLayer {
  int ink = 1;          ///< which of the colours
  int mixed = -1;       ///< another colour that is mixed into it, half and half; -1 = none
  bool joined = false;  ///< its shapes meet those of the next repeats
  std::vector<Polygon> shapes;
};

/// A pattern of our own, drawn by formula. It is the same again after each repeat: 1 to the right
/// and `height` upwards, in widths of the repeat. The shapes are those of one repeat; they may
/// reach out of it, and then those of its neighbours reach into it.
struct PatternKind {
  std::string_view id;
  Worded title;
  Turns turns = Turns::None;
  Length usual;                 ///< its width where nothing else is said
  std::vector<Colour> colours;  ///< its own, the ground first
  double height = 1;
  std::vector<PatternLayer> layers = {};

  [[nodiscard]] bool hasUp() const { return turns == Turns::None; }
};

/// All, in the order in which they are shown.
std::span<const PatternKind> patterns();

/// The pattern called `id`, or nullptr.
const PatternKind* patternCalled(std::string_view id);
/// Error: PatternUnknown, with up to three ids that are like it.
Result<const PatternKind*> findPattern(std::string_view id);

/// A paper with a known pattern as it is where nothing else is said.
PaperPattern usualPaper(const PatternKind& pattern);

/// The colours of a paper, the ground first: its own, then those of its pattern. Empty where the
/// pattern is not known. Of a picture: its mean, its darkest, its lightest; white where not told.
std::vector<Colour> coloursOf(const PaperPattern& paper);

/// The colour of a paper seen from far: the mean of its colours by their areas. White where the
/// pattern is not known.
Colour meanColour(const PaperPattern& paper);

/// What a layer is printed in.
Colour inkOf(const PatternLayer& layer, const std::vector<Colour>& colours);

/// By how much the paper may be turned: a picture by nothing, an unknown pattern by any angle.
Turns turnsOf(const PaperPattern& paper);

/// Whether a part cut from the paper may lie on it turned by a quarter.
bool mayTurnByQuarter(const PaperPattern& paper);

/// Error: PatternScaleOff.
Result<Length> patternScale(std::string_view text);
/// Whether pattern, scale and colours are such that it can be printed. Problems: PatternUnknown,
/// PatternScaleOff, PatternColours; of a picture: PictureNoFile, NotAPaper.
Result<PaperPattern> checkedPaper(PaperPattern paper);

}  // namespace creasewright
