"""Judges the printed pages of a class against the kit: what they tell must be right, carried out literally."""

import collections
import re

from class_kit import INCH, MM
from plan_judge import Faults, mm
from trim_words import LENGTH, NUMBER, Trimmer, read_size

FINEST = MM // 20  # what a hand can set (common practice, no published source)
LEAST_OFFCUT = 30 * MM  # a side of what the pages call an offcut
SIZE = rf"{NUMBER} × {LENGTH}"


def letters(index):
    text = ""
    while index >= 0:
        text, index = chr(ord("A") + index % 26) + text, index // 26 - 1
    return text


def lettered(kit):
    """{letter: (blank, card)}, over all cards."""
    every = [(blank, card) for card, blanks in kit.demands().items() for blank in blanks]
    return {letters(i): pair for i, pair in enumerate(every)}


def money(text):
    return round(float(text.replace(",", "")) * 100)


def counted(pattern, text, faults, kind):
    """The match of a whole sentence; None, and a fault, where it reads otherwise."""
    match = re.fullmatch(pattern, text)
    if not match:
        faults.add(kind, f"not understood: {text}")
    return match


# Layouts


def layout_sheet(kit, name, notes, turned, faults, where):
    """The sheet that a layout names, and its sides before its steps; `turned`: they begin by turning it."""
    sheet = next((sheet for sheet in kit.sheets if sheet.name == name), None)
    if sheet is None:
        faults.add("stock", f"{where}: there is no sheet {name}")
        return None, (0, 0)
    w, h = kit.laid(sheet)
    text = " ".join(notes)
    grained = kit.keep_grain and sheet.grain
    way = "from left to right" if turned else "up and down"
    if grained and f"grain runs {way}" not in text:
        faults.add("notes", f"{where}: nothing is said of the grain")
    if sheet.pattern and "pattern" not in text:
        faults.add("notes", f"{where}: nothing is said of the pattern")
    across, high = (h, w) if turned else (w, h)
    if "upright" in text and across > high:
        faults.add("notes", f"{where}: {mm(w)} x {mm(h)} mm is called upright: {text}")
    if "on its long side" in text and across < high:
        faults.add("notes", f"{where}: {mm(w)} x {mm(h)} mm is said to lie on its long side: {text}")
    return sheet, (w, h)


