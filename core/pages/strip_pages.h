#pragma once

#include "pages/template_pages.h"

namespace creasewright {

/// The score guide strips of all pieces in true size: rulers to cut out, several on a page, in
/// numbered parts where a side is longer than the page. Error: MarginTooLarge.
Result<std::vector<Drawing>> drawScoreStrips(const std::vector<TemplatePiece>& pieces,
                                             const PageSetup& setup, const TemplateText& text,
                                             const Wording& wording);

}  // namespace creasewright
