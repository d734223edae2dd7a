#include "drawing/svg_writer.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <numbers>
#include <optional>
#include <set>
#include <string_view>

#include "base/base64.h"
#include "drawing/number_text.h"
#include "drawing/role.h"
#include "drawing/set_words.h"
#include "drawing/xml_text.h"

namespace creasewright {
namespace {

constexpr int kDigits = 4;  // of a number

/// Writes in SVG's frame: y runs down from the top of the drawing.
class SvgText {
 public:
  SvgText(const Drawing& drawing, const Wording& wording, bool dashed,
          std::optional<PixelSize> pixels)
      : drawing_(drawing), wording_(wording), dashed_(dashed), pixels_(pixels) {}

  std::string write(const std::string& title) {
    out_ =
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" "
        "version=\"1.1\" width=\"" +
        side(drawing_.width, pixels_ ? pixels_->width : 0) + "\" height=\"" +
        side(drawing_.height, pixels_ ? pixels_->height : 0) + "\" viewBox=\"0 0 " +
        numberText(drawing_.width) + ' ' + numberText(drawing_.height) + "\">\n<title>" +
        xmlText(title) + "</title>\n";
    group(Role::Sheet);
    for (const PictureItem& item : drawing_.pictures) picture(item);
    definePictures();
    for (const Role role : paintOrder())
      if (role != Role::Sheet) group(role);
    out_ += "</svg>\n";
    return std::move(out_);
  }

 private:
  /// In true size, or in pixels.
  static std::string side(double mm, int pixels) {
    return pixels > 0 ? std::to_string(pixels) : numberText(mm) + "mm";
  }

  void picture(const PictureItem& item) {
    const std::optional<PictureKind> kind = item.file.kind();
    if (!kind) return;
    out_ += "<image x=\"" + numberText(item.at.x) + "\" y=\"" +
            numberText(drawing_.height - item.at.y - item.height) + "\" width=\"" +
            numberText(item.width) + "\" height=\"" + numberText(item.height) +
            "\" href=\"data:" + std::string(mediaType(*kind)) + ";base64," +
            toBase64(item.file.bytes()) + "\"><title>" + xmlText(item.words) + "</title></image>\n";
  }

  /// Each picture that fills something once, by the name that it is drawn by.
  void definePictures() {
    std::set<std::string> known;
    for (const PathItem& item : drawing_.paths) {
      if (!item.picture) continue;
      const std::string_view bytes = item.picture->file.bytes();
      const std::optional<PictureKind> kind = pictureKind(bytes);
      const std::optional<PixelSize> size = pixelsOf(bytes);
      if (!kind || !size || !known.insert(nameOf(*item.picture)).second) continue;
      out_ += "<defs><image id=\"" + nameOf(*item.picture) + "\" width=\"" +
              std::to_string(size->width) + "\" height=\"" + std::to_string(size->height) +
              "\" preserveAspectRatio=\"none\"" +
              (item.picture->grey ? " style=\"filter: grayscale(1)\"" : "") +
              " href=\"data:" + std::string(mediaType(*kind)) + ";base64," + toBase64(bytes) +
              "\"/></defs>\n";
    }
  }

  /// The same for the same bytes, so that several SVGs may stand in one page (FNV-1a, 64 bits).
  static std::string hashOf(std::string_view bytes) {
    std::uint64_t hash = 14695981039346656037U;
    for (const char c : bytes) hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211U;
    return std::to_string(hash);
  }
  static std::string nameOf(const PictureFill& picture) {
    return (picture.grey ? "grey-picture-" : "picture-") + hashOf(picture.file.bytes());
  }

  /// The picture's pixels, y down, on the drawing, y down.
  [[nodiscard]] std::string pixelMatrix(const PictureFill& picture, PixelSize size) const {
    const Point x = picture.place.x / size.width;
    const Point y = picture.place.y / size.height;
    const Point top = picture.place.origin + picture.place.y;
    std::string matrix = "matrix(";
    for (const double number : {x.x, -x.y, -y.x, y.y, top.x, drawing_.height - top.y})
      matrix += numberText(number, 9) + ' ';
    matrix.back() = ')';
    return matrix;
  }

