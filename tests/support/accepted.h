#pragma once

#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <map>
#include <string>
#include <vector>

#include "support/golden.h"

namespace creasewright::testing {

/// The FNV-1a hash of 64 bits (G. Fowler, L. C. Noll, K.-P. Vo; RFC 9923) as 16 hexadecimal digits.
inline std::string digestOf(const std::string& text) {
  std::uint64_t hash = 0xcbf29ce484222325;
  for (const char c : text) {
    hash ^= static_cast<unsigned char>(c);
    hash *= 0x100000001b3;
  }
  char digits[17];
  std::snprintf(digits, sizeof digits, "%016llx", static_cast<unsigned long long>(hash));
  return digits;
}

/// What somebody has looked at and found right, too much to keep it whole: a golden file
/// accepted/`name`.txt holds a line of name and digest for each. What differs is written into a
/// folder of its own, where it can be looked at beside what an older program makes.
class Accepted {
 public:
  explicit Accepted(std::string name) : name_(std::move(name)) {}

  /// `what` is also its file's name and takes letters, digits, `-` and an ending.
  void add(const std::string& what, const std::string& text) { texts_[what] += text; }

  void expectAsBefore() const {
    std::string lines;
    for (const auto& [what, text] : texts_) lines += what + ' ' + digestOf(text) + '\n';
    const std::string golden = "accepted/" + name_ + ".txt";
    std::ifstream in(std::filesystem::path(CREASEWRIGHT_TESTS_DIR) / "golden" / golden);
    std::map<std::string, std::string> before;
    for (std::string what, digest; in >> what >> digest;) before[what] = digest;
    for (const auto& [what, text] : texts_)
      if (before[what] != digestOf(text)) keep(what, text);
    expectGolden(golden, lines);
  }

 private:
  void keep(const std::string& what, const std::string& text) const {
    const auto folder = std::filesystem::temp_directory_path() / "creasewright-differs" / name_;
    std::filesystem::create_directories(folder);
    std::ofstream(folder / what, std::ios::binary) << text;
    std::cout << "differs: " << (folder / what).string() << '\n';
  }

  std::string name_;
  std::map<std::string, std::string> texts_;
};

}  // namespace creasewright::testing
