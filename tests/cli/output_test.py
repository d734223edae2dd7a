"""Where the program writes: nothing is lost, nothing replaced that was not meant, every folder whole."""

import json
import os
import pathlib
import re
import resource
import signal
import subprocess
import unittest
import xml.etree.ElementTree as ET

from program import PROGRAM, ProgramTest


class StandardOutput(ProgramTest):
    def expect_loss(self, done):
        self.assertEqual(done.returncode, 2, done.stderr)
        self.assertRegex(done.stderr, r"^[^\n]*output[^\n]*\.\n$")

    def test_a_full_device_is_told(self):
        design = self.design()
        for command in (["styles"], ["styles", "--json"], ["extras"], ["check", design], ["--help"], ["--version"]):
            with open("/dev/full", "w") as full, self.subTest(command=command):
                self.expect_loss(subprocess.run([PROGRAM, *map(str, command)], stdout=full,
                                                stderr=subprocess.PIPE, text=True, timeout=60))  # fmt: skip

    def test_a_closed_output_is_told_and_no_file_takes_its_place(self):
        design, out = self.design(), self.folder / "net.json"

        def closed(*arguments):
            return subprocess.run(["/bin/sh", "-c", 'exec "$0" "$@" >&-', PROGRAM, *map(str, arguments)],
                                  stderr=subprocess.PIPE, text=True, timeout=60)  # fmt: skip

        self.expect_loss(closed("styles"))
        self.expect_loss(closed("check", design))
        done = closed("export", design, "-o", out)
        self.assertEqual((done.returncode, done.stderr), (0, ""))
        json.loads(out.read_text(encoding="utf-8"))

    def test_a_reader_that_went_away_is_told(self):
        read, write = os.pipe()
        os.close(read)
        try:
            self.expect_loss(subprocess.run([PROGRAM, "styles", "--json"], stdout=write,
                                            stderr=subprocess.PIPE, text=True, timeout=60))  # fmt: skip
        finally:
            os.close(write)


