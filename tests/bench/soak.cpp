#include <cstdlib>
#include <iostream>
#include <map>
#include <string>

#include "core/laws/law_book.h"

// Runs every law over many random designs of every style, for as long as it takes:
//   creasewright_soak [sets per style = 20000] [seed = 1] [style = all]
// Prints one line per style and the first design that breaks a law; ends with 1 when one did.

namespace creasewright {
namespace {

struct Tally {
  int valid = 0;
  std::map<std::string_view, int> broken;
};

void judge(const Design& design, Tally& tally) {
  const Result<BuiltDesign> built = build(design);
  if (!built) {
    if (tally.broken["build"]++ == 0)
      std::cout << "  build: refused at " << built.problem().where << '\n';
    return;
  }
  ++tally.valid;
  for (const testing::Law& law : testing::lawBook()) {
    const testing::Verdict verdict = law.judge(*built);
    if (!verdict.empty() && tally.broken[law.name]++ == 0)
      std::cout << "  " << law.name << ": " << verdict << " in " << testing::describe(*built)
                << '\n';
  }
}

/// Whether every law held and at least two of three draws were inside the limits.
bool soak(const Style& style, int sets, testing::Random& random) {
  Tally tally;
  for (int i = 0; i < sets; ++i)
    if (const auto design = testing::randomInsideLimits(random, style)) judge(*design, tally);
  const bool enough = tally.valid * 3 >= sets * 2;
  std::cout << style.id << ": " << tally.valid << " designs of " << sets
            << (enough ? "" : ", too few");
  for (const auto& [name, times] : tally.broken) std::cout << ", " << name << " broken " << times;
  std::cout << std::endl;
  return enough && tally.broken.empty();
}

}  // namespace
}  // namespace creasewright

int main(int argc, char** argv) {
  const int sets = argc > 1 ? std::atoi(argv[1]) : 20'000;
  const std::uint64_t seed = argc > 2 ? std::strtoull(argv[2], nullptr, 10) : 1;
  const std::string only = argc > 3 ? argv[3] : "";
  if (sets <= 0) {
    std::cerr << "usage: creasewright_soak [sets per style] [seed] [style]\n";
    return 2;
  }
  creasewright::testing::Random random(seed);
  bool holds = true;
  int judged = 0;
  for (const creasewright::Style& style : creasewright::styles()) {
    if (!only.empty() && style.id != only) continue;
    ++judged;
    holds = creasewright::soak(style, sets, random) && holds;
  }
  if (judged == 0) {
    std::cerr << "There is no style \"" << only << "\".\n";
    return 2;
  }
  return holds ? 0 : 1;
}
