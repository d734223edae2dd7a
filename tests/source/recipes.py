"""The recipes of DEVELOPERS.md name every file that they need: they are carried out on a copy of the tree.

recipes.py ROOT BUILD CORE_LIBRARY

- A problem, a step of the guide, a bend, an act of an extra: a new code is put into its enumeration. Every source with a
  switch over it must fail to compile for the want of that code, must be named in the recipe, and must compile again
  when the code is listed there.
- A style, a kind of extra: one that exists is copied under a new name, as the recipe says. The program then lists it and
  builds it.
- A style, a kind of extra, a command, a language: no file knows one that exists but those that the recipe names.
"""

import concurrent.futures
import json
import os
import pathlib
import re
import shlex
import shutil
import subprocess
import sys
import tempfile

PLANTED = "PlantedByTheTest"
CODES = {  # enumeration: the recipe that adds to it
    "ProblemCode": "A problem",
    "StepCode": "A step of the guide",
    "BendCode": "A bend",
    "ExtraAct": "A kind of extra",
}
LIST = """
#include <iostream>
#include "document/build.h"
#include "extras/extra_kind.h"
#include "styles/registry.h"
using namespace creasewright;
int main() {
  for (const Style& style : styles()) std::cout << "style " << style.id << '\\n';
  for (const ExtraKind& kind : extraKinds()) std::cout << "extra " << kind.id << '\\n';
  const auto started = newDesign("planted-wrap", std::nullopt, cards().front(), Ease::Easy, ToolGrid::sixteenthInch());
  if (!started) return 1;
  Design design = *started;
  design.extras.push_back(standardExtra(**findExtraKind("planted-ribbon"), design.card));
  const auto built = build(design);
  if (!built) return 2;
  std::cout << "problems " << built->problems.size() << '\\n';
}
"""


def read(file):
    return file.read_text(encoding="utf-8")


def recipes_of(text):
    """The paragraphs under "How to add", by the words they begin with."""
    section = text.split("## How to add", 1)[1].split("\n## ", 1)[0]
    parts = re.split(r"^\*\*([^*]+)\.\*\*", section, flags=re.MULTILINE)
    return {parts[i]: parts[i + 1] for i in range(1, len(parts) - 1, 2)}


class Tree:
    """A copy of the tree and how its files are compiled."""

    def __init__(self, root, build, into):
        self.root, self.into = root, into
        for half in ("core", "app"):
            shutil.copytree(root / half, into / half)
        shutil.copytree(root / "tests" / "cli", into / "tests" / "cli")
        self.commands = {}
        for entry in json.loads(read(build / "compile_commands.json")):
            self.commands[pathlib.Path(entry["file"])] = entry
        self.recipes = recipes_of(read(root / "DEVELOPERS.md"))

    def sources(self, *rooms):
        files = [file for room in rooms
                 for file in [self.into / room, *sorted((self.into / room).rglob("*"))]]
        return [file for file in files if file.suffix in (".cpp", ".h", ".txt", ".py")]

    def name(self, file):
        return file.relative_to(self.into).as_posix()

    def entry(self, donor):
        """How a source is compiled; where sources are built in batches, how its half's batches are."""
        known = self.commands.get(self.root / donor)
        target = "creasewright_core.dir/Unity/" if str(donor).startswith("core/") else "creasewright_app.dir/Unity/"
        return known or next(entry for entry in self.commands.values() if target in entry["command"])

    def flags(self, donor):
        """Those of a source of the tree, for the copy's headers, without precompiled ones."""
        entry = self.entry(donor)
        words = shlex.split(entry["command"])[1:]
        keep, skip = [], False
        for word in words:
            if skip:
                skip = False
            elif word in ("-o", "-c", "-include", "-MF", "-MT", "-MQ"):
                skip = True
            elif word not in ("-MD", "-Winvalid-pch", "-Werror"):
                keep.append(word)
        def moved(path):
            inside = any(path == f"-I{self.root / half}" for half in ("core", "app"))
            return path.replace(str(self.root), str(self.into), 1) if inside else path
        return [moved(word) for word in keep], pathlib.Path(entry["directory"])

    def compiler(self, donor):
        words = shlex.split(self.entry(donor)["command"])
        return next(word for word in words if not word.endswith("ccache") and "=" not in word)

    def compile(self, file, donor, *more):
        """What the compiler says of a file of the copy, and whether it took it."""
        flags, where = self.flags(donor)
        run = subprocess.run([self.compiler(donor), *flags, "-Werror=switch", *more, str(file)],
                             cwd=where, capture_output=True, text=True, timeout=300)
        return run.returncode == 0, run.stderr

    def is_named(self, recipe, path, stem=""):
        """Whether a recipe names a file, with `<name>` for the stem of what is added."""
        text = self.recipes[recipe]
        folder, _, name = path.rpartition("/")
        general = name.replace(stem, "<name>") if stem else name
        return f"`{path}`" in text or f"{folder}/{general}`" in text or f"`{path.rsplit('.', 1)[0]}`" in text


