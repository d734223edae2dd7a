#include <algorithm>
#include <cctype>
#include <filesystem>
#include <vector>

#include <gtest/gtest.h>

#include "document/build.h"
#include "document/design_file.h"
#include "document/file_io.h"
#include "support/random.h"

namespace creasewright {
namespace {

namespace fs = std::filesystem;

constexpr const char* kCrashes = CREASEWRIGHT_TESTS_DIR "/fuzz/crashes";
constexpr std::int64_t kLimit = 4 << 20;

std::string golden() {
  return readFile(CREASEWRIGHT_TESTS_DIR "/golden/document/soap-tray.cwdesign", kLimit).value();
}

/// What was read must be a design that can be saved and read again; anything else a problem that
/// says what it is about.
void expectDesignOrProblem(const std::string& text) {
  const Result<Design> design = readDesign(text, "a.cwdesign");
  if (!design) {
    EXPECT_FALSE(design.problem().where.empty()) << codeName(design.problem().code);
    return;
  }
  const Result<Design> again = readDesign(writeDesign(*design), "a.cwdesign");
  ASSERT_TRUE(again.ok());
  EXPECT_EQ(*again, *design);
  (void)limitProblems(*design);
}

class Crashes : public ::testing::TestWithParam<std::string> {};

std::vector<std::string> crashFiles() {
  std::vector<std::string> names;
  for (const auto& entry : fs::directory_iterator(kCrashes))
    names.push_back(entry.path().filename().string());
  std::ranges::sort(names);
  return names;
}

/// Every file that ever broke the reader, or was made to try.
TEST_P(Crashes, GiveADesignOrAProblem) {
  const Result<std::string> bytes = readFile((fs::path(kCrashes) / GetParam()).string(), kLimit);
  ASSERT_TRUE(bytes.ok()) << GetParam();
  expectDesignOrProblem(*bytes);
}

INSTANTIATE_TEST_SUITE_P(Files, Crashes, ::testing::ValuesIn(crashFiles()), [](const auto& crash) {
  std::string name = crash.param;
  for (char& c : name)
    if (std::isalnum(static_cast<unsigned char>(c)) == 0) c = '_';
  return name;
});

TEST(DesignFuzz, TruncatedAtEveryByteIsNotADesign) {
  const std::string text = golden();
  for (std::size_t size = 0; size + 2 < text.size();
       ++size) {  // the last two are `}` and a newline
    const Result<Design> design = readDesign(text.substr(0, size), "a.cwdesign");
    ASSERT_FALSE(design.ok()) << size;
    EXPECT_EQ(design.problem().code, ProblemCode::NotADesign) << size;
  }
}

TEST(DesignFuzz, FlippedBytes) {
  testing::Random random(1604);
  const std::string whole = golden();
  int read = 0;
  for (int i = 0; i < 2000; ++i) {
    std::string text = whole;
    for (int flips = random.whole(1, 4); flips > 0; --flips)
      text[static_cast<std::size_t>(random.whole(0, static_cast<int>(text.size()) - 1))] ^=
          static_cast<char>(1 << random.whole(0, 7));
    expectDesignOrProblem(text);
    if (readDesign(text, "a").ok()) ++read;
    if (HasFailure()) FAIL() << text;
  }
  EXPECT_GT(read, 20);    // a guard: the flips reach past the first refusal
  EXPECT_LT(read, 1900);  // and do harm
}

TEST(DesignFuzz, FlippedDigitsAndSigns) {
  testing::Random random(1605);
  const std::string whole = golden();
  constexpr std::string_view kMarks = "0123456789-+.,/eE\"{}[]: x";
  for (int i = 0; i < 2000; ++i) {
    std::string text = whole;
    for (int swaps = random.whole(1, 3); swaps > 0; --swaps)
      text[static_cast<std::size_t>(random.whole(0, static_cast<int>(text.size()) - 1))] =
          kMarks[static_cast<std::size_t>(random.whole(0, static_cast<int>(kMarks.size()) - 1))];
    expectDesignOrProblem(text);
    if (HasFailure()) FAIL() << text;
  }
}

TEST(DesignFuzz, LargeFilesAreRefusedUnread) {
  const Result<Design> design = readDesign(std::string((12 << 20) + 1, '['), "a.cwdesign");
  ASSERT_FALSE(design.ok());
  EXPECT_EQ(design.problem(), (Problem{ProblemCode::FileTooLarge,
                                       "a.cwdesign",
                                       {std::int64_t{(12 << 20) + 1}, std::int64_t{12 << 20}}}));
}

TEST(DesignFuzz, DeepNestingIsHarmless) {
  const std::size_t depth = (2 << 20) - 2000;
  const std::string bomb = std::string(depth, '[') + std::string(depth, ']');
  EXPECT_EQ(readDesign(bomb, "a").problem().code, ProblemCode::NotADesign);
  EXPECT_EQ(readDesign(std::string(depth, '['), "a").problem().code, ProblemCode::NotADesign);
  std::string objects;
  for (int i = 0; i < 500'000; ++i) objects += "{\"a\":";
  EXPECT_EQ(readDesign(objects, "a").problem().code, ProblemCode::NotADesign);
  std::string inside = golden();
  inside.insert(1, "\"unknown\":" + bomb + ",");
  EXPECT_TRUE(readDesign(inside, "a").ok());
}

}  // namespace
}  // namespace creasewright
