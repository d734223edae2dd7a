#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QString>
#include <vector>

#include "base/result.h"
#include "bridge/paint_drawing.h"
#include "drawing/drawing.h"

namespace creasewright {

/// Whether the pages are in true size, so that a machine may cut and crease by their layers.
enum class PdfKind { Template, Document };

struct PdfInfo {
  QString title;
  QDateTime created;  ///< written into the file; equal input gives equal bytes
  PdfKind kind = PdfKind::Document;
  PaintLook look = {};
};

/// A PDF with one page for each drawing: the page box is exactly the drawing's size, viewers are
/// asked not to scale (`/PrintScaling /None`). In a template every role is an optional content
/// group named and marked as an ISO 19593-1 processing step. Needs a QGuiApplication. Error:
/// FileNotWritten (where is empty) when the PDF cannot be put together.
Result<QByteArray> renderPdf(const std::vector<Drawing>& pages, const Wording& wording,
                             const PdfInfo& info);

}  // namespace creasewright
