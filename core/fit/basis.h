#pragma once

#include <optional>
#include <string_view>

namespace creasewright {

/// Grams per square metre of a weight as it is sold in pounds, such as `65 lb cover` or `110 lb
/// index`; the basis must be named, for each has its own sheet: cover 20 x 26 in, index 25.5
/// x 30.5, bristol 22.5 x 28.5, text 25 x 38, bond 17 x 22, tag 24 x 36 (common practice, no
/// published source; the test compares with a printed table). Nothing for another text.
std::optional<double> basisGrammage(std::string_view text);

/// The weight of card of `grams` per square metre in pounds of cover (20 x 26 in).
double coverPounds(double grams);

}  // namespace creasewright
