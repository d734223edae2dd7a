#include "output/paper_file.h"

#include <QImage>
#include <QLoggingCategory>
#include <QPainter>
#include <QRegularExpression>
#include <QSvgRenderer>
#include <QXmlStreamReader>
#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

#include "base/big_endian.h"
#include "base/file_limits.h"
#include "bridge/decode_picture.h"
#include "document/file_io.h"
#include "output/photo_file.h"
#include "patterns/pattern.h"

namespace creasewright {

namespace {

constexpr double kMmPerInch = 25.4;
constexpr double kFine = 300 / kMmPerInch;        // dots to the mm
constexpr std::int64_t kLargestSvg = 10'000'000;  // bytes

/// A picture as pixels, and its true width where the file says one.
struct ReadPicture {
  QImage image;
  std::optional<double> width;  // mm
  bool drawn = false;           // an SVG or PNG: flat colours, sharp edges
};

/// Dots to the mm that a file says it has: PNG, pHYs (ISO/IEC 15948, 11.3.5.3), before its pixels;
/// JPEG, the JFIF segment (ISO/IEC 10918-5, 10.1), where it comes first.
std::optional<double> toldDots(std::string_view bytes) {
  constexpr std::size_t kHeader = 4096;
  if (pictureKind(bytes) == PictureKind::Png) {
    const std::size_t at = bytes.substr(0, kHeader).find("pHYs");
    if (at == std::string_view::npos || numberAt(bytes, at + 12, 1) != 1) return std::nullopt;
    return numberAt(bytes, at + 5, 3) / 1000.0;
  }
  if (bytes.substr(6, 4) != "JFIF") return std::nullopt;
  const int unit = numberAt(bytes, 13, 1);
  if (unit != 1 && unit != 2) return std::nullopt;
  return numberAt(bytes, 14, 2) / (unit == 1 ? kMmPerInch : 10.0);
}

bool isSvg(std::string_view bytes) {
  constexpr std::size_t kHead = 4096;
  const std::string_view head = bytes.substr(0, kHead);
  return head.find("<svg") != std::string_view::npos || head.starts_with("<?xml");
}

/// A length of the root element in mm; a pixel is 1/96 in (CSS Values 3, 6.2).
std::optional<double> svgLength(const QString& written) {
  static const QRegularExpression form(
      QStringLiteral("^\\s*([0-9.]+(?:[eE][+-]?[0-9]+)?)\\s*(px|mm|cm|in|pt|pc|)\\s*$"));
  const QRegularExpressionMatch match = form.match(written);
  if (!match.hasMatch()) return std::nullopt;
  const double number = match.captured(1).toDouble();
  const QString unit = match.captured(2);
  if (unit == QLatin1String("mm")) return number;
  if (unit == QLatin1String("cm")) return number * 10;
  if (unit == QLatin1String("in")) return number * kMmPerInch;
  if (unit == QLatin1String("pt")) return number * kMmPerInch / 72;
  if (unit == QLatin1String("pc")) return number * kMmPerInch / 6;
  return number * kMmPerInch / 96;
}

/// What the root element says, where all of the file is XML; QtSvg prints words of its own on what
/// is not.
struct SvgHead {
  std::optional<double> width;
  std::optional<double> height;
};
std::optional<SvgHead> svgHead(const QByteArray& bytes) {
  QXmlStreamReader reader(bytes);
  std::optional<SvgHead> head;
  while (!reader.atEnd()) {
    reader.readNext();
    if (!reader.isStartElement() || head) continue;
    if (reader.name() != QLatin1String("svg")) return std::nullopt;
    const QXmlStreamAttributes said = reader.attributes();
    head = SvgHead{svgLength(said.value(QLatin1String("width")).toString()),
                   svgLength(said.value(QLatin1String("height")).toString())};
  }
  return reader.hasError() ? std::nullopt : head;
}

Result<ReadPicture> drawnSvg(std::string_view file, const std::string& where) {
  constexpr double kMostSlender = 200;
  constexpr double kFewest = 800;  // pixels on its longer side
  const Problem broken{ProblemCode::NotAPaper, where, {}};
  if (static_cast<std::int64_t>(file.size()) > kLargestSvg)
    return Problem{
        ProblemCode::PictureTooHeavy, where, {static_cast<std::int64_t>(file.size()), kLargestSvg}};
  const QByteArray bytes(file.data(), static_cast<qsizetype>(file.size()));
  const std::optional<SvgHead> head = svgHead(bytes);
  if (!head) return broken;
  QLoggingCategory::setFilterRules(QStringLiteral("qt.svg*=false"));
  QSvgRenderer renderer;
  if (!renderer.load(bytes) || !renderer.isValid()) return broken;
  QSizeF shape = renderer.viewBoxF().size();
  if (head->width && head->height) shape = {*head->width, *head->height};
  const double slender = shape.width() / shape.height();
  if (!(shape.width() > 0 && shape.height() > 0) || slender > kMostSlender ||
      slender < 1 / kMostSlender)
    return broken;
  const double wide = head->width.value_or(shape.width() * kMmPerInch / 96);
  const double longest = std::max(wide, wide / slender) * kFine;
  const double pixels = std::clamp(longest, kFewest, double{kPaperPixels});
  const QSizeF size = shape.scaled(pixels, pixels, Qt::KeepAspectRatio);
  QImage image(size.toSize().expandedTo({1, 1}), QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  renderer.setAspectRatioMode(Qt::IgnoreAspectRatio);
  renderer.render(&painter, QRectF(QPointF(0, 0), QSizeF(image.size())));
  return ReadPicture{image, wide, true};
}

Result<ReadPicture> decoded(std::string_view bytes, const std::string& where) {
  if (isSvg(bytes)) return drawnSvg(bytes, where);
  const Result<QImage> image = decodePicture(bytes, where, kPaperPixels);
  if (!image && image.problem().code == ProblemCode::NotAPicture)
    return Problem{ProblemCode::NotAPaper, where, {}};
  if (!image) return image.problem();
  const int pixels = pictureSize(PictureFile(std::string(bytes))).width();
  const std::optional<double> dots = toldDots(bytes);
  ReadPicture out{*image, pixels / kFine, pictureKind(bytes) == PictureKind::Png};
  if (dots && *dots > 0) out.width = pixels / *dots;
  return out;
}

Colour colourOf(QRgb pixel) {
  return {static_cast<std::uint8_t>(qRed(pixel)), static_cast<std::uint8_t>(qGreen(pixel)),
          static_cast<std::uint8_t>(qBlue(pixel))};
}

/// Mean, darkest and lightest, but for specks.
std::vector<Colour> coloursIn(const QImage& image) {
  constexpr int kCoarse = 64;
  const QImage small =
      image.scaled(kCoarse, kCoarse, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
          .convertToFormat(QImage::Format_RGB32);
  std::vector<Colour> all;
  for (int y = 0; y < small.height(); ++y)
    for (int x = 0; x < small.width(); ++x) all.push_back(colourOf(small.pixel(x, y)));
  const Colour mean =
      colourOf(image.scaled(1, 1, Qt::IgnoreAspectRatio, Qt::SmoothTransformation).pixel(0, 0));
  std::ranges::stable_sort(all, {}, luminance);
  const std::size_t specks = all.size() / 200;
  return {mean, all[specks], all[all.size() - 1 - specks]};
}

/// As the file says, where a paper can be printed so; else as fine as a printer shows it.
Length trueWidth(const ReadPicture& picture) {
  const double told = picture.width.value_or(0);
  const double least = kSmallestPattern.mm();
  const double most = kLargestPattern.mm();
  const double width =
      told >= least && told <= most ? told : std::clamp(picture.image.width() / kFine, least, most);
  return Length::mm(std::round(width * 100) / 100);
}

}  // namespace

Result<PaperPattern> readPaperFile(const QString& path) {
  const std::string name = path.toStdString();
  const Result<std::string> bytes = readFile(name, kLargestPictureFile);
  if (!bytes && bytes.problem().code == ProblemCode::FileTooLarge)
    return Problem{ProblemCode::PictureTooHeavy, name, bytes.problem().values};
  if (!bytes) return bytes.problem();
  const Result<ReadPicture> read = decoded(*bytes, name);
  if (!read) return read.problem();
  PaperPattern paper{kPicturePaper, trueWidth(*read), 0, coloursIn(read->image)};
  paper.picture = PaperPicture{
      PictureFile(keptBytes(read->image, read->drawn, read->drawn, kLargestPaperPicture))};
  return paper;
}

}  // namespace creasewright
