#include "papers/template/export.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFileInfo>
#include <algorithm>

#include "base/result.h"
#include "bridge/design_words.h"
#include "bridge/label_text.h"
#include "bridge/text.h"
#include "document/net_json.h"
#include "drawing/dxf_writer.h"
#include "drawing/svg_writer.h"
#include "output/pdf_export.h"
#include "output/picture.h"
#include "output/write_bytes.h"
#include "pages/design_picture.h"
#include "papers/template/template_print.h"

namespace creasewright {

namespace {

Problem notWritten(const QString& path, const QString& reason) {
  return {ProblemCode::FileNotWritten, path.toStdString(), {reason.toStdString()}};
}

Result<QByteArray> pngBytes(const Drawing& drawing, const Wording& wording) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  if (!renderImage(drawing, wording).save(&buffer, "PNG"))
    return notWritten({}, QCoreApplication::translate("export", "the picture is too large"));
  return bytes;
}

Result<QByteArray> bytesFor(const QString& ending, const BuiltDesign& design,
                            const ExportChoices& choices) {
  if (ending == QLatin1String("pdf")) return templatePdf(design, choices);
  if (ending == QLatin1String("json")) return QByteArray::fromStdString(writeNetJson(design));
  const Wording wording = wordingIn(choices.unit);
  // A cutting machine reads a DXF: it gets lines, no dimensions, and a bar to scale it by.
  const bool dimensions = ending != QLatin1String("dxf");
  const Drawing drawing = pictureOf(design, {.piece = choices.piece.toStdString(),
                                             .folded = choices.folded,
                                             .dimensions = dimensions,
                                             .scaleBar = !dimensions && !choices.folded});
  if (ending == QLatin1String("svg"))
    return QByteArray::fromStdString(writeSvg(drawing, designTitle(design).toStdString(), wording));
  if (ending == QLatin1String("dxf")) return QByteArray::fromStdString(writeDxf(drawing, wording));
  return pngBytes(drawing, wording);
}

bool hasPiece(const BuiltDesign& design, const QString& name) {
  return name.isEmpty() || std::any_of(
                               design.pieces.begin(), design.pieces.end(),
                               [&](const BuiltPiece& built) { return text(built.name) == name; });
}

}  // namespace

QStringList exportEndings() {
  return {QStringLiteral("pdf"), QStringLiteral("svg"), QStringLiteral("dxf"),
          QStringLiteral("png"), QStringLiteral("json")};
}

Result<QByteArray> templatePdf(const BuiltDesign& design, const ExportChoices& choices) {
  const TemplateOptions options{choices.setup, choices.piece, choices.unit, choices.now.date(),
                                choices.kind};
  const Result<std::vector<Drawing>> pages = templatePages(design, options);
  if (!pages) return pages.problem();
  return renderPdf(*pages, wordingIn(choices.unit),
                   {designTitle(design), choices.now, PdfKind::Template});
}

std::optional<Problem> exportDesign(const BuiltDesign& design, const QString& path,
                                    const ExportChoices& choices) {
  const QString ending = QFileInfo(path).suffix().toLower();
  if (!exportEndings().contains(ending)) {
    return notWritten(path, QCoreApplication::translate(
                                "export", "the name must end in .pdf, .svg, .dxf, .png or .json"));
  }
  if (!hasPiece(design, choices.piece))
    return Problem{ProblemCode::FieldUnreadable, "piece", {choices.piece.toStdString()}};
  return writeBytes(path, bytesFor(ending, design, choices));
}

}  // namespace creasewright
