#pragma once

#include "own_styles/keep_style.h"

namespace creasewright::testing {

inline Design plainTuckBox() {
  return *newDesign("straight-tuck-box", *parseProduct("box:60x35x120mm"), cards().front(),
                    Ease::Easy, ToolGrid::millimetre());
}

/// A tuck box with a heart window at a third of its front and a round hole in its back.
inline Design heartBox() {
  Design design = plainTuckBox();
  design.edits = {{"opening",
                   "",
                   "front",
                   "",
                   {{"shape", "heart"}, {"width", "panel-width / 3"}, {"height", "this-width"}},
                   true},
                  {"holes", "", "front/left/back", "", {{"count", "1"}, {"across", "6"}}, true}};
  return design;
}

inline StyleWords heartWords() {
  return {"Heart box",
          "Small bottles, typical; measure yours.",
          SuitedSizes{{Length::mm(30), Length::mm(20), Length::mm(40)},
                      {Length::mm(90), Length::mm(60), Length::mm(160)}},
          {"height", "length"},
          {{"tuck", "width / 2"}}};
}

inline OwnStyle heartStyle() { return *keepStyle(heartBox(), heartWords()); }

}  // namespace creasewright::testing
