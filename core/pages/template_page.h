#pragma once

#include "pages/page_canvas.h"
#include "pages/part_sheet.h"
#include "pages/template_layout.h"

namespace creasewright {

/// What all pages of a template share; what it points to outlives the pages.
struct TemplateParts {
  const std::vector<TemplatePiece>* pieces = nullptr;
  std::vector<PartSheet> sheets;  ///< one for each piece
  TemplateText text;
  TemplateKind kind = TemplateKind::CutAndScore;
  PrintedForm printed = {};
  bool outsideUp = false;  ///< the drawn face becomes the outside
};

/// One page of a layout with all that it says.
struct TemplatePage {
  PageCanvas canvas;
  bool complete = true;       ///< head, bars, their hint and every part's name found room
  bool crowded = false;       ///< some of it lies on panels
  bool legend = false;        ///< there is a legend on it
  std::vector<Polygon> card;  ///< what of the net stays, page coordinates
};

/// `number` of `total` pages.
TemplatePage furnishedPage(const TemplateParts& parts, const TemplateLayout& layout,
                           const LaidPage& page, std::size_t number, std::size_t total,
                           const Wording& wording);

/// What the feet of the pages need.
FootRoom footRoom(const TemplateParts& parts, const PageSetup& setup, const Wording& wording);

/// The legend of some pieces, no wider than `width` mm; printed papers have none.
Drawing partsLegend(const TemplateParts& parts, const std::vector<std::size_t>& of, double width,
                    const Wording& wording);

}  // namespace creasewright
