"""clang-tidy finds nothing (.clang-tidy says what it looks for) in the rooms named.

tidy.py ROOT BUILD ROOM...

The sources of a folder are looked at together, so that their headers are read once: names in their unnamed namespaces
must differ. A source with known faults goes before them, and each of its faults must be found, or clang-tidy does not
look at what is read with the rest.
"""

import concurrent.futures
import json
import os
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
    flags = {half: flags_of(next(entry for entry in entries if f"creasewright_{half}.dir" in entry["command"]))
             for half in ("core", "app")}
    folders = {}
    for room in sys.argv[3:]:
        sources = sorted((root / room).rglob("*.cpp"))
        if not sources:
            sys.exit(f"{room} has no sources")
        for source in sources:
            folders.setdefault(source.parent, []).append(source)
    with tempfile.TemporaryDirectory() as name:
        database = pathlib.Path(name).resolve()
        planted = database / "core" / "planted" / "planted.cpp"
        planted.parent.mkdir(parents=True)
        planted.write_text(PLANTED, encoding="utf-8")
        batches = [together([planted, *sources], database / f"batch_{number}.cpp")
                   for number, sources in enumerate(folders.values())]
        halves = [flags[folder.relative_to(root).parts[0]] for folder in folders]
        (database / "compile_commands.json").write_text(json.dumps(
            [{"directory": str(build), "file": str(file), "command": shlex.join([*half, "-c", str(file)])}
             for file, half in zip(batches, halves)]), encoding="utf-8")
        with concurrent.futures.ThreadPoolExecutor(max_workers=os.cpu_count() or 2) as pool:
            found = list(pool.map(lambda file: look(root, database, file), batches))
        faults = []
        told = set()
        for folder, run in zip(folders, found):
            lines = [line for line in run.stdout.splitlines() if ": error:" in line or ": warning:" in line]
            told |= {line for line in lines if not line.startswith(str(planted))}
            seen = {check for line in lines if line.startswith(str(planted)) for check in re.findall(r"\[([a-z-]+)", line)}
            faults += [f"{folder}: {check} does not find what is planted: {run.stderr[-300:]}"
                       for check in ASKED if check not in seen]
    print("\n".join(sorted(told)))
    print(f"{sum(map(len, folders.values()))} sources looked at, {len(told)} findings")
    sys.exit("\n".join(faults) or (1 if told else 0))


main()