class Arguments(ProgramTest):
    def test_after_two_hyphens_all_are_files(self):
        design = self.design()
        odd = self.folder / "-odd.cwdesign"
        odd.write_bytes(design.read_bytes())
        for file in (design.name, odd.name):
            done = self.run_program("check", "--", file, cwd=self.folder)
            self.assertEqual((done.returncode, done.stderr), (0, ""), file)
        done = self.run_program("export", "-o", "o.svg", "--", odd.name, cwd=self.folder)
        self.assertEqual(done.returncode, 0, done.stderr)
        self.refuse("check", "--", design, "--json", naming="--json")

    def test_an_empty_value_is_no_value_left_out(self):
        design, out = self.design(), self.folder / "k.json"
        for name in ("--takers", "--spares", "--sheet", "--stock", "--label", "--paper", "--units", "--machine"):
            with self.subTest(name=name):
                self.refuse("kit", design, "--sheet", "12x12", name, "", "-o", out, naming=name)
        self.refuse("new", "--style", "framed-tray", "--card", "", "-o", self.folder / "x.cwdesign", naming="--card")
        self.refuse("export", design, "-o", "", naming="-o")
        self.succeed("new", "--style", "framed-tray", "--title", "", "-o", self.folder / "x.cwdesign")
        self.assertFalse(out.exists())

    def test_messages_stay_short_and_on_one_line(self):
        design = self.design()
        long = "x\ny\u2028%1" * 3000
        for command in (
            ("check", long), (long, "x"), ("check", design, long), ("check", design, "--" + long),
            ("export", design, "-o", long), ("export", design, "-o", "a.svg", "--piece", long),
            ("export", design, "-o", "a.pdf", "--paper", long), ("export", design, "-o", "a.pdf", "--units", long),
            ("guide", design, "-o", "a.pdf", "--language", long), ("guide", design, "-o", long),
            ("new", "--style", long, "-o", "a.cwdesign"), ("new", "--style", "framed-tray", "-o", long),
            ("new", "--style", "framed-tray", "--set", long, "-o", "a.cwdesign"),
            ("new", "--style", "framed-tray", "--product", long, "-o", "a.cwdesign"),
            ("new", "--style", "framed-tray", "--board", long, "-o", "a.cwdesign"),
            ("new", "--style", "framed-tray", "--extra", "label:" + long, "-o", "a.cwdesign"),
            ("kit", design, "--takers", long, "-o", "a.json"), ("kit", design, "--sheet", long, "-o", "a.json"),
            ("kit", design, "--blank", long, "--sheet", "a4", "-o", "a.json"),
            ("kit", design, "--count", long, "--sheet", "a4", "-o", "a.json"),
            ("kit", design, "--only", f"{design}={long}", "--sheet", "12x12", "-o", "a.json"),
            ("kit", design, "--stock", long, "-o", "a.json"), ("kit", design, "--sheet", "a4", "-o", long + ".doc"),
        ):  # fmt: skip
            with self.subTest(command=[str(word)[:40] for word in command]):
                self.assertLess(len(self.refuse(*command, cwd=self.folder)), 700)

    def test_a_placeholder_in_an_argument_is_only_text(self):
        self.refuse("kit", self.design(), "--takers", "%3", "-o", "a.json", naming="“%3”")

    def test_a_kit_is_not_called_a_design(self):
        kit = self.folder / "class.cwkit"
        self.succeed("kit", self.design(), "--sheet", "12x12", "-o", kit)
        page = json.loads(kit.read_text(encoding="utf-8"))
        for change in ({"takers": None}, {"version": 99}, {"format": "other"}, {"items": 3}, {"names": 7}):
            kit.write_text(json.dumps({**page, **change}), encoding="utf-8")
            self.assertNotIn("design", self.refuse("kit", kit, "-o", self.folder / "o.json"), change)
        del page["stock"]
        kit.write_text(json.dumps(page), encoding="utf-8")
        self.assertNotIn("design", self.refuse("kit", kit, "-o", self.folder / "o.json"))
        kit.write_bytes(b" " * (17 << 20))
        self.assertNotIn("design", self.refuse("kit", kit, "-o", self.folder / "o.json"))

    def test_a_broken_design_in_a_kit_is_named_by_its_place(self):
        kit = self.folder / "class.cwkit"
        self.succeed("kit", self.design(), "--sheet", "12x12", "-o", kit)
        page = json.loads(kit.read_text(encoding="utf-8"))
        page["items"][0]["design"]["card"]["caliper"] = "thick"
        kit.write_text(json.dumps(page), encoding="utf-8")
        self.refuse("kit", kit, "-o", self.folder / "o.json", naming="items/1/design/card/caliper")


