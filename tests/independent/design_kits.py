"""Kits with designs; what they are cut from is read from the exported nets."""

import json
import subprocess

from class_kit import INCH, MM, Blank, Kit, Sheet

PRODUCTS = ("box:60x40x25mm", "box:85x55x20mm", "box:40x40x70mm")


def run(program, *words):
    done = subprocess.run([program, *map(str, words)], capture_output=True, text=True, timeout=60, check=False)
    if done.returncode != 0:
        raise RuntimeError(f"{' '.join(map(str, words))}: exit {done.returncode}: {done.stderr.strip()}")
    return done.stdout


def known_styles(program):
    return [style["id"] for style in json.loads(run(program, "styles", "--json"))["styles"]]


def pieces_of(program, design, number, per_set, folder):
    net = folder / "net.json"
    run(program, "export", design, "-o", net)
    data = json.loads(net.read_text(encoding="utf-8"))
    alone = len(data["pieces"]) == 1
    return [
        Blank(
            data["title"] if alone else f"{data['title']}: {piece['name']}",
            round(piece["blank"]["width"] * MM), round(piece["blank"]["height"] * MM),
            piece["count"] * per_set, design=number, piece=piece["name"],
        )
        for piece in data["pieces"]
    ]  # fmt: skip


def design_kit(program, folder, chance):
    """One or two designs, and plain blanks beside them."""
    styles = known_styles(program)
    sheets = [Sheet("S1", 12 * INCH, 12 * INCH), Sheet("S2", 420 * MM, 297 * MM)]
    kit = Kit(sheets, [], takers=chance.randint(1, 9), spares=chance.randint(0, 1))
    for number in range(chance.randint(1, 2)):
        file = folder / f"design{number}.cwdesign"
        style, product = chance.choice(styles), chance.choice(PRODUCTS)
        run(program, "new", "--style", style, "--product", product, "--title", f"Box {number + 1}", "-o", file)
        kit.designs.append((file, chance.randint(1, 2)))
        kit.pieces += pieces_of(program, file, number, kit.designs[-1][1], folder)
    for i in range(chance.randint(0, 2)):
        kit.blanks.append(Blank(f"N{i + 1}", chance.randint(30, 150) * MM, chance.randint(30, 150) * MM, chance.randint(1, 2)))
    return kit
