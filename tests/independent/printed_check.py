"""Printed papers measured: pages rendered at 254 dots to the inch (ten to the millimetre) by Poppler, a program of others,
against the net that the program exports as JSON. Shares no code with the program.

    printed_check.py PROGRAM [STYLES]     STYLES: how many, drawn by the seed; all

CREASEWRIGHT_SEED sets the seed. What is looked at, of the first piece of each style, printed in one grey-green:
  - every point of a panel that shows is printed, but for 0.2 mm along its cuts;
  - the colour ends as far beyond straight cuts as the bleed says, to 0.2 mm;
  - nothing is printed farther off than the bleed's corner (its square root of two);
  - a picture lies in its true size: its edges, measured along the blank;
  - flaps that are glued on the printed face have no colour farther in than it runs there.
"""

import json
import math
import os
import pathlib
import random
import re
import struct
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ET
import zlib

import flat

DOTS = 10  # to the millimetre
COLOUR = "#8FA88A"
INTO_FLAP = 2
SLACK = 0.2
SVG = "{http://www.w3.org/2000/svg}"


def run(*arguments):
    done = subprocess.run([str(a) for a in arguments], capture_output=True, text=True, timeout=120)
    if done.returncode != 0:
        raise SystemExit(f"{arguments}: {done.stderr}{done.stdout}")
    return done.stdout


class Page:
    """A page in greys; millimetres from its lower left corner."""

    def __init__(self, pdf, folder):
        run("pdftoppm", "-r", 254, "-gray", "-singlefile", pdf, folder / "page")
        data = (folder / "page.pgm").read_bytes()
        head, size, deepest, self.pixels = data.split(b"\n", 3)
        assert head == b"P5" and deepest == b"255"
        self.width, self.height = map(int, size.split())
        # The colour is the commonest grey between those of lines and that of the paper.
        own = max(range(100, 230), key=lambda grey: self.pixels.count(bytes([grey])))
        table = bytes(1 if abs(grey - own) <= 3 else 0 for grey in range(256))
        self.ink = self.pixels.translate(table)
        half = bytes(1 if grey < (own + 255) / 2 else 0 for grey in range(256))
        self.half = self.pixels.translate(half)  # dots that an edge crosses, by where it lies in them

    def at(self, dots, x, y):
        column, row = int(x * DOTS), self.height - 1 - int(y * DOTS)
        return 0 <= column < self.width and 0 <= row < self.height and dots[row * self.width + column] == 1

    def printed(self, x, y):
        return self.at(self.ink, x, y)


def glued_outside(piece):
    """Panels that take adhesive on most of their outside, as the page says: they stay plain."""
    areas = {}
    for place in piece["glue_plan"]:
        if place["flap_face"] == "outside" and len(place["area"]) > 2:
            ring = [tuple(p) for p in place["area"]]
            areas[place["panel"]] = areas.get(place["panel"], 0) + abs(flat.area(ring))
    return areas


class Net:
    """A piece seen from outside: mirrored across its blank."""

    def __init__(self, piece):
        self.width, self.height = piece["blank"]["width"], piece["blank"]["height"]
        areas = glued_outside(piece)
        self.shown, self.plain = [], []
        for panel in piece["panels"]:
            rings = [self.seen(r) for r in [panel["outline"], *panel["openings"]]]
            glued = areas.get(panel["id"], 0) > abs(flat.area(rings[0])) / 2
            (self.plain if glued else self.shown).append(rings)
        self.cuts = [self.seen(cut) for cut in piece["cuts"] if cut[0] == cut[-1]]

    def seen(self, ring):
        return [(self.width - x, y) for x, y in flat.open_ring(ring)]

    @staticmethod
    def within(point, panels):
        return any(sum(flat.inside(point, ring) for ring in rings) % 2 for rings in panels)

    @staticmethod
    def far(point, panels):
        return min((flat.distance_to_ring(point, ring) for rings in panels for ring in rings), default=1e9)


def straight_places(net, generator, count):
    """Points on cut edges of panels that show, with the way out, where no other card, flap or corner is near."""
    edges = [(a, b, rings) for rings in net.shown for ring in rings for a, b in zip(ring, ring[1:] + ring[:1])]
    long = [edge for edge in edges if math.dist(edge[0], edge[1]) > 14]
    for _ in range(40 * count if long else 0):
        a, b, _ = generator.choice(long)
        size = math.dist(a, b)
        share = generator.uniform(6, size - 6) / size
        at = (a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share)
        for way in (1, -1):
            out = (way * (b[1] - a[1]) / size, -way * (b[0] - a[0]) / size)
            steps = [(at[0] + out[0] * d, at[1] + out[1] * d) for d in (0.3, 1, 2, 3, 4, 5, 6)]
            if all(
                not net.within(p, net.shown) and not net.within(p, net.plain)
                and net.far(p, net.plain) > 4
                and abs(net.far(p, net.shown) - math.dist(p, at)) < 0.01
                for p in steps
            ):  # fmt: skip
                yield at, out
                count -= 1
                if count == 0:
                    return


