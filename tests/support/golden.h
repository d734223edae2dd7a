#pragma once

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

#include <gtest/gtest.h>

namespace creasewright::testing {

/// Compares `text` with tests/golden/<name>. To accept a change, run the test with
/// CREASEWRIGHT_ACCEPT=1, which rewrites the file, and read the difference before committing it.
inline void expectGolden(const std::string& name, const std::string& text) {
  const std::filesystem::path path =
      std::filesystem::path(CREASEWRIGHT_TESTS_DIR) / "golden" / name;
  if (const char* accept = std::getenv("CREASEWRIGHT_ACCEPT"); accept && *accept == '1') {
    std::filesystem::create_directories(path.parent_path());
    std::ofstream(path, std::ios::binary) << text;
  }
  std::ifstream file(path, std::ios::binary);
  ASSERT_TRUE(file) << path << " is missing; CREASEWRIGHT_ACCEPT=1 writes it";
  std::ostringstream golden;
  golden << file.rdbuf();
  EXPECT_EQ(golden.str(), text) << path << " differs; CREASEWRIGHT_ACCEPT=1 accepts the change";
}

}  // namespace creasewright::testing
