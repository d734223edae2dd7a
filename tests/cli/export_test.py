"""Exports: every kind is written whole or not at all."""

import json
import resource
import signal
import unittest
import xml.etree.ElementTree

from program import ProgramTest

KINDS = ("svg", "dxf", "pdf", "png", "json")
STARTS = {"svg": b"<", "dxf": b"", "pdf": b"%PDF-", "png": b"\x89PNG\r\n\x1a\n", "json": b"{"}
ENDS = {"svg": b"</svg>", "dxf": b"EOF", "pdf": b"%%EOF", "png": b"IEND\xaeB`\x82", "json": b"}"}


def forbid_large_files():
    """From the first kilobyte on, every write fails: a full disk, as far as the program can see."""
    signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
    resource.setrlimit(resource.RLIMIT_FSIZE, (1000, 1000))


class Export(ProgramTest):
    def test_every_kind_is_whole(self):
        design = self.design()
        for kind in KINDS:
            out = self.folder / f"out.{kind}"
            self.assertEqual(self.succeed("export", design, "-o", out), "")
            data = out.read_bytes()
            self.assertTrue(data.startswith(STARTS[kind]), kind)
            self.assertTrue(data.rstrip().endswith(ENDS[kind]), kind)

    def test_svg_is_in_true_size(self):
        out = self.folder / "out.svg"
        self.succeed("export", self.design(), "-o", out)
        root = xml.etree.ElementTree.parse(out).getroot()
        width, height = root.get("width"), root.get("height")
        self.assertRegex(width, r"^[\d.]+mm$")
        self.assertGreaterEqual(float(width[:-2]), 273.05)
        self.assertGreaterEqual(float(height[:-2]), 196.85)
        self.assertEqual([float(v) for v in root.get("viewBox").split()[2:]], [float(width[:-2]), float(height[:-2])])

    def test_the_folded_box_is_another_picture(self):
        design = self.design()
        for kind in ("svg", "png"):
            flat, folded = self.folder / f"flat.{kind}", self.folder / f"folded.{kind}"
            self.succeed("export", design, "-o", flat)
            self.succeed("export", design, "--folded", "-o", folded)
            self.assertNotEqual(flat.read_bytes(), folded.read_bytes(), kind)

    def test_paper_and_units_change_the_pages(self):
        design = self.design()
        pages = set()
        for more in (("--paper", "a4"), ("--paper", "letter"), ("--paper", "a4", "--units", "in"),
                     ("--paper", "a4", "--units", "mm")):  # fmt: skip
            out = self.folder / "out.pdf"
            self.succeed("export", design, "-o", out, *more)
            pages.add(out.read_bytes())
        self.assertGreaterEqual(len(pages), 3)

    def test_json_has_what_other_programs_were_promised(self):
        net = self.exported(self.design("new", "--style", "framed-tray", "--product", "box:89x64x25mm"))
        self.assertEqual((net["format"], net["version"], net["units"]), ("creasewright-net", 1, "mm"))
        for key in ("length", "width", "height"):
            self.assertGreater(net["cavity"][key], 0)
        self.assertIsInstance(net["product"], dict)
        piece = net["pieces"][0]
        for key in ("name", "blank", "panels", "creases", "mates", "cuts", "score_plan", "cut_plan", "glue_plan"):
            self.assertIn(key, piece)
        crease = piece["creases"][0]
        self.assertLessEqual({"a", "b", "p", "q", "angle_deg", "stage", "kind", "loop"}, set(crease))
        self.assertLessEqual({"panel", "onto", "face", "method", "rim"}, set(piece["mates"][0]))

    def test_same_design_same_bytes(self):
        design = self.design()
        for kind in KINDS:
            one, other = self.folder / f"one.{kind}", self.folder / f"other.{kind}"
            self.succeed("export", design, "-o", one)
            self.succeed("export", design, "-o", other)
            if kind != "pdf":  # carries the date
                self.assertEqual(one.read_bytes(), other.read_bytes(), kind)

    def test_bad_usage_is_named(self):
        design = self.design()
        out = self.folder / "out.pdf"
        self.refuse("export", naming="FILE")
        self.refuse("export", design, naming="-o")
        self.refuse("export", design, "-o", self.folder / "out.docx", naming="-o")
        self.refuse("export", design, "-o", self.folder / "out", naming="-o")
        self.refuse("export", design, "-o", out, "--paper", "napkin", naming="--paper")
        self.refuse("export", design, "-o", out, "--piece", "hat", naming="--piece")
        self.refuse("export", design, "-o", out, "--units", "miles", naming="--units")
        self.refuse("export", design, "-o", self.folder / "out.json", "--folded", naming="--folded")
        self.assertEqual(sorted(f.name for f in self.folder.iterdir()), ["design.cwdesign"])

    def test_places_that_cannot_be_written(self):
        design = self.design()
        for kind in KINDS:
            self.refuse("export", design, "-o", self.folder / "missing" / f"out.{kind}", naming="missing")
            self.refuse("export", design, "-o", f"/proc/out.{kind}", naming="/proc/out")
            (self.folder / f"folder.{kind}").mkdir()
            self.refuse("export", design, "-o", self.folder / f"folder.{kind}", naming="folder")
            self.assertEqual(list((self.folder / f"folder.{kind}").iterdir()), [])

    def test_a_full_disk_leaves_the_old_file_alone(self):
        design = self.design()
        for kind in KINDS:
            out = self.folder / f"out.{kind}"
            out.write_text("the old file")
            before = sorted(self.folder.iterdir())
            self.refuse("export", design, "-o", out, naming=str(out), preexec_fn=forbid_large_files)
            self.assertEqual(out.read_text(), "the old file", kind)
            self.assertEqual(sorted(self.folder.iterdir()), before, kind)


if __name__ == "__main__":
    unittest.main()
