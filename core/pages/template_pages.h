#pragma once

#include <string>
#include <utility>
#include <vector>

#include "base/result.h"
#include "drawing/drawing.h"
#include "fit/card_colours.h"
#include "making/glue_plan.h"
#include "making/score_plan.h"
#include "pages/page_setup.h"

namespace creasewright {

/// What a template is used for.
enum class TemplateKind {
  CutAndScore,  ///< printed on the card itself, or laid on it
  Tracing,      ///< the outline, and points to prick at the ends of scores
  Mirrored,     ///< printed on the face that becomes the outside
  InkSaving,    ///< no areas, waste marked at its corners
  ScoreStrips,  ///< rulers to lay along the sides of the sheet (pages/score_strips.h)
  Calibration,  ///< two bars to measure what the printer does (pages/calibration_page.h)
  Printed,      ///< colours and patterns, to print and cut (pages/printed_part.h)
  Coloured      ///< CutAndScore over the colours of its card, as pale as the lines need it
};

/// Which faces of the card printed papers show.
enum class PrintedSides {
  Face,  ///< the one that becomes the outside, as one looks at it
  Back,  ///< the other one, in the places that lie behind those of the face
  Both   ///< each page of the face, then that of its back, for paper that is turned over sideways
};

inline constexpr double kMostBleed = 10;  ///< mm

/// How printed papers are printed.
struct PrintedForm {
  double bleed = 3;  ///< mm beyond every cut (several printers' guides), from 0 to kMostBleed
  bool cuts = true;  ///< the cut lines are drawn
  PrintedSides sides = PrintedSides::Face;
  bool black = false;  ///< for a printer without colours (drawing/in_black.h)
};

/// One piece to print; what it points to must outlive the call.
struct TemplatePiece {
  std::string name;
  const Net* net = nullptr;
  const FlatNet* flat = nullptr;
  const ScorePlan* scorePlan = nullptr;
  const std::vector<GlueArea>* gluePlan = nullptr;
  std::string card = {};  ///< words for what it is cut from
  bool extra = false;     ///< goes with the box: the style's measures are not its own
  int count = 1;          ///< how often it is made
  std::vector<std::string> panelNames = {};  ///< words for each panel, or none
  const CardColours* colours = nullptr;      ///< Printed: of its card
  Point paperUp = {0, 1};                    ///< Printed: of its paper (document/paper_way.h)
  bool stamped = false;                      ///< Printed: its words are stamped on, not printed
  std::vector<PathItem> paper = {};          ///< Coloured: the side that is up (pages/pale_paper.h)
};

/// Words of the template, already in the reader's language.
struct TemplateText {
  std::string title;
  std::string date;
  std::vector<std::pair<std::string, std::string>> measures;  ///< parameter title, value
  std::string readings = {};     ///< what the numbers at the edges are, with their unit
  std::string corrected = {};    ///< how the pages are corrected for a printer; empty where not
  Unit unit = Unit::Millimetre;  ///< of the calibration page
};

/// The template in true size, one drawing of the paper's size in mm for each page: the parts lie
/// together on as few pages as are found, one that fits no page is tiled. Every page has a head,
/// four check bars and what they are for; readings stand at the edges of the blanks, score settings
/// and measures as sentences where there is room. Printed papers hold each printed piece as often
/// as it is made. Errors: MarginTooLarge, TooManyTiles, NothingPrinted.
Result<std::vector<Drawing>> drawTemplate(const std::vector<TemplatePiece>& pieces,
                                          const PageSetup& setup, const TemplateText& text,
                                          const Wording& wording,
                                          TemplateKind kind = TemplateKind::CutAndScore,
                                          const PrintedForm& printed = {});

}  // namespace creasewright
