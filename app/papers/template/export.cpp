#include "papers/template/export.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <algorithm>
#include <iterator>
#include <utility>

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
#include "pages/framed.h"
#include "pages/machine_sheets.h"
#include "papers/template/template_print.h"

namespace creasewright {

namespace {

Problem notWritten(const QString& path, const QString& reason) {
  return {ProblemCode::FileNotWritten, path.toStdString(), {reason.toStdString()}};
}

Result<QByteArray> pngOf(const QImage& image) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  if (!image.save(&buffer, "PNG"))
    return notWritten({}, QCoreApplication::translate("export", "the picture is too large"));
  return bytes;
}

QString exportWords(const char* words) { return QCoreApplication::translate("export", words); }

/// The nets as drawings for machines: one, or a sheet each.
Result<std::vector<Drawing>> netDrawings(const QString& ending, const BuiltDesign& design,
                                         const ExportChoices& choices) {
  const std::string piece = choices.piece.toStdString();
  if (choices.machine.sheet) {
    auto sheets = machineSheets(design, piece, *choices.machine.sheet);
    if (sheets) return std::move(*sheets);
    return notWritten({},
                      exportWords(QT_TRANSLATE_NOOP("export", "a piece is larger than the sheet")));
  }
  // A cutting machine reads a DXF: it gets lines, no dimensions, and a bar to scale it by.
  const bool dimensions = ending != QLatin1String("dxf");
  // To one that reads an SVG areas are work too: it gets them where they are asked for.
  const bool colours =
      ending == QLatin1String("png") || (dimensions && choices.kind == TemplateKind::Coloured);
  return std::vector{pictureOf(
      design,
      {.piece = piece, .dimensions = dimensions, .coloured = colours, .scaleBar = !dimensions})};
}

/// An SVG or DXF of one drawing.
Result<QByteArray> machineBytes(const QString& ending, const BuiltDesign& design,
                                const ExportChoices& choices, Drawing drawing) {
  const Wording wording = wordingIn(choices.unit);
  const bool svg = ending == QLatin1String("svg");
  std::optional<Drawing> made = forMachine(std::move(drawing), choices.machine.lines);
  if (!made)
    return notWritten(
        {}, exportWords(QT_TRANSLATE_NOOP("export", "a cut-out is narrower than the kerf")));
  drawing = std::move(*made);
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
                                   : pngOf(renderImage(page, wording));
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
                                   ? pngOf(renderImage(drawing, wordingIn(choices.unit)))
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

Result<QByteArray> posterPdf(const BuiltDesign& design, const ExportChoices& choices,
                             Drawing picture) {
  const Paper& paper = choices.setup.paper;
  const double margin = choices.setup.margin;
  if (4 * margin >= std::min(paper.width.mm(), paper.height.mm()))
    return Problem{
        ProblemCode::MarginTooLarge, "margin", {Length::mm(margin), std::string(paper.name)}};
  return renderPdf({posterPage(std::move(picture), choices)}, wordingIn(choices.unit),
                   {designTitle(design), choices.now});
}

/// The folded gift as one file.
Result<QByteArray> foldedBytes(const QString& ending, const BuiltDesign& design,
                               const ExportChoices& choices) {
  Drawing picture = giftPicture(design, choices);
  if (ending == QLatin1String("pdf")) return posterPdf(design, choices, std::move(picture));
  const Wording wording = wordingIn(choices.unit);
  std::optional<PixelSize> pixels;
  if (choices.size.width > 0) pixels = pixelsFor(picture, choices.size);
  picture = framedFor(std::move(picture), choices.ground, pixels);
  if (ending == QLatin1String("svg"))
    return QByteArray::fromStdString(
        writeSvg(picture, designTitle(design).toStdString(), wording, true, pixels));
  const bool clear = choices.ground.kind == PictureGround::Kind::Clear;
  if (!pixels && !clear) return pngOf(renderImage(picture, wording));
  return pngOf(renderImage(picture, wording, pixels.value_or(pixelsFor(picture, {})), clear));
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

Drawing giftPicture(const BuiltDesign& design, const ExportChoices& choices) {
  PictureOptions options{.piece = choices.piece.toStdString(),
                         .folded = true,
                         .view = choices.sight.view,
                         .done = choices.sight.done,
                         .shadow = true};
  const std::optional<double>& opening = choices.sight.opening;
  options.gift.opening = opening ? *opening : Gift(design).telling();
  return pictureOf(design, options);
}

Drawing posterPage(Drawing picture, const ExportChoices& choices) {
  double width = choices.setup.paper.width.mm();
  double height = choices.setup.paper.height.mm();
  if ((picture.width > picture.height) != (width > height)) std::swap(width, height);
  std::optional<Colour> ground;
  if (choices.ground.kind == PictureGround::Kind::Coloured) ground = choices.ground.colour;
  return onPage(std::move(picture), width, height, choices.setup.margin, ground);
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
  const bool picture = ending == QLatin1String("svg") || ending == QLatin1String("png");
  if (choices.folded && (picture || ending == QLatin1String("pdf")))
    return oneFile(fileName, foldedBytes(ending, design, choices));
  if (ending == QLatin1String("pdf")) return oneFile(fileName, templatePdf(design, choices));
  if (ending == QLatin1String("json"))
    return oneFile(fileName, QByteArray::fromStdString(writeNetJson(design)));
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
