#pragma once

#include <QColor>
#include <QPainter>
#include <QPen>
#include <QPointF>
#include <set>

#include "drawing/drawing.h"
#include "drawing/role.h"

namespace creasewright {

inline QColor toColor(Colour colour) { return {colour.red, colour.green, colour.blue}; }

/// Pen of a role in millimetres: width and dashes are exact under a painter scaled to mm.
QPen rolePen(Role role);

/// How strongly lines are drawn, and whether a printer without colours will print them.
struct PaintLook {
  double strokes = 1;   ///< pens by their roles' own widths
  bool black = false;   ///< as drawing/in_black has it, photos grey
  double contrast = 1;  ///< least of words to card, darker by as much as that takes (WCAG ratio)
};

/// What a word is painted in.
Colour wordColour(const TextItem& item, const PaintLook& look);

struct PaintOptions {
  double scale = 1;            ///< device units for each mm
  QPointF topLeft = {};        ///< where the drawing's top left corner goes, in device units
  std::set<Role> hidden = {};  ///< roles that are left out
  double thinnest = 0;         ///< device units: on a screen lines are drawn at least this wide
  PaintLook look = {};
};

/// Paints a drawing with its own y up: lines, fills and texts in the order of paintOrder().
/// Without a wording texts are left out, as in small pictures, but for words on card.
/// Everything is vectors, so a PDF painter gives exact lines; the painter's state is put back.
void paintDrawing(QPainter& painter, const Drawing& drawing, const Wording& wording,
                  const PaintOptions& options);

}  // namespace creasewright
