#pragma once

#include <optional>
#include <vector>

#include "core/laws/random_design.h"
#include "document/paper_way.h"
#include "pages/template_pages.h"

namespace creasewright::testing {

/// All pieces of a design, for their template or printed papers.
inline std::vector<TemplatePiece> templateParts(const BuiltDesign& built) {
  std::vector<TemplatePiece> parts;
  for (const BuiltPiece& piece : built.pieces) {
    TemplatePiece part{.name = piece.name,
                       .net = &piece.net,
                       .flat = &piece.flat,
                       .scorePlan = &piece.scorePlan,
                       .gluePlan = &piece.gluePlan};
    part.extra = piece.role.has_value();
    part.count = piece.count;
    part.colours = &piece.card.colours;
    part.paperUp = paperUp(built, piece);
    parts.push_back(std::move(part));
  }
  return parts;
}

/// A style with all extras that fit, all of coloured card.
inline std::optional<BuiltDesign> colouredDesign(const Style& style, const char* colours) {
  Design design = withItsExtras(style);
  design.card.colours = parseCardColours(colours).value();
  for (Extra& extra : design.extras)
    if (extra.kind != "window") extra.card.colours = parseCardColours("plum/cream").value();
  auto built = build(design);
  return built ? std::optional(std::move(*built)) : std::nullopt;
}

}  // namespace creasewright::testing