def may_come_out(told, asked):
    """What is asked; where a trimmer's marks are inches and that is on none of them, up to eight marks more: one
    for each blank that lies beside or above it in the part."""
    on_mark = asked % (INCH // 16) == 0
    return told.may_be(asked) or (not on_mark and 0 < told.value - asked < 8 * (INCH // 16))


def judge_cut_piece(letter, part, blank, may_turn, where, faults):
    sizes = [(blank.w, blank.h)] + ([(blank.h, blank.w)] if may_turn else [])
    fitting = [size for size in sizes if may_come_out(part.x, size[0]) and may_come_out(part.y, size[1])]
    if not fitting:
        faults.add("steps", f"{where}: a {letter} comes out as {mm(part.x.value)} x {mm(part.y.value)} mm")
    elif all(min(part.x.value - x, part.y.value - y) < -FINEST for x, y in fitting):
        faults.add("below-size", f"{where}: a {letter} comes out as {mm(part.x.value)} x {mm(part.y.value)} mm, too small")


def judge_offcuts(left, told, where, faults):
    """Offcuts told and those left must be the same; near the least side either is right."""
    left = sorted(left, key=lambda part: (part.x.value, part.y.value))
    for text in told:
        match = counted(rf"(\d+) offcuts? of ({SIZE})(?:, .*)?", text, faults, "offcuts")
        if not match:
            continue
        x, y = read_size(match[2])
        same = [part for part in left if part.x.may_equal(x) and part.y.may_equal(y)]
        if len(same) < int(match[1]):
            faults.add("offcuts", f"{where}: {text} is told, {len(same)} are left")
        for part in same[: int(match[1])]:
            left.remove(part)
    for part in left:
        if min(side.value - side.slack for side in (part.x, part.y)) >= LEAST_OFFCUT:
            faults.add("offcuts", f"{where}: {mm(part.x.value)} x {mm(part.y.value)} mm is left and not told")


def judge_layout(block, number, kit, faults):
    """(sheet name, times, {letter: count}) of a printed layout; None where it cannot be read."""
    where = f"layout {number}"
    heading = counted(r"Layout (\d+): cut (\d+) sheets? of (.+?)(?: alike)?", block.heading, faults, "words")
    if not heading:
        return None
    if int(heading[1]) != number:
        faults.add("words", f"{where} is called {heading[1]}")
    notes = [text for mark, text in block.items if mark == "!"]
    turned = any(mark == "1" and "a quarter turned" in text for mark, text in block.items)
    sheet, (w, h) = layout_sheet(kit, heading[3], notes, turned, faults, where)
    if sheet is None:
        return None
    trimmer = Trimmer(w, h, faults, where)
    told, offcuts = collections.Counter(), []
    for mark, text in block.items:
        if mark.isdigit():
            trimmer.follow(mark, text)
        elif mark == "•" and " of " in text:
            match = re.fullmatch(r"(\d+) of ([A-Z]+): .*", text)
            if match:
                told[match[2]] += int(match[1])
            else:
                offcuts.append(text)
    judge_outcome(trimmer, told, offcuts, kit, sheet, where, faults)
    return sheet.name, int(heading[2]), told


def judge_outcome(trimmer, told, offcuts, kit, sheet, where, faults):
    known = lettered(kit)
    steps = trimmer.steps
    left = trimmer.finish()
    if steps == 0 and len(told) == 1 and sum(told.values()) == 1:  # the sheet is the blank
        trimmer.pieces, left = [(next(iter(told)), left[0])], []
    cut = collections.Counter(letter for letter, _ in trimmer.pieces)
    if cut != told:
        faults.add("steps", f"{where}: the steps give {dict(cut)}, {dict(told)} are told")
    for letter, part in trimmer.pieces:
        if letter not in known:
            faults.add("words", f"{where}: there is no blank {letter}")
            continue
        judge_cut_piece(letter, part, known[letter][0], kit.may_turn(sheet), where, faults)
    judge_offcuts(left, offcuts, where, faults)


def judge_cards(paper, kit, faults):
    """Every layout names the card that all its blanks are cut from, each card in its own words."""
    known, names = lettered(kit), {}
    for number, block in enumerate(paper.layouts, 1):
        told = [text for mark, text in block.items if mark == "" and text.startswith("Card: ")]
        cut = [re.fullmatch(r"\d+ of ([A-Z]+): .*", text) for mark, text in block.items if mark == "•"]
        cards = {known[match[1]][1] for match in cut if match and match[1] in known}
        if len(told) != 1 or len(cards) != 1:
            faults.add("card", f"layout {number} tells {told} for {sorted(cards)}")
        elif names.setdefault(cards.pop(), told[0]) != told[0]:
            faults.add("card", f"layout {number} tells {told[0]}, others of its card do not")
    if len(set(names.values())) != len(names):
        faults.add("card", f"cards are called alike: {names}")


def judge_layouts(paper, kit, faults):
    layouts = [judge_layout(block, i, kit, faults) for i, block in enumerate(paper.layouts, 1)]
    have = collections.Counter()
    for layout in layouts:
        if layout:
            have.update({letter: count * layout[1] for letter, count in layout[2].items()})
    over = []
    for letter, (blank, _) in lettered(kit).items():
        wanted = blank.per_set * kit.sets
        if have[letter] < wanted:
            faults.add("missing", f"the layouts give {have[letter]} of {wanted} {blank.name}")
        if have[letter] > wanted:
            over.append((have[letter] - wanted, letter))
    told = [
        match and (int(match[1]), match[2])
        for text in paper.lists.get("Left over, cut beyond what is needed", [])
        for match in [counted(r"(\d+) of ([A-Z]+): .*", text, faults, "words")]
    ]
    if told != over:
        faults.add("left-over", f"{told} are told, {over} are left over")
    return layouts


# Lists and labels


def judge_packing(paper, kit, faults):
    lines, known = paper.lists.get("In each bag", []), lettered(kit)
    if len(lines) != len(known):
        faults.add("parts-list", f"{len(lines)} lines for {len(known)} blanks")
    for text, (letter, (blank, _)) in zip(lines, known.items()):
        match = counted(rf"(\d+) blanks? ([A-Z]+): (.+), ({SIZE})(?:, for the .+ punch)?", text, faults, "words")
        if not match:
            continue
        w, h = read_size(match[4])
        if (int(match[1]), match[2]) != (blank.per_set, letter):
            faults.add("parts-list", f"{text}: it should be {blank.per_set} of {letter}")
        if blank.design is None and match[3] != blank.name:
            faults.add("parts-list", f"{text}: its name is {blank.name}")
        if not (w.may_be(blank.w) and h.may_be(blank.h)):
            faults.add("parts-list", f"{text}: it is {mm(blank.w)} x {mm(blank.h)} mm")


def judge_labels(paper, kit, faults):
    """Each bag has its label, and no name is without one."""
    per_set = sum(blank.per_set for blank, _ in lettered(kit).values())
    nameless = ["Name:"] * kit.takers + ["Spare set"] * kit.spares
    wanted = kit.names + nameless[len(kit.names) :]
    have = [label[0] for label in paper.labels]
    if have != wanted:
        faults.add("labels", f"labels for {have}, bags for {wanted}")
    for label in paper.labels:
        if label[-1] != f"{per_set} blank{'s' if per_set > 1 else ''}, see the packing list":
            faults.add("labels", f"{label}: there are {per_set} blanks in a bag")


SHEET_LINE = (
    rf"(?P<needed>\d+) sheets? of .+, (?P<name>[^,]+) \((?P<size>{SIZE})\)"
    r"(?:; (?:(?P<shelf>\d+) at hand, (?P<buy>\d+) to buy)?(?:, )?(?:costs (?P<cost>[\d.,]+))?)?"
)


def judge_sheet_line(line, text, kit, left, faults):
    """(sheet, how many, what they cost); `left` = by name, on the shelf."""
    sheet, needed = next(sheet for sheet in kit.sheets if sheet.name == line["name"]), int(line["needed"])
    w, h = read_size(line["size"])
    if not (w.may_be(sheet.w) and h.may_be(sheet.h)):
        faults.add("shopping", f"{text}: it is {mm(sheet.w)} x {mm(sheet.h)} mm")
    shelf = min(needed, left[sheet.name])
    left[sheet.name] -= shelf
    buy = needed - shelf
    if (int(line["shelf"] or 0), int(line["buy"] or needed)) != (shelf, buy):
        faults.add("shopping", f"{text}: {shelf} are at hand, {buy} to buy")
    if money(line["cost"] or "0") != buy * sheet.price:
        faults.add("shopping", f"{text}: costs {buy * sheet.price / 100}")
    return sheet.name, needed, buy * sheet.price


def judge_shopping(paper, kit, layouts, faults):
    """Sheets bought and taken from the shelf are those that are cut, and what they cost."""
    left = {sheet.name: sheet.owned for sheet in kit.sheets}
    listed, cost, told = collections.Counter(), 0, 0
    for text in paper.lists.get("Shopping list", []):
        line = re.fullmatch(SHEET_LINE, text)
        total = re.match(r"To buy in all: ([\d.,]+?), which is ([\d.,]+?) a set", text)
        if total:
            told = money(total[1])
            if money(total[2]) != told // kit.sets:
                faults.add("shopping", f"{text}: a set is {told // kit.sets / 100}")
        elif line and line["name"] in left:
            name, needed, paid = judge_sheet_line(line, text, kit, left, faults)
            listed[name] += needed
            cost += paid
        elif re.match(r"\d+ sheet", text):
            faults.add("words", f"not understood: {text}")
    used = collections.Counter()
    for layout in filter(None, layouts):
        used[layout[0]] += layout[1]
    if listed != used:
        faults.add("shopping", f"{dict(listed)} are listed, {dict(used)} are cut")
    if cost != told and not kit.designs:  # tape and glue cost too
        faults.add("shopping", f"{told} in all, the sheets cost {cost}")


def judge_paper(kit, paper):
    """Faults of the printed pages, `paper` as read by read_paper."""
    faults = Faults()
    layouts = judge_layouts(paper, kit, faults)
    judge_cards(paper, kit, faults)
    judge_packing(paper, kit, faults)
    judge_labels(paper, kit, faults)
    judge_shopping(paper, kit, layouts, faults)
    people = f"For {kit.takers} {'people' if kit.takers > 1 else 'person'}"
    spares = f", and {kit.spares} spare set{'s' if kit.spares > 1 else ''}" if kit.spares else ""
    if people + spares not in paper.head:
        faults.add("people", f"{paper.head}: it is {people + spares}")
    return faults
