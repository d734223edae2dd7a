"""Judges whether the pages and the table of a class tell the plan that its file holds."""

import collections
import csv
import io
import re

from class_kit import MM
from paper_judge import judge_layouts, lettered, letters, money
from plan_judge import Faults, nm


def judge_one_more(head, more, faults):
    """What one more person takes: a price, sheets, or nothing further."""
    if more is None:
        return
    told = re.search(
        r"One more person would (?:cost (at most )?([\d.,]+) in sheets|take (at most )?(\d+) sheets? more|take no further)", head
    )
    if not told:
        faults.add("one-more", f"{head}: {more} stands in the file")
        return
    at_most = bool(told[1] or told[3])
    have = (money(told[2]) if told[2] else 0, int(told[4] or 0))
    wanted = (more["price"], 0 if more["price"] else more["sheets"])
    if have != wanted or (any(wanted) and at_most == more["proven"]):
        faults.add("one-more", f"{head}: {more} stands in the file")


def judge_easy_cost(head, plan, faults):
    """How many sheets, or what price, an easy plan takes beyond that of fewest sheets."""
    told = re.search(r"(\d+) sheets? more than the plan of fewest|costs ([\d.,]+) more in sheets", head)
    fewest = [card["fewest"] or card for card in plan["cards"]]
    more = plan["sheets"] - sum(card["sheets"] for card in fewest)
    dearer = sum(card["cost"] for card in plan["cards"]) - sum(card["cost"] for card in fewest)
    have = (int(told[1]) if told[1] else money(told[2])) if told else 0
    if have != max(0, dearer if "cheape" in head else more):
        faults.add("easy-cost", f"{head}: {more} sheets, {dearer} in coins")
    if ("Proven:" in head) != (have == 0 and plan["proven"]):
        faults.add("proof", f"{head}: the file says proven {plan['proven']}")


def judge_same(kit, plan, paper):
    """Faults where the pages tell another plan than its file does."""
    faults = Faults()
    head = " ".join(paper.head[1:])
    sheets = re.search(r"(\d+) sheets?(?:,| at|;| in \d+ layouts?, easy)", head)
    if not sheets or int(sheets[1]) != plan["sheets"]:
        faults.add("sheets", f"{head}: {plan['sheets']} stand in the file")
    easy = any(card["fewest"] for card in plan["cards"])
    if easy != ("easy to cut" in head):
        faults.add("goal", f"{head}: the file says easy {easy}")
    if easy:
        judge_easy_cost(head, plan, faults)
    elif plan["proven"] != ("sheets, proven:" in head.replace("sheet,", "sheets,") or "price, proven:" in head):
        faults.add("proof", f"{head}: the file says proven {plan['proven']}")
    least = re.search(r"at least (\d+) are needed", head)
    bound = sum(card["bound"] for card in plan["cards"])
    if least and int(least[1]) != bound:
        faults.add("bound", f"{head}: {bound} stands in the file")
    judge_one_more(head, plan["one_more"], faults)
    printed = [layout and (layout[0], layout[1], dict(layout[2])) for layout in judge_layouts(paper, kit, Faults())]
    filed = [
        (stock, count, dict(collections.Counter(letter for letter, _, _ in pieces)))
        for (_, count, stock), pieces in filed_layouts(plan).items()
    ]
    if printed != filed:
        faults.add("same", f"the pages show {printed}, the file {filed}")
    return faults


def judge_table(kit, plan, text):
    """Faults of plan.csv: the same pieces, in the same places, as the plan's file; lengths have three decimals."""
    faults = Faults()
    known = lettered(kit)
    table = collections.defaultdict(list)
    for row in csv.DictReader(io.StringIO(text)):
        size = tuple(round(float(row[key]) * MM) for key in ("x_mm", "y_mm", "width_mm", "height_mm"))
        table[int(row["layout"]), int(row["sheets"]), row["stock"]].append((row["blank"], row["turned"] == "1", size))
        if row["blank"] not in known:
            faults.add("table", f"there is no blank {row['blank']}")
        elif known[row["blank"]][0].design is None and row["name"] != known[row["blank"]][0].name:
            faults.add("table", f"{row['blank']} is called {row['name']}")
    filed = filed_layouts(plan)
    if list(table) != list(filed):
        faults.add("table", f"the table's layouts are {list(table)}, the plan's {list(filed)}")
        return faults
    for layout, pieces in filed.items():
        if not all(same_piece(a, b) for a, b in zip(sorted(pieces), sorted(table[layout]))) or len(pieces) != len(table[layout]):
            faults.add("table", f"layout {layout[0]} is not the plan's")
    return faults


def same_piece(a, b):
    return a[:2] == b[:2] and all(abs(x - y) <= 501 for x, y in zip(a[2], b[2]))


def filed_layouts(plan):
    """{(number, sheets, stock): [(letter, turned, place)]} of the plan's file."""
    filed, first = {}, 0
    for card in plan["cards"]:
        names = {demand["name"]: letters(first + i) for i, demand in enumerate(card["demands"])}
        first += len(names)
        for layout in card["layouts"]:
            filed[len(filed) + 1, layout["count"], layout["stock"]] = [
                (names[p["name"]], p["turned"], tuple(nm(p[key]) for key in "xywh")) for p in layout["pieces"]
            ]
    return filed
