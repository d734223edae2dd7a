"""The script that plants faults plants what it says: one token of code, never a comment, a text or an include."""

import pathlib
import sys

sys.path.insert(0, str(pathlib.Path(__file__).parent))
import mutants  # noqa: E402

SAMPLE = """#include "a + b.h"
// a + b is true
int f(int a, int b) {
  static_assert(true == true);
  const bool same = a == b;  // or a != b
  if (a + b < 3 && same) return std::min(a, b);
  return say("a + b") - 1;
}
"""


def wrong() -> list[str]:
    found = []
    faults = mutants.faults_of("core/sample.cpp", SAMPLE)
    planted = {(fault.line, fault.new.strip()) for fault in faults}
    wanted = {(5, "!="), (6, "-"), (6, "<="), (6, "||"), (6, "std::max("), (7, "+")}
    if planted != wanted:
        found.append(f"plants {sorted(planted)}, wanted {sorted(wanted)}")
    for fault in faults:
        changed = [i for i, (a, b) in enumerate(zip(SAMPLE.splitlines(), fault.planted(SAMPLE).splitlines())) if a != b]
        if changed != [fault.line - 1]:
            found.append(f"{fault} changes lines {changed}")
    if mutants.chosen(20, 3, "core/") != mutants.chosen(20, 3, "core/"):
        found.append("a seed does not give the same faults twice")
    if len(mutants.chosen(10**6, 1, "core/")) < 1000:
        found.append("too few places found in core")
    rounds = mutants.reaching("core/cutting/bitmap.cpp")
    if "bitmap_test.cpp" not in [path.name for path in rounds[0][1]]:
        found.append("the bitmap's own test does not reach it")
    if "accepted_class_test.cpp" not in [path.name for path in rounds[2][1]]:
        found.append("what is accepted of class papers does not reach the bitmap")
    if any(path.parent.name == "styles" for _, tests in rounds for path in tests):
        found.append("tests of styles are said to reach the bitmap")
    for file, line, _ in mutants.equivalents():
        source = mutants.ROOT / file
        if not source.is_file() or line not in source.read_text(encoding="utf-8"):
            found.append(f"mutants_equivalent.txt names a line that is not there: {file}: {line}")
    return found


if __name__ == "__main__":
    for line in wrong():
        print(line)
    sys.exit(1 if wrong() else 0)
