#include "fit/basis.h"

#include <charconv>

#include "fit/card.h"

namespace creasewright {
namespace {

struct Basis {
  std::string_view name;
  double width;  // in
  double height;
};

constexpr Basis kBases[] = {{"cover", 20, 26}, {"index", 25.5, 30.5}, {"bristol", 22.5, 28.5},
                            {"text", 25, 38},  {"bond", 17, 22},      {"tag", 24, 36}};
constexpr double kHeaviest = 2'000;  // lb
constexpr double kInch = 25.4;       // mm

std::string_view trimmed(std::string_view text) {
  while (text.starts_with(' ')) text.remove_prefix(1);
  while (text.ends_with(' ')) text.remove_suffix(1);
  return text;
}

}  // namespace

std::optional<double> basisGrammage(std::string_view text) {
  const std::string_view all = trimmed(text);
  double pounds = 0;
  const auto [end, error] = std::from_chars(all.data(), all.data() + all.size(), pounds);
  if (error != std::errc() || !(pounds > 0 && pounds < kHeaviest)) return std::nullopt;
  std::string_view rest = trimmed({end, static_cast<std::size_t>(all.data() + all.size() - end)});
  if (!rest.starts_with("lb")) return std::nullopt;
  rest = trimmed(rest.substr(2));
  for (const Basis& basis : kBases)
    if (basis.name == rest)
      return grammage(pounds, Length::mm(basis.width * kInch), Length::mm(basis.height * kInch));
  return std::nullopt;
}

double coverPounds(double grams) {
  return grams / grammage(1, Length::inches(20, 1), Length::inches(26, 1));
}

}  // namespace creasewright
