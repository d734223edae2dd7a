#include "drawing/dxf_writer.h"

#include <map>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

#include <gtest/gtest.h>

#include "drawing/net_drawing.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

std::string literal(const Label& label) { return label.literal; }

using Pair = std::pair<int, std::string>;

/// Reads a DXF as its file format says, pairs of lines (group code, value), and knows nothing of
/// the writer.
std::vector<Pair> readPairs(const std::string& dxf) {
  std::vector<Pair> pairs;
  std::istringstream in(dxf);
  for (std::string code, value; std::getline(in, code) && std::getline(in, value);) {
    pairs.emplace_back(std::stoi(code), value);
  }
  return pairs;
}

struct Entity {
  std::string type;
  std::map<int, std::string> groups;
  [[nodiscard]] double number(int group) const { return std::stod(groups.at(group)); }
};

std::vector<Entity> readEntities(const std::vector<Pair>& pairs, const std::string& section) {
  std::vector<Entity> found;
  bool inside = false;
  for (std::size_t i = 0; i < pairs.size(); ++i) {
    if (pairs[i] == Pair{2, section} && i > 0 && pairs[i - 1] == Pair{0, "SECTION"}) {
      inside = true;
    } else if (pairs[i] == Pair{0, "ENDSEC"}) {
      inside = false;
    } else if (inside && pairs[i].first == 0) {
      found.push_back({pairs[i].second, {}});
    } else if (inside && !found.empty()) {
      found.back().groups.insert(pairs[i]);
    }
  }
  return found;
}

TEST(DxfWriter, EveryEntityLiesOnALayerOfTheTable) {
  const Style& style = styles().front();
  const Piece piece =
      style.build(standardParameters(style), {Length::mm(0.3), ToolGrid::none()}).front();
  const FlatNet flat = flatten(piece.net);
  const std::vector<Pair> pairs = readPairs(writeDxf(drawNetLines(piece.net, flat, {}), literal));
  EXPECT_EQ(pairs.back(), (Pair{0, "EOF"}));
  std::map<std::string, std::string> layers;
  for (const Entity& entry : readEntities(pairs, "TABLES")) {
    if (entry.type == "LAYER") layers[entry.groups.at(2)] = entry.groups.at(6);
  }
  EXPECT_EQ(layers.at("CUTTING"), "CONTINUOUS");
  EXPECT_EQ(layers.at("CREASING"), "CREASING");
  int vertices = 0;
  for (const Entity& entity : readEntities(pairs, "ENTITIES")) {
    ASSERT_TRUE(layers.contains(entity.groups.at(8))) << entity.type;
    if (entity.type != "VERTEX" || entity.groups.at(8) != "CUTTING") continue;
    ++vertices;
    EXPECT_GE(entity.number(10), -1e-5);
    EXPECT_LE(entity.number(10), flat.width + 1e-5);
    EXPECT_LE(entity.number(20), flat.height + 1e-5);
  }
  EXPECT_GE(vertices, 8);
}

TEST(DxfWriter, CutsKeepTheirSizeInMillimetres) {
  Drawing drawing{200, 100, {}, {}};
  drawing.paths.push_back(
      {.role = Role::Cut, .rings = {{{0, 0}, {250.125, 0}, {0, 60}}}, .closed = true});
  drawing.paths.push_back({.role = Role::Valley, .rings = {{{1, 2}, {3, 4.5}}}});
  const std::vector<Entity> found = readEntities(readPairs(writeDxf(drawing, literal)), "ENTITIES");
  ASSERT_EQ(found.size(), 6U);
  EXPECT_EQ(found[0].type, "POLYLINE");
  EXPECT_EQ(found[0].groups.at(70), "1");
  EXPECT_EQ(found[2].number(10), 250.125);
  EXPECT_EQ(found[4].type, "SEQEND");
  EXPECT_EQ(found[5].type, "LINE");
  EXPECT_EQ(found[5].number(21), 4.5);
}

TEST(DxfWriter, LineTypesCarryTheDashes) {
  Drawing drawing{10, 10, {}, {}};
  drawing.paths.push_back({.role = Role::Valley, .rings = {{{0, 0}, {9, 9}}}});
  std::vector<double> dashes;
  for (const auto& [group, value] : readPairs(writeDxf(drawing, literal))) {
    if (group == 49) dashes.push_back(std::stod(value));
  }
  EXPECT_EQ(dashes, (std::vector<double>{4, -2}));
}

TEST(DxfWriter, TextsAreAsciiOnOneLine) {
  Drawing drawing{10, 10, {}, {}};
  drawing.texts.push_back({.label = Label::plain("2\u00BD \u00E4\n0\nEOF"), .at = {}});
  const std::string dxf = writeDxf(drawing, literal);
  for (const char c : dxf) EXPECT_LT(static_cast<unsigned char>(c), 0x80);
  const std::vector<Entity> found = readEntities(readPairs(dxf), "ENTITIES");
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].groups.at(1), "2\\U+00BD \\U+00E4 0 EOF");
}

}  // namespace
}  // namespace creasewright
