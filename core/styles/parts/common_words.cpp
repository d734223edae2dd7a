#include "styles/parts/common_words.h"

namespace creasewright {

const NetWords& commonWords() {
  static const NetWords kWords = {
      .stages = {{"walls", worded("stages", "fold the walls and glue the seam"),
                  worded("stages", "Bring the walls round and press the seam.")},
                 {"bottom", worded("stages", "close the bottom"),
                  worded("stages", "Close the bottom.")},
                 {"bottom-flaps", worded("stages", "fold in the bottom flaps"),
                  worded("stages", "Fold in the bottom flaps at the sides.")},
                 {"corner-tabs", worded("stages", "fold the corner tabs"),
                  worded("stages", "Fold all four corner tabs inwards.")},
                 {"lid", worded("stages", "close the lid"), worded("stages", "Close the lid.")},
                 {"long-walls", worded("stages", "raise the long walls"),
                  worded("stages", "Stand both long walls up.")},
                 {"short-walls", worded("stages", "raise the short walls"),
                  worded("stages", "Stand both short walls up.")},
                 {"tabs", worded("stages", "fold the tabs"), worded("stages", "Fold the tabs.")},
                 {"walls-up", worded("stages", "raise the walls"),
                  worded("stages", "Stand the walls up.")},
                 {"wrap", worded("stages", "wrap round and glue the seam"),
                  worded("stages", "Bring the last panel round and press the seam.")},
                 {"back-and-seam", worded("stages", "fold the back and the seam"),
                  worded("stages", "Fold the back over, and the seam.")},
                 {"glue-tube-flat", worded("stages", "fold flat and glue the seam"),
                  worded("stages",
                         "Leave the card flat, bring its ends together and press the seam.")}},
      .panels = {{"base", worded("panels", "base")},
                 {"front", worded("panels", "front")},
                 {"back", worded("panels", "back")},
                 {"left", worded("panels", "left")},
                 {"right", worded("panels", "right")},
                 {"wall", worded("panels", "wall")},
                 {"inner-wall", worded("panels", "inner wall")},
                 {"front-tab", worded("panels", "front tab")},
                 {"back-tab", worded("panels", "back tab")},
                 {"seam", worded("panels", "seam")},
                 {"tuck", worded("panels", "tuck flap")},
                 {"bottom", worded("panels", "bottom")},
                 {"bottom-flap", worded("panels", "bottom flap")},
                 {"bottom-side", worded("panels", "bottom side")},
                 {"foot", worded("panels", "foot")},
                 {"lid", worded("panels", "lid")},
                 {"roof", worded("panels", "roof")},
                 {"tab", worded("panels", "tab")},
                 {"top", worded("panels", "top")},
                 {"front-fin", worded("panels", "front fin")},
                 {"left-back", worded("panels", "left back half")},
                 {"left-back-fin", worded("panels", "left back fin")},
                 {"right-back", worded("panels", "right back half")},
                 {"right-back-fin", worded("panels", "right back fin")}},
      .pieces = {{"tray", worded("pieces", "tray")},
                 {"box", worded("pieces", "box")},
                 {"lid", worded("pieces", "lid")},
                 {"sleeve", worded("pieces", "sleeve")}}};
  return kWords;
}

std::span<const CodeWords> placeWords() {
  static constexpr CodeWords kPlaces[] = {{"front", worded("places", "front")},
                                          {"back", worded("places", "back")},
                                          {"left", worded("places", "left")},
                                          {"right", worded("places", "right")},
                                          {"left-front", worded("places", "left front")},
                                          {"left-back", worded("places", "left back")},
                                          {"right-front", worded("places", "right front")},
                                          {"right-back", worded("places", "right back")}};
  return kPlaces;
}

}  // namespace creasewright