  /// A picture within the outline `d`, darkened as the light falls.
  void pictureFill(const PathItem& item, const std::string& d) {
    const std::optional<PixelSize> size = pixelsOf(item.picture->file.bytes());
    if (!size) return;
    const std::string id = "fill-" + nameOf(*item.picture) + '-' + std::to_string(fills_++);
    const std::string use = "<use href=\"#" + nameOf(*item.picture) + '"';
    const std::string matrix = pixelMatrix(*item.picture, *size);
    if (item.picture->tiled) {
      out_ += "<pattern id=\"" + id + "\" patternUnits=\"userSpaceOnUse\" width=\"" +
              std::to_string(size->width) + "\" height=\"" + std::to_string(size->height) +
              "\" patternTransform=\"" + matrix + "\">" + use + "/></pattern>\n<path d=\"" + d +
              "\" class=\"printed\" fill=\"url(#" + id +
              ")\" fill-rule=\"evenodd\" stroke=\"none\"/>\n";
    } else {
      out_ += "<clipPath id=\"" + id + "\"><path d=\"" + d +
              "\" clip-rule=\"evenodd\"/></clipPath>\n<g class=\"printed\" clip-path=\"url(#" + id +
              ")\">" + use + " transform=\"" + matrix + "\"/></g>\n";
    }
    const double shade = shadeOver(item);
    if (shade > 0)
      out_ += "<path d=\"" + d + "\" class=\"printed\" fill=\"#000000\" fill-opacity=\"" +
              numberText(shade) + "\" fill-rule=\"evenodd\" stroke=\"none\"/>\n";
  }

  void group(Role role) {
    const auto ofRole = [role](const auto& item) { return item.role == role; };
    if (std::none_of(drawing_.paths.begin(), drawing_.paths.end(), ofRole) &&
        std::none_of(drawing_.texts.begin(), drawing_.texts.end(), ofRole))
      return;
    const RoleStyle& style = roleStyle(role);
    out_ += "<g id=\"" + std::string(style.id) + "\" data-step=\"" + std::string(style.id) +
            "\" fill=\"none\"";
    pen(style);
    out_ += " stroke-linecap=\"butt\" stroke-linejoin=\"miter\"";
    dashes(style);
    out_ += ">\n";
    for (const PathItem& item : drawing_.paths)
      if (item.role == role) path(item);
    for (const TextItem& item : drawing_.texts)
      if (item.role == role) text(item);
    out_ += "</g>\n";
  }

  void pen(const RoleStyle& style) {
    out_ +=
        " stroke=\"" + hexText(style.colour) + "\" stroke-width=\"" + numberText(style.width) + '"';
  }

  void dashes(const RoleStyle& style) {
    if (!dashed_ || style.dashes.empty()) return;
    out_ += " stroke-dasharray=\"";
    for (const double dash : style.dashes) out_ += numberText(dash) + ' ';
    out_.back() = '"';
  }

  /// In a group of dashed lines, those of the role that an item is drawn like.
  void dashesLike(const PathItem& item) {
    if (dashed_ && styleOf(item).dashes.empty() && !roleStyle(item.role).dashes.empty())
      out_ += " stroke-dasharray=\"none\"";
    else
      dashes(styleOf(item));
  }

  [[nodiscard]] std::string pathOf(const std::vector<Polygon>& rings, bool closed,
                                   int digits = kDigits) const {
    std::string d;
    for (const Polygon& ring : rings) {
      char command = 'M';
      for (const Point p : ring) {
        d += command + numberText(p.x, digits) + ' ' + numberText(drawing_.height - p.y, digits);
        command = 'L';
      }
      if (closed) d += 'Z';
    }
    return d;
  }

