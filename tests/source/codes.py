"""A new code is asked for by the compiler and nothing is said of it by accident.

- A switch over an enumeration of ours has no `default:`: with one, a code added later takes its branch in silence.
- What an extra is, its ExtraKind says; no other file compares with its id.
"""

import pathlib
import re
import sys

DEFAULT = re.compile(r"^\s*default:", re.MULTILINE)
LABEL = re.compile(r"\bcase\s+([\w:]+)")
EXTRA = re.compile(r'\.id = "([a-z-]+)"')


def opened_at(text: str, end: int) -> int:
    """Where the block that encloses `end` begins."""
    depth = 0
    for at in range(end - 1, -1, -1):
        if text[at] == "}":
            depth += 1
        elif text[at] == "{":
            if depth == 0:
                return at
            depth -= 1
    return 0


def hidden_codes(text: str):
    """Enumerators of ours in switches that have a default."""
    for match in DEFAULT.finditer(text):
        for label in LABEL.findall(text[opened_at(text, match.start()):match.start()]):
            if "::" in label and not label.startswith("Qt::"):
                yield label
                break


def compared_ids(text: str, ids: set[str]):
    for name in re.findall(r'[!=]= "([a-z-]+)"', text):
        if name in ids:
            yield name


def main() -> None:
    root = pathlib.Path(sys.argv[1])
    sources = [file for half in ("core", "app") for file in sorted((root / half).rglob("*"))
               if file.suffix in (".cpp", ".h")]
    home = root / "core" / "extras"
    ids = {name: file for file in home.glob("*.cpp") for name in EXTRA.findall(file.read_text(encoding="utf-8"))}
    if len(sources) < 300 or len(ids) < 9:
        sys.exit(f"{len(sources)} files and {len(ids)} kinds of extras: something is not read")
    faults = []
    for file in sources:
        text = file.read_text(encoding="utf-8")
        where = file.relative_to(root)
        faults += [f"{where}: default beside {label}: list every code" for label in hidden_codes(text)]
        faults += [f'{where}: == "{name}": let the kind of extra say it (core/extras/extra_kind.h)'
                   for name in compared_ids(text, set(ids)) if ids[name] != file]
    if faults:
        sys.exit("\n".join(faults))


main()
