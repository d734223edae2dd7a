"""Includes only ever point down: reads the layer table in DEVELOPERS.md and checks every #include.

A row of the table names a room (or several that know each other) and a layer. A file may include files of
its own row and of rooms on a lower layer; `core` never includes Qt. What makes words, pages and files includes no
widget, and the command line takes what it writes from there alone.
"""

import pathlib
import re
import sys

ROW = re.compile(r"^\|\s*((?:`(?:core|app)[\w/]*`[,\s]*)+)\|\s*(\d+)\s*\|")
ROOM = re.compile(r"`((?:core|app)[\w/]*?)/?`")
INCLUDE = re.compile(r'^\s*#\s*include\s*(["<])([^">]+)[">]', re.MULTILINE)
QT = re.compile(r"^(Q[A-Z]\w*|Qt\w*)(/|$)")
# Rooms without a widget; app/cli opens the window through one header and knows no other room with widgets.
PAPERS = ("app/bridge", "app/output", "app/papers/template", "app/papers/guide", "app/papers/kit")
WITHOUT_WIDGETS = (*PAPERS, "app/cli", "app/own_stock", "app/kept_styles")
FOR_THE_COMMAND_LINE = (*PAPERS, "app/cli", "app/own_stock", "app/kept_styles")
OPENS_THE_WINDOW = ("shell/run_window.h",)


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


def widget_headers(folders: list[str]) -> set[str]:
    """The names of Qt's headers with widgets in them, from the folders of its modules."""
    return {header.name for folder in folders for header in pathlib.Path(folder).iterdir()}


def needs_a_window(room: str, name: str, target: str | None, widgets: set[str]) -> bool:
    if room in WITHOUT_WIDGETS and name.rsplit("/", 1)[-1] in widgets:
        return True
    known = not target or target.startswith("core/") or target in FOR_THE_COMMAND_LINE or name in OPENS_THE_WINDOW
    return room == "app/cli" and not known


def wrong_includes(path: pathlib.Path, layers: Layers, root: pathlib.Path, widgets: set[str]) -> list[str]:
    room = path.parent.relative_to(root).as_posix()
    file = path.relative_to(root)
    if room not in layers.layer:
        return [f"{file}: room {room} has no row in the layer table"]
    wrong = []
    for quote, name in INCLUDE.findall(path.read_text(encoding="utf-8")):
        target = included_room(name, root)
        if room.startswith("core/") and QT.match(name):
            wrong.append(f"{file}: core includes Qt ({name})")
        elif needs_a_window(room, name, target, widgets):
            wrong.append(f"{file}: {room} is without a window and may not include {name}")
        elif target and not layers.allow(room, target):
            wrong.append(f"{file}: {room} may not include {name}")
        elif quote == '"' and "/" in name and not target:
            wrong.append(f"{file}: {name} does not exist under core/ or app/")
    return wrong


def self_check(root: pathlib.Path, widgets: set[str]) -> list[str]:
    """The rules must be able to fail: a table that stands on its head, a dialog in the papers, a panel for the command line."""
    complaints = []
    upside_down = Layers("| `core/geometry` | 0 | |\n| `core/base`, `core/units` | 1 | |\n")
    if not wrong_includes(root / "core/geometry/transform.h", upside_down, root, widgets):
        complaints.append("the check does not notice an include that points up")
    if not needs_a_window("app/papers/guide", "QDialog", None, widgets):
        complaints.append("the check does not notice a widget in the papers")
    if not needs_a_window("app/cli", "panels/step_list.h", "app/panels", widgets):
        complaints.append("the check does not notice a panel on the command line")
    if needs_a_window("app/papers/guide", "QString", None, widgets) or needs_a_window("app/cli", "a.h", "core/net", widgets):
        complaints.append("the check takes all for widgets")
    return complaints


def main() -> int:
    root = pathlib.Path(sys.argv[1])
    layers = Layers((root / "DEVELOPERS.md").read_text(encoding="utf-8"))
    files = sorted(f for half in ("core", "app") for end in ("h", "cpp") for f in (root / half).rglob(f"*.{end}"))
    widgets = widget_headers(sys.argv[2:])
    wrong = self_check(root, widgets)
    if len(layers.layer) < 5 or len(files) < 20:
        wrong.append(f"too little to check: {len(layers.layer)} rooms in the table, {len(files)} files")
    for file in files:
        wrong += wrong_includes(file, layers, root, widgets)
    for line in wrong:
        print(line)
    print(f"{len(files)} files, {len(layers.layer)} rooms, {len(wrong)} wrong")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
