#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "base/colour.h"
#include "base/picture_file.h"
#include "base/problem.h"
#include "geometry/plane_map.h"
#include "geometry/polygon.h"
#include "net/inscription.h"

namespace creasewright {

/// What a line or area means. Names in files follow ISO 19593-1 processing steps (drawing/role.h).
enum class Role {
  Cut,          ///< continuous, 0.35 mm
  Valley,       ///< dashed
  Mountain,     ///< dash-dot
  Perforation,  ///< dotted
  CutMark,      ///< scored or pencilled only to guide a cut: thin dotted
  Glue,         ///< hatch lines and border of an area for adhesive
  Waste,        ///< hatch lines of an area cut away
  Dimension,
  Legend,     ///< texts, legend, check bars
  Positions,  ///< alignment marks, page frame
  Sheet,      ///< the card itself, filled
  Face,       ///< a lit face of the folded picture (fill)
  Edge        ///< an edge of the folded picture
};

/// What a lit face belongs to.
enum class Surface {
  Outside,  ///< the card's outer face
  Inside,
  Product
};

/// Text as a code with values, worded by the app; or literal when `code` is empty.
struct Label {
  std::string code;                  ///< `legend-cut`, `check-bar-mm`, `page-of`
  std::vector<ProblemValue> values;  ///< strings, numbers and lengths the wording needs
  std::string literal;

  static Label plain(std::string text) { return {{}, {}, std::move(text)}; }
};

/// Words a label in the reader's language (UTF-8). Core carries codes; the app gives the words.
using Wording = std::function<std::string(const Label&)>;

/// A picture that an area shows, over its colour.
struct PictureFill {
  PictureFile file;
  PlaneMap place;     ///< where its lower left corner (0, 0) and its upper right one (1, 1) lie, mm
  bool tiled = true;  ///< over and over, each beside the last; else once
  bool grey = false;  ///< shown without its colours
};

struct PathItem {
  Role role = Role::Cut;
  std::vector<Polygon> rings;  ///< closed: areas with holes (even-odd); open: one polyline each
  bool closed = false;
  bool filled = false;  ///< Face and Sheet; the others are stroked (hatching comes as lines)
  double light = 1;     ///< Face: 0..1
  Surface surface = Surface::Outside;  ///< Face
  std::optional<Colour> colour = {};   ///< Face: of the card; else of the line, or of its role
  /// Drawn like this role, though it is none: a sample in a legend, an outline on a map.
  std::optional<Role> like = std::nullopt;
  /// Face: ink of a pattern on it, without the hair that closes the seams of faces.
  bool printed = false;
  double width = 1;                         ///< of a line, in widths of its role
  std::optional<PictureFill> picture = {};  ///< Face
};

enum class Anchor { Left, Centre, Right };

struct TextItem {
  Role role = Role::Legend;
  Label label;
  Point at;           ///< baseline
  double height = 3;  ///< type size in mm
  Anchor anchor = Anchor::Left;
  double turnDegrees = 0;  ///< counter-clockwise
  bool bold = false;
  bool reversed = false;  ///< in white, on a filled ground
  /// In the colour of this role, though it is none of its kind.
  std::optional<Role> like = std::nullopt;
  Typeface face = Typeface::Plain;
  /// mm; not 0: `at` is the middle of a column of this width, `anchor` the side that words keep to.
  double column = 0;
  /// Bent to a circle: `at` is the middle of the line, whatever the anchor.
  std::optional<WordsArc> arc = std::nullopt;
  /// Of a face that is seen slanting: the point, turn and sizes above are in it.
  std::optional<PlaneMap> plane = std::nullopt;
  std::vector<Polygon> shown = {};  ///< the parts of the drawing where it is seen; none = all
  std::optional<Colour> colour = std::nullopt;  ///< none = of its role
};

/// A photograph, upright; painted before everything else.
struct PictureItem {
  PictureFile file;
  Point at;  ///< lower left corner
  double width = 0;
  double height = 0;
  std::string words = {};  ///< what it shows, for those who do not see it (UTF-8)
};

/// A vector picture in millimetres, x right, y up, from (0, 0) to (width, height): the one source
/// of screen, print, SVG, DXF and PNG.
struct Drawing {
  double width = 0;
  double height = 0;
  std::vector<PathItem> paths;
  std::vector<TextItem> texts;
  std::vector<PictureItem> pictures = {};  ///< not in DXF, nor in the layers of a template
};

}  // namespace creasewright
