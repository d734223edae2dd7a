"""Class kits: the plan is sound, judged from the exported file alone, and bad input is one sentence."""

import json
import random
import subprocess
import unittest

from program import TRAY, ProgramTest


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
    def test_a_file_may_have_an_equals_sign_in_its_name(self):
        design = self.design().rename(self.folder / "odd=name.cwdesign")
        plan = self.plan(design, "--count", f"{design}=2", "--takers", "3", "--spares", "0", "--sheet", "12x12")
        self.assertEqual([demand["quantity"] for card in plan["cards"] for demand in card["demands"]], [6])

    def plan(self, *arguments, goal="fewest"):
        out = self.folder / "plan.json"
        self.succeed("kit", *arguments, *(("--plan", goal) if goal else ()), "-o", out)
        return json.loads(out.read_text(encoding="utf-8"))

    def test_a_class_gets_an_easy_plan_and_is_told_what_it_costs(self):
        words = ("--blank", "120x72mm:name=Panel,count=2", "--blank", "31x78mm:name=Strip,count=3",
                 "--blank", "12x40mm:name=Tag", "--sheet", "a4", "--takers", "12")  # fmt: skip
        fewest, easy = self.plan(*words), self.plan(*words, goal="easy")
        self.assertEqual(self.plan(*words, goal=""), easy)
        self.assertEqual((fewest["plan"], easy["plan"]), ("fewest", "easy"))
        card = easy["cards"][0]
        self.assertEqual(card["fewest"], {key: fewest["cards"][0][key] for key in ("sheets", "cost")})
        self.assertIsNone(fewest["cards"][0]["fewest"])
        self.assertEqual(card["proven"], card["cost"] == card["bound"])
        self.check(easy)
        kit = self.folder / "easy.cwkit"
        self.succeed("kit", *words, "-o", kit)
        self.assertEqual(self.plan(kit, goal="")["plan"], "easy")
        out = self.folder / "plan.csv"
        self.succeed("kit", kit, "-o", out)
        rows = out.read_text(encoding="utf-8").splitlines()
        self.assertTrue(all(",easy," in row for row in rows[1:]), rows)
        self.refuse("kit", *words, "--plan", "quick", "-o", out, naming="quick")

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

    def check(self, plan):
        """Counts, geometry and totals of a plan, from its file alone."""
        for card in plan["cards"]:
            have = [0] * len(card["demands"])
            sheets = 0
            for layout in card["layouts"]:
                sheets += layout["count"]
                sheet = layout["sheet"]
                cut = parts(layout["cuts"], 0, 0, sheet["w"], sheet["h"])
                self.assertEqual(len(cut), len(layout["pieces"]))
                for piece in layout["pieces"]:
                    self.assertLessEqual(piece["x"] + piece["w"], sheet["w"] + 1e-6)
                    self.assertLessEqual(piece["y"] + piece["h"], sheet["h"] + 1e-6)

                def count(node):
                    if "blank" in node:
                        have[node["blank"]] += layout["count"]
                    for part in node.get("parts", []):
                        count(part)

                count(layout["cuts"])
            self.assertEqual(sheets, card["sheets"])
            self.assertLessEqual(card["bound"], card["cost"])
            for got, demand in zip(have, card["demands"]):
                self.assertEqual(got, demand["quantity"] + demand["left_over"], demand)
                self.assertGreaterEqual(demand["left_over"], 0)

    def test_sheets_that_were_proven_too_many(self):
        for arguments, sheets in (
            ("--blank 21x78mm:name=Strip --blank 120x72mm:name=Panel --blank 101x165mm:name=Card "
             "--sheet a4 --takers 8 --keep-grain", 5),
            ("--blank 5.375x3.1875in:name=A --blank 6.125x6.875in:name=B --blank 7.625x3.125in:name=C "
             "--sheet 12x12in --takers 1", 1),
            ("--blank 20x20mm:name=A,count=1 --sheet 12x12 --takers 450", 2),
        ):  # fmt: skip
            plan = self.plan(*arguments.split())
            self.check(plan)
            self.assertEqual((plan["sheets"], plan["proven"]), (sheets, True), arguments)

    def test_one_more_person_never_takes_more_than_a_set_of_its_own(self):
        sizes = ("83x121 97x143 61x187 113x59 71x203 139x89 53x157 67x101 127x73 181x41 79x149 109x131").split()
        blanks = [word for size in sizes for word in ("--blank", f"{size}mm:name={size}")]
        plan = self.plan(self.design(), *blanks, "--takers", "17", "--sheet", "12x12")
        self.check(plan)
        alone = self.plan(self.design(), *blanks, "--takers", "1", "--sheet", "12x12")
        self.assertLessEqual(plan["one_more"]["sheets"], alone["sheets"])
        self.assertGreaterEqual(plan["one_more"]["sheets"], 0)

    def test_scarce_sheets_never_give_an_empty_plan(self):
        generator = random.Random(5)
        table = self.folder / "sheets.csv"
        out = self.folder / "plan.json"
        made = 0
        for _ in range(25):
            rows = [f"S{i},{generator.randint(180, 330)} mm,{generator.randint(180, 330)} mm,{generator.choice((0, 1, 2, 3, 40))}"
                    for i in range(3)]  # fmt: skip
            table.write_text("name,width,height,limit\n" + "\n".join(rows) + "\n", encoding="utf-8")
            blanks = [f"{generator.randint(30, 175)}x{generator.randint(30, 175)}mm:name=B{i}"
                      for i in range(generator.randint(2, 5))]  # fmt: skip
            words = [word for blank in blanks for word in ("--blank", blank)]
            result = self.run_program("kit", *words, "--stock", table, "--takers", "6", "-o", out)
            if result.returncode == 0:
                plan = json.loads(out.read_text(encoding="utf-8"))
                self.assertGreater(plan["sheets"], 0, (rows, blanks))
                self.check(plan)
                made += 1
                out.unlink()
        self.assertGreater(made, 10)

    def test_no_blank_is_left_over_where_no_extras_are_wanted(self):
        blanks = ("--blank", "70x90mm:name=A", "--blank", "41x63mm:name=B", "--blank", "55x120mm:name=C")
        extras = 0
        for takers in (13, 17, 19, 23, 29):
            words = (*blanks, "--sheet", "a4", "--takers", str(takers))
            with_extras = self.plan(*words)
            extras += sum(d["left_over"] for d in with_extras["cards"][0]["demands"])
            plan = self.plan(*words, "--no-extras")
            self.check(plan)
            self.assertEqual([d["left_over"] for d in plan["cards"][0]["demands"]], [0, 0, 0])
            self.assertEqual(plan["sheets"], with_extras["sheets"])
        self.assertGreater(extras, 0)

    def test_the_sheet_is_told_as_it_lies(self):
        table = self.folder / "sheets.csv"
        table.write_text("name,width,height,grain\nLetter,8.5 in,11 in,short\n", encoding="utf-8")
        plan = self.plan("--blank", "254x100mm:name=A", "--stock", table, "--keep-grain", "--takers", "2")
        self.check(plan)
        sheet = plan["cards"][0]["layouts"][0]["sheet"]
        self.assertEqual((sheet["w"], sheet["h"]), (279.4, 215.9))

    def test_names_beyond_the_sets_are_refused(self):
        names = self.folder / "names.txt"
        names.write_text("Ada\nBen\nCleo\n", encoding="utf-8")
        out = self.folder / "x.json"
        self.refuse("kit", self.design(), "--sheet", "12x12", "--takers", "2", "--names", names, "-o", out, naming="3 names")
        self.assertFalse(out.exists())

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

    def test_plain_blanks_counts_and_pieces(self):
        design = self.design()
        plan = self.plan(design, "--count", f"{design}=2", "--blank", "4x6in:count=3,card=300gsm,name=Panel, plain",
                         "--takers", "5", "--sheet", "12x12")  # fmt: skip
        self.assertEqual({demand["quantity"] for demand in plan["cards"][0]["demands"]}, {10})
        panel = plan["cards"][1]["demands"][0]
        self.assertEqual((panel["name"], panel["w"], panel["h"], panel["quantity"]), ("Panel, plain", 101.6, 152.4, 15))
        pieces = [piece for layout in plan["cards"][1]["layouts"] for piece in layout["pieces"]]
        self.assertEqual({piece["design"] for piece in pieces}, {None})
        # Six of 4 x 6 in fill a 12 x 12 in sheet: three sheets.
        self.assertEqual(plan["cards"][1]["sheets"], 3)
        self.assertTrue(plan["cards"][1]["proven"])

    def test_a_blanks_name_may_hold_commas_and_stand_anywhere(self):
        plan = self.plan("--blank", "4x6in:name=Panel, large,count=3,card=300gsm", "--sheet", "a4", "--takers", "2")
        demand = plan["cards"][0]["demands"][0]
        self.assertEqual((demand["name"], demand["quantity"]), ("Panel, large", 6))

    def test_only_one_piece(self):
        box = self.folder / "box.cwdesign"
        self.succeed("new", "--style", "two-piece-box", "--product", "box:60x40x25mm", "-o", box)
        whole = self.plan(box, "--sheet", "12x12")
        lid = self.plan(box, "--only", f"{box}=lid", "--sheet", "12x12")
        self.assertEqual(len(whole["cards"][0]["demands"]), 2)
        self.assertEqual(len(lid["cards"][0]["demands"]), 1)
        self.refuse("kit", box, "--only", f"{box}=spout", "--sheet", "12x12", "-o", self.folder / "x.json", naming="spout")

    def test_a_folder_holds_all_papers(self):
        box = self.folder / "box.cwdesign"
        self.succeed("new", "--style", "two-piece-box", "--product", "box:60x40x25mm", "-o", box)
        out = self.folder / "class"
        self.succeed("kit", self.design(), box, "--only", f"{box}=lid", "--sheet", "12x12", "-o", f"{out}/")
        names = sorted(path.name for path in out.iterdir() if path.name != ".creasewright-files")
        self.assertEqual(len(names), 5)
        for start in ("class.cwkit", "guide-1-", "plan.csv", "plan.pdf", "template-1-"):
            self.assertTrue(any(name.startswith(start) for name in names), (start, names))
        for path in out.glob("*.pdf"):
            self.assertTrue(path.read_bytes().startswith(b"%PDF-"), path)

    def test_carriers_come_with_an_overview(self):
        out = self.folder / "machine"
        self.succeed("kit", self.design(), "--machine", "12x12in", "-o", f"{out}/")
        self.assertTrue((out / "carriers.pdf").read_bytes().startswith(b"%PDF-"))
        self.assertTrue(list(out.glob("*.svg")))

    def test_own_cards_come_from_the_table_of_sheets(self):
        table = self.folder / "sheets.csv"
        table.write_text("name,card,basis,caliper,width,height\nLinen,linen,80 lb cover,0.31 mm,12 in,12 in\n"
                         "Any,,,,12 in,12 in\n", encoding="utf-8")  # fmt: skip
        plan = self.plan(self.design(), "--stock", table, "--blank", "4x6in:card=linen", "--takers", "6")
        self.assertEqual([card["card"] for card in plan["cards"]][1:], ["Linen"])
        self.assertEqual({layout["stock"] for layout in plan["cards"][0]["layouts"]}, {"Any"})
        self.assertEqual({layout["stock"] for layout in plan["cards"][1]["layouts"]}, {"Linen"})

    def test_prices_stand_on_the_plan_and_add_up(self):
        tray = self.design(*TRAY)
        stock = self.folder / "stock.csv"
        stock.write_text("name,width,height,price\n12 x 12 in,12 in,12 in,0.50\n", encoding="utf-8")
        wanted = ("--stock", stock, "--takers", "10", "--rate", "18,00", "--margin", "40", "--fee", "5",
                  "--class-costs", "90", "--currency", "EUR")  # fmt: skip
        out = self.folder / "plan.json"
        self.succeed("kit", tray, *wanted, "-o", out)
        plan = json.loads(out.read_text(encoding="utf-8"))
        box = plan["prices"]["boxes"][0]
        self.assertEqual(box["card"], round(50 * plan["sheets"] / 10))
        self.assertAlmostEqual(box["work"], 1800 * box["minutes"] / 60, delta=1)
        parts = ("card", "tape_and_glue", "ribbon", "work", "overhead")
        self.assertEqual(box["cost"], sum(box[part] for part in parts))
        self.assertAlmostEqual(box["price"] * 0.95 * 0.6, box["cost"], delta=1)
        self.assertEqual(plan["prices"]["seat"]["share_of_class"], 900)
        page = self.folder / "plan.pdf"
        self.succeed("kit", tray, *wanted, "-o", page)
        words = subprocess.run(["pdftotext", "-layout", page, "-"], capture_output=True, text=True, check=True).stdout
        self.assertIn("Cost and price", words)
        self.assertIn(f"{box['price'] / 100:.2f} EUR", words)
        kit = self.folder / "class.cwkit"
        self.succeed("kit", tray, *wanted, "-o", kit)
        again = self.folder / "again.json"
        self.succeed("kit", kit, "-o", again)
        self.assertEqual(again.read_bytes(), out.read_bytes())
        for wrong in (("--rate", "much"), ("--margin", "95"), ("--currency", "pieces of eight")):
            self.refuse("kit", tray, "--takers", "4", "--sheet", "12x12", *wrong, "-o", self.folder / "no.json", naming=wrong[0])

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
            ((design, "--sheet", "a4", "--blank", "4in", "-o", out), "--blank"),
            ((design, "--sheet", "a4", "--blank", "4x6in:size=2", "-o", out), "--blank"),
            ((design, "--sheet", "a4", "--blank", "4x6in:count=0", "-o", out), "--blank"),
            ((design, "--sheet", "a4", "--blank", "4x6in:card=felt", "-o", out), "--blank"),
            ((design, "--sheet", "a4", "--count", "other=2", "-o", out), "--count"),
            ((design, "--sheet", "a4", "--count", f"{design}=0", "-o", out), "--count"),
            ((design, "--sheet", "a4", "--only", "lid", "-o", out), "--only"),
            ((design, "--sheet", "3x5furlong", "-o", out), "--sheet"),
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
