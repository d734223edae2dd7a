"""clang-tidy finds nothing (.clang-tidy says what it looks for) in the rooms named.

tidy.py ROOT BUILD ROOM... (all of core, or all of app)

The sources of the rooms are looked at together, so that their headers are read once: names in their unnamed namespaces
must differ. A source with known faults goes before them, and each of its faults must be found, or clang-tidy does not
look at what is read with the rest.
"""

import json
import pathlib
import re
import shlex
import subprocess
import sys
import tempfile

# A fault of each group of checks: of the kind found by a name, by a look at types, by counting.
PLANTED = """
#include <string>
namespace planted {
int Wrong_Name() { return 1; }
int byValue(const std::string text) { return static_cast<int>(text.size()); }
int alike(int a) {
  if (a > 1) { return 2; } else { return 2; }
}
}
"""
ASKED = ["readability-identifier-naming", "performance-unnecessary-value-param", "bugprone-branch-clone"]


def flags_of(entry):
    """How a source is compiled, without the precompiled header of GCC's, which clang cannot read."""
    words = shlex.split(entry["command"])
    keep = [words[0]]
    for word, before in zip(words[1:], words):
        if before in ("-o", "-c", "-include", "-MF", "-MT") or word in ("-o", "-c", "-include", "-MF", "-MT", "-MD"):
            continue
        if word != "-Winvalid-pch":
            keep.append(word)
    return keep


def together(sources, into):
    """A source that holds all of these."""
    into.write_text("".join(f'#include "{source}"\n' for source in sources), encoding="utf-8")
    return into


def look(root, database, file):
    # What is asked for in sources is found in what a source includes; that it includes sources is no fault here.
    command = ["clang-tidy", "-p", str(database), "--quiet", f"--config-file={root / '.clang-tidy'}",
               "--extra-arg=-Wno-unknown-warning-option",
               "--extra-arg=-Wno-shadow",  # of one source by another; the build itself looks for it
               r"--header-filter=/(core|app)/[a-z]+/[a-z_/]+\.(h|cpp)$", "--checks=-bugprone-suspicious-include", str(file)]
    return subprocess.run(command, capture_output=True, text=True, timeout=600)


def main():
    root, build = pathlib.Path(sys.argv[1]).resolve(), pathlib.Path(sys.argv[2]).resolve()
    entries = json.loads((build / "compile_commands.json").read_text(encoding="utf-8"))
    sources = []
    for room in sys.argv[3:]:
        found = sorted((root / room).rglob("*.cpp"))
        if not found:
            sys.exit(f"{room} has no sources")
        sources += found
    half = sys.argv[3].split("/", maxsplit=1)[0]
    ours = [entry for entry in entries if f"creasewright_{half}.dir" in entry["command"]]
    flags = flags_of(next((entry for entry in ours if "/Unity/" in entry["file"]), ours[-1]))
    with tempfile.TemporaryDirectory() as name:
        database = pathlib.Path(name).resolve()
        planted = database / "core" / "planted" / "planted.cpp"
        planted.parent.mkdir(parents=True)
        planted.write_text(PLANTED, encoding="utf-8")
        batch = together([planted, *sources], database / "batch.cpp")
        (database / "compile_commands.json").write_text(json.dumps(
            [{"directory": str(build), "file": str(batch), "command": shlex.join([*flags, "-c", str(batch)])}]), encoding="utf-8")
        run = look(root, database, batch)
    lines = [line for line in run.stdout.splitlines() if ": error:" in line or ": warning:" in line]
    told = {line for line in lines if not line.startswith(str(planted))}
    seen = {check for line in lines if line.startswith(str(planted)) for check in re.findall(r"\[([a-z-]+)", line)}
    faults = [f"{check} does not find what is planted: {run.stderr[-300:]}" for check in ASKED if check not in seen]
    print("\n".join(sorted(told)))
    print(f"{len(sources)} sources looked at, {len(told)} findings")
    sys.exit("\n".join(faults) or (1 if told else 0))


main()
