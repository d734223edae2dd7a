"""Judges the plan that `creasewright kit -o plan.json` writes, against the kit that was asked for.

Nothing of the program is used: pieces are laid beside each other, cut trees are followed, guillotine cuts are
looked for anew, and numbers and costs are added up. Every fault is a line that begins with its kind.
"""

import collections

from class_kit import INCH, MM

LEAST_OFFCUT = 20 * MM  # a side of what the file lists as an offcut


def nm(value):
    """Of a length in mm; the file holds whole nanometres."""
    length = round(value * MM)
    if abs(value * MM - length) > 0.01:
        raise ValueError(f"{value} mm is no whole nanometre")
    return length


def mm(length):
    return f"{length / MM:g}"


def mark_of(kit):
    """The marks of the trimmer that a kit is cut at."""
    return INCH // 16 if kit.units == "in" else MM


def up(length, mark):
    return -(-length // mark) * mark


def is_held(kit, card, w, h):
    return any(
        (w <= x and h <= y) or (kit.may_turn(sheet) and h <= x and w <= y)
        for sheet in kit.sheets_for(card)
        for x, y in [kit.laid(sheet)]
    )


def cut_size(kit, card, blank):
    """The sides that an easy plan cuts a blank to: on the marks where a sheet holds that, first its width."""
    w, h = blank.w, blank.h
    if is_held(kit, card, up(w, mark_of(kit)), h):
        w = up(w, mark_of(kit))
    if is_held(kit, card, w, up(h, mark_of(kit))):
        h = up(h, mark_of(kit))
    return w, h


class Faults(list):
    def add(self, kind, text):
        self.append(f"{kind}: {text}")


def is_guillotine(rectangles):
    """Whether cuts from edge to edge part them; any such cut may come first."""
    if len(rectangles) < 2:
        return True
    for low, high in ((0, 2), (1, 3)):
        ordered = sorted(rectangles, key=lambda r: r[low])
        reach = ordered[0][high]
        for i, rectangle in enumerate(ordered[1:], 1):
            if rectangle[low] >= reach:
                return is_guillotine(ordered[:i]) and is_guillotine(ordered[i:])
            reach = max(reach, rectangle[high])
    return False


def overlapping(rectangles):
    ordered = sorted(rectangles)
    for i, a in enumerate(ordered):
        for b in ordered[i + 1 :]:
            if b[0] >= a[2]:
                break
            if a[1] < b[3] and b[1] < a[3]:
                yield a, b


def follow(cuts, x, y, w, h, faults, where):
    """The leaves of a cut tree: (demand or None, x, y, w, h)."""
    if "blank" in cuts:
        return [(cuts["blank"], x, y, w, h)]
    if "offcut" in cuts:
        if tuple(map(nm, cuts["offcut"])) != (w, h):
            faults.add("tree", f"{where}: an offcut of {cuts['offcut']} is {mm(w)} x {mm(h)} mm")
        return [(None, x, y, w, h)]
    at, (first, second) = nm(cuts["at"]), cuts["parts"]
    upright = cuts["cut"] == "upright"
    if not 0 < at < (w if upright else h):
        faults.add("tree", f"{where}: a cut at {mm(at)} of a part of {mm(w)} x {mm(h)} mm")
        return []
    if upright:
        return follow(first, x, y, at, h, faults, where) + follow(second, x + at, y, w - at, h, faults, where)
    return follow(first, x, y, w, at, faults, where) + follow(second, x, y + at, w, h - at, faults, where)


def judge_piece(piece, wanted, blank, may_turn, where, faults):
    """`wanted` = the sides that the blank is cut to."""
    size = (nm(piece["w"]), nm(piece["h"]))
    if size != (wanted[::-1] if piece["turned"] else wanted):
        faults.add("size", f"{where}: {blank.name} is {mm(size[0])} x {mm(size[1])} mm, turned {piece['turned']}")
    if piece["turned"] and not may_turn and blank.w != blank.h:
        faults.add("turned", f"{where}: {blank.name} is turned against grain or pattern")
    if (piece["design"], piece["piece"]) != (blank.design, blank.piece):
        faults.add("source", f"{where}: {blank.name} is said to be of {piece['design']} {piece['piece']}")


def judge_places(places, w, h, where, faults):
    for x, y, right, top in places:
        if x < 0 or y < 0 or right > w or top > h:
            faults.add("outside", f"{where}: a piece reaches {mm(right)}, {mm(top)} of {mm(w)} x {mm(h)} mm")
    for a, b in overlapping(places):
        faults.add("overlap", f"{where}: pieces at {mm(a[0])}, {mm(a[1])} and {mm(b[0])}, {mm(b[1])}")
    if not is_guillotine(places):
        faults.add("guillotine", f"{where}: no cuts from edge to edge part the pieces")


def judge_layout(layout, kit, card, blanks, sizes, where, faults):
    """How many of each blank a sheet gives, and the sheet; None where that cannot be said."""
    sheet = next((s for s in kit.sheets_for(card) if s.name == layout["stock"]), None)
    if sheet is None:
        faults.add("stock", f"{where}: {layout['stock']} is no sheet of this card")
        return None
    if not isinstance(layout["count"], int) or layout["count"] < 1:
        faults.add("sheets", f"{where}: cut {layout['count']} times")
        return None
    w, h = nm(layout["sheet"]["w"]), nm(layout["sheet"]["h"])
    if (w, h) != kit.laid(sheet):
        faults.add("sheet", f"{where}: {sheet.name} is laid as {mm(w)} x {mm(h)} mm")
    named = {blank.name: i for i, blank in enumerate(blanks)}
    told, places = [], []
    for piece in layout["pieces"]:
        if piece["name"] not in named:
            faults.add("name", f"{where}: nobody asked for {piece['name']}")
            return None
        demand = named[piece["name"]]
        judge_piece(piece, sizes[demand], blanks[demand], kit.may_turn(sheet), where, faults)
        x, y, pw, ph = (nm(piece[key]) for key in "xywh")
        told.append((demand, x, y, pw, ph))
        places.append((x, y, x + pw, y + ph))
    judge_places(places, w, h, where, faults)
    judge_tree(layout, told, w, h, where, faults)
    return sheet, collections.Counter(leaf[0] for leaf in told)


def judge_tree(layout, told, w, h, where, faults):
    leaves = follow(layout["cuts"], 0, 0, w, h, faults, where)
    cut = sorted(leaf for leaf in leaves if leaf[0] is not None)
    if cut != sorted(told):
        faults.add("tree", f"{where}: the cuts give {len(cut)} pieces, other than the {len(told)} told")
    left = collections.Counter(
        (pw, ph) for demand, _, _, pw, ph in leaves if demand is None and min(pw, ph) >= LEAST_OFFCUT
    )
    listed = collections.Counter()
    for offcut in layout["offcuts"]:
        listed[nm(offcut["w"]), nm(offcut["h"])] += offcut["count"]
    if left != listed:
        faults.add("offcuts", f"{where}: {dict(listed)} are told, {dict(left)} are left")


def judge_card(told, kit, card, blanks, used, faults):
    where = told["card"]
    if [(d["name"], nm(d["w"]), nm(d["h"])) for d in told["demands"]] != [(b.name, b.w, b.h) for b in blanks]:
        faults.add("demands", f"{where}: the blanks are not those asked for")
        return
    sizes = [cut_size(kit, card, blank) if told["plan"] == "easy" else (blank.w, blank.h) for blank in blanks]
    have, sheets, cost = collections.Counter(), 0, 0
    for number, layout in enumerate(told["layouts"], 1):
        judged = judge_layout(layout, kit, card, blanks, sizes, f"{where}, layout {number}", faults)
        if judged is None:
            continue
        sheet, counts = judged
        sheets += layout["count"]
        cost += layout["count"] * (sheet.price if kit.priced(card) else 1)
        used[sheet] += layout["count"]
        for demand, count in counts.items():
            have[demand] += count * layout["count"]
    for i, (blank, demand) in enumerate(zip(blanks, told["demands"])):
        wanted = blank.per_set * kit.sets
        if demand["quantity"] != wanted:
            faults.add("quantity", f"{where}: {demand['quantity']} of {blank.name} are told, {wanted} are wanted")
        if have[i] < wanted:
            faults.add("missing", f"{where}: {have[i]} of {wanted} {blank.name} are cut")
        if have[i] - wanted != demand["left_over"]:
            faults.add("left-over", f"{where}: {demand['left_over']} of {blank.name} are told, {have[i] - wanted} are left")
    judge_sums(told, sheets, cost, where, faults)


def judge_sums(told, sheets, cost, where, faults):
    if told["sheets"] != sheets:
        faults.add("sheets", f"{where}: {told['sheets']} are told, {sheets} are cut")
    if told["cost"] != cost:
        faults.add("cost", f"{where}: {told['cost']} is told, {cost} is the sum")
    if told["bound"] > told["cost"]:
        faults.add("bound", f"{where}: the bound {told['bound']} is above the cost {told['cost']}")
    if told["proven"] != (told["cost"] == told["bound"]):
        faults.add("proof", f"{where}: cost {told['cost']}, bound {told['bound']}, proven {told['proven']}")


def judge_plan(kit, plan):
    """Faults of a plan, each a line."""
    faults = Faults()
    if (plan["format"], plan["version"], plan["units"]) != ("creasewright-kit-plan", 1, "mm"):
        faults.add("format", "not the promised format")
    if (plan["takers"], plan["spares"]) != (kit.takers, kit.spares):
        faults.add("people", f"{plan['takers']} + {plan['spares']} are told, {kit.takers} + {kit.spares} come")
    demands, used = kit.demands(), collections.Counter()
    if len(plan["cards"]) != len(demands):
        faults.add("cards", f"{len(plan['cards'])} cards, {len(demands)} are used")
    for told, (card, blanks) in zip(plan["cards"], demands.items()):
        judge_card(told, kit, card, blanks, used, faults)
    for sheet, count in used.items():
        if sheet.limit and count > sheet.owned:
            faults.add("at-hand", f"{count} sheets of {sheet.name} are cut, {sheet.owned} are at hand")
    if plan["plan"] != kit.plan or any(card["plan"] != "fewest" for card in plan["cards"] if kit.plan == "fewest"):
        faults.add("goal", f"{plan['plan']} is told, {kit.plan} is wanted")
    if plan["sheets"] != sum(card["sheets"] for card in plan["cards"]):
        faults.add("sheets", f"{plan['sheets']} in all is not the sum of the cards")
    if plan["proven"] != all(card["proven"] for card in plan["cards"]):
        faults.add("proof", "proven in all is not what the cards say")
    more = plan["one_more"]
    if more is not None and (more["sheets"] < 0 or more["price"] < 0):
        faults.add("one-more", f"one more person takes {more['sheets']} sheets, {more['price']}")
    return faults


def total_cost(plan):
    return sum(card["cost"] for card in plan["cards"])


def total_bound(plan):
    return sum(card["bound"] for card in plan["cards"])
