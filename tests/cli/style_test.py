"""Styles of one's own: kept from a design, listed, tried on products, given to others, changed later."""

import json
import os
import unittest

from program import ProgramTest


class OwnStyles(ProgramTest):
    def setUp(self):
        super().setUp()
        self.box = self.folder / "heart.cwdesign"
        self.succeed("new", "--style", "straight-tuck-box", "--product", "box:60x35x120mm", "--grid", "1mm",
                     "--edit", "opening:on=front,shape=heart,width=panel-width/3,height=this-width",
                     "-o", self.box)  # fmt: skip
        self.style = self.folder / "heart.cwstyle"

    def keep(self, *more, out=None):
        self.succeed("style", "keep", self.box, "--name", "Heart box", *more, "-o", out or self.style)
        return json.loads((out or self.style).read_text(encoding="utf-8"))

    def made_for(self, product, *more):
        out = self.folder / "made.cwdesign"
        self.succeed("new", "--style", self.style, "--product", product, *more, "-o", out)
        return out, json.loads(out.read_text(encoding="utf-8"))

    def test_what_is_kept_is_in_the_file_and_the_same_each_time(self):
        page = self.keep("--suits", "30x20x40..90x60x160mm", "--see", "height,length", "--rule", "tuck=width/2",
                         "--note", "Bottles")  # fmt: skip
        self.assertEqual((page["format"], page["change"], page["title"]), ("creasewright-style", 1, "Heart box"))
        self.assertEqual(page["suits"]["most"], {"length": "90 mm", "width": "60 mm", "height": "160 mm"})
        self.assertEqual(page["seen"], ["length", "height"])
        self.assertEqual(page["rules"], {"tuck": "width/2"})
        self.assertEqual([edit["kind"] for edit in page["edits"]], ["opening"])
        self.assertTrue(page["picture"].endswith("</svg>\n"))
        first = self.style.read_bytes()
        self.style.unlink()
        self.keep("--suits", "30x20x40..90x60x160mm", "--see", "length,height", "--rule", "tuck=width/2",
                  "--note", "Bottles")  # fmt: skip
        self.assertEqual(self.style.read_bytes(), first)

    def test_a_design_of_it_fits_the_next_product_and_carries_it(self):
        page = self.keep("--see", "height", "--rule", "tuck=width/2")
        for product in ("box:40x30x60mm", "box:80x50x140mm", "cylinder:40x90mm"):
            out, made = self.made_for(product)
            self.succeed("check", out)
            self.assertEqual({**made["own_style"], "picture": ""}, {**page, "picture": ""})
            net = self.folder / "net.json"
            self.succeed("export", out, "-o", net)
            panels = json.loads(net.read_text(encoding="utf-8"))["pieces"][0]["panels"]
            self.assertEqual([p["id"] for p in panels if p["openings"]], ["front"])

    def test_only_what_is_seen_can_be_set(self):
        self.keep("--see", "height")
        self.made_for("box:40x30x60mm", "--set", "height=90mm")
        out = self.folder / "no.cwdesign"
        self.refuse("new", "--style", self.style, "--set", "seam=9mm", "-o", out, naming="seam")
        self.assertFalse(out.exists())

    def test_it_is_tried_on_the_sizes_it_suits(self):
        self.keep("--suits", "30x20x40..90x60x160mm")
        told = self.succeed("style", "check", self.style)
        self.assertIn("box:90x60x160mm", told)
        page = json.loads(self.succeed("style", "check", self.style, "--json"))
        self.assertTrue(page["holds"])
        self.assertEqual(len(page["trials"]), 6)
        page = json.loads(self.style.read_text(encoding="utf-8"))
        page["edits"][0]["measures"]["width"] = "60 mm"
        self.style.write_text(json.dumps(page), encoding="utf-8")
        done = self.run_program("style", "check", self.style, "--json")
        self.assertEqual((done.returncode, done.stderr), (1, ""))
        trials = json.loads(done.stdout)["trials"]
        codes = {p["code"] for trial in trials for p in trial["problems"]}
        self.assertEqual(codes, {"style-piece-broken"})
        self.assertIn("Heart box", trials[0]["problems"][0]["text"])
        self.succeed("style", "check", self.style, "--for", "box:90x60x160mm")

    def test_it_is_changed_later_and_keeps_its_id(self):
        first = self.keep("--see", "height")
        opened = self.folder / "opened.cwdesign"
        self.succeed("style", "open", self.style, "--for", "box:60x35x120mm", "-o", opened)
        page = json.loads(opened.read_text(encoding="utf-8"))
        self.assertNotIn("own_style", page)
        self.assertEqual(page["edits"], first["edits"])
        page["edits"].append({**page["edits"][0], "panel": "front/left/back"})
        opened.write_text(json.dumps(page), encoding="utf-8")
        self.succeed("style", "keep", opened, "--again", self.style, "--note", "Now with two", "-o", self.style)
        second = json.loads(self.style.read_text(encoding="utf-8"))
        self.assertEqual((second["id"], second["change"]), (first["id"], 2))
        self.assertEqual((second["title"], second["summary"]), ("Heart box", "Now with two"))
        self.assertEqual(second["seen"], ["height"])
        self.assertEqual(len(second["edits"]), 2)

    def test_a_folder_is_listed_with_what_cannot_be_read(self):
        page = self.keep("--suits", "30x20x40..90x60x160mm", "--note", "Bottles")
        told = self.succeed("style", "list", self.folder)
        for words in (page["id"], "Heart box", "Bottles", "30 × 20 × 40"):
            self.assertIn(words, told)
        self.assertIn(page["id"], self.succeed("style", "list", self.style))
        (self.folder / "broken.cwstyle").write_text("{}")
        done = self.run_program("style", "list", self.folder, "--json")
        self.assertEqual(done.returncode, 2)
        self.assertIn("broken.cwstyle", done.stderr)
        listed = json.loads(done.stdout)
        self.assertEqual([s["id"] for s in listed["styles"]], [page["id"]])
        self.assertEqual([u["problem"]["code"] for u in listed["unreadable"]], ["not-a-style"])

    def test_the_persons_own_folder_is_known_by_ids(self):
        page = self.keep()
        home = {**os.environ, "XDG_DATA_HOME": str(self.folder / "data")}
        out = self.folder / "own.cwdesign"
        arguments = ("new", "--style", page["id"], "-o", out)
        self.refuse(*arguments, naming=page["id"], env=home)
        empty = self.run_program("style", "list", env=home)
        self.assertEqual((empty.returncode, empty.stderr), (0, ""))
        (own,) = {folder for folder in self.styles_folders(home)}
        own.mkdir(parents=True)
        (own / f"{page['id']}.cwstyle").write_bytes(self.style.read_bytes())
        self.assertEqual(self.run_program(*arguments, env=home).returncode, 0)
        self.assertIn(page["id"], self.run_program("style", "list", env=home).stdout)

    def styles_folders(self, home):
        """`styles` in the program's data folder, as Qt names it: organisation and name alike."""
        yield self.folder / "data" / "Creasewright" / "Creasewright" / "styles"

    def test_bad_usage_is_one_sentence_and_writes_nothing(self):
        out = self.folder / "no.cwstyle"
        keep = ("style", "keep", self.box, "--name", "Heart")
        cases = [
            (("style",), "keep"),
            (("style", "mend", self.box), "mend"),
            (("style", "keep"), "FILE"),
            (("style", "keep", self.box, "-o", out), "--name"),
            ((*keep, "-o", self.folder / "no.txt"), ".cwstyle"),
            ((*keep,), "-o"),
            ((*keep, "--see", "brim", "-o", out), "brim"),
            ((*keep, "--suits", "30x20..90x60mm", "-o", out), "--suits"),
            ((*keep, "--suits", "90x60x160..30x20x40mm", "-o", out), "--suits"),
            ((*keep, "--see", "none", "--rule", "tuck", "-o", out), "--rule"),
            ((*keep, "--see", "none", "--rule", "tuck=brim/2", "-o", out), "brim"),
            ((*keep, "--see", "none", "--rule", "tuck=tuck/2", "-o", out), "itself"),
            ((*keep, "--see", "none", "--rule", "tuck=width/0", "-o", out), "zero"),
            ((*keep, "--again", self.box, "-o", out), "--again"),
            ((*keep[:3], "--name", "x" * 201, "-o", out), "--name"),
            (("style", "keep", self.box, self.box, "--name", "Heart", "-o", out), "2"),
            (("style", "check", self.box), ".cwstyle"),
            (("style", "check"), "style check"),
            (("style", "open", self.box, "-o", out), ".cwstyle"),
            (("new", "--style", self.folder / "none.cwstyle", "-o", self.folder / "a.cwdesign"), "--style"),
        ]
        for arguments, naming in cases:
            with self.subTest(arguments):
                self.refuse(*arguments, naming=naming)
                self.assertFalse(out.exists())

    def test_hostile_files_are_one_sentence(self):
        whole = json.loads(json.dumps(self.keep()))
        for key in whole:
            for value in ([[]], {"x": {}}, -1.5e300, None):
                with self.subTest(f"{key} = {value!r}"):
                    self.style.write_text(json.dumps({**whole, key: value}), encoding="utf-8")
                    self.refuse("style", "check", self.style)
        self.style.write_bytes(b"[" * 200_000)
        self.refuse("style", "check", self.style, naming=".cwstyle")
        self.style.write_text(json.dumps({**whole, "version": 99}), encoding="utf-8")
        self.refuse("style", "check", self.style, naming="99")


if __name__ == "__main__":
    unittest.main()
