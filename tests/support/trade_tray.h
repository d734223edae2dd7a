#pragma once

#include "styles/registry.h"

namespace creasewright::testing {

/// The framed tray whose measures makers give as their worked example: common practice, no
/// published source.
inline Parameters tradeTray() {
  Parameters p = standardParameters(**findStyle("framed-tray"));
  p.set("opening-length", Length::inches(9, 2));
  p.set("opening-width", Length::inches(3, 2));
  p.set("depth", Length::inches(1));
  p.set("frame", Length::inches(3, 8));
  p.set("glue-strip", Length::inches(3, 8));
  p.set("tab", Length::inches(1, 2));
  return p;
}

}  // namespace creasewright::testing
