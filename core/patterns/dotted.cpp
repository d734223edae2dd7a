#include "patterns/families.h"
#include "patterns/shapes.h"

namespace creasewright {

PatternKind pinDots() {
  PatternKind out{"pin-dots",
                  worded("patterns", "Pin dots"),
                  Turns::Any,
                  mm(6),
                  {{0x2B, 0x3F, 0x5E}, {0xF7, 0xEE, 0xD9}}};
  out.layers = {{1, -1, false, {disc({0, 0}, 0.11, 16), disc({0.5, 0.5}, 0.11, 16)}}};
  return out;
}

PatternKind dots() {
  PatternKind out{"dots",
                  worded("patterns", "Dots"),
                  Turns::Any,
                  mm(18),
                  {{0xFA, 0xF3, 0xE3}, {0xD9, 0x7C, 0x6A}, {0x86, 0xA8, 0x9A}}};
  out.layers = {{1, -1, false, {disc({0, 0}, 0.2)}}, {2, -1, false, {disc({0.5, 0.5}, 0.2)}}};
  return out;
}

}  // namespace creasewright
