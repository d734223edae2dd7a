#include "lettering/kerning.h"

#include <algorithm>
#include <span>

#include "lettering/sans_kerning.h"
#include "lettering/serif_kerning.h"

namespace creasewright {
namespace {

std::span<const KerningRow> rowsOf(Typeface face) {
  switch (face) {
    case Typeface::Plain:
      return kSansKerning;
    case Typeface::Serif:
    case Typeface::Slanted:
      return kSerifKerning;
    case Typeface::Typewriter:
    case Typeface::Hand:
      return {};
  }
  return {};
}

bool holds(std::u16string_view letters, char32_t letter) {
  constexpr char32_t kPlane = 0xFFFF;
  return letter <= kPlane && letters.find(static_cast<char16_t>(letter)) != letters.npos;
}

}  // namespace

double kerning(char32_t before, char32_t letter, Typeface face) {
  const std::span<const KerningRow> rows = rowsOf(face);
  const auto row = std::ranges::find_if(rows, [&](const KerningRow& each) {
    return holds(each.before, before) && holds(each.after, letter);
  });
  return row == rows.end() ? 0 : row->by / 1000.0;
}

}  // namespace creasewright
