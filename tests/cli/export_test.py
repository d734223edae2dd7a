"""Exports: every kind is written whole or not at all."""

import json
import re
import resource
import signal
import subprocess
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

    def words(self, pdf):
        done = subprocess.run(["pdftotext", "-layout", pdf, "-"], capture_output=True, text=True, check=True)
        return done.stdout

    def sizes(self, pdf):
        """Width and height of each page in points, as Poppler reads them."""
        info = subprocess.run(["pdfinfo", "-f", "1", "-l", "99", pdf], capture_output=True, text=True, check=True)
        return [tuple(map(float, pair)) for pair in re.findall(r"Page +\d+ size: +([\d.]+) x ([\d.]+)", info.stdout)]

    def test_every_kind_of_template_says_what_it_is(self):
        design = self.design()
        out = self.folder / "out.pdf"
        says = {"scored": "The printed face becomes the inside.", "mirrored": "The printed face becomes the outside.",
                "tracing": "prick through", "ink-saving": "inside up", "strips": "score guide strips"}  # fmt: skip
        for kind, words in says.items():
            self.succeed("export", design, "-o", out, "--kind", kind)
            text = self.words(out)
            self.assertIn(words, text, kind)
            # Letter on A4 is 210 / 215.9 = 97.3 %, A4 on letter 279.4 / 297 = 94.1 %.
            for wanted in ("Print at 100 %", "97.3 mm", "94.1 mm", "100 mm", "4 in", "page 1 of"):
                self.assertIn(wanted, text, kind)
        self.refuse("export", design, "-o", out, "--kind", "stencil", naming="--kind")
        self.refuse("export", design, "-o", self.folder / "out.svg", "--kind", "strips", naming="--kind")

    def lines(self, pdf):
        """Lengths in mm of the lying and the standing lines of the first page, as Poppler draws them."""
        svg = self.folder / "page.svg"
        subprocess.run(["pdftocairo", "-svg", "-noshrink", "-f", "1", "-l", "1", pdf, svg], check=True)
        found = ([], [])
        for path in re.findall(r"<path style=\"fill:none[^>]*>", svg.read_text()):
            matrix = re.search(r"matrix\(([^)]*)\)", path)
            a, b, c, d = map(float, matrix.group(1).split(",")[:4]) if matrix else (1, 0, 0, 1)
            for ends in re.findall(r"M ([-\d.]+) ([-\d.]+) L ([-\d.]+) ([-\d.]+)", path):
                x0, y0, x1, y1 = map(float, ends)
                dx, dy = a * (x1 - x0) + c * (y1 - y0), b * (x1 - x0) + d * (y1 - y0)
                if abs(dy) < 1e-2:
                    found[0].append(abs(dx) * 25.4 / 72)
                if abs(dx) < 1e-2:
                    found[1].append(abs(dy) * 25.4 / 72)
        return found

    def test_a_pdf_is_corrected_for_a_printer_that_was_measured(self):
        design = self.design()
        out = self.folder / "out.pdf"
        self.succeed("export", design, "-o", out, "--kind", "calibration", "--paper", "a4", "--units", "mm")
        page = self.words(out)
        across, down = (float(re.search(rf"([\d.]+) mm {way}", page).group(1)) for way in ("across", "down"))
        for axis, length in enumerate((across, down)):
            self.assertTrue(any(abs(each - length) < 0.05 for each in self.lines(out)[axis]), (axis, length))
        # A printer that draws 0.5 % short across and 0.4 % long down.
        printed = f"{across * 0.995:.2f}x{down * 1.004:.2f}mm"
        self.succeed("export", design, "-o", out, "--paper", "a4", "--units", "mm", "--printed", printed)
        self.assertIn("corrected for the printer: across +0.50 %, down \u22120.40 %", self.words(out))
        sideways = self.sizes(out)[0][0] > self.sizes(out)[0][1]
        for axis, factor in enumerate((1.004, 0.995) if sideways else (0.995, 1.004)):
            self.assertTrue(any(abs(each * factor - 100) < 0.03 for each in self.lines(out)[axis]), axis)
        self.refuse("export", design, "-o", out, "--paper", "a4", "--printed", f"{across * 0.9:.0f}x{down}mm", naming="--printed")
        self.refuse("export", design, "-o", self.folder / "out.svg", "--printed", "100x100mm", naming="--printed")

    def test_paper_of_ones_own_and_the_margin(self):
        design = self.design()
        out = self.folder / "out.pdf"
        self.succeed("export", design, "-o", out, "--paper", "254x381mm")
        for page in self.sizes(out):
            self.assertEqual(sorted(page), [720, 1080])
        for paper, (width, height) in {"a4": (595.276, 841.89), "letter": (612, 792), "legal": (612, 1008),
                                       "tabloid": (792, 1224), "a3": (841.89, 1190.55), "a5": (419.528, 595.276),
                                       "12x12": (864, 864)}.items():  # fmt: skip
            self.succeed("export", design, "-o", out, "--paper", paper, "--margin", "6mm")
            for page in self.sizes(out):
                self.assertAlmostEqual(sorted(page)[0], width, delta=0.01, msg=paper)
                self.assertAlmostEqual(sorted(page)[1], height, delta=0.01, msg=paper)
        for wrong in ("10x10mm", "0x300mm", "99999x99999mm", "200x", "axb"):
            self.refuse("export", design, "-o", out, "--paper", wrong, naming="--paper")
        self.refuse("export", design, "-o", out, "--margin", "wide", naming="--margin")
        self.refuse("export", design, "-o", out, "--margin", "90mm", naming="margin")

    def test_a_tray_with_its_dressing_takes_three_pages(self):
        design = self.design("new", "--style", "framed-tray", "--product", "box:89x64x25mm", "--extra", "belly-band",
                             "--extra", "mats", "--extra", "label")  # fmt: skip
        for paper in ("a4", "letter"):
            out = self.folder / "out.pdf"
            self.succeed("export", design, "-o", out, "--paper", paper)
            self.assertLessEqual(len(self.sizes(out)), 3, paper)

    def test_a_blank_of_300_by_280_mm_takes_two_pages_of_a4(self):
        design = self.design("new", "--style", "two-piece-box", "--grid", "none", "--set", "length=220mm",
                             "--set", "width=200mm", "--set", "depth=40mm")  # fmt: skip
        blank = self.exported(design)["pieces"][0]["blank"]
        self.assertEqual((round(blank["width"], 2), round(blank["height"], 2)), (300, 280))
        out = self.folder / "out.pdf"
        self.succeed("export", design, "-o", out, "--piece", "tray", "--paper", "a4", "--units", "mm")
        self.assertEqual(len(self.sizes(out)), 2)

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
