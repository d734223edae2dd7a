#include "document/bundle.h"

#include <gtest/gtest.h>

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
  const auto read = readBundle(writeBundle(designs), "b");
  ASSERT_TRUE(read) << read.problem().where;
  ASSERT_EQ(read->size(), designs.size());
  for (std::size_t i = 0; i < designs.size(); ++i)
    EXPECT_EQ(writeDesign((*read)[i]), writeDesign(designs[i]));
}

TEST(Bundle, ABrokenOneGivesNothing) {
  const std::string whole = writeBundle(oneOfEachStyle());
  for (std::size_t cut = 0; cut + 2 < whole.size(); cut += whole.size() / 40)
    EXPECT_FALSE(readBundle(whole.substr(0, cut), "b")) << cut;
  std::string other = whole;
  other.replace(other.find("creasewright-design"), 19, "creasewright-desigm");
  EXPECT_FALSE(readBundle(other, "b"));
  EXPECT_EQ(readBundle("{}", "b").problem().code, ProblemCode::NotADesign);
}

}  // namespace
}  // namespace creasewright
