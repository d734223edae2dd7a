#include "drawing/dxf_writer.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <numeric>
#include <string_view>
#include <vector>

#include "drawing/number_text.h"
#include "drawing/role.h"
#include "drawing/set_words.h"

namespace creasewright {
namespace {

constexpr double kSlant = 12;  // degrees

std::string capitals(std::string_view text) {
  std::string out(text);
  std::transform(out.begin(), out.end(), out.begin(),
                 [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 32) : c; });
  return out;
}

/// ASCII with `\U+XXXX` for everything else, as DXF readers of all releases expect; characters
/// beyond the basic plane and broken UTF-8 become `?`.
std::string asciiText(std::string_view utf8) {
  constexpr std::string_view kDigits = "0123456789ABCDEF";
  std::string out;
  for (std::size_t i = 0; i < utf8.size();) {
    const auto lead = static_cast<unsigned char>(utf8[i]);
    const std::size_t size = lead < 0x80 ? 1 : lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (size == 1) {
      out += lead < 0x20 ? ' ' : utf8[i];
    } else if (size == 4 || lead < 0xC0 || i + size > utf8.size()) {
      out += '?';
    } else {
      unsigned code = lead & (size == 2 ? 0x1FU : 0x0FU);
      for (std::size_t k = 1; k < size; ++k)
        code = code << 6U | (static_cast<unsigned char>(utf8[i + k]) & 0x3FU);
      out += "\\U+";
      for (const unsigned shift : {12U, 8U, 4U, 0U}) out += kDigits[code >> shift & 0xFU];
    }
    i += size;
  }
  return out;
}

class DxfText {
 public:
  DxfText(const Drawing& drawing, const Wording& wording, bool dashed)
      : drawing_(drawing), wording_(wording), dashed_(dashed) {
    for (const Role role : paintOrder())
      if (used(role)) roles_.push_back(role);
  }

  std::string write() {
    pair(999, "lengths in millimetres");
    header();
    tables();
    section("ENTITIES");
    for (const PathItem& item : drawing_.paths)
      if (!item.filled) path(item);
    for (const TextItem& item : drawing_.texts) text(item);
    pair(0, "ENDSEC");
    pair(0, "EOF");
    return std::move(out_);
  }

 private:
  [[nodiscard]] bool used(Role role) const {
    const auto draws = [role](const PathItem& p) {
      return !p.filled && (p.role == role || p.like == role);
    };
    return std::any_of(drawing_.paths.begin(), drawing_.paths.end(), draws) ||
           std::any_of(drawing_.texts.begin(), drawing_.texts.end(),
                       [&](const TextItem& t) { return t.role == role; });
  }

  void pair(int group, std::string_view value) {
    out_ += std::to_string(group) + '\n';
    out_ += value;
    out_ += '\n';
  }
  void number(int group, double value) { pair(group, numberText(value, 6)); }
  void point(Point p, int group = 10) {
    number(group, p.x);
    number(group + 10, p.y);
    number(group + 20, 0);
  }
  void section(std::string_view name) {
    pair(0, "SECTION");
    pair(2, name);
  }

  void header() {
    section("HEADER");
    pair(9, "$ACADVER");
    pair(1, "AC1009");
    pair(9, "$EXTMIN");
    point({0, 0});
    pair(9, "$EXTMAX");
    point({drawing_.width, drawing_.height});
    pair(9, "$LTSCALE");
    number(40, 1);
    pair(0, "ENDSEC");
  }

  void tables() {
    section("TABLES");
    pair(0, "TABLE");
    pair(2, "LTYPE");
    pair(70, std::to_string(roles_.size() + 1));
    lineType("CONTINUOUS", {});
    for (const Role role : roles_)
      if (dashed_ && !roleStyle(role).dashes.empty())
        lineType(capitals(roleStyle(role).id), roleStyle(role).dashes);
    pair(0, "ENDTAB");
    pair(0, "TABLE");
    pair(2, "LAYER");
    pair(70, std::to_string(roles_.size()));
    for (const Role role : roles_) layer(roleStyle(role));
    pair(0, "ENDTAB");
    pair(0, "ENDSEC");
  }

  void lineType(std::string_view name, std::span<const double> dashes) {
    pair(0, "LTYPE");
    pair(2, name);
    pair(70, "64");
    pair(3, "");
    pair(72, "65");
    pair(73, std::to_string(dashes.size()));
    number(40, std::accumulate(dashes.begin(), dashes.end(), 0.0));
    for (std::size_t i = 0; i < dashes.size(); ++i) number(49, i % 2 == 0 ? dashes[i] : -dashes[i]);
  }

  void layer(const RoleStyle& style) {
    pair(0, "LAYER");
    pair(2, capitals(style.id));
    pair(70, "64");
    pair(62, std::to_string(style.cadColour));
    lineTypeOf(style);
  }

  void lineTypeOf(const RoleStyle& style) {
    pair(6, !dashed_ || style.dashes.empty() ? "CONTINUOUS" : capitals(style.id));
  }

  void path(const PathItem& item) {
    const std::string name = capitals(roleStyle(item.role).id);
    for (const Polygon& ring : item.rings) {
      if (ring.size() < 2) continue;
      if (ring.size() == 2) {
        pair(0, "LINE");
        pair(8, name);
        if (item.like) lineTypeOf(styleOf(item));
        point(ring[0]);
        point(ring[1], 11);
        continue;
      }
      pair(0, "POLYLINE");
      pair(8, name);
      if (item.like) lineTypeOf(styleOf(item));
      pair(66, "1");
      point({0, 0});
      pair(70, item.closed ? "1" : "0");
      for (const Point p : ring) {
        pair(0, "VERTEX");
        pair(8, name);
        point(p);
      }
      pair(0, "SEQEND");
      pair(8, name);
    }
  }

  void text(const TextItem& item) {
    const std::string words = wording_(item.label);
    for (const WordsRun& run : wordsRuns(item, words)) textRun(item, run);
  }

  void textRun(const TextItem& item, const WordsRun& run) {
    pair(0, "TEXT");
    pair(8, capitals(roleStyle(item.role).id));
    point(run.place.origin);
    // DXF measures capitals, a type size measures the em: 0.7 of it in common sans-serif faces.
    number(40, 0.7 * item.height * norm(run.place.y));
    pair(1, asciiText(run.words));
    number(50, item.arc || item.plane
                   ? std::atan2(run.place.x.y, run.place.x.x) * 180 / std::numbers::pi
                   : item.turnDegrees);
    if (item.face == Typeface::Slanted || item.face == Typeface::Hand) number(51, kSlant);
    pair(72, std::to_string(static_cast<int>(run.anchor)));
    point(run.place.origin, 11);
  }

  const Drawing& drawing_;
  const Wording& wording_;
  bool dashed_;
  std::vector<Role> roles_;
  std::string out_;
};

}  // namespace

std::string writeDxf(const Drawing& drawing, const Wording& wording, bool dashed) {
  return DxfText(drawing, wording, dashed).write();
}

}  // namespace creasewright
