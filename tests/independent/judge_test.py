"""The judges of class kits find what is wrong: every fault here is planted in a plan that they pass.

CREASEWRIGHT_PROGRAM names the program that makes the sound plan.
"""

import copy
import os
import pathlib
import random
import re
import tempfile
import unittest

import carrier_judge
import every_cut
import paper
import paper_judge
import plan_judge
import random_kits
import relatives
import same_judge
from class_kit import INCH, MM, Blank, Kit, Sheet
from kit_laws import judge_against_optimum, judge_one_more, must_have_a_plan
from planner import Planner

PROGRAM = os.environ["CREASEWRIGHT_PROGRAM"]
# Layouts with strips, rests and offcuts; scarce sheets with prices, a grain, a pattern, something left over.
KIT = Kit(
    sheets=[
        Sheet("Big", 320 * MM, 450 * MM, price=130, grain="long", owned=2, limit=True),
        Sheet("Wide", 297 * MM, 210 * MM, price=70, grain="short", pattern=True, owned=1),
    ],
    blanks=[
        Blank("Strip", 21 * MM, 78 * MM, 3), Blank("Panel", 120 * MM, 72 * MM, 1), Blank("Card", 101 * MM, 165 * MM, 2),
    ],
    takers=7, spares=1, keep_grain=True, names=["Ada", "Ben", "Zoë"],
)  # fmt: skip


class Judged(unittest.TestCase):
    """The sound plan, its pages and its table are made once."""

    @classmethod
    def setUpClass(cls):
        holder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(holder.cleanup)
        cls.planner = Planner(PROGRAM, holder.name)
        cls.plan, said = cls.planner.plan(KIT)
        if cls.plan is None:
            raise RuntimeError(said)
        folder = cls.planner.papers(KIT)
        cls.paper = paper.read_paper(folder / "plan.pdf", (90, 50))
        cls.table = (folder / "plan.csv").read_text(encoding="utf-8")

    def expect(self, kind, faults):
        self.assertIn(kind, {line.split(":")[0] for line in faults}, faults)


class PlanFaults(Judged):
    def planted(self, change, kind):
        plan = copy.deepcopy(self.plan)
        change(plan["cards"][0])
        self.expect(kind, plan_judge.judge_plan(KIT, plan))

    def test_the_sound_plan_passes(self):
        self.assertEqual(plan_judge.judge_plan(KIT, self.plan), [])
        self.assertGreater(len(self.plan["cards"][0]["layouts"]), 1)

    def test_a_moved_part(self):
        def nearer(card):
            first, second = card["layouts"][0]["pieces"][:2]
            second["x"], second["y"] = first["x"] + 1, first["y"] + 1

        self.planted(nearer, "overlap")
        self.planted(lambda card: card["layouts"][0]["pieces"][0].update(x=400.0), "outside")
        self.planted(lambda card: card["layouts"][0]["pieces"][0].update(x=0.5), "tree")

    def test_a_missing_piece(self):
        self.planted(lambda card: card["layouts"][0]["pieces"].pop(), "tree")
        self.planted(lambda card: card["layouts"].pop(), "missing")

    def test_a_wrong_count(self):
        self.planted(lambda card: card["layouts"][0].update(count=card["layouts"][0]["count"] - 1), "sheets")
        self.planted(lambda card: card["layouts"][0].update(count=0), "sheets")
        self.planted(lambda card: card["demands"][0].update(quantity=23), "quantity")
        self.planted(lambda card: card["demands"][0].update(left_over=card["demands"][0]["left_over"] + 1), "left-over")

    def test_a_false_proof(self):
        self.planted(lambda card: card.update(bound=card["cost"] - 1, proven=True), "proof")
        self.planted(lambda card: card.update(bound=card["cost"] + 1), "bound")
        self.planted(lambda card: card.update(proven=not card["proven"]), "proof")

    def test_a_wrong_cost(self):
        self.planted(lambda card: card.update(cost=card["cost"] - 10, bound=card["cost"] - 10), "cost")

    def test_more_sheets_than_are_at_hand(self):
        def of_the_scarce(card):
            card["layouts"] = [layout for layout in card["layouts"] if layout["stock"] == "Big"] * 2

        self.assertTrue(any(layout["stock"] == "Big" for layout in self.plan["cards"][0]["layouts"]))
        self.planted(of_the_scarce, "at-hand")

    def test_a_turned_blank(self):
        def turn(card):
            piece = card["layouts"][0]["pieces"][0]
            piece.update(w=piece["h"], h=piece["w"], turned=True)

        self.planted(turn, "turned")

    def test_a_wrong_size_a_wrong_name_a_wrong_sheet(self):
        self.planted(lambda card: card["layouts"][0]["pieces"][0].update(w=20.5), "size")
        self.planted(lambda card: card["layouts"][0]["pieces"][0].update(name="Lid"), "name")
        self.planted(lambda card: card["demands"][1].update(name="Lid"), "demands")
        self.planted(lambda card: card["layouts"][0].update(stock="Huge"), "stock")
        self.planted(lambda card: card["layouts"][0]["sheet"].update(w=321.0), "sheet")
        self.planted(lambda card: card["layouts"][0]["pieces"][0].update(design=0), "source")

    def test_an_offcut_that_is_not_there(self):
        self.planted(lambda card: card["layouts"][0]["offcuts"].append({"w": 50.0, "h": 50.0, "count": 1}), "offcuts")

    def test_a_cut_beside_its_part(self):
        self.planted(lambda card: card["layouts"][0]["cuts"].update(at=500.0), "tree")

    def test_a_pinwheel_is_no_guillotine_layout(self):
        pinwheel = [(0, 0, 2, 1), (2, 0, 3, 2), (1, 2, 3, 3), (0, 1, 1, 3)]
        self.assertFalse(plan_judge.is_guillotine(pinwheel))
        self.assertTrue(plan_judge.is_guillotine(pinwheel[:3]))

    def test_sums_of_the_whole(self):
        for key, value, kind in (("sheets", 99, "sheets"), ("takers", 6, "people"), ("format", "x", "format"),
                                 ("one_more", {"sheets": -1, "price": 0, "proven": True}, "one-more")):  # fmt: skip
            self.expect(kind, plan_judge.judge_plan(KIT, {**self.plan, key: value}))


