"""Random products through the command line, each net folded again by a program that knows nothing of core.

    fold_check.py CREASEWRIGHT STYLE|all [COUNT]

COUNT products of each style, else as many as CREASEWRIGHT_PRODUCTS says, else six.
The seed is printed; CREASEWRIGHT_SEED sets it, 0 draws one. Exit 1 when anything does not hold.
"""

import json
import math
import multiprocessing
import os
import pathlib
import random
import subprocess
import sys
import tempfile

import cavity
import refold
import seams

sys.path.append(str(pathlib.Path(__file__).resolve().parent.parent / "cli"))
import loaded

CALIPERS = (0.2, 0.25, 0.3, 0.37, 0.45)


def random_product(chance):
    """(text for --product, its bounding sizes), from a matchbox to a wine box."""

    def size(low, high):
        return round(chance.uniform(low, high), chance.choice((0, 1, 2)))

    shape = chance.choice(("box", "box", "box", "cylinder", "sphere", "tube"))
    if shape == "box":
        sides = [size(20, 140), size(20, 90), size(20, 160)]
        return "box:{}x{}x{}mm".format(*sides), sides
    if shape == "cylinder":
        across, height = size(20, 90), size(20, 160)
        return f"cylinder:{across}x{height}mm", [across, across, height]
    if shape == "sphere":
        across = size(20, 90)
        return f"sphere:{across}mm", [across] * 3
    sides = [size(25, 60), size(20, 25), size(60, 160)]
    return "tube:{}x{}x{}mm".format(*sides), sides


def random_arguments(style, chance):
    product, sides = random_product(chance)
    caliper = chance.choice(CALIPERS)
    arguments = ["new", "--style", style, "--product", product, "--card", f"{caliper}mm"]
    arguments += ["--ease", chance.choice(("snug", "easy", "loose"))]
    arguments += ["--grid", chance.choice(("1/8in", "1/16in", "1mm", "none"))]
    return arguments, sides, caliper


def export(program, arguments, folder):
    """The exported net of a new design, as Python values; raises when a command fails."""
    design, net = folder / "design.cwdesign", folder / "net.json"
    for command in ([*arguments, "-o", design], ["export", design, "-o", net]):
        done = loaded.run(program, command)
        if done.returncode != 0:
            raise RuntimeError(f"exit {done.returncode}: {done.stderr.strip()}")
    return json.loads(net.read_text(encoding="utf-8"))


PANEL_EDITS = ("opening:on={},shape=heart,width=panel-width/3,height=this-width", "holes:on={},count=2", "slit:on={}",
               "split:on={},from=left or bottom,at=panel-height/3", "split:on={},direction=up", "mark:on={}")
EDGE_EDITS = ("notch:on={},edge={},width=edge-length/4", "corners:on={},edge={},size=3mm", "edge:on={},edge={},shape=wave,depth=2mm",
              "flap:on={},edge={},hold=glued", "fold:on={},edge={},line=perforation", "slit-lock:on={},edge={},length=4mm")


def edges_of(program, style):
    """Panels that edits may name, each with its edges."""
    listed = loaded.run(program, ["edits", "--style", style])
    listed.check_returncode()
    edges, piece = {}, ""
    for line in listed.stdout.splitlines():
        if not line.startswith(" "):
            piece = line
        else:
            panel, names = line.split(maxsplit=1)
            edges[f"{piece}:{panel}"] = names.split(", ")
    return edges


def holds(program, design):
    """Whether the program itself finds nothing wrong with a design."""
    return loaded.run(program, ["check", design]).returncode == 0


def with_edits(program, arguments, data, chance, folder):
    """The same with two changes by hand, of those tried that `new` takes and after which the program itself finds
    nothing wrong; how many were taken."""
    edges, taken = edges_of(program, arguments[2]), 0
    for _ in range(12):
        panel = chance.choice(sorted(edges))
        kind = chance.choice(PANEL_EDITS + EDGE_EDITS)
        more = [*arguments, "--edit", kind.format(panel, chance.choice(edges[panel]))]
        try:
            changed = export(program, more, folder)
            if holds(program, folder / "design.cwdesign"):
                data, arguments, taken = changed, more, taken + 1
        except RuntimeError as error:
            if not str(error).startswith("exit 2: --edit"):
                raise
        if taken == 2:
            break
    return arguments, data, taken


def check_design(data, sides, caliper):
    wrong = []
    if data.get("format") != "creasewright-net" or data.get("version") != 1 or data.get("units") != "mm":
        wrong.append("not the promised format")
    for piece in data["pieces"]:
        wrong += refold.check_piece(piece, caliper)
    return wrong + seams.check_pieces(data) + check_cavity(data, sides, caliper)