class NothingIsReplaced(ProgramTest):
    def test_what_is_read_is_not_written_over(self):
        design = self.design()
        before = design.read_bytes()
        (self.folder / "sub").mkdir()
        for name in ("x.svg", "x.pdf", "x.json", "x.html"):
            file = self.folder / name
            file.write_bytes(before)
            (self.folder / "sub" / name).symlink_to(file)
            command = "guide" if name.endswith("html") else "export"
            for out in (file, self.folder / "sub" / ".." / name, self.folder / "sub" / name):
                self.refuse(command, file, "-o", out, naming=name)
                self.assertEqual(file.read_bytes(), before, out)
        stock = self.folder / "stock.csv"
        stock.write_text("name,width,height\nKraft,12 in,12 in\n")
        for argument in ("--stock", "--names"):
            self.refuse("kit", design, "--sheet", "12x12", argument, stock, "-o", stock, naming="stock.csv")
        self.assertTrue(stock.read_text().startswith("name"))
        plan = self.folder / "plan.csv"
        plan.write_text(stock.read_text())
        self.refuse("kit", design, "--stock", plan, "-o", f"{self.folder}/", naming="-o")

    def test_a_kit_may_become_itself_again(self):
        kit = self.folder / "class.cwkit"
        self.succeed("kit", self.design(), "--sheet", "12x12", "-o", kit)
        self.succeed("kit", kit, "--takers", "5", "-o", kit)
        self.assertEqual(json.loads(kit.read_text(encoding="utf-8"))["takers"], 5)

    def test_names_that_are_no_utf8_are_refused(self):
        design = os.fsencode(self.design())
        for command in (["export", design, "-o"], ["guide", design, "-o"], ["kit", design, "--sheet", "12x12", "-o"]):
            for odd in (b"a\xff.json", b"a\xfe.pdf", b"a\xff/"):
                done = subprocess.run([PROGRAM, *command, os.fsencode(self.folder) + b"/" + odd],
                                      capture_output=True, timeout=60)  # fmt: skip
                self.assertEqual(done.returncode, 2)
                self.assertEqual(done.stderr.count(b"\n"), 1)
        self.assertEqual([f.name for f in self.folder.iterdir()], ["design.cwdesign"])

    def machine_kit(self, ids, names):
        kit = self.folder / "class.cwkit"
        self.succeed("kit", self.design(), "--sheet", "12x12", "-o", kit)
        page = json.loads(kit.read_text(encoding="utf-8"))
        card = page["items"][0]["design"]["card"]
        page["items"] = []
        page["blanks"] = [
            {"name": f"Panel {i}", "width": "4 in", "height": f"{3 + i} in", "per_person": 1,
             "card": {**card, "id": id_, "name": name}} for i, (id_, name) in enumerate(zip(ids, names))
        ]  # fmt: skip
        kit.write_text(json.dumps(page), encoding="utf-8")
        return kit

    def test_cards_alike_in_their_first_forty_letters_get_a_file_each(self):
        start = "heavy cold pressed cotton card of the old mill by the river, "
        kit = self.machine_kit([start + end for end in ("red", "green", "blue")], ["a", "b", "c"])
        out = self.folder / "mats"
        self.succeed("kit", kit, "--machine", "12x12in", "-o", f"{out}/")
        self.assertEqual(len({re.sub(r"-carrier-.*", "", f.name) for f in out.glob("*.svg")}), 3)
        self.assertEqual(len({f.read_bytes() for f in out.glob("*.svg")}), len(list(out.glob("*.svg"))))

    def test_cards_without_an_id_are_told_apart_by_name(self):
        kit = self.machine_kit(["", "", ""], ["Linen", "Kraft", "Linen"])
        out = self.folder / "plan.json"
        self.succeed("kit", kit, "-o", out)
        cards = json.loads(out.read_text(encoding="utf-8"))["cards"]
        self.assertEqual([card["card"] for card in cards], ["Linen", "Kraft"])


def shown(folder):
    """Contents of a folder by name, our hidden list apart."""
    return {f.name: f.read_bytes() for f in folder.iterdir() if f.name != ".creasewright-files"}