class PaperFaults(Judged):
    def planted(self, change, kind):
        pages = copy.deepcopy(self.paper)
        change(pages)
        self.expect(kind, paper_judge.judge_paper(KIT, pages) + same_judge.judge_same(KIT, self.plan, pages))

    def steps(self, pages):
        """(items, index) of every step of the layout with the most."""
        layout = max(pages.layouts, key=lambda block: sum(mark.isdigit() for mark, _ in block.items))
        return layout.items, [i for i, (mark, _) in enumerate(layout.items) if mark.isdigit()]

    def in_step(self, pattern, words):
        """Puts other words into the first step that has the pattern."""

        def change(pages):
            for layout in pages.layouts:
                for item in layout.items:
                    if item[0].isdigit() and re.search(pattern, item[1]):
                        item[1] = re.sub(pattern, words, item[1], count=1)
                        return
            self.fail(f"no step has {pattern}")

        return change

    def test_the_sound_pages_pass(self):
        self.assertEqual(paper_judge.judge_paper(KIT, self.paper), [])
        self.assertEqual(same_judge.judge_same(KIT, self.plan, self.paper), [])
        self.assertEqual(same_judge.judge_table(KIT, self.plan, self.table), [])

    def test_a_lost_step(self):
        items, at = self.steps(self.paper)
        for lost in range(len(at)):

            def lose(pages):
                items, at = self.steps(pages)
                items.pop(at[lost])

            with self.subTest(step=items[at[lost]]):
                self.planted(lose, "steps")

    def test_a_lost_step_that_the_numbers_hide(self):
        count = len(self.steps(self.paper)[1])
        for lost in range(count):

            def lose(pages):
                items, at = self.steps(pages)
                items.pop(at[lost])
                for number, i in enumerate(self.steps(pages)[1], 1):
                    items[i][0] = str(number)

            with self.subTest(step=lost):
                self.planted(lose, "steps")

    def test_two_steps_exchanged(self):
        def exchange(pages):
            items, at = self.steps(pages)
            items[at[0]][1], items[at[-1]][1] = items[at[-1]][1], items[at[0]][1]

        self.planted(exchange, "steps")

    def test_another_setting(self):
        self.planted(self.in_step(r"Set (\d+) mm", "Set 19 mm"), "steps")

    def test_another_number_of_cuts(self):
        self.planted(self.in_step(r"cut (\d+) times", "cut 9 times"), "steps")
        self.planted(self.in_step(r"(\d+) strips? from", "7 strips from"), "steps")

    def test_another_letter(self):
        self.planted(self.in_step(r"× A", "× B"), "steps")

    def test_a_step_in_other_words(self):
        self.planted(self.in_step(r"Set", "Put"), "steps")

    def test_a_sheet_that_is_not_turned(self):
        self.planted(self.in_step(r"Turn the sheet\. ", ""), "steps")

    def test_a_wrong_offcut(self):
        def other(pages):
            for layout in pages.layouts:
                for item in layout.items:
                    if "offcut" in item[1]:
                        item[1] = re.sub(r"of .*", "of 99 × 98 mm", item[1])

        self.planted(other, "offcuts")

    def test_a_wrong_note(self):
        def upright(pages):
            for layout in pages.layouts:
                layout.items = [[mark, text.replace("on its long side", "upright")] for mark, text in layout.items]

        def silent(pages):
            for layout in pages.layouts:
                layout.items = [item for item in layout.items if item[0] != "!"]

        self.planted(upright, "notes")
        self.planted(silent, "notes")

    def test_a_name_that_vanishes(self):
        self.planted(lambda pages: pages.labels.pop(1), "labels")
        self.planted(lambda pages: pages.labels[2].__setitem__(0, "Name:"), "labels")
        self.planted(lambda pages: pages.labels[0].__setitem__(-1, "5 blanks, see the packing list"), "labels")

    def test_a_wrong_list(self):
        def other(heading, at, text):
            return lambda pages: pages.lists[heading].__setitem__(at, text)

        self.planted(other("In each bag", 0, "2 blanks A: Strip, 21 × 78 mm"), "parts-list")
        self.planted(other("In each bag", 0, "3 blanks A: Strip, 21 × 79 mm"), "parts-list")
        self.planted(other("In each bag", 0, "3 blanks A: Tag, 21 × 78 mm"), "parts-list")
        self.planted(lambda pages: pages.lists["Shopping list"].pop(0), "shopping")
        self.planted(lambda pages: pages.lists.__setitem__("Left over, cut beyond what is needed", ["99 of A: Strip"]), "left-over")
        self.planted(lambda pages: pages.head.__setitem__(1, "For 8 people"), "people")

    def test_a_wrong_price(self):
        def dearer(pages):
            lines = pages.lists["Shopping list"]
            at = next(i for i, line in enumerate(lines) if "costs" in line)
            lines[at] = re.sub(r"costs [\d.]+", "costs 0.01", lines[at])

        self.planted(dearer, "shopping")

    def test_another_plan_than_in_the_file(self):
        self.planted(lambda pages: pages.layouts.pop(), "same")
        self.planted(lambda pages: pages.head.__setitem__(2, "99 sheets, proven: fewer cannot do."), "sheets")
        moved = re.sub(r",0\.000,", ",0.600,", self.table, count=1)
        self.expect("table", same_judge.judge_table(KIT, self.plan, moved))
        self.expect("table", same_judge.judge_table(KIT, self.plan, "\r\n".join(self.table.split("\r\n")[:-2])))


