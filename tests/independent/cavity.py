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
    openings = {panel["id"]: [flat.open_ring(ring) for ring in panel.get("openings", [])] for panel in piece.data["panels"]}
    for name, part in flat_parts(piece):
        # Each corner by its place along the cuboid's edges and its place in the flat net.
        local = [
            tuple(space.dot(space.minus(piece.motion[name](p), corner), axis) for axis in axes) + tuple(p) for p in part
        ]
        inside = clipped(local, start, end)
        if inside and not any(goes_through(inside, opening) for opening in openings[name]):
            return False
    return True


def is_free_round(piece, panel, stands):
    """Whether no card lies in the upright cylinder, or in the ball where the export names one, tried at many points."""
    motion = piece.motion[panel]
    foot = motion(stands["foot"])
    along = space.minus(motion(space.plus(stands["foot"], stands["along"])), foot)
    height = math.sqrt(space.dot(along, along))
    axis = tuple(c / height for c in along)
    middle = space.plus(foot, tuple(c / 2 for c in along))
    radius = stands["across"] / 2 - SLACK
    for name, part in flat_parts(piece):
        for p in points_of(part):
            at = piece.motion[name](p)
            away = space.minus(at, foot)
            up = space.dot(away, axis)
            if stands["shape"] == "ball":
                from_middle = space.minus(at, middle)
                if math.sqrt(space.dot(from_middle, from_middle)) < radius:
                    return False
            elif SLACK < up < height - SLACK and math.sqrt(max(0, space.dot(away, away) - up * up)) < radius:
                return False
    return True


def points_of(part, steps=12):
    """Points all over a convex part of the flat net."""
    for a, b in zip(part, part[1:] + part[:1]):
        for i in range(steps):
            edge = [p + (q - p) * i / steps for p, q in zip(a, b)]
            for k in range(steps + 1):
                yield [p + (q - p) * k / steps for p, q in zip(edge, part[0])]


def flat_parts(piece):
    for name, ring in piece.outline.items():
        for part in flat.convex_parts(ring):
            yield name, part


def goes_through(corners, opening):
    """Whether what the cuboid cuts from a panel lies all in one of its openings, taken as convex."""
    return all(flat.inside(p[3:], opening) or flat.distance_to_ring(p[3:], opening) < SLACK for p in corners)


def clipped(solid, start, end):
    """The part of a convex panel part inside the cuboid."""
    if any(max(p[k] for p in solid) <= start[k] or min(p[k] for p in solid) >= end[k] for k in range(3)):
        return []
    for k in range(3):
        solid = cut(cut(solid, k, start[k], 1), k, end[k], -1)
    return solid


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
