#pragma once

#include <string>
#include <vector>

#include "drawing/drawing.h"
#include "pages/template_pages.h"
#include "pages/tiling.h"

namespace creasewright {

/// Where a score meets the edge of its blank, and the setting that makes it.
struct EdgeReading {
  Point at;   ///< on the blank's edge
  Point out;  ///< unit vector out of the blank
  Label label;
  Role like = Role::Valley;
  ScoreReading reading;
  SheetSide measured = SheetSide::Left;  ///< the side that `reading.at` counts from
};

struct PanelName {
  Polygon outline;
  std::string words;
};

struct PartGlue {
  Polygon area;
  bool behind = false;  ///< on the face that is not printed
};

/// A piece as its template shows it, in the coordinates of its own blank, mm.
struct PartSheet {
  Drawing lines;       ///< as large as the blank, without adhesive
  Drawing paper = {};  ///< what the card shows under them; words stand on it
  std::vector<PartGlue> glue;
  bool glueOutlined = false;  ///< not hatched
  TiledSheet sheet;
  std::vector<EdgeReading> readings;
  std::vector<PanelName> names;
  Point up{0, 1};  ///< to the blank's own top
};

PartSheet partSheet(const TemplatePiece& piece, TemplateKind kind);

/// Areas for adhesive: hatched as the part lies, for the hatching tells the faces apart.
Drawing glueLines(const PartSheet& part);

/// With a border of `by` mm round its blank.
PartSheet bordered(PartSheet part, double by);

/// Seen from the other face: what folds towards the reader folds away.
PartSheet mirrored(PartSheet part);

/// Turned left by a quarter.
PartSheet turnedLeft(PartSheet part);

/// Every place where a score of the plan meets an edge of a blank of `width` x `height` mm, each
/// once: full scores at both ends, short ones where they start.
std::vector<EdgeReading> edgeReadings(const ScorePlan& plan, double width, double height);

}  // namespace creasewright
