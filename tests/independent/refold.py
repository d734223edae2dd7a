"""Folds an exported net again, from its flat coordinates alone, and says what does not hold.

Shares no code and no formula text with core: it reads `export -o net.json` and builds its own tree, its own motions
and its own areas. Distances in millimetres. Positive angles turn the two panels towards the viewer of the flat net.
"""

import math
from collections import deque

import flat
import seams
import space

EXACT = 1e-3  # exported coordinates are rounded to a micrometre
PLANE = 0.05


class Piece:
    def __init__(self, data, caliper):
        self.data = data
        self.caliper = caliper
        self.order = [panel["id"] for panel in data["panels"]]
        self.outline = {p["id"]: flat.counter_clockwise(flat.open_ring(p["outline"])) for p in data["panels"]}
        self.creases = [c for c in data["creases"] if not c.get("loop")]
        self.loops = [c for c in data["creases"] if c.get("loop")]
        self.crease_of = {}
        self.motion = self.fold()
        self.solid = {
            name: [self.motion[name](p) for p in self.outline[name]] for name in self.motion
        }

    def fold(self):
        """Motion of every panel that the creases reach from the first one."""
        beside = {}
        for crease in self.creases:
            beside.setdefault(crease["a"], []).append((crease["b"], crease))
            beside.setdefault(crease["b"], []).append((crease["a"], crease))
        motion = {self.order[0]: space.Motion()}
        waiting = deque([self.order[0]])
        while waiting:
            name = waiting.popleft()
            for other, crease in beside.get(name, []):
                if other not in motion:
                    motion[other] = motion[name].then_local(self.hinge(other, crease))
                    self.crease_of[other] = crease
                    waiting.append(other)
        return motion

    def hinge(self, panel, crease):
        """The turn of `panel` about its crease that lifts its far side towards the viewer."""
        p, q = tuple(crease["p"]), tuple(crease["q"])
        side = 1 if flat.turn(p, q, flat.centroid(self.outline[panel])) > 0 else -1
        return space.turn_about(p, q, side * math.radians(crease["angle_deg"]))

    def normal(self, name):
        """Points from the drawn face, the later inside."""
        return tuple(row[2] for row in self.motion[name].rows)


def check_piece(data, caliper):
    """Sentences about everything in one piece that does not hold; empty when all is well."""
    piece = Piece(data, caliper)
    wrong = check_tree(piece)
    if wrong:
        return wrong
    wrong += check_blank(piece) + check_creases(piece) + check_overlap(piece) + check_loops(piece)
    for mate in data["mates"] + data["patches"]:
        wrong += check_mate(piece, mate)
    return wrong + check_crossings(piece) + seams.check_seams(piece)


def check_tree(piece):
    wrong = []
    if len(set(piece.order)) != len(piece.order):
        wrong.append("two panels have the same name")
    if len(piece.creases) != len(piece.order) - 1:
        wrong.append(f"{len(piece.order)} panels but {len(piece.creases)} creases: no tree")
    unreached = set(piece.order) - set(piece.motion)
    if unreached:
        wrong.append(f"no crease leads to {sorted(unreached)}")
    wrong += [
        f"{name}: outline of {len(ring)} corners and area {flat.area(ring):.3f}"
        for name, ring in piece.outline.items()
        if len(ring) < 3 or flat.area(ring) < 1
    ]
    return wrong


def check_blank(piece):
    boxes = [flat.box(ring) for ring in piece.outline.values()]
    low = min(b[0] for b in boxes), min(b[1] for b in boxes)
    high = max(b[2] for b in boxes), max(b[3] for b in boxes)
    blank = piece.data["blank"]["width"], piece.data["blank"]["height"]
    if math.dist(low, (0, 0)) > EXACT or math.dist(high, blank) > EXACT:
        return [f"panels span {low} to {high}, the blank is {blank}"]
    return []


def check_creases(piece):
    wrong = []
    for crease in piece.creases:
        p, q = crease["p"], crease["q"]
        name = f"crease {crease['a']} | {crease['b']}"
        if math.dist(p, q) < max(1, 3 * piece.caliper):
            wrong.append(f"{name} is only {math.dist(p, q):.3f} long")
        for k in range(9):
            share = k / 8
            at = (p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1]))
            off = max(flat.distance_to_ring(at, piece.outline[crease[end]]) for end in "ab")
            if off > EXACT:
                wrong.append(f"{name} leaves its panels by {off:.4f}")
                break
        sides = [flat.turn(p, q, flat.centroid(piece.outline[crease[end]])) for end in "ab"]
        if sides[0] * sides[1] >= 0:
            wrong.append(f"{name}: both panels lie on one side of it")
    return wrong


def check_overlap(piece):
    wrong = []
    for i, one in enumerate(piece.order):
        for other in piece.order[i + 1 :]:
            shared = flat.common_area(piece.outline[one], piece.outline[other])
            if shared > 0.01:
                wrong.append(f"{one} and {other} share {shared:.3f} mm2 of the sheet")
    return wrong


