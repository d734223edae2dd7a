#include "net/bend_code.h"

namespace creasewright {

std::string_view bendName(BendCode code) {
  switch (code) {
    case BendCode::TuckSlidesIn:
      return "tuck-slides-in";
    case BendCode::PetalsOverlap:
      return "petals-overlap";
    case BendCode::TubePinched:
      return "tube-pinched";
    case BendCode::CurvedScore:
      return "curved-score";
    case BendCode::BottomOpens:
      return "bottom-opens";
    case BendCode::FoldsFlat:
      return "folds-flat";
    case BendCode::OpensAgain:
      return "opens-again";
    case BendCode::TabsFedIn:
      return "tabs-fed-in";
    case BendCode::InnerWallsCurl:
      return "inner-walls-curl";
  }
  return {};
}

}  // namespace creasewright
