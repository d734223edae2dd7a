"""Blank sizes and board settings that makers work with, through the command line.

Framed tray and belly band: common practice, no published source.
"""

import unittest

from program import TRAY, ProgramTest

INCH = 25.4


def full(setup):
    return [r["text"] for r in setup["readings"] if r["run"] == "full"]


def short(setup):
    return [r for r in setup["readings"] if r["run"] == "short"]


class FramedTray(ProgramTest):
    def setUp(self):
        super().setUp()
        self.piece = self.exported(self.design(*TRAY))["pieces"][0]
        self.setups = self.piece["score_plan"]["setups"]

    def setup_for(self, *sides, run):
        found = [
            s for s in self.setups
            if set(s["sides"]) == set(sides) and any(r["run"] == run for r in s["readings"])
        ]  # fmt: skip
        self.assertEqual(len(found), 1, self.setups)
        return found[0]

    def test_sheet_is_ten_and_three_quarters_by_seven_and_three_quarters(self):
        self.assertAlmostEqual(self.piece["blank"]["width"], 10.75 * INCH, places=6)
        self.assertAlmostEqual(self.piece["blank"]["height"], 7.75 * INCH, places=6)

    def test_full_scores_are_the_same_from_all_four_sides(self):
        setup = self.setup_for("left", "right", "bottom", "top", run="full")
        self.assertEqual(full(setup), ["3/8", "1 3/8", "1 3/4", "2 3/4"])
        at = [r["at_mm"] for r in setup["readings"]]
        self.assertEqual(at, [9.525, 34.925, 44.45, 69.85])

    def test_both_short_sides_have_cut_marks_down_to_the_second_line(self):
        marks = short(self.setup_for("left", "right", run="short"))
        self.assertEqual([m["text"] for m in marks], ["3 1/8", "4 5/8"])
        self.assertEqual([m["to_line"] for m in marks], [2, 2])
        self.assertEqual([m["to_mm"] for m in marks], [34.925, 34.925])
        self.assertEqual([m["for"] for m in marks], ["cut", "cut"])

    def test_both_long_sides_have_cut_marks_down_to_the_fourth_line(self):
        marks = short(self.setup_for("bottom", "top", run="short"))
        self.assertEqual([m["text"] for m in marks], ["2 1/4", "8 1/2"])
        self.assertEqual([m["to_line"] for m in marks], [4, 4])
        self.assertEqual([m["to_mm"] for m in marks], [69.85, 69.85])
        self.assertEqual([m["for"] for m in marks], ["cut", "cut"])

    def test_there_is_nothing_else_to_score(self):
        self.assertEqual(sum(len(full(s)) for s in self.setups), 4)
        self.assertEqual(sum(len(short(s)) for s in self.setups), 4)

    def test_adhesive_goes_on_outer_strips_tabs_and_mitred_ends(self):
        glued = [m["panel"] for m in self.piece["mates"] if m["method"] == "glue"]
        self.assertEqual(len([p for p in glued if p.endswith("glue-strip")]), 4)
        self.assertEqual(len([p for p in glued if p.endswith("tab")]), 4)
        ends = [patch["panel"] for patch in self.piece["patches"] if patch["method"] == "glue"]
        self.assertEqual(len([p for p in ends if p.endswith("frame")]), 4)
        self.assertEqual(len(self.piece["glue_plan"]), 12)


class BellyBand(ProgramTest):
    def setUp(self):
        super().setUp()
        design = self.design(
            "new", "--style", "belly-band",
            "--set", "around-length=5 1/4 in", "--set", "around-width=2 1/4 in",
            "--set", "around-depth=1 in", "--set", "ease-width=1/16 in",
            "--set", "ease-length=1/16 in", "--set", "overlap=3/8 in", "--set", "wide-part=1 1/2 in",
        )  # fmt: skip
        self.piece = self.exported(design)["pieces"][0]

    def test_blank_is_seven_by_five_and_five_sixteenths(self):
        self.assertAlmostEqual(self.piece["blank"]["width"], 7 * INCH, places=6)
        self.assertAlmostEqual(self.piece["blank"]["height"], (5 + 5 / 16) * INCH, places=6)

    def test_scores_lie_along_the_seven_inch_side(self):
        places = {}
        for setup in self.piece["score_plan"]["setups"]:
            self.assertLessEqual(set(setup["sides"]), {"left", "right"})
            for reading in setup["readings"]:
                self.assertEqual(reading["run"], "full")
                side = setup["sides"][0]
                at = round(reading["at_mm"] / INCH, 6)
                places[at if side == "left" else 7 - at] = reading["text"] if side == "left" else None
        self.assertEqual(sorted(places), [1.5, 2.5, 4.8125, 5.8125])


class Defaults(ProgramTest):
    def test_a_new_tray_has_round_values_of_its_own(self):
        """By hand: 3 1/2 x 2 1/2 in opening, frame 1/2, depth 1, strip 3/8: each side adds 2 7/8 beyond the rim."""
        blank = self.exported(self.design())["pieces"][0]["blank"]
        self.assertAlmostEqual(blank["width"], (3.5 + 2 * 0.5 + 2 * 2.875) * INCH, places=6)
        self.assertAlmostEqual(blank["height"], (2.5 + 2 * 0.5 + 2 * 2.875) * INCH, places=6)


if __name__ == "__main__":
    unittest.main()
