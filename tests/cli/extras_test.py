"""What goes with a box: listed, written with the design, cut, explained; bad ones are one sentence."""

import json
import unittest
import xml.etree.ElementTree as ET

from program import ProgramTest

KINDS = [
    "belly-band", "sleeve", "mats", "photo-mats", "label", "tag", "window", "platform", "greeting-slip", "ribbon", "made-bow",
    "ribbon-pull", "partition",
]  # fmt: skip


class Extras(ProgramTest):
    def box(self, *extras, product="box:60x35x120mm"):
        out = self.folder / "box.cwdesign"
        arguments = [part for extra in extras for part in ("--extra", extra)]
        self.succeed("new", "--style", "straight-tuck-box", "--product", product, "--grid", "1mm", *arguments, "-o", out)
        return out

    def pieces(self, design):
        out = self.folder / "box.json"
        self.succeed("export", design, "-o", out)
        return {p["name"]: p for p in json.loads(out.read_text(encoding="utf-8"))["pieces"]}

    def test_every_kind_is_listed(self):
        page = json.loads(self.succeed("extras", "--json"))
        self.assertEqual(page["format"], "creasewright-extras")
        self.assertEqual([kind["id"] for kind in page["extras"]], KINDS)
        text = self.succeed("extras")
        for kind in KINDS:
            self.assertIn(kind, text)

    def test_choices_are_named_and_what_is_left_open_says_so(self):
        text = self.succeed("extras")
        self.assertRegex(text, r"shape +rectangle +Shape \(rectangle, circle, oval, scalloped, rounded,")
        self.assertRegex(text, r"width +automatic \(0\) +Band width \(or up to 1000 mm\)")
        label = next(k for k in json.loads(self.succeed("extras", "--json"))["extras"] if k["id"] == "label")
        keys = {p["key"]: p for p in label["parameters"]}
        self.assertEqual(keys["shape"]["choices"][:4], ["Rectangle", "Circle", "Oval", "Scalloped"])
        self.assertEqual(len(keys["shape"]["choices"]), 14)
        self.assertEqual(keys["width"]["zero"], "automatic")

    def test_a_window_keeps_off_glue_and_a_covered_label_is_a_warning(self):
        out = self.folder / "box.cwdesign"
        start = ["new", "--style", "straight-tuck-box", "--product", "box:60x35x120mm", "--grid", "1mm", "-o", out]
        self.refuse(*start, "--extra", "window:width=25mm,height=25mm,face=box:front/right,lap=6mm", naming="Window")
        self.succeed(*start, "--extra", "sleeve", "--extra", "label:face=box:front,host=box")
        problems = json.loads(self.succeed("check", out, "--json"))["problems"]
        self.assertIn(("extra-covered", "warning"), [(p["code"], p["severity"]) for p in problems])
        self.assertIn("Sleeve", problems[0]["text"])

    def test_their_pieces_are_exported_with_their_card(self):
        pieces = self.pieces(self.box("belly-band", "label:shape=oval,card=index-90lb,text=Plum jam/from the mill"))
        self.assertEqual(list(pieces), ["box", "band", "label-mat", "label"])
        self.assertIsNone(pieces["box"]["extra"])
        self.assertEqual(pieces["label"]["extra"], 1)
        self.assertEqual(pieces["label"]["card"]["id"], "index-90lb")

    def test_hosts_layers_and_foam_are_told(self):
        design = self.box(
            "belly-band",
            "label:host=band,mat=0,text=Plum, jam,layer=circle,inset=2mm,hold=foam,foam=2mm,card=index-90lb,layer=banner,overhang=1,width=40mm,height=20mm",
            "label:host=label,mat=0,width=10mm,height=10mm",
            "made-bow",
        )
        out = self.folder / "net.json"
        self.succeed("export", design, "-o", out)
        page = json.loads(out.read_text(encoding="utf-8"))
        band, label, banner, bow = page["extras"]
        self.assertEqual([e["host"] for e in (band, label, banner)], [None, 0, 1])
        self.assertEqual(label["lines"], ["Plum, jam"])
        self.assertEqual([p["hold"] for p in label["parts"]], ["glue", "foam", "glue"])
        self.assertEqual(label["parts"][1]["foam"], 2)
        self.assertEqual({f["piece"] for p in label["parts"] for f in p["faces"]}, {"band"})
        self.assertEqual(banner["parts"][0]["faces"][0]["piece"], label["parts"][-1]["piece"])
        self.assertEqual(len(page["ribbons"]), 1)
        guide = self.folder / "guide.html"
        self.succeed("guide", design, "-o", guide, "--language", "en")
        text = guide.read_text(encoding="utf-8")
        self.assertIn("of the piece “band”", text)
        self.assertRegex(text, "foam dots?")
        self.assertLess(text.index("Glue on the label"), text.index("Slide the band on"))

    def test_measures_behind_words_are_measures(self):
        box = self.box("label:text=For you, with love,anchor=bottom,height=20mm,width=40mm")
        label = next(extra for extra in json.load(open(box))["extras"] if extra["kind"] == "label")
        self.assertEqual(label["text"], "For you, with love")
        self.assertEqual((label["parameters"]["height"], label["parameters"]["width"]), ("20 mm", "40 mm"))
        start = ["new", "--style", "straight-tuck-box", "--product", "box:60x35x120mm", "-o", box]
        self.refuse(*start, "--extra", "label:text=For you,hight=20mm", naming="hight")

    def test_layers_take_the_sizes_of_the_punches_that_are_owned(self):
        punches = self.folder / "punches.csv"
        punches.write_text("shape,width,height\ncircle,1 in,\ncircle,1 3/8 in,\n", encoding="utf-8")
        out = self.folder / "box.cwdesign"
        start = ["new", "--style", "straight-tuck-box", "--product", "box:60x35x120mm", "--grid", "1mm", "-o", out, "--punches", punches]
        self.succeed(*start, "--extra", "label:shape=circle,width=38mm,mat=0,punched=1")
        label = self.pieces(out)["label"]
        self.assertAlmostEqual(label["blank"]["width"], 34.925, places=3)
        guide = self.folder / "guide.html"
        self.succeed("guide", out, "-o", guide, "--language", "en")
        self.assertIn("Punch “label”", guide.read_text(encoding="utf-8"))
        punches.write_text("shape,width\ncloud,1 in\n", encoding="utf-8")
        self.refuse(*start, "--extra", "label", naming="cloud")

    def test_a_drawer_is_pulled_by_a_ribbon_through_two_holes(self):
        out = self.folder / "drawer.cwdesign"
        start = ["new", "--style", "drawer-box", "--product", "box:80x60x30mm", "--grid", "1mm", "-o", out, "--set", "ribbon-hole=0"]
        self.succeed(*start, "--extra", "ribbon-pull:face=tray:base/left,reach=30mm,spacing=20mm")
        net = self.folder / "net.json"
        self.succeed("export", out, "-o", net)
        page = json.loads(net.read_text(encoding="utf-8"))
        (ribbon,) = page["ribbons"]
        self.assertEqual((ribbon["pull"]["piece"], ribbon["pull"]["panel"], ribbon["pull"]["holes"]), ("tray", "base/left", 2))
        taut = 2 * (30**2 + 10**2) ** 0.5
        self.assertGreater(ribbon["length"], taut + 2 * ribbon["pull"]["end"])
        wall = next(p for p in page["pieces"][0]["panels"] if p["id"] == "base/left")
        self.assertEqual(len(wall["openings"]), 2)
        guide = self.folder / "guide.html"
        self.succeed("guide", out, "-o", guide, "--language", "en")
        self.assertIn("Thread the ribbon pull", guide.read_text(encoding="utf-8"))
        self.refuse(*start, "--extra", "ribbon-pull:face=tray:base/front", naming="“front (tray)”")
        self.refuse(*start, "--extra", "ribbon-pull:hole=40mm", naming="40")

    def test_a_partition_is_cut_as_slotted_dividers(self):
        out = self.folder / "box.cwdesign"
        start = ["new", "--style", "two-piece-box", "--product", "box:112x76x32mm", "--grid", "1mm", "-o", out]
        self.succeed(*start, "--extra", "partition:columns=4,rows=3,piece-form=balls")
        pieces = self.pieces(out)
        self.assertEqual((pieces["long-divider"]["count"], pieces["short-divider"]["count"]), (2, 3))
        self.assertEqual(pieces["short-divider"]["held"]["to"], "long-divider")
        guide = self.folder / "guide.html"
        self.succeed("guide", out, "-o", guide, "--language", "en")
        text = guide.read_text(encoding="utf-8")
        self.assertIn("Set in the partition", text)
        self.assertIn("one piece into each cell", text)
        self.refuse(*start, "--extra", "partition:height=200mm", naming="200")

    def test_a_circle_of_hosts_in_a_file_is_one_sentence(self):
        design = self.box("label", "label")
        file = json.loads(design.read_text(encoding="utf-8"))
        file["extras"][0]["host"], file["extras"][1]["host"] = "2", "1"
        design.write_text(json.dumps(file), encoding="utf-8")
        run = self.run_program("check", design, "--json")
        problems = json.loads(run.stdout)["problems"]
        self.assertEqual([p["code"] for p in problems], ["extra-host-circle"])
        file["extras"][0]["host"] = "nowhere"
        design.write_text(json.dumps(file), encoding="utf-8")
        self.refuse("check", design, naming="extras/1/host")

    def test_they_follow_the_product(self):
        small = self.pieces(self.box("belly-band"))["band"]["blank"]["width"]
        large = self.pieces(self.box("belly-band", product="box:80x35x120mm"))["band"]["blank"]["width"]
        self.assertAlmostEqual(large, small + 40, places=6)

    def test_the_guide_puts_them_on_and_writes_their_text(self):
        out = self.folder / "guide.html"
        self.succeed("guide", self.box("label:text=Plum jam", "ribbon"), "-o", out, "--language", "en")
        page = out.read_text(encoding="utf-8")
        self.assertIn("Glue on the label", page)
        self.assertIn("Tie the ribbon", page)
        self.assertIn("Plum jam", page)

    def test_the_svg_of_a_label_carries_its_text(self):
        out = self.folder / "label.svg"
        self.succeed("export", self.box("label:text=Plum jam"), "--piece", "label", "-o", out)
        words = [node.text for node in ET.parse(out).iter() if node.tag.endswith("}text")]
        self.assertIn("Plum jam", words)

    def test_words_are_set_as_wished(self):
        design = self.box(
            "label:shape=circle,width=50mm,mat=0,text=Plum jam/No. 7/from our garden,font=serif,curve=round,"
            "layer=rectangle,width=15mm,height=9mm,text=Tea, mint,align=left,font=typewriter,points=7"
        )
        out = self.folder / "net.json"
        self.succeed("export", design, "-o", out)
        pieces = {piece["name"]: piece for piece in json.loads(out.read_text(encoding="utf-8"))["pieces"]}
        over, between, under = pieces["label"]["words"]
        self.assertEqual([w["text"] for w in (over, under, between)], ["Plum jam", "from our garden", "No. 7"])
        self.assertEqual({w["font"] for w in (over, under, between)}, {"serif"})
        self.assertEqual([w["arc"] and w["arc"]["lower"] for w in (over, under, between)], [False, True, None])
        # The circles of both lines lie inside the rim, about the middle of the label.
        for words, way in ((over, 1), (under, -1)):
            self.assertAlmostEqual(words["at"][0], 25, places=3)
            self.assertAlmostEqual((words["at"][1] - 25) * way, words["arc"]["radius"], places=3)
            self.assertLess(words["arc"]["radius"] + (0.95 if way > 0 else 0.25) * words["height"], 24.1)
        (tea,) = pieces["label-layer"]["words"]
        self.assertEqual((tea["text"], tea["align"], tea["font"]), ("Tea, mint", "left", "typewriter"))
        self.assertAlmostEqual(tea["height"], 7 * 25.4 / 72, places=3)
        self.refuse(
            "new", "--style", "straight-tuck-box", "--product", "box:60x35x120mm", "-o", self.folder / "no.cwdesign",
            "--extra", "label:font=gothic", naming="gothic",
        )

    def test_the_folded_picture_shows_words(self):
        out = self.folder / "box.svg"
        self.succeed("export", self.box("label:text=Plum jam,font=slanted"), "--folded", "-o", out)
        (words,) = [node for node in ET.parse(out).iter() if node.tag.endswith("}text")]
        self.assertEqual(words.text, "Plum jam")
        self.assertIn("matrix(", words.get("transform"))
        self.assertEqual((words.get("font-family"), words.get("font-style")), ("serif", "italic"))

    def test_what_cannot_be_is_one_sentence(self):
        out = self.folder / "no.cwdesign"
        start = ["new", "--style", "straight-tuck-box", "--product", "box:60x35x120mm", "-o", out, "--extra"]
        for extra, naming in {
            "knot": "knot",
            "label:host=hat": "hat",
            "label:layer=cloud": "cloud",
            "tag:layer=circle": "layer",
            "label:layer=circle,width=300mm": "300",
            "label:size=3": "size",
            "label:width": "width",
            "label:width=far": "far",
            "label:width=200mm": "Label",
            "label:face=box:nowhere": "nowhere",
            "mats:card=velvet": "velvet",
            "platform": "Platform insert",
        }.items():
            self.refuse(*start, extra, naming=naming)
            self.assertFalse(out.exists(), extra)


