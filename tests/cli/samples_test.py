"""The sample gifts and the sample class: made by resources/samples/make, whole, and alike for inches and millimetres."""

import json
import os
import subprocess
import unittest

from program import PROGRAM, SAMPLES, ProgramTest


class Samples(ProgramTest):
    def test_they_are_what_their_script_makes(self):
        made = self.folder / "resources" / "samples"
        made.mkdir(parents=True)
        subprocess.run([SAMPLES / "make", PROGRAM, made], check=True, capture_output=True, env=os.environ | {"QT_QPA_PLATFORM": "offscreen"})
        kept = sorted(path.relative_to(SAMPLES) for path in SAMPLES.glob("*/*.cw*"))
        self.assertEqual(kept, sorted(path.relative_to(made) for path in made.glob("*/*.cw*")))
        self.assertEqual(len(kept), 2 * (10 + 1))
        for path in kept:
            self.assertEqual((SAMPLES / path).read_bytes(), (made / path).read_bytes(), path)
        pictures = SAMPLES.parent / "pictures"
        for path in sorted((made.parent / "pictures").glob("*.svg")):
            self.assertEqual((pictures / path.name).read_bytes(), path.read_bytes(), path.name)

    def test_each_is_a_finished_gift_in_both_systems(self):
        titles = {}
        for unit, grid in (("inch", "1/16in"), ("metric", "1mm")):
            for path in sorted((SAMPLES / unit).glob("*.cwdesign")):
                gift = json.loads(path.read_text(encoding="utf-8"))
                self.assertEqual(gift["grid"], grid, path)
                for key in ("product", "title", "notes"):
                    self.assertTrue(gift[key], f"{path}: {key}")
                self.assertIn("face", gift["card"], path)
                self.assertTrue(gift["extras"], path)
                titles.setdefault(gift["title"], []).append(unit)
        self.assertEqual(len(titles), 10)
        for title, units in titles.items():
            self.assertEqual(units, ["inch", "metric"], title)

    def test_none_of_them_asks_for_care_that_is_not_told(self):
        for path in sorted(SAMPLES.glob("*/*.cwdesign")):
            problems = json.loads(self.succeed("check", path, "--json"))["problems"]
            self.assertEqual([p["code"] for p in problems if p["severity"] != "warning"], [], path)
            self.succeed("guide", path, "-o", self.folder / "guide.html")

    def test_the_class_is_planned(self):
        for unit in ("inch", "metric"):
            out = self.folder / "class.json"
            self.succeed("kit", SAMPLES / unit / "tuesday-class.cwkit", "-o", out)
            self.assertGreater(len(json.loads(out.read_text(encoding="utf-8"))["cards"]), 1)


if __name__ == "__main__":
    unittest.main()
