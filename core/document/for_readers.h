#pragma once

#include "document/design.h"

namespace creasewright {

/// What is used where a hand-out is read: rulers, card and paper in inches, or metric ones.
enum class Readers { Inch, Metric };

/// The design made anew for what its readers have: every length on the marks of their rulers (1/16
/// in, or 1 mm; marks of their own kind that the design already keeps to stay), the card of theirs
/// that is most like its own in thickness, what follows from the product fitted to both. Card that
/// has no like there (more than a quarter thicker or thinner) stays, and so does the product.
Design forReaders(Design design, Readers readers);

/// The card of those readers' that is most like `card`, in its colours; `card` itself when it is
/// one of theirs or when none comes near.
Card cardFor(const Card& card, Readers readers);

}  // namespace creasewright
