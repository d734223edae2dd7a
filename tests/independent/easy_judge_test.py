"""Every fault planted in a sound easy plan is found, in its file and on its pages."""

import copy
import dataclasses
import tempfile
import unittest

import easy_judge
import paper
import same_judge
from class_kit import MM, Blank, Kit, Sheet
from judged import PROGRAM
from plan_judge import judge_plan
from planner import Planner

# On marks, beside them, and too small for the trimmer.
KIT = Kit(
    sheets=[Sheet("A4", 210 * MM, 297 * MM)],
    blanks=[
        Blank("Panel", 120 * MM, 72 * MM), Blank("Strip", 31 * MM, 77 * MM + MM // 2, 2), Blank("Tag", 12 * MM, 40 * MM),
    ],
    takers=11, plan="easy",
)  # fmt: skip


class EasyFaults(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        holder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(holder.cleanup)
        planner = Planner(PROGRAM, holder.name)
        cls.plan, said = planner.plan(KIT)
        cls.fewest, _ = planner.plan(dataclasses.replace(KIT, plan="fewest"))
        if cls.plan is None or cls.fewest is None:
            raise RuntimeError(said)
        cls.paper = paper.read_paper(planner.papers(KIT) / "plan.pdf", (90, 50))

    def planted(self, change, kind):
        plan = copy.deepcopy(self.plan)
        change(plan["cards"][0])
        faults = easy_judge.judge_easy(KIT, plan, self.fewest) + judge_plan(KIT, plan)
        faults += same_judge.judge_same(KIT, plan, self.paper)
        self.assertIn(kind, {line.split(":")[0] for line in faults}, faults)

    def test_the_sound_plan_passes(self):
        self.assertEqual(easy_judge.judge_easy(KIT, self.plan, self.fewest), [])
        self.assertEqual(judge_plan(KIT, self.plan), [])
        self.assertEqual(same_judge.judge_same(KIT, self.plan, self.paper), [])

    def test_another_cost(self):
        self.planted(lambda card: card["fewest"].update(sheets=card["fewest"]["sheets"] - 1), "fewest")
        self.planted(lambda card: card["fewest"].update(sheets=card["fewest"]["sheets"] - 1), "easy-cost")
        self.planted(lambda card: card.update(bound=card["bound"] - 1), "bound")

    def test_another_goal(self):
        self.planted(lambda card: card.update(plan="fewest"), "easy")
        self.planted(lambda card: card.update(fewest=None), "goal")

    def test_a_setting_off_the_marks(self):
        self.planted(lambda card: card["layouts"][0]["cuts"].update(at=card["layouts"][0]["cuts"]["at"] + 0.5), "marks")

    def test_a_narrow_strip(self):
        self.planted(lambda card: card["layouts"][0]["cuts"].update(at=15.0), "narrow")

    def test_a_blank_that_is_not_rounded_up(self):
        def shrink(card):
            pieces = [p for layout in card["layouts"] for p in layout["pieces"] if p["name"] == "Strip"]
            pieces[0]["w" if pieces[0]["turned"] else "h"] -= 0.5

        self.planted(shrink, "size")


if __name__ == "__main__":
    unittest.main()
