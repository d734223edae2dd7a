"""Looks whether the stated cavity of the folded piece is free of card."""

import math

import flat
import space

SLACK = 0.01


def is_free(piece, box):
    """Whether no card lies in the box that the export states: a corner and three edges at right angles, in the flat
    coordinates of one panel, z above its drawn face."""
    motion = piece.motion[box["panel"]]
    corner = motion(box["corner"])
    edges = [space.minus(motion(space.plus(box["corner"], edge)), corner) for edge in box["edges"]]
    sizes = [math.sqrt(space.dot(edge, edge)) for edge in edges]
    axes = [tuple(c / size for c in edge) for edge, size in zip(edges, sizes)]
    start, end = [SLACK / 2] * 3, [max(size - SLACK / 2, SLACK) for size in sizes]
    for solid, _ in solid_parts(piece):
        local = [tuple(space.dot(space.minus(p, corner), axis) for axis in axes) for p in solid]
        spans = [(min(p[k] for p in local), max(p[k] for p in local)) for k in range(3)]
        if meets((local, spans), start, end):
            return False
    return True


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
