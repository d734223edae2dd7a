#include "units/paper.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <mutex>
#include <set>
#include <string>
#include <utility>

#include "base/excerpt.h"

namespace creasewright {
namespace {

constexpr Paper metric(std::string_view id, std::string_view name, int width, int height) {
  return {id, name, Length::nanometres(width * 1'000'000LL),
          Length::nanometres(height * 1'000'000LL)};
}

/// Sides in half inches.
constexpr Paper inch(std::string_view id, std::string_view name, int width, int height) {
  return {id, name, Length::inches(width, 2), Length::inches(height, 2)};
}

// resources/papers.json says where each size comes from; a test keeps the two alike.
constexpr std::array kPapers{
    metric("a4", "A4", 210, 297),        inch("letter", "letter", 17, 22),
    metric("a3", "A3", 297, 420),        metric("a5", "A5", 148, 210),
    metric("a6", "A6", 105, 148),        inch("legal", "legal", 17, 28),
    inch("tabloid", "tabloid", 22, 34),  inch("12x12", "12 x 12 in", 24, 24),
    inch("8x8", "8 x 8 in", 16, 16),     inch("6x6", "6 x 6 in", 12, 12),
    inch("12x18", "12 x 18 in", 24, 36), inch("5x7", "5 x 7 in", 10, 14),
    metric("sra3", "SRA3", 320, 450),    metric("sra4", "SRA4", 225, 320),
};

}  // namespace

std::span<const Paper> papers() { return kPapers; }

Paper ownPaper(Length width, Length height) {
  if (height < width) std::swap(width, height);
  const auto side = [](Length length) {
    std::array<char, 32> text{};
    const int size = std::snprintf(text.data(), text.size(), "%.6g", length.mm());
    return std::string(text.data(), static_cast<std::size_t>(size));
  };
  // Names of papers are views: those of own sizes live as long as the program.
  static std::mutex guard;
  static std::set<std::string> names;
  const std::scoped_lock lock(guard);
  const std::string& name = *names.insert(side(width) + " x " + side(height) + " mm").first;
  return {name, name, width, height};
}

Result<Paper> findPaper(std::string_view id) {
  std::string small(id);
  for (char& c : small)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  const auto found = std::ranges::find(kPapers, std::string_view(small), &Paper::id);
  if (found == kPapers.end()) return Problem{ProblemCode::PaperUnknown, {}, {excerpt(id)}};
  return *found;
}

}  // namespace creasewright
