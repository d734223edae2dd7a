"""Exports: every kind is written whole or not at all."""

import json
import math
import re
import resource
import shutil
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

    def test_the_folded_box_is_opened(self):
        design = self.design("new", "--style", "two-piece-box", "--product", "box:90x60x30mm")

        def picture(*more):
            out = self.folder / "out.svg"
            self.succeed("export", design, "--folded", *more, "-o", out)
            return out.read_text()

        pictures = {how: picture("--open", how) for how in ("closed", "ajar", "open", "30%", "80")}
        self.assertEqual(len(set(pictures.values())), len(pictures))
        for name, percent in (("closed", "0%"), ("ajar", "50%"), ("open", "100")):
            self.assertEqual(pictures[name], picture("--open", percent))
        self.assertEqual(picture(), pictures["ajar"], "a lid hides what is in the box")
        out = self.folder / "no.svg"
        for wrong in ("half", "101", "1.5", "50%%", "\u0663"):
            self.refuse("export", design, "--folded", "--open", wrong, "-o", out, naming="--open")
        self.refuse("export", design, "--open", "ajar", "-o", out, naming="--open")
        self.refuse("export", design, "--folded", "--piece", "lid", "--open", "ajar", "-o", out, naming="--open")
        self.assertFalse(out.exists())

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
        self.succeed("export", design, "-o", out, "--kind", "coloured")
        self.assertIn("The printed face becomes the inside.", self.words(out))

    def test_a_net_in_the_colours_of_its_card_is_for_the_eye_not_for_a_machine(self):
        design = self.folder / "mint.cwdesign"
        self.succeed("new", "--style", "straight-tuck-box", "--colour", "plum/mint", "-o", design)
        out = self.folder / "net.svg"
        self.succeed("export", design, "-o", out)
        self.assertNotIn('id="Faces"', out.read_text())
        self.succeed("export", design, "-o", out, "--kind", "coloured")
        self.assertIn('id="Faces"', out.read_text())
        self.refuse("export", design, "-o", out, "--kind", "coloured", "--kerf", "0.2mm", naming="--kerf")
        self.refuse("export", design, "-o", self.folder / "net.dxf", "--kind", "coloured", naming="--kind")

    def test_strips_come_as_pages_only(self):
        self.refuse("export", self.design(), "-o", self.folder / "out.svg", "--kind", "strips", naming="--kind")

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

    def test_many_designs_go_into_a_folder(self):
        first = self.design()
        second = self.folder / "band.cwdesign"
        self.succeed("new", "--style", "belly-band", "-o", second)
        out = self.folder / "out"
        self.succeed("export", first, second, "-o", f"{out}/", "--as", "svg")
        self.assertEqual(sorted(file.name for file in out.iterdir() if file.suffix), ["band.svg", "design.svg"])
        one = self.folder / "one.svg"
        self.succeed("export", second, "-o", one)
        self.assertEqual((out / "band.svg").read_bytes(), one.read_bytes())
        self.refuse("export", first, second, "-o", self.folder / "two.pdf", naming="-o")
        self.refuse("export", first, "-o", f"{out}/", "--as", "doc", naming="--as")
        self.refuse("export", first, "-o", one, "--as", "svg", naming="--as")

    def test_a_wrong_design_among_many_writes_nothing(self):
        broken = self.folder / "broken.cwdesign"
        broken.write_text("{}")
        out = self.folder / "out"
        self.refuse("export", self.design(), broken, "-o", f"{out}/")
        self.assertFalse(out.exists())

    def test_standard_input_is_a_design(self):
        design, out, piped = self.design(), self.folder / "out.svg", self.folder / "piped.svg"
        self.succeed("export", design, "-o", out)
        done = self.run_program("export", "-", "-o", piped, input=design.read_text(encoding="utf-8"))
        self.assertEqual((done.returncode, done.stderr), (0, ""))
        self.assertEqual(piped.read_bytes(), out.read_bytes())
        self.refuse("export", "-", "-o", piped, input="not a design", naming="-:")
        self.refuse("export", "-", "-", "-o", f"{self.folder}/x/", input="", naming="-:")
        self.refuse("export", "-", "-o", piped, input=" " * (5 << 20), naming="-:")

    def test_a_set_of_pages_for_each_taker(self):
        design, one, out = self.design(), self.folder / "one.pdf", self.folder / "out.pdf"
        self.succeed("export", design, "-o", one)
        self.succeed("export", design, "-o", out, "--names", "Ada, Jürgen,Ada,,Mei-Lin O’Hara")
        pages = len(self.sizes(one))
        self.assertEqual(len(self.sizes(out)), 3 * pages)
        for index, name in enumerate(("Ada", "Jürgen", "Mei-Lin O’Hara")):
            for page in range(index * pages + 1, (index + 1) * pages + 1):
                done = subprocess.run(["pdftotext", "-f", str(page), "-l", str(page), out, "-"], capture_output=True, check=True)
                self.assertIn(f"{name} · ", done.stdout.decode(), (name, page))
        kit = self.folder / "class.cwkit"
        (self.folder / "names.txt").write_text("Ada\nBen\n", encoding="utf-8")
        self.succeed("kit", design, "--takers", "2", "--names", self.folder / "names.txt", "--sheet", "12x12", "-o", kit)
        self.succeed("export", design, "-o", out, "--names", kit)
        self.assertEqual(len(self.sizes(out)), 2 * pages)
        self.refuse("export", design, "-o", out, "--names", " , ", naming="--names")
        self.refuse("export", design, "-o", self.folder / "out.svg", "--names", "Ada", naming="--names")

    def dxf(self, file, layer):
        """Closed outlines and lines of a layer, lists of corners, by the group codes of DXF release 12 alone: 0 begins
        an entity, 8 its layer, 10 and 20 a place, 11 and 21 a line's other end, 70 bit 1 a closed polyline."""
        words = file.read_text(encoding="ascii").split("\n")
        pairs = list(zip(map(int, words[0:-1:2]), words[1::2]))
        entities, current = [], {}
        for code, value in pairs[pairs.index((2, "ENTITIES")) :]:
            if code == 0:
                entities.append(current := {0: value})
            else:
                current[code] = value

        def place(entity, shift=0):
            return (float(entity[10 + shift]), float(entity[20 + shift]))

        closed, lines, corners = [], [], None
        for entity in entities:
            if entity.get(8) != layer:
                continue
            if entity[0] == "LINE":
                lines.append([place(entity), place(entity, 1)])
            elif entity[0] == "POLYLINE":
                corners = []
                (closed if int(entity[70]) & 1 else lines).append(corners)
            elif entity[0] == "VERTEX":
                corners.append(place(entity))
        return closed, lines

    def area(self, ring):
        return sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(ring, ring[1:] + ring[:1])) / 2

    def grown_area(self, ring, d):
        """Area of a ring whose sides move by d outwards, corners mitred: A + P d + d^2 times the sum of the tangents of
        half the angles the corners turn by (Steiner's formula with mitres, from memory)."""
        if self.area(ring) < 0:
            ring = ring[::-1]
        sides = [(b[0] - a[0], b[1] - a[1]) for a, b in zip(ring, ring[1:] + ring[:1])]
        turns = [math.atan2(a[0] * b[1] - a[1] * b[0], a[0] * b[0] + a[1] * b[1]) for a, b in zip(sides[-1:] + sides, sides)]
        self.assertAlmostEqual(sum(turns), 2 * math.pi, places=6)
        perimeter = sum(math.hypot(*side) for side in sides)
        return self.area(ring) + perimeter * d + d * d * sum(math.tan(turn / 2) for turn in turns)

    def test_kerf_moves_outlines_into_what_falls_away(self):
        """Outlines as they are read back against the area that follows from the plain ones, and the order of cutting."""
        design = self.design("new", "--style", "straight-tuck-box", "--product", "box:60x40x90mm", "--edit",
                             "opening:on=front,shape=rectangle")  # fmt: skip
        plain, cut = self.folder / "plain.dxf", self.folder / "cut.dxf"
        self.succeed("export", design, "-o", plain)
        self.succeed("export", design, "-o", cut, "--kerf", "0.3mm", "--inner-kerf", "0.1mm")
        before, after = (self.dxf(file, "CUTTING")[0] for file in (plain, cut))
        self.assertEqual(len(before), len(after))
        self.assertGreaterEqual(len(before), 2)
        largest = max(range(len(after)), key=lambda i: abs(self.area(after[i])))
        self.assertEqual(largest, len(after) - 1, "the outline is cut last")
        for was, now in zip(before, after):
            grown = 0.15 if was is before[-1] else -0.05
            self.assertAlmostEqual(abs(self.area(now)), self.grown_area(was, grown), delta=0.05)
        for mm in ("6mm", "-1mm", "x"):
            self.refuse("export", design, "-o", cut, "--kerf", mm, naming="--kerf")
        self.refuse("export", design, "-o", self.folder / "out.pdf", "--kerf", "0.1mm", naming="--kerf")

    def test_scores_as_dashes_or_perforation(self):
        """Every dash lies on a score, and they cover as much of it as their form says."""
        design, out = self.design(), self.folder / "out.dxf"
        self.succeed("export", design, "-o", out)
        whole = [line for layer in ("CREASING", "REVERSECREASING") for line in self.dxf(out, layer)[1]]
        length = sum(math.dist(*line) for line in whole)
        for form, layers, least, most in (("dashes", ("CREASING", "REVERSECREASING"), 0.55, 0.8),
                                          ("perforation", ("PERFORATING",), 0.55, 0.67)):  # fmt: skip
            self.succeed("export", design, "-o", out, "--scores", form)
            parts = [line for layer in layers for line in self.dxf(out, layer)[1]]
            covered = sum(math.dist(*line) for line in parts)
            self.assertTrue(least < covered / length < most, (form, covered / length))
            for (ax, ay), (bx, by) in parts:
                on = any(abs((q[0] - p[0]) * (y - p[1]) - (q[1] - p[1]) * (x - p[0])) / math.dist(p, q) < 1e-5
                         and min(p[0], q[0]) - 1e-6 <= x <= max(p[0], q[0]) + 1e-6
                         and min(p[1], q[1]) - 1e-6 <= y <= max(p[1], q[1]) + 1e-6
                         for p, q in whole for x, y in [((ax + bx) / 2, (ay + by) / 2)])  # fmt: skip
                self.assertTrue(on, (form, ax, ay))
        self.assertEqual(self.dxf(out, "CREASING"), ([], []))
        svg = self.folder / "out.svg"
        self.succeed("export", design, "-o", svg, "--scores", "dashes")
        self.assertNotIn("stroke-dasharray", svg.read_text())
        self.refuse("export", design, "-o", svg, "--scores", "dots", naming="--scores")

    def test_pieces_together_on_sheets(self):
        """All pieces as often as they are made, none over another or over the edge of its sheet."""
        design = self.design("new", "--style", "framed-tray", "--product", "box:89x64x25mm", "--extra", "belly-band",
                             "--extra", "mats", "--extra", "label")  # fmt: skip
        pieces = sum(piece["count"] for piece in self.exported(design)["pieces"])
        out = self.folder / "out.svg"
        self.succeed("export", design, "-o", out, "--sheet", "12x12in")
        sheets = [out] if out.exists() else sorted(self.folder.glob("out-*.svg"))
        outlines = 0
        for sheet in sheets:
            root = xml.etree.ElementTree.parse(sheet).getroot()
            self.assertEqual((root.get("width"), root.get("height")), ("304.8mm", "304.8mm"))
            boxes = []
            for path in root.findall("{*}g[@id='Cutting']/{*}path"):
                points = [tuple(map(float, pair)) for pair in re.findall(r"[ML]([-\d.]+) ([-\d.]+)", path.get("d"))]
                xs, ys = zip(*points)
                box = (min(xs), min(ys), max(xs), max(ys))
                if not any(b[0] <= box[0] and b[1] <= box[1] and box[2] <= b[2] and box[3] <= b[3] for b in boxes):
                    boxes = [b for b in boxes if not (box[0] <= b[0] and box[1] <= b[1] and b[2] <= box[2] and b[3] <= box[3])]
                    boxes.append(box)
            outlines += len(boxes)
            for i, a in enumerate(boxes):
                self.assertTrue(a[0] >= 4.99 and a[1] >= 4.99 and a[2] <= 299.82 and a[3] <= 299.82, a)
                for b in boxes[:i]:
                    apart = max(a[0] - b[2], b[0] - a[2], a[1] - b[3], b[1] - a[3])
                    self.assertGreaterEqual(apart, 4.99)
        self.assertEqual(outlines, pieces)
        self.refuse("export", design, "-o", self.folder / "small.svg", "--sheet", "100x100mm", naming="larger than the sheet")
        self.assertFalse((self.folder / "small.svg").exists())

    def test_words_as_outlines(self):
        """No type is left, and librsvg paints the picture much as with type."""
        design = self.design()
        for kind in ("svg", "dxf"):
            out = self.folder / f"out.{kind}"
            self.succeed("export", design, "-o", out, "--outlines")
            data = out.read_text()
            self.assertNotIn("<text" if kind == "svg" else "\nTEXT\n", data)
            again = self.folder / f"again.{kind}"
            self.succeed("export", design, "-o", again, "--outlines")
            self.assertEqual(again.read_text(), data, "the same bytes")
        type_ = self.folder / "type.svg"
        self.succeed("export", design, "-o", type_)
        ink = []
        for file in (type_, self.folder / "out.svg"):
            pdf = file.with_suffix(".pdf")
            subprocess.run(["rsvg-convert", "-f", "pdf", "-o", pdf, file], check=True)
            grey = subprocess.run(["pdftoppm", "-gray", "-r", "100", pdf], capture_output=True, check=True).stdout
            ink.append(sum(255 - p for p in grey[re.match(rb"P5\s\d+ \d+\s255\s", grey).end() :]))
        self.assertLess(abs(ink[0] - ink[1]) / ink[0], 0.05)

    def test_a_template_as_outside_programs_read_it(self):
        """The box to 1/100 pt, no scaling, layers with their keys, fonts inside the file, title and language."""
        design, out, plain = self.design(), self.folder / "out.pdf", self.folder / "plain.pdf"
        self.succeed("export", design, "-o", out, "--paper", "letter")
        subprocess.run(["qpdf", "--qdf", "--object-streams=disable", out, plain], check=True)
        data = plain.read_bytes().decode("latin-1")
        self.assertIn("/PrintScaling /None", data)
        self.assertIn("/DisplayDocTitle true", data)
        self.assertRegex(data, r"/Lang \(en\)")
        self.assertRegex(data, r"/Title \(Framed tray\)")
        for key in ("/GTS_ProcStepsGroup /Structural", "/GTS_ProcStepsType /Cutting", "/GTS_ProcStepsType /Creasing"):
            self.assertIn(key, data)
        for box in re.findall(r"/MediaBox \[\s*([\d.\s]+)\]", data):
            self.assertEqual(sorted(float(v) for v in box.split())[2:], [612, 792])
        fonts = subprocess.run(["pdffonts", out], capture_output=True, text=True, check=True).stdout.splitlines()[2:]
        self.assertTrue(any("Bold" in font for font in fonts), fonts)
        for font in fonts:
            self.assertRegex(font, r"\byes +(yes|no) +yes\b", "embedded, with a map to Unicode")

    def grey(self, pdf):
        """The first page as Poppler sees it: a byte for each pixel."""
        picture = subprocess.run(["pdftoppm", "-gray", "-singlefile", "-r", "60", pdf], capture_output=True, check=True).stdout
        return picture[re.match(rb"P5\s\d+ \d+\s255\s", picture).end() :]

    def test_each_layer_shows_what_is_its_own(self):
        """Poppler with all layers but one switched off: every layer has ink, and together they are the page."""
        out, plain, one = (self.folder / name for name in ("out.pdf", "plain.pdf", "one.pdf"))
        self.succeed("export", self.design(), "-o", out, "--paper", "a4")
        subprocess.run(["qpdf", "--qdf", "--object-streams=disable", out, plain], check=True)
        data = plain.read_bytes()
        groups = [item for item in data.split(b"endobj") if b"/Type /OCG" in item]
        names = {re.search(rb"(\d+) 0 obj", group)[1]: re.search(rb"/Name \((\w+)\)", group)[1] for group in groups}
        self.assertGreaterEqual(len(names), 5, names)
        whole = self.grey(out)
        together = bytes([255]) * len(whole)
        for number, name in names.items():
            off = b" ".join(other + b" 0 R" for other in names if other != number)
            hidden = re.sub(rb"/ON \[[^\]]*\]", b"/OFF [ " + off + b" ]", data, count=1)
            one.write_bytes(subprocess.run(["fix-qdf"], input=hidden, capture_output=True, check=True).stdout)
            seen = self.grey(one)
            self.assertLess(sum(seen), 255 * len(seen), name)
            self.assertTrue(seen != whole, name)
            together = bytes(map(min, together, seen))
        unlike = sum(abs(a - b) > 60 for a, b in zip(together, whole))
        self.assertLess(unlike, 0.002 * len(whole))

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

    def test_many_files_are_all_there_or_none(self):
        """A full disk, a file in the folder's place, odd names: one sentence and nothing half-written, or all of them."""
        odd = self.folder / "Übung „a, b“ (1) & 'c'.cwdesign"
        odd.write_bytes(self.design().read_bytes())
        twin = self.folder / "twin" / odd.name
        twin.parent.mkdir()
        twin.write_bytes(odd.read_bytes())
        before = sorted(self.folder.rglob("*"))
        for command, kind in (("export", "svg"), ("export", "pdf"), ("guide", "html"), ("guide", "pdf")):
            out = self.folder / "out"
            self.refuse(command, odd, twin, "-o", f"{out}/", "--as", kind, naming="-o", preexec_fn=forbid_large_files)
            self.assertEqual(sorted(self.folder.rglob("*")), before, (command, kind))
            self.refuse(command, odd, twin, "-o", f"{odd}/", "--as", kind, naming="-o")
            self.assertEqual(sorted(self.folder.rglob("*")), before, (command, kind))
            self.succeed(command, odd, twin, "-o", f"{out}/", "--as", kind)
            names = sorted(file.name for file in out.iterdir() if file.suffix == f".{kind}")
            self.assertEqual(names, sorted([f"{odd.stem}.{kind}", f"{odd.stem}-2.{kind}"]))
            shutil.rmtree(out)


if __name__ == "__main__":
    unittest.main()