  void path(const PathItem& item) {
    if (item.rings.empty()) return;
    // Of print, hundredths of a millimetre are more than an eye sees.
    const std::string d = pathOf(item.rings, item.closed, item.printed ? 2 : kDigits);
    out_ += "<path d=\"" + d + '"';
    if (item.filled) {
      const std::string colour = hexText(fillColour(item));
      out_ += " fill=\"" + colour + "\" fill-rule=\"evenodd\"";
      // Neighbouring facets share an edge: a stroke of the same colour closes the seam between
      // them.
      if (item.printed) out_ += " class=\"printed\"";
      out_ += item.role == Role::Face && !item.printed
                  ? " stroke=\"" + colour + "\" stroke-width=\"0.1\""
                  : std::string(" stroke=\"none\"");
    } else {
      if (item.colour || item.like)
        out_ += " stroke=\"" + hexText(item.colour.value_or(styleOf(item).colour)) + '"';
      if (item.width != 1 || item.like)
        out_ += " stroke-width=\"" + numberText(item.width * styleOf(item).width) + '"';
      if (item.like) dashesLike(item);
    }
    out_ += "/>\n";
    if (item.picture) pictureFill(item, d);
  }

  void text(const TextItem& item) {
    const std::string words = wording_(item.label);
    const bool clipped = !item.shown.empty();
    if (clipped) {
      const std::string d = pathOf(item.shown, true);
      const std::string id = "seen-" + hashOf(d);
      out_ += "<clipPath id=\"" + id + "\"><path d=\"" + d +
              "\" clip-rule=\"evenodd\"/></clipPath>\n<g clip-path=\"url(#" + id + ")\">\n";
    }
    if (item.arc) out_ += "<g role=\"img\" aria-label=\"" + xmlText(words) + "\">\n";
    for (const WordsRun& run : wordsRuns(item, words)) textRun(item, run);
    if (item.arc) out_ += "</g>\n";
    if (clipped) out_ += "</g>\n";
  }

  void textRun(const TextItem& item, const WordsRun& run) {
    constexpr std::array<std::string_view, 3> kAnchors{"start", "middle", "end"};
    const std::string x = numberText(item.plane ? 0 : run.place.origin.x);
    const std::string y = numberText(item.plane ? 0 : drawing_.height - run.place.origin.y);
    out_ += "<text x=\"" + x + "\" y=\"" + y + "\" font-family=\"" + familyOf(item.face) +
            "\" font-size=\"" + numberText(item.height) + "\" text-anchor=\"" +
            std::string(kAnchors[static_cast<std::size_t>(run.anchor)]) + "\" fill=\"" +
            hexText(textColour(item)) + "\" stroke=\"none\"";
    if (item.bold) out_ += " font-weight=\"bold\"";
    if (item.face == Typeface::Slanted || item.face == Typeface::Hand)
      out_ += " font-style=\"italic\"";
    if (item.plane) {
      out_ += " transform=\"matrix(";
      for (const double number : {run.place.x.x, -run.place.x.y, -run.place.y.x, run.place.y.y,
                                  run.place.origin.x, drawing_.height - run.place.origin.y})
        out_ += numberText(number, 6) + ' ';
      out_.back() = ')';
      out_ += '"';
    } else if (const double turn = turnOf(item, run); turn != 0) {
      out_ += " transform=\"rotate(" + numberText(-turn) + ' ' + x + ' ' + y + ")\"";
    }
    out_ += '>' + xmlText(run.words) + "</text>\n";
  }

  static double turnOf(const TextItem& item, const WordsRun& run) {
    if (!item.arc) return item.turnDegrees;
    return std::atan2(run.place.x.y, run.place.x.x) * 180 / std::numbers::pi;
  }

  static std::string familyOf(Typeface face) {
    switch (face) {
      case Typeface::Plain:
        return "sans-serif";
      case Typeface::Serif:
      case Typeface::Slanted:
        return "serif";
      case Typeface::Typewriter:
        return "monospace";
      case Typeface::Hand:
        return "cursive, serif";
    }
    return "sans-serif";
  }

  const Drawing& drawing_;
  const Wording& wording_;
  bool dashed_;
  std::optional<PixelSize> pixels_;
  int fills_ = 0;
  std::string out_;
};

}  // namespace

std::string writeSvg(const Drawing& drawing, const std::string& title, const Wording& wording,
                     bool dashed, std::optional<PixelSize> pixels) {
  return SvgText(drawing, wording, dashed, pixels).write(title);
}

}  // namespace creasewright
