#include "fit/card_colours.h"

#include <algorithm>
#include <array>
#include <vector>

#include "base/near_texts.h"

namespace creasewright {
namespace {

constexpr std::string_view kPlainCard = "plain";

constexpr std::array kNamed{
    NamedColour{"white", worded("colours", "white"), {0xFA, 0xFA, 0xF7}},
    NamedColour{"cream", worded("colours", "cream"), {0xF6, 0xEC, 0xD0}},
    NamedColour{"sand", worded("colours", "sand"), {0xE0, 0xCD, 0xA9}},
    NamedColour{"kraft", worded("colours", "kraft"), {0xB9, 0x93, 0x68}},
    NamedColour{"butter", worded("colours", "butter"), {0xF7, 0xE0, 0x8A}},
    NamedColour{"sunflower", worded("colours", "sunflower"), {0xEF, 0xB8, 0x2D}},
    NamedColour{"apricot", worded("colours", "apricot"), {0xF3, 0xB4, 0x80}},
    NamedColour{"terracotta", worded("colours", "terracotta"), {0xB8, 0x5C, 0x3E}},
    NamedColour{"coral", worded("colours", "coral"), {0xE9, 0x7F, 0x6C}},
    NamedColour{"poppy", worded("colours", "poppy"), {0xC2, 0x36, 0x2B}},
    NamedColour{"rose", worded("colours", "rose"), {0xE8, 0xB4, 0xBC}},
    NamedColour{"beetroot", worded("colours", "beetroot"), {0x8C, 0x2F, 0x55}},
    NamedColour{"lavender", worded("colours", "lavender"), {0xB9, 0xA7, 0xD3}},
    NamedColour{"plum", worded("colours", "plum"), {0x5A, 0x35, 0x65}},
    NamedColour{"sky", worded("colours", "sky"), {0xA9, 0xCF, 0xE6}},
    NamedColour{"cornflower", worded("colours", "cornflower"), {0x5B, 0x86, 0xC4}},
    NamedColour{"ink", worded("colours", "ink blue"), {0x25, 0x36, 0x5C}},
    NamedColour{"teal", worded("colours", "teal"), {0x1F, 0x76, 0x78}},
    NamedColour{"mint", worded("colours", "mint"), {0xB5, 0xDD, 0xC6}},
    NamedColour{"sage", worded("colours", "sage"), {0x9A, 0xAF, 0x90}},
    NamedColour{"leaf", worded("colours", "leaf green"), {0x5E, 0x9A, 0x45}},
    NamedColour{"fir", worded("colours", "fir green"), {0x24, 0x4F, 0x3C}},
    NamedColour{"chocolate", worded("colours", "chocolate"), {0x54, 0x38, 0x2B}},
    NamedColour{"pebble", worded("colours", "pebble grey"), {0xC4, 0xC2, 0xBC}},
    NamedColour{"slate", worded("colours", "slate"), {0x58, 0x62, 0x6B}},
    NamedColour{"black", worded("colours", "black"), {0x24, 0x22, 0x22}},
};

}  // namespace

std::span<const NamedColour> namedColours() { return kNamed; }

Result<Colour> parseColour(std::string_view text) {
  const auto named = std::ranges::find(kNamed, text, &NamedColour::id);
  if (named != kNamed.end()) return named->colour;
  if (const std::optional<Colour> colour = colourFromHex(text)) return *colour;
  std::vector<Spelled> known;
  for (const NamedColour& one : kNamed) known.push_back({one.id, one.title});
  return unknownAmong(ProblemCode::ColourUnknown, text, known);
}

std::string colourText(Colour colour) {
  const auto named = std::ranges::find(kNamed, colour, &NamedColour::colour);
  return named == kNamed.end() ? hexText(colour) : std::string(named->id);
}

std::string cardColourText(const CardColours& colours) {
  const auto side = [](const std::optional<Colour>& colour) {
    return colour ? colourText(*colour) : std::string(kPlainCard);
  };
  return side(colours.face) + (colours.back ? "/" + side(colours.back) : "");
}

Result<CardColours> parseCardColours(std::string_view text) {
  CardColours colours;
  const std::size_t slash = text.find('/');
  if (text.substr(0, slash) != kPlainCard) {
    const Result<Colour> face = parseColour(text.substr(0, slash));
    if (!face) return face.problem();
    colours.face = *face;
  }
  if (slash == std::string_view::npos) return colours;
  const Result<Colour> back = parseColour(text.substr(slash + 1));
  if (!back) return back.problem();
  colours.back = *back;
  return colours;
}

}  // namespace creasewright
