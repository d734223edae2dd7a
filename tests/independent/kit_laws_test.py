"""Plain enumeration knows what is known otherwise, related kits are related, and a program that lies is found out."""

import copy
import os
import pathlib
import random
import subprocess
import sys
import tempfile
import unittest

import every_cut
import random_kits
import relatives
from class_kit import INCH, MM, Blank, Kit, Sheet
from judged import PROGRAM, Judged
from kit_laws import judge_against_optimum, judge_one_more, must_have_a_plan


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
        blanks = [Blank("A", 70 * MM, 50 * MM), Blank("B", 50 * MM, 90 * MM, 2)]
        kit = Kit([Sheet("S", 140 * MM, 150 * MM)], blanks, keep_grain=True)
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


LIAR = """#!{python}
import json, subprocess, sys
done = subprocess.run(["{program}", *sys.argv[1:]])
if sys.argv[-1].endswith(".json") and done.returncode == 0:
    with open(sys.argv[-1]) as file:
        plan = json.load(file)
    for card in plan["cards"]:
        card["bound"] += 1
    with open(sys.argv[-1], "w") as file:
        json.dump(plan, file)
sys.exit(done.returncode)
"""


class WholeCheck(unittest.TestCase):
    """The command that checks random kits fails with a program that lies, and says how to see it."""

    def run_check(self, program):
        check = pathlib.Path(__file__).with_name("kit_check.py")
        return subprocess.run(
            [sys.executable, str(check), str(program), "every-cut"], capture_output=True, text=True, timeout=120, check=False,
            env={**os.environ, "CREASEWRIGHT_KITS": "4", "CREASEWRIGHT_SEED": "7"},
        )  # fmt: skip

    def test_a_program_that_lies(self):
        with tempfile.TemporaryDirectory() as folder:
            liar = pathlib.Path(folder) / "liar"
            liar.write_text(LIAR.format(python=sys.executable, program=PROGRAM), encoding="utf-8")
            liar.chmod(0o755)
            done = self.run_check(liar)
        self.assertEqual(done.returncode, 1, done.stderr)
        self.assertIn("false-proof", done.stdout)
        self.assertIn("--blank", done.stdout)

    def test_the_program_itself(self):
        done = self.run_check(PROGRAM)
        self.assertEqual(done.returncode, 0, done.stdout + done.stderr)
        self.assertIn("seed 7", done.stdout)
