"""Includes only ever point down: reads the layer table in DEVELOPERS.md and checks every #include.

A row of the table names a room (or several that know each other) and a layer. A file may include files of
its own row and of rooms on a lower layer; `core` never includes Qt.
"""

import pathlib
import re
import sys

ROW = re.compile(r"^\|\s*((?:`(?:core|app)[\w/]*`[,\s]*)+)\|\s*(\d+)\s*\|")
ROOM = re.compile(r"`((?:core|app)[\w/]*?)/?`")
INCLUDE = re.compile(r'^\s*#\s*include\s*(["<])([^">]+)[">]', re.MULTILINE)
QT = re.compile(r"^(Q[A-Z]\w*|Qt\w*)(/|$)")


class Layers:
    """The layer table: room (`core/units`, `app/shell`, `app` for main.cpp) -> layer and row."""

    def __init__(self, page: str) -> None:
        self.layer: dict[str, int] = {}
        self.row: dict[str, int] = {}
        for number, line in enumerate(page.splitlines()):
            if row := ROW.match(line):
                for room in ROOM.findall(row.group(1)):
                    self.layer[room] = int(row.group(2))
                    self.row[room] = number

    def allow(self, room: str, target: str) -> bool:
        if room == target or self.row[room] == self.row.get(target):
            return True
        return target in self.layer and self.layer[target] < self.layer[room]


def included_room(name: str, root: pathlib.Path) -> str | None:
    """The room an include names, or None when it is not one of ours."""
    for half in ("core", "app"):
        if "/" in name and (root / half / name).is_file():
            return f"{half}/{name.rsplit('/', 1)[0]}"
    return None


def wrong_includes(path: pathlib.Path, layers: Layers, root: pathlib.Path) -> list[str]:
    room = path.parent.relative_to(root).as_posix()
    file = path.relative_to(root)
    if room not in layers.layer:
        return [f"{file}: room {room} has no row in the layer table"]
    wrong = []
    for quote, name in INCLUDE.findall(path.read_text(encoding="utf-8")):
        target = included_room(name, root)
        if room.startswith("core/") and QT.match(name):
            wrong.append(f"{file}: core includes Qt ({name})")
        elif target and not layers.allow(room, target):
            wrong.append(f"{file}: {room} may not include {name}")
        elif quote == '"' and "/" in name and not target:
            wrong.append(f"{file}: {name} does not exist under core/ or app/")
    return wrong


def self_check(root: pathlib.Path) -> list[str]:
    """The rule must be able to fail: a table that stands on its head must give complaints."""
    upside_down = Layers("| `core/geometry` | 0 | |\n| `core/base`, `core/units` | 1 | |\n")
    if wrong_includes(root / "core/geometry/transform.h", upside_down, root):
        return []
    return ["the check does not notice an include that points up"]


def main() -> int:
    root = pathlib.Path(sys.argv[1])
    layers = Layers((root / "DEVELOPERS.md").read_text(encoding="utf-8"))
    files = sorted(f for half in ("core", "app") for end in ("h", "cpp") for f in (root / half).rglob(f"*.{end}"))
    wrong = self_check(root)
    if len(layers.layer) < 5 or len(files) < 20:
        wrong.append(f"too little to check: {len(layers.layer)} rooms in the table, {len(files)} files")
    for file in files:
        wrong += wrong_includes(file, layers, root)
    for line in wrong:
        print(line)
    print(f"{len(files)} files, {len(layers.layer)} rooms, {len(wrong)} wrong")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
