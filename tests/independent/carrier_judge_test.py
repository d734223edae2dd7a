"""Every fault planted in sound carriers of a cutting machine is found."""

import pathlib
import re
import tempfile
import unittest

import carrier_judge
from class_kit import MM, Blank, Kit
from judged import PROGRAM
from planner import Planner


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
