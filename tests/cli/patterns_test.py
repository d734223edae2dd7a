"""Patterned papers: listed, chosen for box and extras, written into designs, seen in pictures, refused in one sentence."""

import json
import re
import unittest
import xml.etree.ElementTree as ET

from program import ProgramTest

PATTERNS = [
    "stripes", "pin-dots", "dots", "gingham", "tartan", "chevron", "herringbone", "lattice", "scallops", "waves",
    "confetti", "stars", "leaves", "sprigs", "snow", "terrazzo",
]  # fmt: skip

BOX = ["new", "--style", "straight-tuck-box", "--product", "box:60x35x120mm", "--grid", "1mm"]
SVG = "{http://www.w3.org/2000/svg}"


class Patterns(ProgramTest):
    def box(self, *arguments):
        out = self.folder / "box.cwdesign"
        self.succeed(*BOX, *arguments, "-o", out)
        return out

    def cards(self, design):
        return {piece["name"]: piece["card"] for piece in self.exported(design)["pieces"]}

    def printed(self, design, *arguments):
        """Fills of what is printed in the picture of the folded box."""
        out = self.folder / "box.svg"
        self.succeed("export", design, "--folded", *arguments, "-o", out)
        return [p.get("fill") for p in ET.parse(out).iter(SVG + "path") if p.get("class") == "printed"]

    def test_all_are_listed(self):
        page = json.loads(self.succeed("patterns", "--json"))
        self.assertEqual(page["format"], "creasewright-patterns")
        self.assertEqual([p["id"] for p in page["patterns"]], PATTERNS)
        text = self.succeed("patterns")
        for pattern in page["patterns"]:
            self.assertIn(pattern["id"], text)
            self.assertIn(pattern["turns"], ("any", "quarter", "half", "none"))
            self.assertTrue(2 <= len(pattern["colours"]) <= 4)

    def test_box_and_extras_have_their_own(self):
        design = self.box(
            "--pattern", "stripes:scale=1/2in:turn=45:colours=cream,sage:side=back",
            "--extra", "mats:pattern=leaves:colours=cream,fir,leaf:scale=30mm,inset=4mm",
            "--extra", "belly-band:colour=plum",
        )  # fmt: skip
        cards = self.cards(design)
        stripes = cards["box"]["pattern"]
        self.assertEqual(stripes, {"id": "stripes", "scale": "1/2 in", "turn": 45, "side": "back", "colours": ["#F6ECD0", "#9AAF90"]})
        mats = [card for name, card in cards.items() if name.startswith("mat")]
        self.assertTrue(mats)
        for card in mats:
            self.assertEqual(card["pattern"]["id"], "leaves")
            self.assertEqual(card["pattern"]["scale"], "30 mm")
            self.assertEqual(card["pattern"]["colours"], ["#F6ECD0", "#244F3C", "#5E9A45"])
        self.assertNotIn("pattern", cards["band"])

    def test_a_colour_beside_a_pattern_takes_neither_away(self):
        for written in ("mats:colour=plum/cream,pattern=dots:side=back", "mats:pattern=dots:side=back,colour=plum/cream"):
            cards = self.cards(self.box("--extra", written))
            mats = [card for name, card in cards.items() if name.startswith("mat")]
            self.assertTrue(mats)
            for card in mats:
                self.assertEqual((card["pattern"]["id"], card["pattern"]["side"]), ("dots", "back"), written)
                self.assertEqual((card["face"], card["back"]), ("#5A3565", "#F6ECD0"), written)
        label = "label:layer=circle,pattern=dots,colour=plum"
        layers = [card for name, card in self.cards(self.box("--extra", label)).items() if name == "label-layer"]
        self.assertEqual([(card["pattern"]["id"], card["face"]) for card in layers], [("dots", "#5A3565")])

    def test_the_picture_of_the_box_shows_them(self):
        design = self.box("--pattern", "dots:colours=#010203,#A00000,#00A000")
        fills = self.printed(design)
        self.assertTrue(any(f.startswith("#") and int(f[1:3], 16) > 5 * int(f[3:5], 16) for f in fills), fills)
        self.assertTrue(any(int(f[3:5], 16) > 5 * int(f[1:3], 16) for f in fills), fills)
        self.assertEqual(self.printed(self.box()), [])

    def test_a_hand_out_shows_gift_and_folding_in_their_paper_and_maps_plain(self):
        design = self.box("--pattern", "tartan")
        page = self.folder / "guide.html"
        self.succeed("guide", design, "-o", page)
        html = page.read_text(encoding="utf-8")
        self.assertIn('class="printed"', html)
        steps = html[html.index('class="steps"'):]
        figures = dict(re.findall(r"<title>Figure of step \d+: ([^<]*)</title>(.*?)</svg>", steps, re.S))
        self.assertNotIn('class="printed"', figures["Cut the sheet"])
        self.assertTrue(any('class="printed"' in figure for figure in figures.values()), figures.keys())

    def test_what_makes_no_sense_is_one_sentence(self):
        for written, naming in (
            ("dotz", "dots"), ("dots:scale=0", "0"), ("dots:scale=10km", "10km"), ("dots:turn=400", "400"),
            ("dots:side=top", "top"), ("dots:colours=sagee", "sage"), ("gingham:colours=sage,cream,plum", "gingham"),
            ("dots:big", "big"), ("velvet", "creasewright patterns"),
        ):  # fmt: skip
            self.refuse(*BOX, "--pattern", written, "-o", self.folder / "no.cwdesign", naming=naming)
            self.refuse(*BOX, "--extra", f"mats:pattern={written}", "-o", self.folder / "no.cwdesign", naming=naming)
        self.assertFalse((self.folder / "no.cwdesign").exists())


if __name__ == "__main__":
    unittest.main()
