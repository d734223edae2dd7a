"""Kits that need no more than another one does: a bound above the other's plan is a false proof.

No optimum has to be known for it, so that it judges bounds of kits of any size.
"""

import dataclasses

from class_kit import MM


def with_fewer_people(kit, chance):
    return dataclasses.replace(kit, takers=kit.takers - 1, names=[]) if kit.takers > 1 else None


def without_a_blank(kit, chance):
    if len(kit.blanks) < 2:
        return None
    gone = chance.choice(kit.blanks)
    cards = {blank.card for blank in kit.blanks if blank is not gone} | {piece.card for piece in kit.pieces}
    left = [blank for blank in kit.blanks if blank is not gone]
    return dataclasses.replace(kit, blanks=left) if gone.card in cards else None


def with_a_smaller_blank(kit, chance):
    if not kit.blanks:
        return None
    at = chance.randrange(len(kit.blanks))
    blank = kit.blanks[at]
    less = chance.choice((1, 2, 7)) * MM
    if min(blank.w, blank.h) < 5 * MM + less:
        return None
    w, h = (blank.w - less, blank.h) if chance.random() < 0.5 else (blank.w, blank.h - less)
    smaller = dataclasses.replace(blank, w=w, h=h)
    return dataclasses.replace(kit, blanks=[*kit.blanks[:at], smaller, *kit.blanks[at + 1 :]])


def on_larger_sheets(kit, chance):
    """By a millimetre or a few, the same for both sides so that the grain lies as it did."""
    more = chance.choice((1, 3, 10)) * MM
    return dataclasses.replace(kit, sheets=[dataclasses.replace(s, w=s.w + more, h=s.h + more) for s in kit.sheets])


def turned_as_one_likes(kit, chance):
    if not kit.keep_grain and not any(sheet.pattern for sheet in kit.sheets):
        return None
    sheets = [dataclasses.replace(sheet, pattern=False) for sheet in kit.sheets]
    return dataclasses.replace(kit, sheets=sheets, keep_grain=False)


def with_plenty_of_sheets(kit, chance):
    if not any(sheet.limit for sheet in kit.sheets):
        return None
    return dataclasses.replace(kit, sheets=[dataclasses.replace(sheet, limit=False) for sheet in kit.sheets])


def with_one_more_kind(kit, chance):
    model = chance.choice(kit.sheets)
    w, h = chance.choice(((250, 350), (210, 300), (500, 320)))
    more = dataclasses.replace(model, name="More", w=w * MM, h=h * MM, limit=False, owned=0, card="")
    return dataclasses.replace(kit, sheets=[*kit.sheets, more])


def in_another_order(kit, chance):
    blanks, sheets = list(kit.blanks), list(kit.sheets)
    chance.shuffle(blanks)
    chance.shuffle(sheets)
    return dataclasses.replace(kit, blanks=blanks, sheets=sheets)


def lying_down(kit, chance):
    """Sheets and blanks with their sides exchanged; the grain still runs along the same sides."""
    if kit.keep_grain or kit.pieces:
        return None
    turn = lambda thing: dataclasses.replace(thing, w=thing.h, h=thing.w)
    return dataclasses.replace(kit, blanks=list(map(turn, kit.blanks)), sheets=list(map(turn, kit.sheets)))


def with_a_kind_split(kit, chance):
    """A blank of several a set under two names."""
    splittable = [i for i, blank in enumerate(kit.blanks) if blank.per_set > 1]
    if not splittable:
        return None
    at = chance.choice(splittable)
    blank = kit.blanks[at]
    halves = [dataclasses.replace(blank, per_set=1), dataclasses.replace(blank, name=blank.name + "b", per_set=blank.per_set - 1)]
    return dataclasses.replace(kit, blanks=[*kit.blanks[:at], *halves, *kit.blanks[at + 1 :]])


EVERY = (
    with_fewer_people, without_a_blank, with_a_smaller_blank, on_larger_sheets, turned_as_one_likes,
    with_plenty_of_sheets, with_one_more_kind, in_another_order, lying_down, with_a_kind_split,
)  # fmt: skip


def random_relative(kit, chance):
    """(what was changed, the kit); nothing that some relation does not hold for is offered."""
    while True:
        change = chance.choice(EVERY)
        relative = change(kit, chance)
        same_coin = relative and [relative.priced(card) for card in relative.demands()] == [
            kit.priced(card) for card in kit.demands()
        ]
        if same_coin:
            return change.__name__.replace("_", " "), relative
