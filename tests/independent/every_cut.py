"""The least cost of a small kit by plain enumeration: every whole cut position, every number of blanks.

No raster, no bound, no columns: for each part of a sheet, the set of all counts of blanks that it can be cut
into, from all its cuts in two. Small because a set of counts is one whole number, a bit for each count.
"""

import functools
import math


class Counts:
    """Counts of blanks up to the numbers wanted, each a bit; a set of them is a whole number."""

    def __init__(self, wanted):
        self.wanted = wanted
        self.steps = [math.prod(n + 1 for n in wanted[:i]) for i in range(len(wanted))]
        self.size = math.prod(n + 1 for n in wanted)
        self.all = self.size - 1
        digits = [[code // step % (n + 1) for step, n in zip(self.steps, wanted)] for code in range(self.size)]
        self.sum = [[self._capped(a, b) for b in digits] for a in digits]

    def _capped(self, a, b):
        return sum(min(x + y, n) * step for x, y, n, step in zip(a, b, self.wanted, self.steps))

    @functools.lru_cache(maxsize=None)
    def joined(self, first, second):
        """What two parts give together, for every choice in each."""
        seconds = [b for b in range(self.size) if second >> b & 1]
        joined = 0
        for a in range(self.size):
            if first >> a & 1:
                for b in seconds:
                    joined |= 1 << self.sum[a][b]
        return joined


def cuttable(width, height, sizes, counts, may_turn):
    """The set of counts that a sheet can be cut into; sizes are whole."""
    one = {}
    for i, (w, h) in enumerate(sizes):
        for size in {(w, h), (h, w)} if may_turn else {(w, h)}:
            one[size] = one.get(size, 0) | 1 << counts.steps[i]
    sets = [[1] * (height + 1) for _ in range(width + 1)]
    least = min(min(size) for size in sizes)
    for x in range(least, width + 1):
        for y in range(least, height + 1):
            found = one.get((x, y), 0) | sets[x - 1][y] | sets[x][y - 1]
            for at in range(1, x // 2 + 1):
                a, b = sets[at][y], sets[x - at][y]
                if a != 1 and b != 1:
                    found |= counts.joined(a, b)
            for at in range(1, y // 2 + 1):
                a, b = sets[x][at], sets[x][y - at]
                if a != 1 and b != 1:
                    found |= counts.joined(a, b)
            sets[x][y] = found
    return sets[width][height]


def least_cost(sheets, sizes, wanted):
    """Of `sheets` = (width, height, cost, most or None, may turn); None where they do not suffice."""
    counts = Counts(wanted)
    best = {0: 0}  # counts -> cost
    for width, height, cost, most, may_turn in sheets:
        ways = cuttable(width, height, sizes, counts, may_turn)
        codes = [code for code in range(1, counts.size) if ways >> code & 1]
        layer = dict(best)
        for _ in range(sum(wanted) if most is None else min(most, sum(wanted))):
            grown = {}
            for have, paid in layer.items():
                for code in codes:
                    there = counts.sum[have][code]
                    grown[there] = min(paid + cost, grown.get(there, math.inf))
            for have, paid in grown.items():
                best[have] = min(paid, best.get(have, math.inf))
            layer = grown
    return best.get(counts.all)


def kit_cost(kit, unit):
    """Of a kit of one card whose sizes are all whole multiples of `unit`; None: it cannot be cut."""
    (card, blanks), = kit.demands().items()
    whole = lambda length: exact(length, unit)
    sizes = [(whole(blank.w), whole(blank.h)) for blank in blanks]
    wanted = [blank.per_set * kit.sets for blank in blanks]
    priced = kit.priced(card)
    sheets = []
    for sheet in kit.sheets_for(card):
        width, height = map(whole, kit.laid(sheet))
        most = sheet.owned if sheet.limit else None
        sheets.append((width, height, sheet.price if priced else 1, most, kit.may_turn(sheet)))
    return least_cost(sheets, sizes, wanted)


def exact(length, unit):
    if length % unit:
        raise ValueError(f"{length} nm is no multiple of {unit} nm")
    return length // unit
