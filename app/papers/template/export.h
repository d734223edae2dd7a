#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QString>
#include <QStringList>
#include <optional>

#include "base/result.h"
#include "document/build.h"
#include "drawing/machine_lines.h"
#include "output/picture.h"
#include "output/write_folder.h"
#include "pages/gift_sight.h"
#include "pages/page_setup.h"
#include "pages/part_packing.h"
#include "pages/template_pages.h"

namespace creasewright {

/// How a net is written for a machine (SVG, DXF).
struct MachineExport {
  MachineLines lines;
  bool outlines = false;          ///< words as outlines
  std::optional<PartSize> sheet;  ///< all pieces, as often as they are made, on sheets of this size
};

struct ExportChoices {
  QString piece;              ///< only this piece; empty = all
  PageSetup setup;            ///< PDF
  bool folded = false;        ///< PDF, PNG and SVG: the finished gift instead of the net
  GiftSight sight = {};       ///< of what is folded
  PictureSize size = {};      ///< the same as PNG or SVG
  PictureGround ground = {};  ///< under it
  TemplateKind kind = TemplateKind::CutAndScore;  ///< PDF; printed papers SVG and PNG too
  PrintedForm printed = {};                       ///< of printed papers
  QStringList names;      ///< PDF: a set of pages for each taker; empty = one set for nobody
  MachineExport machine;  ///< SVG and DXF of the net
  Unit unit = Unit::Millimetre;
  QDateTime now;  ///< date on the template and in the PDF; invalid = none
};

/// Endings that exportDesign knows, in the order shown: `pdf`, `svg`, `dxf`, `png`, `json`.
QStringList exportEndings();

/// The template at true size. Needs a QGuiApplication. Errors: MarginTooLarge, TooManyTiles,
/// NothingPrinted, FileNotWritten (no place).
Result<QByteArray> templatePdf(const BuiltDesign& design, const ExportChoices& choices);

/// What is folded, as a drawing of its own size.
Drawing giftPicture(const BuiltDesign& design, const ExportChoices& choices);

/// Such a drawing on a page of the chosen paper, which lies as the picture is shaped.
Drawing posterPage(Drawing picture, const ExportChoices& choices);

/// What exportDesign writes for a file of this name: one file, but for nets that take several
/// sheets, or pages of printed papers (`tray-1.svg`, `tray-2.svg`). Errors as there.
Result<FolderFiles> exportedFiles(const BuiltDesign& design, const QString& fileName,
                                  const ExportChoices& choices);

/// Writes `path` in the form that its ending names: the template as PDF; the net as SVG, DXF, PNG;
/// the finished gift as PDF (a page that it fills), SVG, PNG; everything as JSON. All or nothing:
/// an old file stays as it was when anything goes wrong. PDF, PNG and words as outlines need a
/// QGuiApplication. Errors: FileNotWritten (path, reason), FieldUnreadable (`piece`, text),
/// MarginTooLarge, TooManyTiles, NothingPrinted.
std::optional<Problem> exportDesign(const BuiltDesign& design, const QString& path,
                                    const ExportChoices& choices);

}  // namespace creasewright
