#include "papers/template/export.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <algorithm>
#include <iterator>

#include "base/result.h"
#include "bridge/design_words.h"
#include "bridge/label_text.h"
#include "bridge/text.h"
#include "document/net_json.h"
#include "drawing/dxf_writer.h"
#include "drawing/svg_writer.h"
#include "output/pdf_export.h"
#include "output/picture.h"
#include "output/text_outlines.h"
#include "output/write_bytes.h"
#include "pages/design_picture.h"
#include "pages/machine_sheets.h"
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

QString exportWords(const char* words) { return QCoreApplication::translate("export", words); }

/// The nets as drawings for machines: one, or a sheet each.
Result<std::vector<Drawing>> netDrawings(const QString& ending, const BuiltDesign& design,
                                         const ExportChoices& choices) {
  const std::string piece = choices.piece.toStdString();
  if (choices.machine.sheet && !choices.folded) {
    auto sheets = machineSheets(design, piece, *choices.machine.sheet);
    if (sheets) return std::move(*sheets);
    return notWritten({},
                      exportWords(QT_TRANSLATE_NOOP("export", "a piece is larger than the sheet")));
  }
  // A cutting machine reads a DXF: it gets lines, no dimensions, and a bar to scale it by.
  const bool dimensions = ending != QLatin1String("dxf");
  PictureOptions options{.piece = piece,
                         .folded = choices.folded,
                         .dimensions = dimensions,
                         .coloured = ending == QLatin1String("png"),
                         .scaleBar = !dimensions && !choices.folded};
  if (choices.folded)
    options.gift.opening = choices.opening ? *choices.opening : Gift(design).telling();
  return std::vector{pictureOf(design, options)};
}

/// An SVG or DXF of one drawing.
Result<QByteArray> machineBytes(const QString& ending, const BuiltDesign& design,
                                const ExportChoices& choices, Drawing drawing) {
  const Wording wording = wordingIn(choices.unit);
  const bool svg = ending == QLatin1String("svg");
  if (!choices.folded) {
    std::optional<Drawing> made = forMachine(std::move(drawing), choices.machine.lines);
    if (!made)
      return notWritten(
          {}, exportWords(QT_TRANSLATE_NOOP("export", "a cut-out is narrower than the kerf")));
    drawing = std::move(*made);
  }
  if (choices.machine.outlines) drawing = withOutlinedWords(std::move(drawing), wording, svg);
  const bool dashed = choices.machine.lines.scores == ScoreForm::Line;
  return QByteArray::fromStdString(
      svg ? writeSvg(drawing, designTitle(design).toStdString(), wording, dashed)
          : writeDxf(drawing, wording, dashed));
}

/// `tray.svg`, or `tray-2.svg` for the second of several.
QString numberedName(const QString& fileName, std::size_t index, std::size_t count) {
  if (count < 2) return fileName;
  const QString ending = QFileInfo(fileName).suffix();
  return fileName.chopped(ending.size() + 1) + QStringLiteral("-%1.").arg(index + 1) + ending;
}

/// Pages of printed papers, an SVG or PNG each.
Result<FolderFiles> printedFiles(const QString& fileName, const BuiltDesign& design,
                                 const ExportChoices& choices) {
  const Result<std::vector<Drawing>> pages = templatePages(design, {choices.setup,
                                                                    choices.piece,
                                                                    choices.unit,
                                                                    choices.now.date(),
                                                                    choices.kind,
                                                                    {},
                                                                    choices.printed});
  if (!pages) return pages.problem();
  const Wording wording = wordingIn(choices.unit);
  const bool svg = QFileInfo(fileName).suffix().toLower() == QLatin1String("svg");
  FolderFiles files;
  for (const Drawing& page : *pages) {
    Result<QByteArray> bytes = svg ? Result(QByteArray::fromStdString(writeSvg(
                                         page, designTitle(design).toStdString(), wording)))
                                   : pngBytes(page, wording);
    if (!bytes) return bytes.problem();
    files.emplace_back(numberedName(fileName, files.size(), pages->size()), std::move(*bytes));
  }
  return files;
}

Result<FolderFiles> netFiles(const QString& fileName, const BuiltDesign& design,
                             const ExportChoices& choices) {
  const QString ending = QFileInfo(fileName).suffix().toLower();
  const Result<std::vector<Drawing>> drawings = netDrawings(ending, design, choices);
  if (!drawings) return drawings.problem();
  FolderFiles files;
  for (std::size_t i = 0; i < drawings->size(); ++i) {
    const Drawing& drawing = (*drawings)[i];
    Result<QByteArray> bytes = ending == QLatin1String("png")
                                   ? pngBytes(drawing, wordingIn(choices.unit))
                                   : machineBytes(ending, design, choices, drawing);
    if (!bytes) return bytes.problem();
    files.emplace_back(numberedName(fileName, i, drawings->size()), std::move(*bytes));
  }
  return files;
}

Result<FolderFiles> oneFile(const QString& fileName, const Result<QByteArray>& bytes) {
  if (!bytes) return bytes.problem();
  return FolderFiles{{fileName, *bytes}};
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
  TemplateOptions options{choices.setup,      choices.piece, choices.unit,
                          choices.now.date(), choices.kind,  {},
                          choices.printed};
  std::vector<Drawing> all;
  for (const QString& name : choices.names.isEmpty() ? QStringList{QString()} : choices.names) {
    options.taker = name;
    Result<std::vector<Drawing>> pages = templatePages(design, options);
    if (!pages) return pages.problem();
    std::ranges::move(*pages, std::back_inserter(all));
  }
  return renderPdf(all, wordingIn(choices.unit),
                   {designTitle(design), choices.now, PdfKind::Template});
}

Result<FolderFiles> exportedFiles(const BuiltDesign& design, const QString& fileName,
                                  const ExportChoices& choices) {
  const QString ending = QFileInfo(fileName).suffix().toLower();
  if (!exportEndings().contains(ending)) {
    return notWritten(fileName,
                      exportWords(QT_TRANSLATE_NOOP(
                          "export", "the name must end in .pdf, .svg, .dxf, .png or .json")));
  }
  if (!hasPiece(design, choices.piece))
    return Problem{ProblemCode::FieldUnreadable, "piece", {choices.piece.toStdString()}};
  if (ending == QLatin1String("pdf")) return oneFile(fileName, templatePdf(design, choices));
  if (ending == QLatin1String("json"))
    return oneFile(fileName, QByteArray::fromStdString(writeNetJson(design)));
  const bool picture = ending == QLatin1String("svg") || ending == QLatin1String("png");
  if (picture && choices.kind == TemplateKind::Printed)
    return printedFiles(fileName, design, choices);
  return netFiles(fileName, design, choices);
}

std::optional<Problem> exportDesign(const BuiltDesign& design, const QString& path,
                                    const ExportChoices& choices) {
  const QFileInfo file(path);
  const Result<FolderFiles> files = exportedFiles(design, file.fileName(), choices);
  if (!files) {
    Problem problem = files.problem();
    if (problem.code == ProblemCode::FileNotWritten) problem.where = path.toStdString();
    return problem;
  }
  // A path is written to as it was given, whatever it is a link to.
  if (files->size() == 1) return writeBytes(path, files->front().second);
  for (const auto& [name, bytes] : *files)
    if (const auto problem = writeBytes(file.dir().filePath(name), bytes)) return problem;
  return std::nullopt;
}

}  // namespace creasewright
