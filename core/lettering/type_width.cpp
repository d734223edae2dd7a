#include "lettering/type_width.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <span>

#include "lettering/kerning.h"
#include "lettering/serif_widths.h"

namespace creasewright {
namespace {

// Advance widths of DejaVu Sans 2.37 (its hmtx table), 1/1000 of the type size, rounded up.
constexpr char32_t kFirstPlain = 32;
constexpr char32_t kFirstLatin = 160;
constexpr std::array<std::uint16_t, 95> kPlain{
    318, 401, 460, 838, 637, 951, 780, 275, 391, 391, 500, 838, 318, 361,  318, 337, 637, 637, 637,
    637, 637, 637, 637, 637, 637, 637, 337, 337, 838, 838, 838, 531, 1000, 685, 687, 699, 771, 632,
    576, 775, 752, 295, 295, 656, 558, 863, 749, 788, 604, 788, 695, 635,  611, 732, 685, 989, 686,
    611, 686, 391, 337, 391, 838, 500, 500, 613, 635, 550, 635, 616, 353,  635, 634, 278, 278, 580,
    278, 975, 634, 612, 635, 635, 412, 521, 393, 634, 592, 818, 592, 592,  525, 637, 337, 637, 838};
constexpr std::array<std::uint16_t, 95> kPlainBold{
    349,  457, 521, 838, 696, 1002, 873, 307,  458, 458, 523, 838, 380, 416,  380, 366,
    696,  696, 696, 696, 696, 696,  696, 696,  696, 696, 400, 400, 838, 838,  838, 581,
    1000, 774, 763, 734, 831, 684,  684, 821,  837, 373, 373, 775, 638, 996,  837, 851,
    733,  851, 771, 721, 683, 813,  774, 1104, 771, 725, 726, 458, 366, 458,  838, 500,
    500,  675, 716, 593, 716, 679,  436, 716,  712, 343, 343, 666, 343, 1042, 712, 688,
    716,  716, 494, 596, 479, 712,  652, 924,  646, 652, 583, 712, 366, 712,  838};
constexpr std::array<std::uint16_t, 96> kLatin{
    318, 401, 637, 637, 637, 637, 337, 500, 500, 1000, 472, 612, 838, 361, 1000, 500,
    500, 838, 401, 401, 500, 637, 637, 318, 500, 401,  472, 612, 970, 970, 970,  531,
    685, 685, 685, 685, 685, 685, 975, 699, 632, 632,  632, 632, 295, 295, 295,  295,
    775, 749, 788, 788, 788, 788, 788, 838, 788, 732,  732, 732, 732, 611, 605,  630,
    613, 613, 613, 613, 613, 613, 982, 550, 616, 616,  616, 616, 278, 278, 278,  278,
    612, 634, 612, 612, 612, 612, 612, 838, 612, 634,  634, 634, 634, 592, 635,  592};
constexpr std::array<std::uint16_t, 96> kLatinBold{
    349, 457, 696, 696, 637, 696, 366,  500, 500, 1000, 564, 646, 838,  416,  1000, 500,
    500, 838, 438, 438, 500, 736, 637,  380, 500, 438,  564, 646, 1036, 1036, 1036, 581,
    774, 774, 774, 774, 774, 774, 1085, 734, 684, 684,  684, 684, 373,  373,  373,  373,
    838, 837, 851, 851, 851, 851, 851,  838, 851, 813,  813, 813, 813,  725,  738,  720,
    675, 675, 675, 675, 675, 675, 1048, 593, 679, 679,  679, 679, 343,  343,  343,  343,
    688, 712, 688, 688, 688, 688, 688,  838, 688, 712,  712, 712, 712,  652,  716,  652};

struct Sign {
  char32_t code;
  std::uint16_t width;
  std::uint16_t bold;
};
/// Quotes, dashes, arrows, fractions and what else stands in our texts, by code.
constexpr std::array<Sign, 49> kSigns{
    {{0x2007, 637, 696},  {0x2009, 200, 200},  {0x2013, 500, 500},  {0x2014, 1000, 1000},
     {0x2018, 318, 380},  {0x2019, 318, 380},  {0x201a, 318, 380},  {0x201c, 519, 658},
     {0x201d, 519, 658},  {0x201e, 519, 658},  {0x2022, 590, 640},  {0x2026, 1000, 1000},
     {0x202f, 200, 200},  {0x2032, 228, 264},  {0x2033, 374, 447},  {0x2044, 167, 167},
     {0x2070, 401, 438},  {0x2074, 401, 438},  {0x2075, 401, 438},  {0x2076, 401, 438},
     {0x2077, 401, 438},  {0x2078, 401, 438},  {0x2079, 401, 438},  {0x2080, 401, 438},
     {0x2081, 401, 438},  {0x2082, 401, 438},  {0x2083, 401, 438},  {0x2084, 401, 438},
     {0x2085, 401, 438},  {0x2086, 401, 438},  {0x2087, 401, 438},  {0x2088, 401, 438},
     {0x2089, 401, 438},  {0x20ac, 637, 696},  {0x2153, 970, 1036}, {0x2154, 970, 1036},
     {0x215b, 970, 1036}, {0x215c, 970, 1036}, {0x215d, 970, 1036}, {0x215e, 970, 1036},
     {0x2190, 838, 838},  {0x2191, 838, 838},  {0x2192, 838, 838},  {0x2193, 838, 838},
     {0x2212, 838, 838},  {0x2248, 838, 838},  {0x2264, 838, 838},  {0x2265, 838, 838},
     {0x2713, 838, 838}}};

/// Another script is set in another face, about as wide as high.
constexpr double kUnknown = 1.05;
/// DejaVu Sans Mono 2.37.
constexpr double kTypewriter = 0.603;

/// Widths of one face: codes from 32, from 160, and those of `kSigns`.
struct Widths {
  std::span<const std::uint16_t> plain;
  std::span<const std::uint16_t> latin;
  std::span<const std::uint16_t> signs;  ///< empty: as in kSigns
};

double advance(char32_t code, const Widths& face, bool bold) {
  const auto of = [code](const auto& table, char32_t first) {
    return static_cast<double>(table[static_cast<std::size_t>(code - first)]) / 1000;
  };
  if (code >= kFirstPlain && code < kFirstPlain + face.plain.size())
    return of(face.plain, kFirstPlain);
  if (code >= kFirstLatin && code < kFirstLatin + face.latin.size())
    return of(face.latin, kFirstLatin);
  const auto* sign = std::ranges::lower_bound(kSigns, code, {}, &Sign::code);
  if (sign == kSigns.end() || sign->code != code) return kUnknown;
  const std::uint16_t own = bold ? sign->bold : sign->width;
  const auto place = static_cast<std::size_t>(sign - kSigns.begin());
  return static_cast<double>(face.signs.empty() ? own : face.signs[place]) / 1000;
}

double advance(char32_t code, Typeface face) {
  switch (face) {
    case Typeface::Plain:
      return advance(code, {kPlain, kLatin, {}}, false);
    case Typeface::Serif:
      return advance(code, {kSerif, kSerifLatin, kSerifSigns}, false);
    case Typeface::Typewriter: {
      const bool known = advance(code, {kPlain, kLatin, {}}, false) != kUnknown;
      return known ? kTypewriter : kUnknown;
    }
    case Typeface::Slanted:
    case Typeface::Hand:
      return advance(code, {kSlanted, kSlantedLatin, kSlantedSigns}, false);
  }
  return kUnknown;
}

/// A character of UTF-8 at `at`, which goes on to the next; what is broken counts as one.
char32_t codeAt(const std::string& words, std::size_t& at) {
  const auto lead = static_cast<unsigned char>(words[at]);
  const std::size_t bytes = lead < 0x80 ? 1 : lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;
  char32_t code = bytes == 1 ? lead : lead & (0x7FU >> bytes);
  for (std::size_t k = 1; k < bytes && at + k < words.size(); ++k)
    code = (code << 6U) | (static_cast<unsigned char>(words[at + k]) & 0x3FU);
  at = std::min(at + bytes, words.size());
  return code;
}

/// Accents and joiners, which take no place of their own.
bool goesWithLast(char32_t code) {
  return (code >= 0x0300 && code <= 0x036F) || code == 0x200D || (code >= 0xFE00 && code <= 0xFE0F);
}

}  // namespace

double typeWidth(const std::string& words, double height, bool bold) {
  const Widths face = bold ? Widths{kPlainBold, kLatinBold, {}} : Widths{kPlain, kLatin, {}};
  double width = 0;
  for (std::size_t at = 0; at < words.size();) width += advance(codeAt(words, at), face, bold);
  return width * height;
}

double typeWidth(const std::string& words, double height, Typeface face) {
  double width = 0;
  for (std::size_t at = 0; at < words.size();) width += advance(codeAt(words, at), face);
  return width * height;
}

std::vector<Letter> lettersOf(const std::string& words, double height, Typeface face) {
  std::vector<Letter> letters;
  char32_t before = 0;
  for (std::size_t at = 0; at < words.size();) {
    const std::size_t from = at;
    const char32_t code = codeAt(words, at);
    const std::string one = words.substr(from, at - from);
    if (goesWithLast(code) && !letters.empty()) {
      letters.back().words += one;
      continue;
    }
    letters.push_back({one, advance(code, face) * height, kerning(before, code, face) * height});
    before = code;
  }
  return letters;
}

}  // namespace creasewright
