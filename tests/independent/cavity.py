"""Looks for a place inside the folded piece where the stated cavity is free of card."""

import itertools

import flat

SLACK = 0.01


def place_cavity(piece, sizes):
    """Lower corner of a free cuboid of `sizes` (any way round) inside the folded extent, or None.

    The first panel's frame gives the axes; the cuboid stands on a panel's plane on each axis, or hangs under one.
    """
    corners = [p for ring in piece.solid.values() for p in ring]
    low = [min(p[k] for p in corners) for k in range(3)]
    high = [max(p[k] for p in corners) for k in range(3)]
    parts = list(solid_parts(piece))
    for turned in sorted(set(itertools.permutations(sizes))):
        inner = [max(size - SLACK, 0.001) for size in turned]
        starts = [stands(piece, k, inner[k], low[k], high[k]) for k in range(3)]
        for start in itertools.product(*starts):
            end = [a + b for a, b in zip(start, inner)]
            if not any(meets(part, start, end) for part in parts):
                return start
    return None


def stands(piece, axis, size, low, high):
    planes = {low, high}
    for name, ring in piece.solid.items():
        if abs(piece.normal(name)[axis]) > 0.999:
            planes.add(round(ring[0][axis], 3))
    slack = piece.caliper + SLACK
    tries = {p + SLACK / 2 for p in planes} | {p - size - SLACK / 2 for p in planes}
    return sorted(t for t in tries if low - slack <= t and t + size <= high + slack)


def solid_parts(piece):
    for name, ring in piece.outline.items():
        for part in flat.convex_parts(ring):
            solid = [piece.motion[name](p) for p in part]
            spans = [(min(p[k] for p in solid), max(p[k] for p in solid)) for k in range(3)]
            yield solid, spans


def meets(part, start, end):
    """Whether a convex panel part has a point inside the cuboid."""
    solid, spans = part
    if any(high <= start[k] or low >= end[k] for k, (low, high) in enumerate(spans)):
        return False
    for k in range(3):
        solid = cut(cut(solid, k, start[k], 1), k, end[k], -1)
    return len(solid) > 0


def cut(solid, axis, at, sign):
    """The part of a convex polygon in space where sign * (coordinate - at) > 0."""
    kept = []
    for p, q in zip(solid, solid[1:] + solid[:1]):
        side_p, side_q = sign * (p[axis] - at), sign * (q[axis] - at)
        if side_p > 0:
            kept.append(p)
        if side_p * side_q < 0:
            share = side_p / (side_p - side_q)
            kept.append(tuple(a + share * (b - a) for a, b in zip(p, q)))
    return kept
