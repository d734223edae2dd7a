"""Styles of one's own, made of a blank sheet and of a built-in box through the command line, each made for random
products and folded again by a program that knows nothing of core.

    own_style_check.py CREASEWRIGHT [COUNT]

The seed is printed; CREASEWRIGHT_SEED sets it, 0 draws one. Exit 1 when anything does not hold.
"""

import os
import pathlib
import random
import sys
import tempfile

import fold_check

WALL = "flap:on={},edge={},name={},depth={},taper=0 mm,angle=90"
TAB = "flap:on={},edge={},name={}-tab,depth=10 mm,hold=glued"
TUCK = "flap:on={},edge=outer,name=tuck,depth=15 mm,taper=1 mm,radius=5 mm,hold=tucked"

TRAY = [WALL.format("base", side, side, "height,when=last") for side in ("front", "back", "left", "right")]
TRAY += [TAB.format(f"base-{wall}", side, side) for wall in ("front", "back") for side in ("left", "right")]

OPEN = ",when=last,sides=open"
STYLES = {
    "tray": ("blank-sheet", TRAY),
    "mailer": ("blank-sheet", [*TRAY, WALL.format("base-back", "outer", "lid", "width" + OPEN),
                               TUCK.format("base-back-lid") + ",when=last"]),
    "tuck-box": ("blank-sheet", [
        WALL.format("base", "right", "right", "height"),
        WALL.format("base-right", "outer", "front", "length"),
        WALL.format("base-right-front", "outer", "left", "height"),
        "flap:on=base-right-front-left,edge=outer,name=seam,depth=12 mm,hold=glued",
        WALL.format("base", "back", "top-lid", "height" + OPEN), TUCK.format("base-top-lid"),
        WALL.format("base", "front", "bottom-lid", "height" + OPEN), TUCK.format("base-bottom-lid")]),
    "heart-box": ("straight-tuck-box", ["opening:on=front,shape=heart,width=panel-width/3,height=this-width"]),
}  # fmt: skip


def run(program, *arguments):
    done = fold_check.loaded.run(program, arguments)
    if done.returncode != 0:
        raise RuntimeError(f"exit {done.returncode}: {done.stderr.strip()}{done.stdout.strip()}")


def keep(program, folder, name, base, edits):
    """The file of a style that is kept from a design with these edits."""
    design, style = folder / f"{name}.cwdesign", folder / f"{name}.cwstyle"
    changes = [part for edit in edits for part in ("--edit", edit)]
    run(program, "new", "--style", base, "--product", "box:80x60x50mm", "--grid", "1mm", *changes, "-o", design)
    run(program, "style", "keep", design, "--name", name, "-o", style)
    return style


def check_style(program, folder, name, count, chance):
    """What was found, as text, and how many products had something wrong."""
    style = keep(program, folder, name, *STYLES[name])
    found, failed = [], 0
    for number in range(count):
        sides = [round(chance.uniform(32, 140), 1) for _ in range(3)]
        caliper = chance.choice(fold_check.CALIPERS)
        product = "box:{}x{}x{}mm".format(*sides)
        arguments = ["new", "--style", style, "--product", product, "--card", f"{caliper}mm"]
        arguments += ["--grid", chance.choice(("1/16in", "1mm", "none"))]
        try:
            data = fold_check.export(program, arguments, folder)
            wrong = fold_check.check_design(data, sides, caliper)
            if not fold_check.holds(program, folder / "design.cwdesign"):
                wrong.append("the program's own checks do not hold")
            if number == 0:
                wrong += fold_check.check_that_faults_show(data, caliper)
        except (RuntimeError, KeyError, ValueError) as error:
            wrong = [f"{type(error).__name__}: {error}"]
        if wrong:
            failed += 1
            found += [" ".join(map(str, arguments)), *(f"    {line}" for line in wrong)]
    return [*found, f"{name}: {count} products, {failed} with something wrong"], failed


def main():
    program, count = sys.argv[1], int(sys.argv[2]) if len(sys.argv) > 2 else 50
    seed = int(os.environ.get("CREASEWRIGHT_SEED", "1501")) or random.SystemRandom().randrange(1, 1 << 31)
    print(f"seed {seed} (CREASEWRIGHT_SEED={seed} repeats this run)")
    failures = 0
    for name in STYLES:
        with tempfile.TemporaryDirectory() as folder:
            lines, failed = check_style(program, pathlib.Path(folder), name, count, random.Random(f"{seed} {name}"))
        print(*lines, sep="\n")
        failures += failed
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main())
