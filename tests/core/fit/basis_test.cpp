#include "fit/basis.h"

#include <gtest/gtest.h>

namespace creasewright {
namespace {

/// Weight-equivalence table of the HP LaserJet 5550 manual (p. 27, Table 1-23), g/m2.
TEST(Basis, AgreesWithAPrintedTable) {
  EXPECT_NEAR(*basisGrammage("65 lb cover"), 176, 1.1);
  EXPECT_NEAR(*basisGrammage("80 lb cover"), 216, 1.1);
  EXPECT_NEAR(*basisGrammage("100 lb cover"), 271, 1.1);
  EXPECT_NEAR(*basisGrammage("110 lb index"), 199, 1.1);
  EXPECT_NEAR(*basisGrammage("67 lb bristol"), 148, 1.1);
  EXPECT_NEAR(*basisGrammage("20 lb bond"), 75, 1.1);
}

TEST(Basis, ReadsAsPeopleWriteAndNothingElse) {
  EXPECT_EQ(basisGrammage("65lb cover"), basisGrammage(" 65 lb  cover "));
  EXPECT_TRUE(basisGrammage("28.5 lb text"));
  EXPECT_TRUE(basisGrammage("90 lb tag"));
  for (const char* wrong : {"", "65", "65 lb", "lb cover", "65 kg cover", "65 lb covers",
                            "-1 lb tag", "1e9 lb tag", "nan lb tag", "cover 65 lb"})
    EXPECT_FALSE(basisGrammage(wrong)) << wrong;
}

}  // namespace
}  // namespace creasewright
