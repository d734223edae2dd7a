"""Judges what an easy plan promises, from its file alone and from the plan of fewest sheets of the same kit."""

from class_kit import MM
from plan_judge import Faults, cut_size, mark_of, mm, nm

LEAST_STRIP = 20 * MM  # held down at a trimmer (common practice, no published source)


def leaves(cuts):
    if "blank" in cuts:
        return [cuts["blank"]]
    return [] if "offcut" in cuts else [leaf for part in cuts["parts"] for leaf in leaves(part)]


def each_cut(cuts, w, h):
    """(setting, [(blanks, width, height) of both parts]) of every cut of a part of w x h."""
    if "cut" not in cuts:
        return
    at = nm(cuts["at"])
    sizes = [(at, h), (w - at, h)] if cuts["cut"] == "upright" else [(w, at), (w, h - at)]
    yield at, [(leaves(part), *size) for part, size in zip(cuts["parts"], sizes)]
    for part, size in zip(cuts["parts"], sizes):
        yield from each_cut(part, *size)


def judge_cuts(layout, sizes, mark, where, faults):
    """No part with a large blank is narrow, small blanks come out of a piece that is not, settings lie on marks."""
    small = {i for i, size in enumerate(sizes) if min(size) < LEAST_STRIP}
    on_marks = all(side % mark == 0 for size in sizes for side in size)
    w, h = nm(layout["sheet"]["w"]), nm(layout["sheet"]["h"])
    for setting, parts in each_cut(layout["cuts"], w, h):
        if on_marks and setting % mark:
            faults.add("marks", f"{where}: the trimmer is set to {mm(setting)} mm")
        for blanks, x, y in parts:
            if min(x, y) < LEAST_STRIP and blanks and not set(blanks) <= small:
                faults.add("narrow", f"{where}: a part of {mm(x)} x {mm(y)} mm is cut up at the trimmer")
            if set(blanks) <= small and len(set(blanks)) > 1 and min(x, y) < LEAST_STRIP:
                faults.add("narrow", f"{where}: a part of {mm(x)} x {mm(y)} mm holds several sizes")


def judge_easy(kit, plan, fewest):
    """Faults of an easy plan, `fewest` the plan of fewest sheets of the same kit."""
    faults = Faults()
    if plan["plan"] != "easy" or nm(plan["trimmer_mm"]) != mark_of(kit):
        faults.add("easy", f"{plan['plan']} for marks of {plan['trimmer_mm']} mm")
    for told, other, (card, blanks) in zip(plan["cards"], fewest["cards"], kit.demands().items()):
        where = told["card"]
        if told["bound"] != other["bound"]:
            faults.add("bound", f"{where}: {told['bound']} beside {other['bound']}")
        if told["plan"] == "fewest":
            if any(not sheet.limit for sheet in kit.sheets_for(card)):
                faults.add("easy", f"{where}: no easy plan, though there are sheets enough")
            continue
        if told["fewest"] != {"sheets": other["sheets"], "cost": other["cost"]}:
            faults.add("fewest", f"{where}: {told['fewest']} is told, {other['sheets']} sheets at {other['cost']} are made")
        sizes = [cut_size(kit, card, blank) for blank in blanks]
        for number, layout in enumerate(told["layouts"], 1):
            judge_cuts(layout, sizes, mark_of(kit), f"{where}, layout {number}", faults)
    return faults