def plant_code(tree, enumeration, faults):
    """Adds a code and does what the compiler asks for, and no more."""
    recipe = CODES[enumeration]
    opening = re.compile(rf"enum class {enumeration} {{[^}}]*")
    home = next(file for file in tree.sources("core", "app") if opening.search(read(file)))
    if not tree.is_named(recipe, tree.name(home)):
        faults.append(f"“{recipe}” does not name {tree.name(home)}, which lists {enumeration}")
    whole = read(home)
    body = opening.search(whole)
    last = re.sub(r"(\w)(,?)(\s*(?://[^\n]*\n\s*)*)$", r"\1,\3", body.group())
    home.write_text(whole[:body.start()] + last + f"\n  {PLANTED}\n" + whole[body.end():], encoding="utf-8")
    switches = [file for file in tree.sources("core", "app")
                if file.suffix == ".cpp" and f"case {enumeration}::" in read(file)]
    if not switches:
        faults.append(f"nothing words a {enumeration}")
    return recipe, switches


def list_codes(tree, tasks, faults):
    """Whether the compiler asks for the new code of each task in its source; lists them there and compiles again. All
    sources are compiled as one."""
    sources = [file for _, _, file in tasks]
    batch = tree.into / f"batch_{sources[0].stem}.cpp"
    batch.write_text("".join(f'#include "{file}"\n' for file in sources), encoding="utf-8")
    donor = tree.name(sources[0])
    _, said = tree.compile(batch, donor, "-fsyntax-only")
    for enumeration, recipe, file in tasks:
        name = tree.name(file)
        asked = re.findall(rf"{re.escape(str(file))}:(\d+):\d+: error: .*{PLANTED}", said)
        if not asked:
            faults.append(f"{name} compiles without {enumeration}::{PLANTED}, or fails for another reason: {said[:300]}")
            continue
        if not tree.is_named(recipe, name):
            faults.append(f"“{recipe}” does not name {name}, where the compiler asks for the new {enumeration}")
        lines = read(file).splitlines()
        for number in sorted({int(line) for line in asked}, reverse=True):
            opens = next(i for i in range(number - 1, len(lines)) if lines[i].endswith("{"))
            lines.insert(opens + 1, f"    case {enumeration}::{PLANTED}: break;")
        file.write_text("\n".join(lines) + "\n", encoding="utf-8")
    taken, said = tree.compile(batch, donor, "-fsyntax-only")
    if not taken:
        faults.append(f"{', '.join(map(tree.name, sources))} do not compile when the new codes are listed: {said[:300]}")


def codes(tree, faults):
    tasks = []
    for enumeration in CODES:
        recipe, switches = plant_code(tree, enumeration, faults)
        tasks += [(enumeration, recipe, file) for file in switches]
    # Those of the window as one, and those of core: their headers are read once.
    halves = [[task for task in tasks if tree.name(task[2]).startswith(half)] for half in ("app/", "core/")]
    with concurrent.futures.ThreadPoolExecutor(max_workers=os.cpu_count() or 2) as pool:
        for done in [pool.submit(list_codes, tree, batch, faults) for batch in halves if batch]:
            done.result()
    print(f"{len(tasks)} switches over {len(CODES)} enumerations asked for a new code")


