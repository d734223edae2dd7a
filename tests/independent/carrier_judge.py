"""Judges the carrier sheets of a cutting machine from the SVG files that are cut: every part there, none too near."""

import collections
import itertools
import math
import re
import xml.etree.ElementTree as xml

from class_kit import MM
from plan_judge import Faults

SVG = "{http://www.w3.org/2000/svg}"
GAP = 2.0  # mm between parts, and to the carrier's edge
EXACT = 0.002  # mm; the files have three or four decimals


def closed_rings(path):
    """The closed outlines of a path of straight lines."""
    rings = []
    for part in re.findall(r"M[^M]*", path):
        if re.search(r"[^-\d.eMLZ ,]", part):
            raise ValueError(f"a path that is not of straight lines: {part[:60]}")
        if part.strip().endswith("Z"):
            numbers = [float(n) for n in re.findall(r"-?\d+(?:\.\d+)?(?:e-?\d+)?", part)]
            rings.append(list(zip(numbers[::2], numbers[1::2])))
    return rings


def box(ring):
    xs, ys = zip(*ring)
    return min(xs), min(ys), max(xs), max(ys)


def inside(point, ring):
    x, y = point
    within = False
    for (ax, ay), (bx, by) in zip(ring, ring[1:] + ring[:1]):
        if (ay > y) != (by > y) and x < (bx - ax) * (y - ay) / (by - ay) + ax:
            within = not within
    return within


def point_to_line(p, a, b):
    length = (b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2
    along = 0 if length == 0 else max(0, min(1, ((p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1])) / length))
    return math.hypot(p[0] - a[0] - along * (b[0] - a[0]), p[1] - a[1] - along * (b[1] - a[1]))


def crossing(a, b, c, d):
    side = lambda p, q, r: (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])
    return side(a, b, c) * side(a, b, d) < 0 and side(c, d, a) * side(c, d, b) < 0


def distance(first, second, enough):
    """Between two outlines; `enough` where it is no less than that."""
    near = enough
    low, high = box(second)[:2], box(second)[2:]
    for a, b in zip(first, first[1:] + first[:1]):
        if any(max(a[k], b[k]) < low[k] - enough or min(a[k], b[k]) > high[k] + enough for k in (0, 1)):
            continue
        for c, d in zip(second, second[1:] + second[:1]):
            if crossing(a, b, c, d):
                return 0.0
            near = min(near, point_to_line(a, c, d), point_to_line(b, c, d), point_to_line(c, a, b), point_to_line(d, a, b))
    return near


def outlines_of(svg, faults):
    """Of a file: its carrier's width and height, and the outermost rings that are cut."""
    root = xml.parse(svg).getroot()
    width, height = (float(root.get(side).removesuffix("mm")) for side in ("width", "height"))
    if root.get("viewBox") != f"0 0 {width:g} {height:g}":
        faults.add("scale", f"{svg.name}: {width:g} x {height:g} mm, but {root.get('viewBox')}")
    rings = []
    for group in root.iter(f"{SVG}g"):
        if group.get("data-step") == "Cutting":
            for path in group.iter(f"{SVG}path"):
                rings += closed_rings(path.get("d"))
    outer = [ring for ring in rings if not any(other is not ring and inside(ring[0], other) for other in rings)]
    return width, height, outer


def judge_places(name, width, height, rings, faults):
    for ring in rings:
        low_x, low_y, high_x, high_y = box(ring)
        if min(low_x, low_y, width - high_x, height - high_y) < GAP - EXACT:
            faults.add("edge", f"{name}: a part reaches from {low_x:g}, {low_y:g} to {high_x:g}, {high_y:g}")
    for a, b in itertools.combinations(rings, 2):
        if distance(a, b, GAP) < GAP - EXACT:
            faults.add("near", f"{name}: parts at {box(a)[:2]} and {box(b)[:2]} are {distance(a, b, GAP):g} mm apart")


def size_among(ring, sizes, may_turn):
    """The one of `sizes` that a ring has, as it may lie."""
    low_x, low_y, high_x, high_y = box(ring)
    w, h = high_x - low_x, high_y - low_y
    for size in sizes:
        for a, b in {size, size[::-1]} if may_turn else {size}:
            if abs(a - w) < 2 * EXACT and abs(b - h) < 2 * EXACT:
                return size
    return round(w, 3), round(h, 3)


def judge_carriers(kit, folder, mat):
    """Faults of the machine's files in a folder; `mat` = sides of the carrier in mm."""
    faults, have, wanted = Faults(), collections.Counter(), collections.Counter()
    for blanks in kit.demands().values():
        for blank in blanks:
            size = (blank.w / MM, blank.h / MM)
            wanted[size if kit.keep_grain else tuple(sorted(size))] += blank.per_set * kit.sets
    sizes = list(wanted)
    files = sorted(folder.glob("*.svg"))
    for svg in files:
        times = int(re.fullmatch(r".*-x(\d+)\.svg", svg.name)[1])
        title = re.search(r"<title>(.*?)</title>", svg.read_text(encoding="utf-8"))[1]
        if f"cut {times} sheet" not in title:
            faults.add("title", f"{svg.name} is called {title}")
        width, height, rings = outlines_of(svg, faults)
        if (width, height) != mat:
            faults.add("scale", f"{svg.name}: the carrier is {width:g} x {height:g} mm")
        if not rings:
            faults.add("empty", f"{svg.name} holds nothing")
        judge_places(svg.name, width, height, rings, faults)
        for ring in rings:
            have[size_among(ring, sizes, not kit.keep_grain)] += times
    if have != wanted:
        faults.add("missing", f"{dict(have)} are cut, {dict(wanted)} are wanted")
    return faults
