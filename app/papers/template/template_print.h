#pragma once

#include <QDate>
#include <QString>
#include <vector>

#include "base/result.h"
#include "document/build.h"
#include "drawing/drawing.h"
#include "pages/page_setup.h"
#include "pages/template_pages.h"

namespace creasewright {

struct TemplateOptions {
  PageSetup setup;
  QString piece;  ///< only this piece; empty = all
  Unit unit = Unit::Millimetre;
  QDate date;
  TemplateKind kind = TemplateKind::CutAndScore;
  QString taker;             ///< whose pages they are; empty = nobody's
  PrintedForm printed = {};  ///< of printed papers
};

/// `corrected for the printer: across +0.62 %, down −0.20 %`; empty where nothing is corrected.
QString correctionWords(const PrintCorrection& correction);

/// The template pages of a built design in the user's language: what preview, printer and PDF show.
/// Errors: MarginTooLarge, TooManyTiles, NothingPrinted.
Result<std::vector<Drawing>> templatePages(const BuiltDesign& design,
                                           const TemplateOptions& options);

}  // namespace creasewright