class Enumeration(Judged):
    def test_a_narrow_strip_beside_two_wide_ones(self):
        # A side of 14 holds 7 + 7, or 5 + 5 beside what a 7 leaves; from the arithmetic of the example itself.
        sheets = [(14, 15, 1, None, False)]
        self.assertEqual(every_cut.least_cost(sheets, [(7, 5), (5, 9)], [1, 2]), 1)

    def test_squares(self):
        sheets = [(10, 10, 3, 1, True), (5, 5, 1, None, True)]
        self.assertEqual(every_cut.least_cost(sheets, [(5, 5)], [3]), 3)
        self.assertEqual(every_cut.least_cost(sheets[:1], [(6, 6)], [2]), None)
        self.assertEqual(every_cut.least_cost(sheets[:1], [(4, 6), (6, 4)], [2, 1]), 3)
        self.assertEqual(every_cut.least_cost(sheets[:1], [(4, 6), (6, 4)], [2, 2]), None)  # a pinwheel

    def test_a_pinwheel_needs_a_second_sheet(self):
        # Four of 3 x 2 fit a square of 5 only as a pinwheel, which no cut from edge to edge parts.
        self.assertEqual(every_cut.least_cost([(5, 5, 1, None, True)], [(3, 2)], [4]), 2)

    def test_kits_once_proven_falsely(self):
        sixteenth = INCH // 16
        size = lambda w, h: (round(w * 16) * sixteenth, round(h * 16) * sixteenth)
        blanks = [Blank("A", *size(5.375, 3.1875)), Blank("B", *size(6.125, 6.875)), Blank("C", *size(7.625, 3.125))]
        kit = Kit([Sheet("12x12", 12 * INCH, 12 * INCH)], blanks, takers=1)
        self.assertEqual(every_cut.kit_cost(kit, sixteenth), 1)

    def test_a_false_proof_shows(self):
        kit = Kit([Sheet("S", 140 * MM, 150 * MM)], [Blank("A", 70 * MM, 50 * MM), Blank("B", 50 * MM, 90 * MM, 2)], keep_grain=True)
        plan, _ = self.planner.plan(kit)
        self.assertEqual(judge_against_optimum(1, plan, ""), [])
        worse = copy.deepcopy(plan)
        worse["cards"][0].update(cost=2, bound=2)
        self.expect("false-proof", judge_against_optimum(1, worse, ""))
        self.expect("no-plan", judge_against_optimum(1, None, "The sheets do not suffice."))
        more = {**plan, "one_more": {"sheets": 0, "price": 0, "proven": True}}
        self.expect("one-more", judge_one_more(self.planner, kit, 10 * MM, more))


    def test_a_plan_that_must_exist(self):
        blank = Blank("A", 90 * MM, 150 * MM)
        sheet = Sheet("S", 160 * MM, 100 * MM)
        self.assertTrue(must_have_a_plan(Kit([sheet], [blank])))
        self.assertFalse(must_have_a_plan(Kit([sheet], [blank], keep_grain=True)))
        self.assertFalse(must_have_a_plan(Kit([Sheet("S", 160 * MM, 100 * MM, limit=True, owned=1)], [blank])))

    def test_whole_sheets_leave_nothing(self):
        for seed in range(50):
            kit, cost = random_kits.whole_sheets_kit(random.Random(seed))
            area = kit.takers * sum(blank.w * blank.h * blank.per_set for blank in kit.blanks)
            most = max(sheet.w * sheet.h / (sheet.price or 1) for sheet in kit.sheets)
            self.assertEqual(area, cost * most)


