"""A sound plan with its pages and its table, in which the tests of the judges plant faults.

CREASEWRIGHT_PROGRAM names the program that makes it.
"""

import os
import tempfile
import unittest

import paper
from class_kit import MM, Blank, Kit, Sheet
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
