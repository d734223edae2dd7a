#include "own_styles/style_files.h"

#include <filesystem>
#include <fstream>

#include <gtest/gtest.h>
#include <unistd.h>

#include "support/heart_box.h"

namespace creasewright {
namespace {

namespace fs = std::filesystem;

TEST(StyleFiles, AFolderIsListedByNameWithWhatCannotBeRead) {
  const fs::path folder =
      fs::temp_directory_path() / ("creasewright-styles-" + std::to_string(::getpid()));
  fs::create_directories(folder);
  const OwnStyle style = testing::heartStyle();
  EXPECT_EQ(writeOwnStyleFile(style, styleFileIn(folder.string(), style.id)), std::nullopt);
  std::ofstream(folder / "broken.cwstyle") << "{}";
  std::ofstream(folder / "notes.txt") << "no style";
  const std::vector<StyleFile> files = stylesIn(folder.string());
  ASSERT_EQ(files.size(), 2u);
  EXPECT_EQ(files[0].style.problem().code, ProblemCode::NotAStyle);
  ASSERT_TRUE(files[1].style.ok());
  EXPECT_EQ(*files[1].style, style);
  fs::remove_all(folder);
  EXPECT_TRUE(stylesIn(folder.string()).empty());
}

}  // namespace
}  // namespace creasewright
