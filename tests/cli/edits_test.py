"""Changes by hand: listed, written with the design and read back; bad ones are one sentence."""

import json
import unittest

from program import ProgramTest

# What must be said of each kind, on a straight tuck box.
KINDS = {
    "opening": "on=front,shape=star,width=20mm,height=20mm",
    "notch": "on=front/right/bottom-dust-flap,edge=side,width=8mm",
    "slit": "on=front",
    "slit-pair": "on=front",
    "hanging-slot": "on=front-left-back,y-from=top,y=12 mm",
    "holes": "on=front,count=3",
    "corners": "on=front/left/top-dust-flap,edge=side,size=3mm",
    "edge": "on=front,edge=top,shape=wave,depth=1mm",
    "flap": "on=front-left-back-seam,edge=outer,angle=0,margin=45mm",
    "split": "on=front/left/top-dust-flap",
    "fold": "on=front-left-back-seam,edge=inner,line=perforation",
    "slit-lock": "on=front/left/back/top-lid/tuck,edge=inner,length=5 mm",
    "merge": "on=front/left/top-dust-flap/part,edge=inner",
    "remove": "on=front/left/top-dust-flap",
    "text": "on=front,words=For you, with love",
    "mark": "on=front,shape=ring",
    "seam": "on=front/left,edge=inner",
}
# What must be done before it can be.
BEFORE = {"merge": ["split:on=front/left/top-dust-flap"]}
FAULTS = {
    "blob:on=front": "blob",
    "opening": "front/left/back/seam",
    "opening:on=roof": "roof",
    "opening:on=front,wid": "wid",
    "opening:on=front,size=3": "size",
    "opening:on=front,edge=top": "edge",
    "notch:on=front,edge=brim": "brim",
    "opening:on=front,shape=blob": "heart",
    "opening:on=front,width=200mm": "front",
    "opening:on=front,width=brim": "panel-width",
    "opening:on=front,width=panel-width/0": "zero",
    "opening:on=front,width=this-height,height=this-width": "itself",
    "opening:on=front,width=3-2mm": "units",
    "holes:on=front,count=0": "100",
}


class Edits(ProgramTest):
    def new(self, *edits):
        """The arguments of a box with these edits, and its file."""
        out = self.folder / "box.cwdesign"
        arguments = [part for edit in edits for part in ("--edit", edit)]
        start = ["new", "--style", "straight-tuck-box", "--product", "box:60x35x120mm", "--grid", "1mm"]
        return [*start, *arguments, "-o", out], out

    def test_every_kind_is_listed_and_can_be_made(self):
        page = json.loads(self.succeed("edits", "--json"))
        self.assertEqual(page["format"], "creasewright-edits")
        self.assertEqual({kind["id"] for kind in page["edits"]}, set(KINDS))
        text = self.succeed("edits")
        for kind in page["edits"]:
            for measure in kind["parameters"]:
                self.assertIn(f"    {measure['key']} ", text)
            with self.subTest(kind["id"]):
                arguments, out = self.new(*BEFORE.get(kind["id"], []), f"{kind['id']}:{KINDS[kind['id']]}")
                self.succeed(*arguments)
                self.succeed("check", out)
                edit = json.loads(out.read_text(encoding="utf-8"))["edits"][-1]
                self.assertEqual(edit["kind"], kind["id"])

    def test_panels_and_edges_of_a_style_are_listed(self):
        self.assertRegex(self.succeed("edits", "--style", "straight-tuck-box"), r"front +bottom, left, right, top")

    def test_formulas_are_kept_as_they_are_written(self):
        arguments, out = self.new("opening:on=front,width=panel-width - 2 * 6 mm,height=this-width / 2")
        self.succeed(*arguments)
        (edit,) = json.loads(out.read_text(encoding="utf-8"))["edits"]
        self.assertEqual(edit["measures"], {"width": "panel-width - 2 * 6 mm", "height": "this-width / 2"})

    def test_a_seam_makes_two_blanks_that_fit_the_sheet(self):
        arguments, out = self.new("seam:on=front/left,edge=inner")
        self.succeed(*arguments)
        net = self.folder / "net.json"
        self.succeed("export", out, "-o", net)
        pieces = json.loads(net.read_text(encoding="utf-8"))["pieces"]
        self.assertEqual([piece["name"] for piece in pieces], ["box", "other-half"])
        self.assertEqual(pieces[0]["held"]["to"], "other-half")
        across = [area for piece in pieces for area in piece["glue_plan"] if "piece" in area]
        self.assertEqual({area["piece"] for area in across}, {"box", "other-half"})

    def test_words_may_hold_commas_and_stand_in_the_picture(self):
        arguments, out = self.new("text:on=front,turn=quarter,words=For you, with love")
        self.succeed(*arguments)
        picture = self.folder / "box.svg"
        self.succeed("export", out, "-o", picture)
        self.assertIn("For you, with love", picture.read_text(encoding="utf-8"))

    def test_bad_edits_are_one_sentence_and_write_nothing(self):
        for edit, told in FAULTS.items():
            with self.subTest(edit):
                arguments, out = self.new(edit)
                self.assertIn(told, self.refuse(*arguments))
                self.assertFalse(out.exists())


if __name__ == "__main__":
    unittest.main()