def copy_as(tree, old, new, changes):
    """A source copied under a new name with words exchanged."""
    text = read(tree.into / old)
    for word, other in changes.items():
        if word not in text:
            sys.exit(f"{old} has no {word}")
        text = text.replace(word, other)
    (tree.into / new).write_text(text, encoding="utf-8")


def insert(tree, path, after, text):
    whole = read(tree.into / path)
    if after not in whole:
        sys.exit(f"{path} has no {after}")
    (tree.into / path).write_text(whole.replace(after, after + text, 1), encoding="utf-8")


def add_style_and_extra(tree, library, faults):
    style = {"open_sleeve": "planted_wrap", "openSleeve": "plantedWrap", '"open-sleeve"': '"planted-wrap"'}
    copy_as(tree, "core/styles/open_sleeve.cpp", "core/styles/planted_wrap.cpp", style)
    copy_as(tree, "core/styles/open_sleeve.h", "core/styles/planted_wrap.h", {"openSleeve": "plantedWrap"})
    insert(tree, "core/styles/registry.cpp", '#include "styles/open_sleeve.h"\n', '#include "styles/planted_wrap.h"\n')
    insert(tree, "core/styles/registry.cpp", "openSleeve(),", " plantedWrap(),")
    copy_as(tree, "core/extras/ribbon.cpp", "core/extras/planted_ribbon.cpp",
            {"ribbonExtra": "plantedRibbonExtra", '"ribbon"': '"planted-ribbon"'})
    planted = tree.into / "core/extras/planted_ribbon.cpp"  # the new kind, not its helpers over again
    planted.write_text(re.sub(r"\ndouble ribbonRound\(.*?\n}\n", "\n", read(planted), flags=re.DOTALL), encoding="utf-8")
    insert(tree, "core/extras/kinds.h", "ExtraKind ribbonExtra();\n", "ExtraKind plantedRibbonExtra();\n")
    insert(tree, "core/extras/extra_kind.cpp", "static const std::array kKinds{", "plantedRibbonExtra(), ")
    (tree.into / "list.cpp").write_text(LIST, encoding="utf-8")
    parts = {"styles": ["core/styles/planted_wrap.cpp", "core/styles/registry.cpp", "list.cpp"],
             "extras": ["core/extras/planted_ribbon.cpp", "core/extras/extra_kind.cpp"]}
    objects = [tree.into / f"{part}.o" for part in parts]
    for part, sources in parts.items():
        (tree.into / f"{part}.cpp").write_text("".join(f'#include "{tree.into / source}"\n' for source in sources), encoding="utf-8")
    with concurrent.futures.ThreadPoolExecutor(max_workers=os.cpu_count() or 2) as pool:
        made = [pool.submit(tree.compile, tree.into / f"{part}.cpp", "core/styles/registry.cpp", "-O0", "-c", "-o", str(into))
                for part, into in zip(parts, objects)]
        failed = [said for taken, said in (one.result() for one in made) if not taken]
    if failed:
        faults.append("a style and an extra added by the recipe do not compile: " + failed[0][:500])
        return
    donor = "core/styles/registry.cpp"
    flags, _ = tree.flags(donor)
    program = tree.into / "list"
    # The library's batches hold the lists as they were: those that come first are taken.
    linked = subprocess.run([tree.compiler(donor), *flags, *map(str, objects), str(library), "-lpolyclipping",
                             "-Wl,-z,muldefs", "-o", str(program)], capture_output=True, text=True, timeout=120)
    if linked.returncode != 0:
        faults.append("a style and an extra added by the recipe do not link: " + linked.stderr[-500:])
        return
    listed = subprocess.run([str(program)], capture_output=True, text=True, timeout=60)
    for line in ("style planted-wrap", "extra planted-ribbon", "problems 0"):
        if line not in listed.stdout.splitlines():
            faults.append(f"a style and an extra added by the recipe: no “{line}”, exit code {listed.returncode}")
    print(f"{len(listed.stdout.splitlines()) - 1} styles and extras listed, the planted ones built")


