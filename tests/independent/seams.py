"""Which cut edges of a folded net meet, and whether anything joins them there.

Works on refold.Piece, from exported coordinates alone. Distances in millimetres.
"""

import math

import flat
import space

NEAR = 3  # mm from a crease or a glued flap the card is held
PARALLEL = 0.12  # sine of the most that edges which meet may differ in direction
OPEN = 5  # mm of a seam that may stay open at its ends
MEETS = 1  # mm that edges declared open meet along, at least


def check_seams(piece):
    """Sentences about edges that meet and are neither joined nor declared open, or declared and do not meet."""
    slack = piece.caliper + 0.05
    cut = [edge for name in piece.order for edge in cut_edges(piece, name)]
    declared = [[(d["a"], d["a_lines"]), (d["b"], d["b_lines"])] for d in piece.data["open_edges"]]
    met = [0.0] * len(declared)
    unheld = {}
    rooms = [room_of(solid, slack) for _, _, solid in cut]
    for i, (one, flat_one, solid_one) in enumerate(cut):
        for k in near_rooms(rooms, i):
            other, flat_other, solid_other = cut[k]
            if one == other:
                continue
            stretch = common_stretch(solid_one, solid_other, slack)
            if not stretch:
                continue
            length = math.dist(*stretch)
            known = [k for k, d in enumerate(declared) if says(d, one, flat_one, other, flat_other)]
            for k in known:
                met[k] += length
            if not known:
                key = frozenset((one, other))
                unheld[key] = unheld.get(key, 0) + open_length(piece, one, other, stretch)
    wrong = [
        f"{' and '.join(sorted(pair))} meet and stay open over {length:.1f} mm"
        for pair, length in unheld.items()
        if length > OPEN
    ]
    wrong += [
        f"{d[0][0]} and {d[1][0]} are declared open and meet over {length:.2f} mm"
        for d, length in zip(declared, met)
        if max(length, met_at_a_crease(piece, d, slack)) < MEETS
    ]
    return wrong


def room_of(line, slack):
    """The box round a line, larger by half the slack, as its low and its high corner: edges can meet only where such
    boxes do."""
    more = slack / 2 + 1e-6
    return [min(ends) - more for ends in zip(*line)], [max(ends) + more for ends in zip(*line)]


def near_rooms(rooms, i):
    """Those after the i-th that meet it."""
    (x, y, z), (right, back, top) = rooms[i]
    for k in range(i + 1, len(rooms)):
        low, high = rooms[k]
        if low[0] <= right and high[0] >= x and low[1] <= back and high[1] >= y and low[2] <= top and high[2] >= z:
            yield k


def met_at_a_crease(piece, declared, slack):
    """Length along which a declared pair meets where one of its edges is creased."""
    lines = [[[piece.motion[name](p) for p in line] for line in flats] for name, flats in declared]
    stretches = (common_stretch(a, b, slack) for a in lines[0] for b in lines[1])
    return sum(math.dist(*stretch) for stretch in stretches if stretch)


def cut_edges(piece, name):
    """(panel, flat ends, folded ends) of the parts of its outline on which no crease lies."""
    ring = piece.outline[name]
    for p, q in zip(ring, ring[1:] + ring[:1]):
        length = math.dist(p, q)
        if length < 1e-6:
            continue
        along = ((q[0] - p[0]) / length, (q[1] - p[1]) / length)
        marks = []
        for crease in piece.data["creases"]:
            if name not in (crease["a"], crease["b"]):
                continue
            ends = [crease["p"], crease["q"]]
            if any(abs(along[0] * (e[1] - p[1]) - along[1] * (e[0] - p[0])) > 2e-3 for e in ends):
                continue
            spots = sorted(along[0] * (e[0] - p[0]) + along[1] * (e[1] - p[1]) for e in ends)
            if spots[1] > 2e-3 and spots[0] < length - 2e-3:
                marks.append((max(0, spots[0]), min(length, spots[1])))
        at = 0
        for low, high in [*sorted(marks), (length, length)]:
            if low - at > 0.01:
                ends = [(p[0] + along[0] * s, p[1] + along[1] * s) for s in (at, low)]
                yield name, ends, [piece.motion[name](e) for e in ends]
            at = max(at, high)


def common_stretch(one, other, slack):
    """Ends of the part of one line along which the other lies beside it."""
    length = math.dist(*one)
    along = tuple(c / length for c in space.minus(one[1], one[0]))
    run = space.minus(other[1], other[0])
    if abs(space.dot(run, along)) < math.dist(*other) * math.sqrt(1 - PARALLEL**2):
        return None
    spots = sorted(space.dot(space.minus(end, one[0]), along) for end in other)
    low, high = max(0, spots[0]), min(length, spots[1])
    if high - low < 1e-3:
        return None
    ends = [space.plus(one[0], tuple(c * s for c in along)) for s in (low, high)]
    return ends if all(off_line(end, *other) <= slack for end in ends) else None


def off_line(point, p, q):
    run = space.minus(q, p)
    share = space.dot(space.minus(point, p), run) / space.dot(run, run)
    share = min(1, max(0, share))
    return math.dist(point, space.plus(p, tuple(c * share for c in run)))


def says(declared, one, flat_one, other, flat_other):
    return any(
        a[0] == one and b[0] == other and on_lines(flat_one, a[1]) and on_lines(flat_other, b[1])
        for a, b in (declared, declared[::-1])
    )


def on_lines(ends, lines):
    middle = [(a + b) / 2 for a, b in zip(*ends)]
    return any(off_line((*middle, 0), (*line[0], 0), (*line[-1], 0)) < 0.01 for line in lines)


def open_length(piece, one, other, stretch):
    length = math.dist(*stretch)
    steps = max(1, math.ceil(length))
    run = space.minus(stretch[1], stretch[0])
    spots = (space.plus(stretch[0], tuple(c * (k + 0.5) / steps for c in run)) for k in range(steps))
    return length / steps * sum(not joined(piece, one, other, spot) for spot in spots)


def joined(piece, one, other, spot):
    """Whether creases and held flaps, each near the spot, lead from one panel to the other."""
    steps = {}
    for crease in piece.data["creases"]:
        place = piece.motion[crease["a"]]
        if off_line(spot, place(crease["p"]), place(crease["q"])) < NEAR:
            steps.setdefault(crease["a"], set()).add(crease["b"])
            steps.setdefault(crease["b"], set()).add(crease["a"])
    for mate in piece.data["mates"] + piece.data["patches"]:
        x, y, z = piece.motion[mate["panel"]].back(spot)
        ring = flat.open_ring(mate["area"]) if mate.get("area") else piece.outline[mate["panel"]]
        near = flat.inside((x, y), ring) or flat.distance_to_ring((x, y), ring) < NEAR
        if abs(z) < NEAR and near:
            steps.setdefault(mate["panel"], set()).add(mate["onto"])
            steps.setdefault(mate["onto"], set()).add(mate["panel"])
    reached, waiting = {one}, [one]
    while waiting:
        more = steps.get(waiting.pop(), set()) - reached
        reached |= more
        waiting += more
    return other in reached


def check_pieces(data):
    """Every piece of the box leads, through what it is held to, to one and the same."""
    held = {piece["name"]: piece["held"] for piece in data["pieces"] if piece["extra"] is None}
    ends = set()
    for name in held:
        seen = {name}
        while held[name]:
            name = held[name]["to"]
            if name not in held or name in seen:
                return [f"a piece is held to {name}, which is not there or held to it"]
            seen.add(name)
        ends.add(name)
    return [f"{sorted(ends)} are joined to nothing"] if len(ends) > 1 else []
