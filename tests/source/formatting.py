"""Every C++ file is formatted as .clang-format says."""

import pathlib
import subprocess
import sys

ROOMS = ("core", "app", "tests")


def main() -> int:
    root = pathlib.Path(sys.argv[1])
    files = sorted(f for room in ROOMS for end in ("h", "cpp") for f in (root / room).rglob(f"*.{end}"))
    if not files:
        print(f"no C++ files under {root}")
        return 1
    found = subprocess.run(
        ["clang-format", "--dry-run", "-Werror", *map(str, files)], cwd=root, check=False
    )
    print(f"{len(files)} files looked at")
    return found.returncode


if __name__ == "__main__":
    sys.exit(main())
