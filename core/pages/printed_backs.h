#pragma once

#include <optional>
#include <vector>

#include "pages/part_sheet.h"
#include "pages/template_layout.h"

namespace creasewright {

/// Every piece that is printed, as often as it is made.
std::vector<TemplatePiece> printedCopies(const std::vector<TemplatePiece>& pieces);

/// The form for one piece: with as much bleed as a page leaves that takes it whole, where its blank
/// alone would fit one.
PrintedForm formFor(const TemplatePiece& piece, const PageSetup& setup, PrintedForm form);

/// Room beyond the bleed of `form` for the marks of one piece, mm: for all of them, or what a page
/// leaves that takes it whole. Nothing where none does.
std::optional<double> marksRoomFor(const TemplatePiece& piece, const PageSetup& setup,
                                   const PrintedForm& form);

/// The layout as the paper is turned over sideways: what is x mm from the left edge lies x mm from
/// the right one. Tiles keep their names.
TemplateLayout turnedOver(const TemplateLayout& layout);

/// Whether a part lies turned by a quarter.
bool isTurned(const TemplateLayout& layout, std::size_t part);

/// The back of a piece for a page of turnedOver, which turns it left where its face was turned.
PartSheet backPart(const TemplatePiece& piece, const PrintedForm& form, double room, bool turned);

}  // namespace creasewright