def check_cavity(data, sides, caliper):
    stated = data.get("cavity")
    if not stated:
        return ["no cavity stated"]
    room = [stated[key] for key in ("length", "width", "height")]
    wrong = []
    stands = stated.get("round")
    if stands:
        wrong += check_round(data, stands, stated["box"], sides, caliper)
    elif any(have < need - refold.EXACT for have, need in zip(sorted(room), sorted(sides))):
        wrong.append(f"product {sides} does not fit the cavity {room}")
    box = stated["box"]
    sizes = sorted(math.hypot(*edge) for edge in box["edges"])
    if any(abs(a - b) > refold.EXACT for a, b in zip(sizes, sorted(room))):
        wrong.append(f"the box {sizes} is not the stated cavity {room}")
    holder = next(p for p in data["pieces"] if p["name"] == box["piece"])
    if not cavity.is_free(refold.Piece(holder, caliper), box):
        wrong.append(f"card lies in the cavity {room}")
    return wrong


def check_round(data, stands, box, sides, caliper):
    """A round product between slanting or polygonal walls: as large as it is, and no card in its way."""
    height = math.hypot(*stands["along"])
    wrong = []
    if stands["across"] < sides[0] - refold.EXACT or height < sides[2] - refold.EXACT:
        wrong.append(f"product {sides} does not fit the round place {stands}")
    holder = next(p for p in data["pieces"] if p["name"] == box["piece"])
    if not cavity.is_free_round(refold.Piece(holder, caliper), box["panel"], stands):
        wrong.append(f"card lies in the round place {stands}")
    return wrong


def check_that_faults_show(data, caliper):
    """Every crease that carries a flap to a target outside its own branch, bent 5 degrees wrong, must be noticed."""
    missed, tried = [], 0
    for piece in data["pieces"]:
        for at, crease in enumerate(piece["creases"]):
            if crease["kind"] == "flat" or not carries_mate(piece, crease):
                continue
            bent = {**piece, "creases": [*piece["creases"]]}
            bent["creases"][at] = {**crease, "angle_deg": crease["angle_deg"] + 5}
            tried += 1
            if not refold.check_piece(bent, caliper):
                missed.append(f"{crease['a']} | {crease['b']} bent by 5 degrees goes unnoticed")
    jointless = not any(piece["mates"] for piece in data["pieces"])  # tied or only laid together
    return missed if tried or jointless else ["no crease to bend"]


def carries_mate(piece, crease):
    branch, grown = {crease["b"]}, True
    while grown:
        more = {c["b"] for c in piece["creases"] if c["a"] in branch} - branch
        branch |= more
        grown = bool(more)
    return any((mate["panel"] in branch) != (mate["onto"] in branch) for mate in piece["mates"])


def check_style(program, style, count, seed):
    """What was found, as text, and how many products had something wrong."""
    chance = random.Random(f"{seed} {style}")
    found, failed, edited = [], 0, 0
    with tempfile.TemporaryDirectory() as folder:
        for number in range(count):
            arguments, sides, caliper = random_arguments(style, chance)
            try:
                data = export(program, arguments, pathlib.Path(folder))
                if number % 10 == 5:
                    arguments, data, taken = with_edits(program, arguments, data, chance, pathlib.Path(folder))
                    edited += taken
                wrong = check_design(data, sides, caliper)
                if "--edit" in arguments:  # a shaped edge need not meet the one that the style names
                    wrong = [line for line in wrong if "are declared open and meet over" not in line]
                if number == 0:
                    wrong += check_that_faults_show(data, caliper)
            except (RuntimeError, KeyError, ValueError, subprocess.TimeoutExpired) as error:
                wrong = [f"{type(error).__name__}: {error}"]
            if wrong:
                failed += 1
                found += [" ".join(arguments), *(f"    {line}" for line in wrong)]
    if count > 20 and not edited:
        found.append(f"{style}: no change by hand was taken")
        failed += 1
    return [*found, f"{style}: {count} products, {edited} changes by hand, {failed} with something wrong"], failed


def every_style(program):
    listed = subprocess.run([program, "styles", "--json"], capture_output=True, text=True, check=True)
    return [style["id"] for style in json.loads(listed.stdout)["styles"]]


def main():
    program, style = sys.argv[1], sys.argv[2]
    count = int(sys.argv[3] if len(sys.argv) > 3 else os.environ.get("CREASEWRIGHT_PRODUCTS", "6"))
    seed = int(os.environ.get("CREASEWRIGHT_SEED", "4242")) or random.SystemRandom().randrange(1, 1 << 31)
    print(f"seed {seed} (CREASEWRIGHT_SEED={seed} repeats this run)")
    styles = every_style(program) if style == "all" else [style]
    with multiprocessing.Pool() as pool:
        results = pool.starmap(check_style, [(program, name, count, seed) for name in styles], chunksize=1)
    for lines, _ in results:
        print(*lines, sep="\n")
    return 1 if not styles or any(failed for _, failed in results) else 0


if __name__ == "__main__":
    sys.exit(main())