class KitTables(ProgramTest):
    def design(self):
        out = self.folder / "tray.cwdesign"
        self.succeed("new", "--style", "framed-tray", "--product", "box:80x60x20mm", "-o", out)
        return out

    def table(self, name, text):
        path = self.folder / name
        path.write_text(text, encoding="utf-8")
        return path

    def test_stock_of_a_table_is_cut_from(self):
        stock = self.table("stock.csv", "name;width;height;price\nKraft;12 in;18 in;0,90\n")
        out = self.folder / "plan.json"
        self.succeed("kit", self.design(), "--takers", "5", "--stock", stock, "-o", out)
        plan = json.loads(out.read_text(encoding="utf-8"))
        stocks = {layout["stock"] for card in plan["cards"] for layout in card["layouts"]}
        self.assertEqual(stocks, {"Kraft"})
        self.assertEqual(plan["cards"][0]["cost"], 90 * plan["sheets"])

    def test_a_row_that_cannot_be_read_is_named(self):
        stock = self.table("stock.csv", "name,width,height\nKraft,wide,18 in\n")
        self.refuse("kit", self.design(), "--stock", stock, "-o", self.folder / "p.pdf", naming="wide")
        supplies = self.table("supplies.csv", "name,kind\nRope,rope\n")
        self.refuse("kit", self.design(), "--sheet", "a4", "--supplies", supplies, "-o", self.folder / "p.pdf", naming="rope")

    def test_mats_for_a_machine_are_svg_files_that_make_every_net(self):
        folder = self.folder / "mats"
        self.succeed("kit", self.design(), "--takers", "9", "--machine", "12x12in", "-o", f"{folder}/")
        made = sorted(folder.glob("*.svg"))
        self.assertTrue(made)
        for path in made:
            root = ET.parse(path).getroot()
            self.assertEqual(root.get("width"), "304.8mm", path.name)
        self.refuse("kit", self.design(), "--machine", "far", "-o", f"{folder}2/", naming="far")
        self.refuse("kit", self.design(), "--machine", "40x40mm", "-o", f"{folder}2/", naming="tray")


if __name__ == "__main__":
    unittest.main()
