#include <algorithm>
#include <filesystem>

#include <gtest/gtest.h>

#include "document/file_io.h"
#include "fuzz/readers.h"

namespace creasewright {
namespace {

namespace fs = std::filesystem;

struct Kind {
  const char* folder;
  std::string (*fault)(std::string_view);
};

class Corpus : public ::testing::TestWithParam<Kind> {};

/// Every file of the fuzz targets' corpora, whole and cut, keeps the promises of its reader.
TEST_P(Corpus, KeepsThePromises) {
  int files = 0;
  for (const auto& entry : fs::directory_iterator(fs::path(CREASEWRIGHT_TESTS_DIR "/fuzz/corpus") /
                                                  GetParam().folder)) {
    const std::string bytes = readFile(entry.path().string(), 1 << 20).value();
    ++files;
    for (std::size_t part = 1; part <= 8; ++part)
      EXPECT_EQ(GetParam().fault(bytes.substr(0, bytes.size() * part / 8)), "")
          << entry.path() << ", " << part << "/8";
  }
  EXPECT_GT(files, 0);
}

INSTANTIATE_TEST_SUITE_P(
    Kinds, Corpus,
    ::testing::Values(Kind{"designs", fuzz::designFault}, Kind{"styles", fuzz::styleFault},
                      Kind{"kits", fuzz::kitFault}, Kind{"bundles", fuzz::bundleFault},
                      Kind{"tables", fuzz::tableFault}, Kind{"lengths", fuzz::lengthFault}),
    [](const auto& kind) { return std::string(kind.param.folder); });

}  // namespace
}  // namespace creasewright
