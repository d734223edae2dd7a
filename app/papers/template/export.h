#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QString>
#include <QStringList>
#include <optional>

#include "base/result.h"
#include "document/build.h"
#include "pages/page_setup.h"
#include "pages/template_pages.h"

namespace creasewright {

struct ExportChoices {
  QString piece;        ///< only this piece; empty = all
  PageSetup setup;      ///< PDF
  bool folded = false;  ///< PNG and SVG: the folded box instead of the net
  TemplateKind kind = TemplateKind::CutAndScore;  ///< PDF
  Unit unit = Unit::Millimetre;
  QDateTime now;  ///< date on the template and in the PDF; invalid = none
};

/// Endings that exportDesign knows, in the order shown: `pdf`, `svg`, `dxf`, `png`, `json`.
QStringList exportEndings();

/// The template at true size. Needs a QGuiApplication. Errors: MarginTooLarge, TooManyTiles,
/// FileNotWritten (no place).
Result<QByteArray> templatePdf(const BuiltDesign& design, const ExportChoices& choices);

/// Writes `path` in the form that its ending names: the template as PDF; the net as SVG, DXF, PNG;
/// everything as JSON. All or nothing: an old file stays as it was when anything goes wrong. PDF
/// and PNG need a QGuiApplication. Errors: FileNotWritten (path, reason), FieldUnreadable (`piece`,
/// text), MarginTooLarge, TooManyTiles.
std::optional<Problem> exportDesign(const BuiltDesign& design, const QString& path,
                                    const ExportChoices& choices);

}  // namespace creasewright
