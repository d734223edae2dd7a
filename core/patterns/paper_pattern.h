#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/colour.h"
#include "base/picture_file.h"
#include "units/length.h"
#include "units/millimetres.h"

namespace creasewright {

inline constexpr Length kSmallestPattern = mm(3);
inline constexpr Length kLargestPattern = mm(500);

/// The id of a paper that is printed with a picture of the person's own.
inline constexpr const char* kPicturePaper = "picture";

/// A picture that a paper is printed with, as the design keeps it.
struct PaperPicture {
  PictureFile file;
  bool tiled = true;  ///< over and over; else it is there once
  Length right = {};  ///< by how much it is shifted on the paper, before the turn; may be negative
  Length up = {};
  bool operator==(const PaperPicture&) const = default;
};

/// A pattern as a paper is printed with it: small, and saved with the card.
struct PaperPattern {
  std::string id;  ///< of a PatternKind, or kPicturePaper
  Length scale;    ///< the width of its repeat or picture, from 3 mm to 500 mm
  int turn = 0;    ///< degrees against the clock as one looks at the print, 0 to 359
  /// The ground first; those that are not told are the pattern's own. Of a picture: its mean, its
  /// darkest and its lightest.
  std::vector<Colour> colours;
  std::optional<PaperPicture> picture = {};
  bool plate = false;  ///< words on it stand on a plain plate
  bool operator==(const PaperPattern&) const = default;
};

}  // namespace creasewright
