"""Rigid motions in space for the independent fold check. Standard library only."""

import math


class Motion:
    """Rotation matrix and shift; places the flat sheet (x, y, 0) in space."""

    def __init__(self, rows=((1, 0, 0), (0, 1, 0), (0, 0, 1)), shift=(0, 0, 0)):
        self.rows = rows
        self.shift = shift

    def __call__(self, point):
        x, y, z = point if len(point) == 3 else (*point, 0.0)
        return tuple(r[0] * x + r[1] * y + r[2] * z + s for r, s in zip(self.rows, self.shift))

    def back(self, point):
        """Where a point of space lies in this panel's own flat coordinates (x, y, height)."""
        x, y, z = point[0] - self.shift[0], point[1] - self.shift[1], point[2] - self.shift[2]
        a, b, c = self.rows
        return (a[0] * x + b[0] * y + c[0] * z, a[1] * x + b[1] * y + c[1] * z, a[2] * x + b[2] * y + c[2] * z)

    def then_local(self, local):
        """This motion after `local`: the child's motion when `local` turns it about its crease."""
        columns = list(zip(*local.rows))
        rows = tuple(tuple(sum(a * b for a, b in zip(row, col)) for col in columns) for row in self.rows)
        return Motion(rows, self(local.shift))


def turn_about(p, q, radians):
    """Right-handed turn about the line in the sheet from p to q (Rodrigues' formula)."""
    length = math.dist(p, q)
    x, y = (q[0] - p[0]) / length, (q[1] - p[1]) / length
    c, s = math.cos(radians), math.sin(radians)
    rows = (
        (c + x * x * (1 - c), x * y * (1 - c), y * s),
        (x * y * (1 - c), c + y * y * (1 - c), -x * s),
        (-y * s, x * s, c),
    )
    turned = Motion(rows)((p[0], p[1], 0.0))
    return Motion(rows, (p[0] - turned[0], p[1] - turned[1], -turned[2]))


def dot(a, b):
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def cross(a, b):
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])


def minus(a, b):
    return (a[0] - b[0], a[1] - b[1], a[2] - b[2])


def plus(a, b):
    return (a[0] + b[0], a[1] + b[1], a[2] + b[2])
