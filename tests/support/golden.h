#pragma once

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

#include <gtest/gtest.h>

namespace creasewright::testing {

/// Compares `actual` with tests/golden/`name`. With CREASEWRIGHT_ACCEPT=1 the file is written
/// instead, and the test fails once so that nobody accepts by accident in a routine run.
inline void expectGolden(const std::string& name, const std::string& actual) {
  const std::filesystem::path path =
      std::filesystem::path(CREASEWRIGHT_TESTS_DIR) / "golden" / name;
  if (const char* accept = std::getenv("CREASEWRIGHT_ACCEPT");
      accept != nullptr && std::string(accept) == "1") {
    std::filesystem::create_directories(path.parent_path());
    std::ofstream(path, std::ios::binary) << actual;
    ADD_FAILURE() << "accepted " << path << "; look at the difference and run again";
    return;
  }
  std::ifstream in(path, std::ios::binary);
  ASSERT_TRUE(in) << path << " is missing; CREASEWRIGHT_ACCEPT=1 writes it";
  const std::string expected{std::istreambuf_iterator<char>(in), {}};
  EXPECT_EQ(expected, actual) << "golden file " << path;
}

}  // namespace creasewright::testing
