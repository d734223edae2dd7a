"""clang-tidy finds nothing (.clang-tidy says what it looks for) in the rooms named.

tidy.py ROOT BUILD ROOM...
"""

import concurrent.futures
import json
import os
import pathlib
import shlex
import subprocess
import sys
import tempfile

def readable(entry):
    """Without the precompiled header of GCC's, which clang cannot read."""
    words = shlex.split(entry["command"])
    keep = [word for word, after in zip(words, [*words[1:], ""])
            if word != "-Winvalid-pch" and not word.endswith("cmake_pch.hxx")
            and not (word == "-include" and after.endswith("cmake_pch.hxx"))]
    return {**entry, "command": shlex.join(keep)}


def look(database, file):
    command = ["clang-tidy", "-p", str(database), "--quiet", "--extra-arg=-Wno-unknown-warning-option", str(file)]
    return subprocess.run(command, capture_output=True, text=True, timeout=300)


def main():
    root, build = pathlib.Path(sys.argv[1]).resolve(), pathlib.Path(sys.argv[2]).resolve()
    rooms = [root / room for room in sys.argv[3:]]
    entries = json.loads((build / "compile_commands.json").read_text(encoding="utf-8"))
    wanted = {entry["file"]: readable(entry) for entry in entries
              if any(room in pathlib.Path(entry["file"]).parents for room in rooms)}
    if len(wanted) < 2 * len(rooms):
        sys.exit(f"{len(wanted)} sources in {len(rooms)} rooms: something is not read")
    with tempfile.TemporaryDirectory() as folder:
        database = pathlib.Path(folder)
        (database / "compile_commands.json").write_text(json.dumps(list(wanted.values())), encoding="utf-8")
        with concurrent.futures.ThreadPoolExecutor(max_workers=os.cpu_count() or 2) as pool:
            found = list(pool.map(lambda file: look(database, file), wanted))
    told = sorted({line for run in found for line in run.stdout.splitlines() if ": error:" in line or ": warning:" in line})
    print("\n".join(told))
    broken = [run.stderr for run in found if run.returncode != 0 and ": error:" not in run.stdout]
    print(f"{len(wanted)} sources looked at, {len(told)} findings")
    sys.exit("\n".join(broken) or (1 if told else 0))


main()
