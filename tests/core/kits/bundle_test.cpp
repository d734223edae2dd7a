#include "kits/bundle.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "document/design_file.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

std::vector<Design> oneOfEachStyle() {
  std::vector<Design> designs;
  for (const Style& style : styles())
    designs.push_back(*newDesign(style.id, *parseProduct("box:60x40x25mm"), cards().front(),
                                 Ease::Easy, ToolGrid::millimetre()));
  return designs;
}

TEST(Bundle, ReadsWhatItWrote) {
  const std::vector<Design> designs = oneOfEachStyle();
  const Bundle bundle{designs,
                      {{"Linen", Length::inches(12), Length::inches(12)}},
                      {{"T", "Tape", SupplyItemKind::Tape, Length::mm(6), Length::mm(25000)}}};
  const auto read = readBundle(writeBundle(bundle), "b");
  ASSERT_TRUE(read) << read.problem().where;
  ASSERT_EQ(read->designs.size(), designs.size());
  for (std::size_t i = 0; i < designs.size(); ++i)
    EXPECT_EQ(writeDesign(read->designs[i]), writeDesign(designs[i]));
  EXPECT_EQ(writeStockTable(read->stock), writeStockTable(bundle.stock));
  EXPECT_EQ(read->supplies, bundle.supplies);
}

/// Version 1 had designs only.
TEST(Bundle, OlderOnesAreRead) {
  const std::string designs = writeBundle({oneOfEachStyle(), {}, {}});
  std::string old = designs.substr(0, designs.rfind(",\n \"stock\"")) + "\n}\n";
  const std::string now = "\"version\": " + std::to_string(kBundleVersion);
  old.replace(old.find(now), now.size(), "\"version\": 1");
  const auto read = readBundle(old, "b");
  ASSERT_TRUE(read) << read.problem().where;
  EXPECT_EQ(read->designs.size(), styles().size());
}

/// Version 2 had other names for the crossed-seam pouch and for adhesive dots.
TEST(Bundle, OldNamesAreRead) {
  const Bundle bundle{
      {*newDesign("crossed-seam-pouch", std::nullopt, cards()[0], Ease::Easy, ToolGrid::none())},
      {},
      {{"D", "Dots", SupplyItemKind::AdhesiveDots, Length(), Length(), 100}}};
  auto json = nlohmann::ordered_json::parse(writeBundle(bundle));
  json["version"] = 2;
  json["designs"][0]["version"] = 2;
  json["designs"][0]["style"] = "tetra-pouch";
  json["supplies"][0]["kind"] = "glue-dots";
  const auto read = readBundle(json.dump(), "b");
  ASSERT_TRUE(read) << read.problem().where;
  EXPECT_EQ(writeBundle(*read), writeBundle(bundle));
}

TEST(Bundle, ABrokenSheetIsNamed) {
  std::string text = writeBundle({{}, {{"Linen", Length::inches(12), Length::inches(12)}}, {}});
  text.replace(text.find("\"12 in\""), 7, "\"12 em\"");
  const auto read = readBundle(text, "b");
  ASSERT_FALSE(read);
  EXPECT_EQ(read.problem().where, "stock/1/width");
}

TEST(Bundle, ABrokenOneGivesNothing) {
  const std::string whole = writeBundle({oneOfEachStyle(), {}, {}});
  for (std::size_t cut = 0; cut + 2 < whole.size(); cut += whole.size() / 40)
    EXPECT_FALSE(readBundle(whole.substr(0, cut), "b")) << cut;
  std::string other = whole;
  other.replace(other.find("creasewright-design"), 19, "creasewright-desigm");
  EXPECT_FALSE(readBundle(other, "b"));
  EXPECT_EQ(readBundle("{}", "b").problem().code, ProblemCode::NotABundle);
}

}  // namespace
}  // namespace creasewright