def only_named_know(tree, recipe, word, rooms, stem, faults, own=()):
    """No file but those that the recipe names knows one that exists."""
    pattern = re.compile(word)
    knowing = [tree.name(file) for file in tree.sources(*rooms) if pattern.search(read(file))]
    if not knowing:
        faults.append(f"“{recipe}”: nothing knows {word}")
    faults += [f"“{recipe}” does not name {name}, which knows {word}" for name in knowing
               if name not in own and not tree.is_named(recipe, name, stem)]


def mentions(tree, faults):
    headers = [file for file in tree.sources("core/styles")
               if file.suffix == ".h" and re.search(r"^Style \w+\(\);", read(file), re.MULTILINE)]
    styles = [name for file in headers for name in re.findall(r"^Style (\w+)\(\);", read(file), re.MULTILINE)]
    for file in headers:
        only_named_know(tree, "A style", rf"\b{file.stem}\.cpp", ("core", "app"), file.stem, faults)
        if not tree.is_named("A style", tree.name(file), file.stem):
            faults.append(f"“A style” does not name {tree.name(file)}")
    for file in tree.sources("core", "app"):  # some are made of one style or two; who lists them knows most
        known = sum(1 for name in styles if re.search(rf"\b{name}\(\)", read(file)))
        if 2 * known > len(styles) and not tree.is_named("A style", tree.name(file)):
            faults.append(f"“A style” does not name {tree.name(file)}, which lists them")
    kinds = re.findall(r"^ExtraKind (\w+)\(\);", read(tree.into / "core/extras/kinds.h"), re.MULTILINE)
    for function in kinds:
        home = next(tree.name(file) for file in tree.sources("core/extras")
                    if re.search(rf"^ExtraKind {function}\(\) {{", read(file), re.MULTILINE))
        only_named_know(tree, "A kind of extra", rf"\b{function}\(\)", ("core", "app"), "", faults, {home})
        for name in re.findall(r'\.id = "([a-z-]+)"', read(tree.into / home)):
            only_named_know(tree, "A kind of extra", rf'"{name}"', ("core/extras", "tests/cli/extras_test.py"), "", faults,
                            {home})
    commands = re.findall(r"(\w+)Command\(\)", read(tree.into / "app/cli/commands.cpp"))
    for name in commands:
        home = next(file for file in tree.sources("app/cli") if f"Command {name}Command() {{" in read(file))
        stem = home.stem.removesuffix("_command")
        only_named_know(tree, "A command", rf"\b{name}Command\(\)", ("core", "app"), stem, faults)
        only_named_know(tree, "A command", rf"\b{home.name}", ("core", "app"), stem, faults)
    only_named_know(tree, "A language", r"creasewright_de\b|\"de\"|Deutsch", ("core", "app"), "de", faults)
    print(f"{len(styles)} styles, {len(kinds)} kinds of extras, {len(commands)} commands known only where the recipes say")
    if len(styles) < 25 or len(kinds) < 9 or len(commands) < 8:
        faults.append("something is not read")


def main():
    root, build, library = (pathlib.Path(argument).resolve() for argument in sys.argv[1:4])
    faults = []
    with tempfile.TemporaryDirectory() as first, tempfile.TemporaryDirectory() as second:
        tree, other = (Tree(root, build, pathlib.Path(folder).resolve()) for folder in (first, second))
        for recipe in {*CODES.values(), "A style", "A command", "A language"}:
            if recipe not in tree.recipes:
                sys.exit(f"DEVELOPERS.md has no recipe “{recipe}”")
        mentions(tree, faults)
        with concurrent.futures.ThreadPoolExecutor(max_workers=os.cpu_count() or 2) as pool:
            for done in [pool.submit(codes, other, faults), pool.submit(add_style_and_extra, tree, library, faults)]:
                done.result()
    if faults:
        sys.exit("\n".join(faults))


main()
