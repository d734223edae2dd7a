"""Class kits: the plan is sound, judged from the exported file alone, and bad input is one sentence."""

import json
import unittest

from program import ProgramTest


def parts(cuts, x, y, w, h):
    """Rectangles of the blanks that the cut tree leaves, each cut running from edge to edge."""
    if "blank" in cuts:
        return [(round(x, 3), round(y, 3), round(w, 3), round(h, 3))]
    if "offcut" in cuts:
        return []
    at, (first, second) = cuts["at"], cuts["parts"]
    if cuts["cut"] == "upright":
        return parts(first, x, y, at, h) + parts(second, x + at, y, w - at, h)
    return parts(first, x, y, w, at) + parts(second, x, y + at, w, h - at)


class Kit(ProgramTest):
    def plan(self, *arguments):
        out = self.folder / "plan.json"
        self.succeed("kit", *arguments, "-o", out)
        return json.loads(out.read_text(encoding="utf-8"))

    def test_the_cut_trees_give_the_blanks(self):
        plan = self.plan(self.design(), "--takers", "12", "--spares", "1", "--sheet", "12x12", "--sheet", "tabloid")
        self.assertEqual(plan["format"], "creasewright-kit-plan")
        self.assertTrue(plan["proven"])
        for card in plan["cards"]:
            have = {demand["name"]: 0 for demand in card["demands"]}
            for layout in card["layouts"]:
                sheet = layout["sheet"]
                cut = sorted(parts(layout["cuts"], 0, 0, sheet["w"], sheet["h"]))
                stated = sorted((round(p["x"], 3), round(p["y"], 3), round(p["w"], 3), round(p["h"], 3))
                                for p in layout["pieces"])  # fmt: skip
                self.assertEqual(cut, stated)
                for piece in layout["pieces"]:
                    self.assertLessEqual(piece["x"] + piece["w"], sheet["w"] + 1e-6)
                    self.assertLessEqual(piece["y"] + piece["h"], sheet["h"] + 1e-6)
                    have[piece["name"]] += layout["count"]
            for demand in card["demands"]:
                self.assertGreaterEqual(have[demand["name"]], demand["quantity"])

    def test_every_kind_is_whole(self):
        design = self.design()
        starts = {"pdf": b"%PDF-", "json": b"{", "csv": b"card,", "cwkit": b"{"}
        for kind, start in starts.items():
            out = self.folder / f"kit.{kind}"
            self.assertEqual(self.succeed("kit", design, "--sheet", "12x12", "-o", out), "")
            self.assertTrue(out.read_bytes().startswith(start), kind)

    def test_a_saved_kit_gives_the_same_plan(self):
        kit = self.folder / "class.cwkit"
        self.succeed("kit", self.design(), "--takers", "7", "--sheet", "12x12", "-o", kit)
        again = self.plan(kit)
        self.assertEqual(again["takers"], 7)
        self.assertEqual(again["sheets"], self.plan(self.design(), "--takers", "7", "--sheet", "12x12")["sheets"])

    def test_what_cannot_be_planned_is_one_sentence(self):
        design = self.design()
        out = self.folder / "kit.json"
        for wrong, word in (
            ((design, "-o", out), "--sheet"),
            ((design, "--sheet", "a6", "-o", out), "larger than every sheet"),
            ((design, "--sheet", "quarto", "-o", out), "--sheet"),
            ((design, "--sheet", "a4", "--takers", "0", "-o", out), "--takers"),
            ((design, "--sheet", "a4", "--takers", "10000", "-o", out), "--takers"),
            ((design, "--sheet", "a4", "--takers", "twelve", "-o", out), "--takers"),
            ((design, "--sheet", "a4", "-o", self.folder / "kit.doc"), "-o"),
            ((self.folder / "none.cwkit", "-o", out), "none.cwkit"),
            (("-o", out), "FILE"),
        ):
            with self.subTest(wrong=wrong):
                self.refuse("kit", *wrong, naming=word)
        self.assertFalse(out.exists())

    def test_broken_kits_are_one_sentence(self):
        kit = self.folder / "class.cwkit"
        self.succeed("kit", self.design(), "--sheet", "12x12", "-o", kit)
        whole = json.loads(kit.read_text(encoding="utf-8"))
        broken = self.folder / "broken.cwkit"
        for key, value in (("format", "x"), ("version", 9), ("takers", -1), ("items", 3), ("stock", [{"name": 1}]),
                           ("items", [{"per_person": 1, "design": {}}]), ("takers", 10**12)):  # fmt: skip
            broken.write_text(json.dumps({**whole, key: value}), encoding="utf-8")
            with self.subTest(key=key, value=value):
                self.refuse("kit", broken, "-o", self.folder / "out.json")
        text = kit.read_text(encoding="utf-8")
        for cut in range(0, len(text), max(1, len(text) // 12)):
            broken.write_text(text[:cut], encoding="utf-8")
            self.refuse("kit", broken, "-o", self.folder / "out.json")


if __name__ == "__main__":
    unittest.main()
