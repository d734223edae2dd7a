#pragma once

#include <string>
#include <utility>
#include <vector>

#include "base/result.h"
#include "drawing/drawing.h"
#include "making/glue_plan.h"
#include "making/score_plan.h"
#include "pages/page_setup.h"

namespace creasewright {

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
};

/// Words of the template, already in the reader's language.
struct TemplateText {
  std::string title;
  std::string date;
  std::vector<std::pair<std::string, std::string>> measures;  ///< parameter title, value
};

/// The template in true size, one drawing of the paper's size in mm for each page: for each piece
/// its tiles, with the notes (score settings, measures) in free room of one of them, or on a page
/// of their own. A blank that fits the printable area keeps to one page. Errors: MarginTooLarge,
/// TooManyTiles.
Result<std::vector<Drawing>> drawTemplate(const std::vector<TemplatePiece>& pieces,
                                          const PageSetup& setup, const TemplateText& text,
                                          const Wording& wording);

}  // namespace creasewright
