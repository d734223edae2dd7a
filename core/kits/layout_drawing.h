#pragma once

#include "drawing/drawing.h"
#include "kits/plan_kit.h"

namespace creasewright {

/// A layout as a picture that fits into `width` x `height` mm: blanks with letters by demand (A, B
/// ..), offcuts hatched, cuts with their numbers.
Drawing drawLayout(const Layout& layout, double width, double height);

/// The letter of a demand on the pictures: A .. Z, AA ..
std::string demandLetter(int demand);

}  // namespace creasewright
