"""Plane geometry for the independent fold check: plain lists of (x, y), millimetres. Standard library only."""

import math


def open_ring(ring):
    """The corners once each, whether or not the first is repeated at the end."""
    points = [(float(x), float(y)) for x, y in ring]
    while len(points) > 1 and math.dist(points[0], points[-1]) < 1e-9:
        points.pop()
    return points


def area(ring):
    """Signed: positive when the corners run counter-clockwise."""
    return sum(x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in zip(ring, ring[1:] + ring[:1])) / 2


def counter_clockwise(ring):
    return ring if area(ring) >= 0 else ring[::-1]


def centroid(ring):
    return (sum(x for x, _ in ring) / len(ring), sum(y for _, y in ring) / len(ring))


def box(ring):
    xs, ys = [x for x, _ in ring], [y for _, y in ring]
    return min(xs), min(ys), max(xs), max(ys)


def turn(a, b, c):
    """Twice the area of the triangle: positive when a, b, c turn left."""
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def distance_to_segment(point, a, b):
    dx, dy = b[0] - a[0], b[1] - a[1]
    length2 = dx * dx + dy * dy
    along = 0 if length2 == 0 else ((point[0] - a[0]) * dx + (point[1] - a[1]) * dy) / length2
    along = min(1, max(0, along))
    return math.dist(point, (a[0] + along * dx, a[1] + along * dy))


def distance_to_ring(point, ring):
    return min(distance_to_segment(point, a, b) for a, b in zip(ring, ring[1:] + ring[:1]))


def inside(point, ring):
    """Even-odd rule; points on the ring itself may fall either way."""
    x, y = point
    hit = False
    for (x1, y1), (x2, y2) in zip(ring, ring[1:] + ring[:1]):
        if (y1 > y) != (y2 > y) and x < x1 + (y - y1) * (x2 - x1) / (y2 - y1):
            hit = not hit
    return hit


def is_convex(ring):
    return all(
        turn(ring[i - 2], ring[i - 1], ring[i]) >= -1e-9 for i in range(len(ring))
    )


def hull(ring):
    """The convex hull, counter-clockwise (Andrew's monotone chain)."""

    def chain(points):
        kept = []
        for p in points:
            while len(kept) > 1 and turn(kept[-2], kept[-1], p) <= 0:
                kept.pop()
            kept.append(p)
        return kept[:-1]

    points = sorted({(x, y) for x, y in ring})
    return chain(points) + chain(points[::-1])


def convex_parts(ring):
    """The ring itself when convex, else its triangles by ear clipping."""
    ring = counter_clockwise(ring)
    if is_convex(ring):
        return [ring]
    rest, parts = ring[:], []
    while len(rest) > 3:
        ear = next((i for i in range(len(rest)) if is_ear(rest, i)), None)
        if ear is None:  # only slivers are left
            return parts
        parts.append([rest[ear - 1], rest[ear], rest[(ear + 1) % len(rest)]])
        del rest[ear]
    return parts + [rest]


def is_ear(ring, i):
    a, b, c = ring[i - 1], ring[i], ring[(i + 1) % len(ring)]
    if turn(a, b, c) <= 1e-12:
        return abs(turn(a, b, c)) <= 1e-12  # a corner on a straight line can go
    others = (p for p in ring if p not in (a, b, c))
    return not any(turn(a, b, p) > 0 and turn(b, c, p) > 0 and turn(c, a, p) > 0 for p in others)


def clip_convex(subject, window):
    """The part of a convex ring inside another convex, counter-clockwise ring."""
    for a, b in zip(window, window[1:] + window[:1]):
        kept = []
        for p, q in zip(subject, subject[1:] + subject[:1]):
            side_p, side_q = turn(a, b, p), turn(a, b, q)
            if side_p >= 0:
                kept.append(p)
            if side_p * side_q < 0:
                share = side_p / (side_p - side_q)
                kept.append((p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1])))
        subject = kept
        if len(subject) < 3:
            return []
    return subject


def common_area(one, other):
    """Area that two rings share."""
    x1, y1, x2, y2 = box(one)
    u1, v1, u2, v2 = box(other)
    if x2 <= u1 or u2 <= x1 or y2 <= v1 or v2 <= y1:
        return 0.0
    return sum(
        area(clipped)
        for a in convex_parts(one)
        for b in convex_parts(other)
        if (clipped := clip_convex(a, b))
    )
