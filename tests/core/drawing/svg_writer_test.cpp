#include "drawing/svg_writer.h"

#include <gtest/gtest.h>

#include "drawing/net_drawing.h"
#include "styles/registry.h"
#include "support/golden.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

std::string words(const Label& label) {
  if (label.code.empty()) return label.literal;
  return formatLength(std::get<Length>(label.values.at(0)), {});
}

int count(const std::string& text, const std::string& part) {
  int found = 0;
  for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) {
    ++found;
  }
  return found;
}

class SvgOfStyle : public ::testing::TestWithParam<std::string> {};

TEST_P(SvgOfStyle, MatchesTheGoldenFile) {
  const Style& style = **findStyle(GetParam());
  const Piece piece =
      style.build(standardParameters(style), {Length::mm(0.3), ToolGrid::none()}).front();
  const FlatNet flat = flatten(piece.net);
  testing::expectGolden("svg/" + GetParam() + ".svg",
                        writeSvg(drawNet(piece.net, flat, {}).drawing, piece.name, words));
}

INSTANTIATE_TEST_SUITE_P(Golden, SvgOfStyle,
                         ::testing::Values("framed-tray", "belly-band", "straight-tuck-box"),
                         [](const auto& named) {
                           std::string name = named.param;
                           std::replace(name.begin(), name.end(), '-', '_');
                           return name;
                         });

TEST(SvgWriter, SizeIsInMillimetresAndYRunsDown) {
  Drawing drawing{100, 50, {}, {}};
  drawing.paths.push_back({.role = Role::Cut, .rings = {{{0, 0}, {100, 50}}}});
  const std::string svg = writeSvg(drawing, "x", words);
  EXPECT_EQ(count(svg, "width=\"100mm\" height=\"50mm\" viewBox=\"0 0 100 50\""), 1);
  EXPECT_EQ(count(svg, "d=\"M0 50L100 0\""), 1);
}

TEST(SvgWriter, OneGroupForEachRoleWithExactDashes) {
  Drawing drawing{10, 10, {}, {}};
  for (const Role role : {Role::Mountain, Role::Cut, Role::Mountain}) {
    drawing.paths.push_back({.role = role, .rings = {{{0, 0}, {1, 1}}}});
  }
  const std::string svg = writeSvg(drawing, "x", words);
  EXPECT_EQ(count(svg, "<g id=\""), 2);
  EXPECT_EQ(count(svg, "id=\"ReverseCreasing\" data-step=\"ReverseCreasing\""), 1);
  EXPECT_EQ(count(svg, "stroke-dasharray=\"4 1.5 0.5 1.5\""), 1);
}

TEST(SvgWriter, BoldAndReversedTextsSaySo) {
  Drawing drawing{10, 10, {}, {}};
  drawing.texts.push_back(
      {.label = Label::plain("7"), .at = {5, 5}, .bold = true, .reversed = true});
  drawing.texts.push_back({.label = Label::plain("plain"), .at = {1, 1}, .like = Role::Valley});
  const std::string svg = writeSvg(drawing, "t", words);
  EXPECT_EQ(count(svg, "font-weight=\"bold\""), 1);
  EXPECT_EQ(count(svg, "fill=\"#FFFFFF\""), 1);
  EXPECT_EQ(count(svg, "fill=\"#005F48\""), 1);
}

TEST(SvgWriter, HostileTextsAreEscaped) {
  Drawing drawing{10, 10, {}, {}};
  drawing.texts.push_back({.label = Label::plain("</text><script>&\x01"), .at = {}});
  const std::string svg = writeSvg(drawing, "a<b & \"c\"", words);
  EXPECT_EQ(count(svg, "<script>"), 0);
  EXPECT_EQ(count(svg, "&lt;/text&gt;&lt;script&gt;&amp; </text>"), 1);
  EXPECT_EQ(count(svg, "<title>a&lt;b &amp; &quot;c&quot;</title>"), 1);
}

}  // namespace
}  // namespace creasewright
