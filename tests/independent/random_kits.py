"""Random class kits of every kind. All depend on the generator given, so that a seed repeats them."""

import dataclasses

from class_kit import INCH, MM, Blank, Kit, Sheet

PAPERS = ((210, 297), (297, 420), (148, 210), (305, 305), (320, 450), (330, 483))
NAMES = "Ada Ben Cleo Dora Emil Fay Gus Hana Ivo Jette Kim Leo Mo Nils Oda Piet Rosa Sam Tess Uwe Vera Wim Zoë".split()
LEAST = 5  # mm that the program takes as a blank's side


def some_names(chance, kit):
    if chance.random() < 0.4:
        kit.names = chance.sample(NAMES, chance.randint(1, min(len(NAMES), kit.sets)))
    return kit


def lettered(sizes, chance, most=3, **more):
    return [Blank(f"N{i + 1}", w, h, chance.randint(1, most), **more) for i, (w, h) in enumerate(sizes)]


def tricky_side(chance, side):
    """Mostly near a half or a third of a sheet's side, where sums of sides decide; never above it."""
    kind = chance.randrange(5)
    if kind == 0:
        wanted = side // 2 + chance.randint(-3, 1)
    elif kind == 1:
        wanted = side // 3 + chance.randint(-2, 2)
    elif kind == 2:
        wanted = chance.randint(1, max(1, side // 6))
    else:
        wanted = chance.randint(1, side)
    return min(side, max(1, wanted))


def small_sizes(chance, sheet, least):
    """One to three sizes for a small sheet: tricky ones, twins, squares, one as large as the sheet, a narrow strip."""
    side = lambda i: max(least, tricky_side(chance, sheet[i]))
    sizes = [(side(0), side(1)) for _ in range(chance.randint(1, 3))]
    special = chance.randrange(8)
    if special == 0:
        sizes[-1] = sizes[0]  # the same under two names
    elif special == 1:
        sizes[-1] = sizes[0][::-1]
    elif special == 2:
        sizes[0] = sheet
    elif special == 3:
        sizes[0] = (sizes[0][0], sizes[0][0])
    elif special == 4:
        sizes[0] = (max(least, chance.randint(1, 3)), side(1))
    elif special == 5:  # a little longer than one that is wanted more often
        a, b = sizes[0]
        sizes[-1] = (max(least, a - chance.randint(1, 3)), b)
    return [(max(least, w), max(least, h)) for w, h in sizes]


def small_sheets(chance, sides, unit, keep):
    prices = chance.choice(("none", "any", "some", "prime"))
    coin = {"none": lambda: 0, "any": lambda: chance.randint(10, 99), "some": lambda: chance.choice((0, 35)),
            "prime": lambda: chance.choice((31, 37, 41, 43, 53))}[prices]  # fmt: skip
    return [
        Sheet(
            f"S{i + 1}", w * unit, h * unit,
            price=coin(),
            grain=chance.choice(("", "long", "short")) if keep else "",
            pattern=chance.random() < 0.25,
            **scarce(chance, 0.4),
        )
        for i, (w, h) in enumerate(sides)
    ]  # fmt: skip


def brute_kit(chance):
    """A kit that plain enumeration can solve, and the unit its sizes are whole multiples of."""
    unit, least, most = chance.choice((5 * MM, 6 * MM, 7 * MM, 9 * MM, 11 * MM, INCH // 4)), 1, 60
    if chance.random() < 0.15:  # a millimetre is the unit itself: everything as small as it goes
        unit, least, most = MM, LEAST, 70
    sides = [(chance.randint(12, most), chance.randint(12, most)) for _ in range(chance.choice((1, 1, 2, 3)))]
    if unit == MM:
        sides = [(max(30, w), max(30, h)) for w, h in sides]
    sizes = small_sizes(chance, max(sides, key=lambda side: side[0] * side[1]), least)
    takers = chance.choice((1, 1, 1, 2, 3))
    blanks = [
        Blank(f"N{i + 1}", w * unit, h * unit, 1 if takers > 1 else chance.randint(1, 3)) for i, (w, h) in enumerate(sizes)
    ]
    keep = chance.random() < 0.3
    units = "mm" if unit % MM == 0 else "in"
    return Kit(small_sheets(chance, sides, unit, keep), blanks, takers=takers, keep_grain=keep, units=units), unit


def scarce(chance, share):
    if chance.random() < share:
        return {"owned": chance.randint(0, 3), "limit": True}
    return {}


def some_sheets(chance, kinds, **more):
    return [
        Sheet(f"S{i + 1}", w * MM, h * MM, **more)
        for i, (w, h) in enumerate(chance.sample(PAPERS, kinds))
    ]


def some_blanks(chance, sheets, types, most=3, raster=MM):
    """Of sizes that fit the first sheet as it lies and turned."""
    side = min(min(sheet.w, sheet.h) for sheet in sheets)
    sizes = []
    for _ in range(types):
        sizes.append(
            tuple(chance.randint(15 * MM // raster, side * chance.choice((3, 6, 9)) // 10 // raster) * raster for _ in "wh")
        )
    return lettered(sizes, chance, most)


def plain_kit(chance):
    sheets = some_sheets(chance, 1)
    return Kit(sheets, some_blanks(chance, sheets, chance.randint(1, 8)), takers=chance.randint(2, 40), spares=chance.randint(0, 2))


def priced_kit(chance):
    sheets = [
        dataclasses.replace(sheet, price=chance.randint(15, 199), owned=chance.choice((0, 0, 5)))
        for sheet in some_sheets(chance, chance.randint(2, 4))
    ]
    return Kit(sheets, some_blanks(chance, sheets, chance.randint(2, 7)), takers=chance.randint(2, 25))


def scarce_kit(chance):
    """So few of some sheets that others must help; one kind there are plenty of."""
    sheets = [
        dataclasses.replace(sheet, price=chance.choice((0, chance.randint(15, 99))), owned=chance.randint(0, 6), limit=True)
        for sheet in some_sheets(chance, chance.randint(2, 4))
    ]
    if chance.random() < 0.7:
        sheets[-1] = dataclasses.replace(sheets[-1], limit=False)
    return Kit(sheets, some_blanks(chance, sheets, chance.randint(2, 6)), takers=chance.randint(1, 12))


def grained_kit(chance):
    sheets = [
        dataclasses.replace(sheet, grain=chance.choice(("long", "short")), pattern=chance.random() < 0.3)
        for sheet in some_sheets(chance, chance.randint(1, 3))
    ]
    return Kit(sheets, some_blanks(chance, sheets, chance.randint(1, 6)), takers=chance.randint(2, 20), keep_grain=True)


def patterned_kit(chance):
    sheets = [
        dataclasses.replace(sheet, pattern=chance.random() < 0.6) for sheet in some_sheets(chance, chance.randint(1, 3))
    ]
    return Kit(sheets, some_blanks(chance, sheets, chance.randint(1, 6)), takers=chance.randint(2, 20))


def odd_kit(chance):
    """Tenths and hundredths of a millimetre."""
    raster = chance.choice((MM // 10, MM // 100))
    sheets = some_sheets(chance, 1)
    return Kit(sheets, some_blanks(chance, sheets, chance.randint(2, 6), raster=raster), takers=chance.randint(2, 20))


def inch_kit(chance):
    raster = INCH // chance.choice((4, 8, 16))
    sizes = chance.sample(((12, 12), (8.5, 11), (11, 17), (6, 12), (18, 12)), chance.randint(1, 2))
    sheets = [Sheet(f"S{i + 1}", round(w * INCH), round(h * INCH)) for i, (w, h) in enumerate(sizes)]
    blanks = some_blanks(chance, sheets, chance.randint(1, 6), raster=raster)
    return Kit(sheets, blanks, takers=chance.randint(2, 30), units="in")


def mixed_units_kit(chance):
    """Millimetre blanks for a trimmer with an inch scale."""
    kit = plain_kit(chance)
    kit.units = "in"
    return kit


def two_card_kit(chance):
    """A second card, cut from the same sheets of any card or from its own."""
    sheets = [dataclasses.replace(sheet, **scarce(chance, 0.6)) for sheet in some_sheets(chance, 2)]
    sheets.append(Sheet("Plenty", 210 * MM, 297 * MM))
    if chance.random() < 0.5:
        sheets.append(Sheet("Heavy", 330 * MM, 483 * MM, card="cover-110lb"))
    blanks = some_blanks(chance, sheets, chance.randint(2, 6))
    blanks = [dataclasses.replace(blank, card="cover-110lb") if i % 2 else blank for i, blank in enumerate(blanks)]
    return Kit(sheets, blanks, takers=chance.randint(2, 12))


def many_sizes_kit(chance):
    sheets = some_sheets(chance, chance.randint(1, 2))
    return Kit(sheets, some_blanks(chance, sheets, chance.randint(10, 30), 2), takers=chance.randint(1, 15))


def ten_to_twenty_kit(chance):
    """10 to 20 sizes, from one kind of sheet or several, priced or not."""
    sheets = some_sheets(chance, chance.randint(1, 3))
    if chance.random() < 0.5:
        sheets = [dataclasses.replace(sheet, price=chance.randint(15, 199)) for sheet in sheets]
    return Kit(sheets, some_blanks(chance, sheets, chance.randint(10, 20)), takers=chance.randint(2, 25))


def tiny_blanks_kit(chance):
    """More than 127 and 255 to a sheet."""
    sheets = some_sheets(chance, 1)
    sizes = [(chance.randint(5, 21) * MM, chance.randint(5, 21) * MM) for _ in range(chance.randint(1, 3))]
    return Kit(sheets, lettered(sizes, chance), takers=chance.randint(60, 400))


def parted(chance, w, h, least, most):
    """Sizes of the parts of a rectangle after random cuts from edge to edge, about `most` of them; nothing is left."""
    parts = [(w, h)]
    for _ in range(4 * most):
        if len(parts) >= most:
            break
        x, y = parts.pop(chance.randrange(len(parts)))
        upright = chance.random() < x / (x + y)
        side = x if upright else y
        if side < 2 * least:
            parts.append((x, y))
            continue
        at = chance.choice((side // 2, side // 3, chance.randint(least, side - least)))
        at = min(max(at, least), side - least)
        parts += [(at, y), (side - at, y)] if upright else [(x, at), (x, side - at)]
    return parts


def whole_sheets_kit(chance):
    """A kit cut from whole sheets without any waste, so that what they cost is the least; and that cost.

    Where sheets have prices they go by the area, so that no others do for less.
    """
    takers, kinds = chance.randint(1, 12), chance.randint(1, 2)
    sides = chance.sample(((200, 300), (300, 400), (240, 320), (300, 300), (400, 600)), kinds)
    sheets = [Sheet(f"S{i + 1}", w * MM, h * MM, price=w * h // 100 if kinds > 1 else 0) for i, (w, h) in enumerate(sides)]
    counts, cost = {}, 0
    for sheet in chance.choices(sheets, k=chance.randint(1, 3)):
        cost += takers * (sheet.price if kinds > 1 else 1)
        for size in parted(chance, sheet.w // MM, sheet.h // MM, 20, chance.randint(2, 12)):
            counts[size] = counts.get(size, 0) + 1
    blanks = [Blank(f"N{i + 1}", w * MM, h * MM, count) for i, ((w, h), count) in enumerate(counts.items())]
    pattern = chance.random() < 0.4
    return Kit([dataclasses.replace(sheet, pattern=pattern) for sheet in sheets], blanks, takers=takers), cost


def easy_kit(chance):
    """A class that wants an easy plan, some with blanks too small for the trimmer."""
    kit = chance.choice((plain_kit, inch_kit, mixed_units_kit, odd_kit, grained_kit, scarce_kit, priced_kit))(chance)
    kit.plan = "easy"
    if chance.random() < 0.4:
        kit.blanks.append(Blank("Small", chance.randint(6, 19) * MM, chance.randint(6, 80) * MM, chance.randint(1, 3)))
    return kit


KINDS = {
    "plain": plain_kit, "priced": priced_kit, "scarce": scarce_kit, "grained": grained_kit, "patterned": patterned_kit,
    "odd": odd_kit, "inch": inch_kit, "mixed-units": mixed_units_kit, "two-cards": two_card_kit,
    "many-sizes": many_sizes_kit, "10-to-20": ten_to_twenty_kit, "tiny": tiny_blanks_kit, "easy": easy_kit,
}  # fmt: skip


def random_kit(kind, chance):
    return some_names(chance, KINDS[kind](chance))