class Relatives(unittest.TestCase):
    def test_relatives_need_no_more(self):
        """Every relation, on kits so small that enumeration knows both."""
        chance = random.Random(4)
        seen = set()
        for _ in range(400):
            side = lambda least, most: chance.randint(least, most) * 10 * MM
            sheets = [
                Sheet(f"S{i}", side(8, 16), side(8, 16), pattern=chance.random() < 0.4, owned=chance.randint(1, 2), limit=i == 0)
                for i in range(2)
            ]
            blanks = [Blank(f"N{i}", side(2, 9), side(2, 9), chance.randint(1, 2)) for i in range(2)]
            kit = Kit(sheets, blanks, keep_grain=chance.random() < 0.3)
            change, relative = relatives.random_relative(kit, chance)
            if change in seen and chance.random() < 0.8:
                continue
            cost = every_cut.kit_cost(kit, MM * 10)
            if cost is None:
                continue
            seen.add(change)
            unit = MM if change in ("with a smaller blank", "on larger sheets") else 10 * MM
            self.assertLessEqual(every_cut.kit_cost(relative, unit), cost, (change, kit, relative))
        self.assertGreaterEqual(len(seen), 7)


class CarrierFaults(unittest.TestCase):
    KIT = Kit([], [Blank("Tag", 40 * MM, 60 * MM, 2), Blank("Card", 90 * MM, 50 * MM)], takers=2, keep_grain=True)

    def setUp(self):
        holder = tempfile.TemporaryDirectory()
        self.addCleanup(holder.cleanup)
        self.folder, said = Planner(PROGRAM, holder.name).carriers(self.KIT, (200.0, 200.0))
        self.assertEqual(said, "")

    def judge(self):
        return {line.split(":")[0] for line in carrier_judge.judge_carriers(self.KIT, self.folder, (200.0, 200.0))}

    def change(self, pattern, words):
        file = sorted(self.folder.glob("*.svg"))[0]
        text = file.read_text(encoding="utf-8")
        self.assertRegex(text, pattern)
        file.write_text(re.sub(pattern, words, text, count=1), encoding="utf-8")

    def test_the_sound_carriers_pass(self):
        self.assertEqual(self.judge(), set())

    def test_a_lost_part(self):
        self.change(r'<path d="M[^"]*Z"/>', "")
        self.assertIn("missing", self.judge())

    def test_a_part_over_the_edge(self):
        self.change(r"<path d=\"M[^\"]*Z\"/>", '<path d="M1 1L41 1L41 61L1 61Z"/>')
        self.assertLessEqual({"edge"}, self.judge())

    def test_a_part_on_another(self):
        self.change(r'(<path d="M[^"]*Z"/>)', r'\1<path d="M30 30L120 30L120 170L30 170Z"/>')
        self.assertIn("near", self.judge())

    def test_another_scale(self):
        self.change(r'width="200mm"', 'width="100mm"')
        self.assertIn("scale", self.judge())

    def test_another_number_of_carriers(self):
        file = sorted(self.folder.glob("*-x*.svg"))[0]
        file.rename(pathlib.Path(re.sub(r"-x\d+", "-x7", str(file))))
        self.assertLessEqual({"title", "missing"}, self.judge())


if __name__ == "__main__":
    unittest.main()