def check_loops(piece):
    wrong = []
    for crease in piece.loops:
        a, b = piece.motion[crease["a"]], piece.motion[crease["b"]]
        gap = max(math.dist(a(crease[end]), b(crease[end])) for end in "pq")
        if gap > PLANE:
            wrong.append(f"loop crease {crease['a']} | {crease['b']} stands open by {gap:.3f}")
        told = piece.motion[crease["a"]].then_local(piece.hinge(crease["b"], crease))
        off = max(math.dist(told(p), b(p)) for p in piece.outline[crease["b"]])
        if off > PLANE:
            wrong.append(f"loop crease {crease['a']} | {crease['b']} folds otherwise by {off:.3f}")
    return wrong


def check_mate(piece, mate):
    flap, onto = mate["panel"], mate["onto"]
    name = f"{flap} on {onto}"
    if flap not in piece.motion or onto not in piece.motion:
        return [f"{name}: no such panel"]
    target = piece.motion[onto]
    contact = flat.open_ring(mate.get("area") or piece.outline[flap])
    local = [target.back(piece.motion[flap](point)) for point in contact]
    up = 1 if mate["face"] == "inside" else -1
    heights = [up * z for _, _, z in local]
    room = PLANE + piece.caliper
    wrong = []
    if max(map(abs, heights)) > room or min(heights) < -PLANE:
        wrong.append(f"{name}: {min(heights):.3f} to {max(heights):.3f} off the {mate['face']} face")
    shadow = flat.counter_clockwise([(x, y) for x, y, _ in local])
    whole = piece.outline[onto]
    outside = flat.area(shadow) - flat.common_area(shadow, whole)
    # What is only tucked may bridge a notch, if half of it has card (common practice, no published source).
    if mate["method"] == "tuck" and outside < 0.5 * flat.area(shadow):
        outside = flat.area(shadow) - flat.common_area(shadow, flat.hull(whole))
    if mate["method"] != "rest" and outside > 0.001 * flat.area(shadow):
        wrong.append(f"{name}: {100 * outside / flat.area(shadow):.2f} % reaches past the target")
    return wrong + check_rim(piece, mate, name, room)


def check_rim(piece, mate, name, room):
    """Where the flap's own crease lands: on the target's rim, or inside its outline.

    A flap that meets its target only with a patch away from its crease says nothing about the crease.
    """
    crease = piece.crease_of.get(mate["panel"])
    if crease is None or mate["method"] == "rest" or mate.get("area"):
        return []
    flap, target = piece.motion[mate["panel"]], piece.motion[mate["onto"]]
    ring = piece.outline[mate["onto"]]
    ends = [target.back(flap(crease[end]))[:2] for end in "pq"]
    middle = ((ends[0][0] + ends[1][0]) / 2, (ends[0][1] + ends[1][1]) / 2)
    rings = [ring, flat.hull(ring)] if mate["method"] == "tuck" else [ring]
    off = min(max(flat.distance_to_ring(p, edge) for p in (*ends, middle)) for edge in rings)
    if mate["rim"] and off > room:
        return [f"{name}: its crease misses the rim by {off:.3f}"]
    if not mate["rim"] and not flat.inside(middle, ring) and off > room:
        return [f"{name}: its crease lands outside the target"]
    return []


def check_crossings(piece):
    """No panel passes through another by more than the card is thick."""
    hinged = {frozenset((c["a"], c["b"])) for c in piece.creases}
    wrong = []
    for i, one in enumerate(piece.order):
        for other in piece.order[i + 1 :]:
            if frozenset((one, other)) not in hinged and cross_by(piece, one, other):
                wrong.append(f"{one} and {other} pass through each other")
    return wrong


def cross_by(piece, one, other):
    depth = piece.caliper + PLANE
    heights = [piece.motion[other].back(p)[2] for p in piece.solid[one]]
    if min(heights) > -depth or max(heights) < depth:
        return False
    back = [piece.motion[one].back(p)[2] for p in piece.solid[other]]
    if min(back) > -depth or max(back) < depth:
        return False
    line = space.cross(piece.normal(one), piece.normal(other))
    spans = spans_on(line, piece.solid[one], heights), spans_on(line, piece.solid[other], back)
    return any(
        min(high1, high2) - max(low1, low2) > depth
        for low1, high1 in spans[0]
        for low2, high2 in spans[1]
    )


def spans_on(line, solid, heights):
    """Stretches of the line in which a plane meets a panel, measured along the line."""
    length = math.sqrt(space.dot(line, line))
    marks = []
    for (p, hp), (q, hq) in zip(zip(solid, heights), zip(solid[1:] + solid[:1], heights[1:] + heights[:1])):
        if (hp > 0) != (hq > 0):
            share = hp / (hp - hq)
            at = tuple(a + share * (b - a) for a, b in zip(p, q))
            marks.append(space.dot(at, line) / length)
    marks.sort()
    return list(zip(marks[::2], marks[1::2]))
