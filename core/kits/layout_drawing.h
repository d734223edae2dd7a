#pragma once

#include "cutting/cutting.h"
#include "drawing/drawing.h"

namespace creasewright {

/// A layout as a picture that fits into `width` x `height` mm: blanks with letters by demand (from
/// `firstLetter` on), offcuts hatched, cuts with their numbers.
Drawing drawLayout(const Layout& layout, double width, double height, int firstLetter = 0);

/// The letter of a demand on the pictures: A .. Z, AA ..
std::string demandLetter(int demand);

}  // namespace creasewright
