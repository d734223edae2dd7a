#pragma once

#include <array>
#include <string>
#include <vector>

#include "own_styles/keep_style.h"

// Twelve styles as makers keep them, made through changes by hand only.

namespace creasewright::testing {

/// A maker's style, the product it was made for and three more of other proportions.
struct UserStyle {
  std::string name;
  std::string base;
  std::array<std::string, 4> products;
  std::vector<Edit> edits;
};

/// An edit as `piece:panel.edge` (piece and edge may be left out) and `key=value;key=value`.
inline Edit made(std::string kind, std::string on, const std::string& measures = {}) {
  Edit edit;
  edit.kind = std::move(kind);
  if (const std::size_t colon = on.find(':'); colon != std::string::npos) {
    edit.piece = on.substr(0, colon);
    on.erase(0, colon + 1);
  }
  if (const std::size_t dot = on.find('.'); dot != std::string::npos) {
    edit.edge = on.substr(dot + 1);
    on.erase(dot);
  }
  edit.panel = on;
  for (std::size_t at = 0; at < measures.size();) {
    const std::size_t end = std::min(measures.find(';', at), measures.size());
    const std::string part = measures.substr(at, end - at);
    const std::size_t equals = part.find('=');
    edit.measures[part.substr(0, equals)] = part.substr(equals + 1);
    at = end + 1;
  }
  return edit;
}

/// A wall or flap without taper, folded up.
inline Edit wall(std::string on, const std::string& name, const std::string& depth,
                 const std::string& more = {}) {
  return made("flap", std::move(on),
              "name=" + name + ";depth=" + depth + ";taper=0 mm;angle=90" + more);
}

inline Edit tab(std::string on, const std::string& name) {
  return made("flap", std::move(on), "name=" + name + ";depth=10 mm;taper=3 mm;hold=Glued");
}

/// Four walls round a base, held by tabs on the long ones.
inline std::vector<Edit> trayWalls() {
  return {wall("base.front", "front", "height", ";when=Last"),
          wall("base.back", "back", "height", ";when=Last"),
          wall("base.left", "left", "height", ";when=Last"),
          wall("base.right", "right", "height", ";when=Last"),
          tab("base/front.left", "left-tab"),
          tab("base/front.right", "right-tab"),
          tab("base/back.left", "left-tab"),
          tab("base/back.right", "right-tab")};
}

inline std::vector<Edit> with(std::vector<Edit> edits, const std::vector<Edit>& more) {
  edits.insert(edits.end(), more.begin(), more.end());
  return edits;
}

/// The same with a change to a wall before the tabs hang on it.
inline std::vector<Edit> trayWith(Edit change) {
  std::vector<Edit> edits = trayWalls();
  edits.insert(edits.begin() + 4, std::move(change));
  return edits;
}

inline const std::vector<UserStyle>& userStyles() {
  const std::string kLid = ";when=Last;sides=Open";
  static const std::vector<UserStyle> all{
      {"Tuck box with a heart window",
       "straight-tuck-box",
       {"box:60x35x120mm", "box:40x30x60mm", "box:90x60x80mm", "cylinder:45x110mm"},
       {made("opening", "front", "shape=Heart;width=panel-width / 2;height=this-width"),
        made("corners", "front/left/top-dust-flap.side", "size=3 mm")}},
      {"Heart favour",
       "hinged-lid-box",
       {"box:50x50x25mm", "box:70x40x20mm", "box:90x80x40mm", "box:60x60x60mm"},
       {made("opening", "base/back/lid", "shape=Heart;width=panel-width / 3;height=this-width"),
        made("text", "base", "words=For you;height=5 mm")}},
      {"Carrier with a handle",
       "blank-sheet",
       {"box:120x70x60mm", "box:90x60x50mm", "box:160x90x90mm", "box:100x80x70mm"},
       {wall("base.front", "front", "height + 50 mm", ";when=Last"),
        wall("base.back", "back", "height + 50 mm", ";when=Last"),
        wall("base.left", "left", "height", ";when=Last"),
        wall("base.right", "right", "height", ";when=Last"), tab("base/left.left", "back-tab"),
        tab("base/left.right", "front-tab"), tab("base/right.left", "front-tab"),
        tab("base/right.right", "back-tab"),
        made("opening", "base/front",
             "width=panel-width / 2;height=20 mm;radius=10 mm;y-from=Bottom;y=12 mm"),
        made("opening", "base/back",
             "width=panel-width / 2;height=20 mm;radius=10 mm;y-from=Top;y=12 mm"),
        made("corners", "base/front.outer", "size=15 mm"),
        made("corners", "base/back.outer", "size=15 mm")}},
      {"Mailer",
       "blank-sheet",
       {"box:150x100x30mm", "box:80x60x20mm", "box:200x150x40mm", "box:120x120x25mm"},
       with(trayWalls(),
            {wall("base/back.outer", "lid", "width", kLid),
             made("flap", "base/back/lid.outer",
                  "name=tuck;depth=15 mm;taper=2 mm;radius=5 mm;hold=Tucked;when=Last")})},
      {"Tray from a blank sheet",
       "blank-sheet",
       {"box:80x60x25mm", "box:40x40x20mm", "box:150x90x60mm", "box:100x30x15mm"},
       trayWith(made("edge", "base/front.outer", "shape=Scallop;depth=3 mm;count=5"))},
      {"Tuck box from a blank sheet",
       "blank-sheet",
       {"box:60x90x25mm", "box:50x70x30mm", "box:80x120x40mm", "box:40x110x35mm"},
       {wall("base.right", "right", "height"), wall("base/right.outer", "front", "length"),
        wall("base/right/front.outer", "left", "height"),
        made("flap", "base/right/front/left.outer", "name=seam;depth=12 mm;taper=3 mm;hold=Glued"),
        wall("base.back", "top-lid", "height", kLid),
        made("flap", "base/top-lid.outer",
             "name=tuck;depth=15 mm;taper=1 mm;radius=6 mm;hold=Tucked"),
        wall("base.front", "bottom-lid", "height", kLid),
        made("flap", "base/bottom-lid.outer",
             "name=tuck;depth=15 mm;taper=1 mm;radius=6 mm;hold=Tucked"),
        made("opening", "base/right/front",
             "shape=Oval;width=panel-width / 2;height=panel-height / 2")}},
      {"Envelope from a blank sheet",
       "blank-sheet",
       {"box:100x70x2mm", "card:85.6x54x0.76mm", "box:150x100x3mm", "box:120x120x4mm"},
       {wall("base.left", "left", "height", ";when=First"),
        wall("base.right", "right", "height", ";when=First"),
        wall("base.front", "front", "height", ";when=Last"),
        wall("base/front.outer", "back", "width", ";when=Last"),
        made("flap", "base/left.outer", "name=flap;depth=15 mm;taper=8 mm;hold=Glued"),
        made("flap", "base/right.outer", "name=flap;depth=15 mm;taper=8 mm;hold=Glued"),
        wall("base.back", "top", "height", kLid),
        made("flap", "base/top.outer",
             "name=cover;depth=width / 2;taper=length / 3;angle=90;when=Last;sides=Open")}},
      {"Scoop with zigzag sides",
       "treat-scoop",
       {"box:60x60x40mm", "box:50x40x30mm", "box:90x70x50mm", "box:80x50x60mm"},
       {made("edge", "base/left.outer", "shape=Zigzag;depth=3 mm;count=5"),
        made("edge", "base/right.outer", "shape=Zigzag;depth=3 mm;count=5")}},
      {"Drawer with stars",
       "drawer-box",
       {"box:80x50x25mm", "box:60x60x30mm", "box:120x70x20mm", "box:100x40x40mm"},
       {made("opening", "sleeve:front", "shape=Star;width=panel-width / 3;height=this-width"),
        made("holes", "tray:base/front", "across=8 mm")}},
      {"Bottle box with words",
       "snap-lock-bottom-box",
       {"box:60x60x140mm", "cylinder:45x120mm", "box:70x50x100mm", "box:90x80x180mm"},
       {made("holes", "front/left", "count=3;spacing=12 mm;direction=Up"),
        made("text", "front", "words=Plum jam;height=6 mm")}},
      {"Sleeve with a window",
       "open-sleeve",
       {"box:120x60x15mm", "box:90x70x10mm", "box:150x80x25mm", "box:100x50x30mm"},
       {made("opening", "front/right/back",
             "shape=Arch;width=panel-width / 3;height=panel-height / 3"),
        made("slit-pair", "front", "y-from=Bottom;y=20 mm")}},
      {"Two-piece box with a cut-out lid",
       "two-piece-box",
       {"box:90x90x40mm", "box:60x50x30mm", "box:120x80x50mm", "box:140x140x25mm"},
       {made("opening", "lid:base", "shape=Circle;width=panel-width / 2;height=this-width"),
        made("mark", "tray:base", "shape=Ring")}}};
  return all;
}

inline Design designOf(const UserStyle& style, const std::string& product) {
  Design design = *newDesign(style.base, parseProduct(product).value(), cards().front(), Ease::Easy,
                             ToolGrid::millimetre());
  design.edits = style.edits;
  return design;
}

/// Kept as its maker would: a name, what is seen, no rules.
inline Result<OwnStyle> kept(const UserStyle& style) {
  const Design design = designOf(style, style.products[0]);
  StyleWords words = wordsFor(design);
  words.title = style.name;
  return keepStyle(design, words);
}

}  // namespace creasewright::testing