class Folders(ProgramTest):
    def test_a_full_disk_leaves_the_folder_as_it_was(self):
        design, out = self.design(), self.folder / "class"
        self.succeed("kit", design, "--sheet", "12x12", "-o", f"{out}/")
        before = shown(out)

        def small_files():  # the kit and the table fit, the pages do not
            signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
            resource.setrlimit(resource.RLIMIT_FSIZE, (6000, 6000))

        for folder in (out, self.folder / "new"):
            self.refuse("kit", design, "--takers", "7", "--sheet", "12x12", "-o", f"{folder}/",
                        preexec_fn=small_files)  # fmt: skip
        self.assertEqual(shown(out), before)
        self.assertFalse((self.folder / "new").exists())
        self.assertEqual(sorted(f.name for f in self.folder.iterdir()), ["class", "design.cwdesign"])

    def test_of_twenty_at_once_one_is_there_whole(self):
        design, out = self.design(), self.folder / "class"
        other = self.folder / "other.cwdesign"
        self.succeed("new", "--style", "envelope", "--product", "card:100x70x1mm", "--title", "Other", "-o", other)
        running = [
            subprocess.Popen([PROGRAM, "kit", str(design if i % 2 else other), "--takers", str(i + 1), "--sheet",
                              "20x30in", "-o", f"{out}/"], stderr=subprocess.PIPE, text=True) for i in range(20)
        ]  # fmt: skip
        for process in running:
            process.communicate(timeout=800)
            self.assertEqual(process.returncode, 0)
        files = shown(out)
        self.assertEqual(len(files), 5, files.keys())
        kit = json.loads(files["class.cwkit"])
        own = self.folder / "own"
        self.succeed("kit", out / "class.cwkit", "-o", f"{own}/")
        again = shown(own)
        self.assertEqual(files.keys(), again.keys())
        for name in ("plan.csv", "class.cwkit"):
            self.assertEqual(files[name], again[name], f"{kit['takers']}: {name}")
        self.assertFalse([f for f in self.folder.rglob(".creasewright-*.tmp")])

    def test_papers_of_designs_no_longer_there_go(self):
        design, out = self.design(), self.folder / "class"
        self.succeed("new", "--style", "framed-tray", "--title", "One", "-o", design)
        self.succeed("kit", design, "--sheet", "12x12", "-o", f"{out}/")
        (out / "my notes.txt").write_text("mine")
        self.succeed("new", "--style", "framed-tray", "--title", "Two", "-o", design)
        self.succeed("kit", design, "--sheet", "12x12", "-o", f"{out}/")
        self.assertEqual(sorted(shown(out)), ["class.cwkit", "guide-1-two.pdf", "my notes.txt", "plan.csv",
                                              "plan.pdf", "template-1-two.pdf"])  # fmt: skip

    def test_what_killed_runs_left_is_swept(self):
        design = self.design()
        (self.folder / ".creasewright-1-0.tmp").write_text("half")
        (self.folder / ".creasewright-2-0.tmp").mkdir()
        (self.folder / ".creasewright-2-0.tmp" / "inside").write_text("half")
        self.succeed("export", design, "-o", self.folder / "o.svg")
        self.assertEqual(sorted(f.name for f in self.folder.iterdir()), ["design.cwdesign", "o.svg"])


class Texts(ProgramTest):
    """Titles with what is no text: every file is still one that other programs read."""

    def titled(self, title):
        design = self.design()
        page = json.loads(design.read_text(encoding="utf-8"))
        design.write_text(json.dumps({**page, "title": title}), encoding="utf-8")
        return design

    def test_svg_and_html_hold_no_character_that_is_none(self):
        title = "A\ufffe\uffff\u0001\u0008\u001b\u0085\U0001ffffB <b>&\"'"
        design = self.titled(title)
        svg, html = self.folder / "o.svg", self.folder / "o.html"
        self.succeed("export", design, "-o", svg)
        self.succeed("guide", design, "-o", html)
        ET.parse(svg)
        for file in (svg, html):
            words = file.read_text(encoding="utf-8")
            self.assertIsNone(re.search("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\ufffe\uffff]", words), file)
            self.assertNotIn("\U0001ffff", words)
            self.assertNotIn("<b>", words)

    def test_a_table_is_no_formula(self):
        design = self.design()
        for start in ("=", "+", "-", "@", "\t", "\r", "\n"):
            out = self.folder / "plan.csv"
            self.succeed("kit", design, "--blank", f"4x6in:name={start}SUM(A1)", "--sheet", "12x12", "-o", out)
            self.assertNotIn(f'"{start}', out.read_bytes().decode(), repr(start))
            self.assertIn(f"\"'{start}SUM", out.read_bytes().decode(), repr(start))


if __name__ == "__main__":
    unittest.main()