def check(program, style, generator, folder):
    bleed = generator.choice([2, 3, 4])
    design, net_file, pdf, svg = (folder / f"{style}{end}" for end in (".cwdesign", ".json", ".pdf", ".svg"))
    run(program, "new", "--style", style, "--colour", COLOUR, "--grid", "1mm", "-o", design)
    run(program, "export", design, "-o", net_file)
    piece = json.loads(net_file.read_text(encoding="utf-8"))["pieces"][0]
    net = Net(piece)
    paper = f"{max(210, net.width + 60):.0f}x{max(297, net.height + 100):.0f}mm"
    run(program, "export", design, "--kind", "printed", "--no-cuts", "--bleed", f"{bleed}mm", "--piece", piece["name"],
        "--paper", paper, "-o", pdf)  # fmt: skip
    run(program, "export", design, "--kind", "printed", "--bleed", f"{bleed}mm", "--piece", piece["name"],
        "--paper", paper, "-o", svg)  # fmt: skip
    page = Page(pdf, folder)
    on_page = placed(svg, net)
    faults = []

    def fault(words, point):
        faults.append(f"{style}, bleed {bleed}: {words} at {point[0]:.1f}, {point[1]:.1f}")

    def printed(point):
        return page.printed(*on_page(point))

    looked = 0
    for _ in range(700):
        point = (generator.uniform(-10, net.width + 10), generator.uniform(-10, net.height + 10))
        off = net.far(point, net.shown)
        if net.within(point, net.shown):
            if off > SLACK and not printed(point):
                fault("card that shows is not printed", point)
        elif off > bleed * math.sqrt(2) + SLACK and printed(point):
            fault("colour beyond the bleed", point)
        elif net.within(point, net.plain) and off > INTO_FLAP * math.sqrt(2) + SLACK and printed(point):
            fault("colour on a flap that is glued", point)
        looked += 1
    for at, out in straight_places(net, generator, 25):
        reach = 0
        while reach < 12 and page.at(page.half, *on_page((at[0] + out[0] * reach, at[1] + out[1] * reach))):
            reach += 0.05
        if abs(reach - bleed) > SLACK:
            fault(f"colour ends {reach:.2f} mm beyond the cut", at)
        looked += 1
    return faults, looked


def placed(svg, net):
    """Where a point of the net lies on the page, from the lower left: by the box of the cuts on the same page as SVG: cut lines
    change nothing of where a part lies."""
    page = ET.parse(svg)
    high = float(page.getroot().get("viewBox").split()[3])
    lines = [p.get("d") for g in page.iter(SVG + "g") if g.get("id") == "Cutting" for p in g.iter(SVG + "path")]
    numbers = [(float(x), high - float(y)) for line in lines for x, y in re.findall(r"[ML]([-\d.]+) ([-\d.]+)", line)]
    left, bottom, right, top = flat.box(numbers)
    wide, tall = right - left, top - bottom
    if abs(wide - net.width) < 0.01 and abs(tall - net.height) < 0.01:
        return lambda p: (left + p[0], bottom + p[1])
    assert abs(wide - net.height) < 0.01 and abs(tall - net.width) < 0.01, (wide, tall, net.width, net.height)
    return lambda p: (left + net.height - p[1], bottom + p[0])  # turned left by a quarter


def check_picture(program, folder):
    """A picture of two halves, 20 mm wide over and over: along the blank its edges are 10 mm apart, to 0.15 mm."""

    def chunk(kind, data):
        return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))

    row = bytes([0]) + bytes([60] * 3 * 40) + bytes([170] * 3 * 40)
    head = struct.pack(">IIBBBBB", 80, 40, 8, 2, 0, 0, 0)
    (folder / "halves.png").write_bytes(
        b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head) + chunk(b"IDAT", zlib.compress(row * 40)) + chunk(b"IEND", b"")
    )
    design, pdf = folder / "picture.cwdesign", folder / "picture.pdf"
    run(program, "new", "--style", "open-sleeve", "--grid", "1mm", "--pattern",
        f"picture:{folder / 'halves.png'}:scale=20mm", "-o", design)  # fmt: skip
    run(program, "export", design, "--kind", "printed", "--no-cuts", "--paper", "400x400mm", "-o", pdf)
    page = Page(pdf, folder)
    faults, edges = [], 0
    for number in range(0, page.height, 23):
        line = page.pixels[number * page.width : (number + 1) * page.width]
        if line.count(b"\x3c") < 60 * DOTS or line.count(b"\xaa") < 60 * DOTS:
            continue  # not across the whole print
        dark = [abs(grey - 60) < 55 for grey in line]
        places = [i for i in range(1, len(dark)) if dark[i] != dark[i - 1]]
        if max(line[places[0] : places[-1]]) > 230:
            continue  # a thumb notch
        inner = [b - a for a, b in zip(places, places[1:])][1:-1]
        edges += len(inner)
        faults += [f"picture: edges {gap / DOTS} mm apart" for gap in inner if abs(gap - 10 * DOTS) > 1.5]
    if edges < 50:
        faults.append(f"picture: only {edges} edges were seen")
    return faults


def main():
    program = sys.argv[1]
    seed = int(os.environ.get("CREASEWRIGHT_SEED", "20261127"))
    print(f"seed {seed} (set CREASEWRIGHT_SEED to change it)")
    generator = random.Random(seed)
    styles = [s["id"] for s in json.loads(run(program, "styles", "--json"))["styles"]]
    if len(sys.argv) > 2 and sys.argv[2] != "all":
        styles = generator.sample(styles, int(sys.argv[2]))
    faults, looked = [], 0
    with tempfile.TemporaryDirectory() as holder:
        for style in styles:
            found, places = check(program, style, generator, pathlib.Path(holder))
            faults += found
            looked += places
        faults += check_picture(program, pathlib.Path(holder))
    print(f"{len(styles)} styles, {looked} places")
    for line in faults[:40]:
        print(line)
    if faults or looked < 100 * len(styles):
        raise SystemExit(f"{len(faults)} faults")


if __name__ == "__main__":
    main()
