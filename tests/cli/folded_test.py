"""Pictures of the folded box: size, ground, view, stage and paper, judged by what other programs make of the files."""

import math
import re
import struct
import subprocess
import unittest
import xml.etree.ElementTree as ET
import zlib

from program import ProgramTest

SVG = "{http://www.w3.org/2000/svg}"


class Pixels:
    """A PNG with or without alpha (ISO/IEC 15948), as rows of red, green, blue, alpha."""

    def __init__(self, data):
        assert data[:8] == b"\x89PNG\r\n\x1a\n"
        at, packed = 8, b""
        while at < len(data):
            length, kind = struct.unpack(">I4s", data[at : at + 8])
            body = data[at + 8 : at + 8 + length]
            if kind == b"IHDR":
                self.width, self.height, depth, colours, _, _, interlaced = struct.unpack(">IIBBBBB", body)
                assert depth == 8 and colours in (2, 6) and not interlaced
            if kind == b"IDAT":
                packed += body
            at += 12 + length
        size = 3 if colours == 2 else 4
        raw, self.rows, above = zlib.decompress(packed), [], bytes(self.width * size)
        for y in range(self.height):
            start = y * (self.width * size + 1)
            above = self.unfiltered(raw[start], raw[start + 1 : start + 1 + self.width * size], above, size)
            self.rows.append(above)
        self.size = size

    @staticmethod
    def unfiltered(kind, line, above, size):
        out = bytearray(line)
        for i in range(len(out)):
            left = out[i - size] if i >= size else 0
            corner = above[i - size] if i >= size else 0
            if kind == 1:
                out[i] = (out[i] + left) & 255
            elif kind == 2:
                out[i] = (out[i] + above[i]) & 255
            elif kind == 3:
                out[i] = (out[i] + (left + above[i]) // 2) & 255
            elif kind == 4:
                guess = left + above[i] - corner
                nearest = min((abs(guess - left), 0, left), (abs(guess - above[i]), 1, above[i]), (abs(guess - corner), 2, corner))
                out[i] = (out[i] + nearest[2]) & 255
        return bytes(out)

    def at(self, x, y):
        found = self.rows[y][x * self.size : (x + 1) * self.size]
        return tuple(found) if self.size == 4 else (*found, 255)

    def corners(self):
        return [self.at(x, y) for x in (0, self.width - 1) for y in (0, self.height - 1)]

    def solid(self, least=250):
        """The columns and rows on which something stands that is seen through no more than so: left, top, right, bottom."""
        assert self.size == 4
        rows = [max(row[3::4]) >= least for row in self.rows]
        columns = [max(row[4 * x + 3] for row in self.rows) >= least for x in range(self.width)]
        return columns.index(True), rows.index(True), self.width - columns[::-1].index(True), self.height - rows[::-1].index(True)


def outline(svg):
    """Bounds of the faces and edges of an SVG, as shares of its width and height."""
    root = ET.fromstring(svg)
    _, _, width, height = map(float, root.get("viewBox").split())
    points = []
    for group in root.iter(SVG + "g"):
        if group.get("id") in ("Faces", "Edges"):
            for path in group.iter(SVG + "path"):
                points += [tuple(map(float, pair)) for pair in re.findall(r"[ML]([-\d.]+) ([-\d.]+)", path.get("d"))]
    points = [p for p in points if 0 < p[0] < width and 0 < p[1] < height]
    xs, ys = [p[0] / width for p in points], [p[1] / height for p in points]
    return min(xs), min(ys), max(xs), max(ys)


class Folded(ProgramTest):
    def picture(self, design, *more, ending="png"):
        out = self.folder / f"out.{ending}"
        self.succeed("export", design, "--folded", *more, "-o", out)
        return out.read_bytes()

    def pixels(self, design, *more):
        return Pixels(self.picture(design, *more))

    def box(self):
        return self.design("new", "--style", "two-piece-box", "--product", "box:90x60x30mm", "--colour", "teal")

    def test_the_picture_is_as_large_as_asked(self):
        design = self.box()
        for asked, (width, height) in {"640x480": (640, 480), "300x500": (300, 500), "16x16": (16, 16)}.items():
            made = self.pixels(design, "--pixels", asked)
            self.assertEqual((made.width, made.height), (width, height))
            svg = ET.fromstring(self.picture(design, "--pixels", asked, ending="svg"))
            self.assertEqual((svg.get("width"), svg.get("height")), (str(width), str(height)))
            box = list(map(float, svg.get("viewBox").split()))
            self.assertAlmostEqual(box[2] / box[3], width / height, places=4)
        longer = self.pixels(design, "--pixels", "700")
        self.assertEqual(max(longer.width, longer.height), 700)
        plain = self.pixels(design)
        self.assertAlmostEqual(longer.width / longer.height, plain.width / plain.height, delta=0.01)

    def test_the_ground_is_clear_or_of_a_colour(self):
        design = self.box()
        clear = self.pixels(design, "--pixels", "320x240", "--ground", "transparent")
        self.assertEqual({corner[3] for corner in clear.corners()}, {0})
        self.assertEqual(clear.at(160, 120)[3], 255)
        for ground, wanted in {"white": (255, 255, 255), "sage": (0x9A, 0xAF, 0x90), "#123456": (0x12, 0x34, 0x56)}.items():
            for size in (("--pixels", "320x240"), ()):
                made = self.pixels(design, "--ground", ground, *size)
                self.assertEqual({corner[:3] for corner in made.corners()}, {wanted}, ground)
                self.assertNotEqual(made.at(made.width // 2, made.height // 2)[:3], wanted)
        self.assertEqual({corner[:3] for corner in self.pixels(design).corners()}, {(255, 255, 255)}, "as ever")
        svg = self.picture(design, "--ground", "sage", "--pixels", "320x240", ending="svg").decode()
        self.assertIn('fill="#9AAF90"', svg)

    def test_it_stands_whole_in_the_middle_and_alike_in_every_file(self):
        design = self.box()
        for ratio in ("400x300", "300x400", "400x100"):
            width, height = map(int, ratio.split("x"))
            more = ("--ground", "transparent", "--pixels", ratio)
            left, top, right, bottom = self.pixels(design, *more).solid()
            for low, high, side in ((left, right, width), (top, bottom, height)):
                self.assertGreater(low, 0)
                self.assertLess(high, side)
            shares = outline(self.picture(design, *more, ending="svg"))
            for found, share, side in zip((left, top, right, bottom), shares, (width, height, width, height)):
                self.assertAlmostEqual(found, share * side, delta=1.6)

    def paper(self, *more):
        """A PDF of one page as Poppler paints it on nothing, and its size in points."""
        self.picture(self.box(), *more, ending="pdf")
        out = self.folder / "out.pdf"
        info = subprocess.run(["pdfinfo", out], capture_output=True, text=True, check=True).stdout
        self.assertRegex(info, r"Pages: +1\n")
        subprocess.run(["pdftocairo", "-png", "-transp", "-r", "36", "-singlefile", out, self.folder / "page"], check=True)
        size = tuple(map(float, re.search(r"Page size: +([\d.]+) x ([\d.]+)", info).groups()))
        return Pixels((self.folder / "page.png").read_bytes()), size

    def test_a_poster_fills_its_page(self):
        for name, sides in {"a3": (1190.55, 841.89), "a5": (595.276, 419.528), "letter": (792, 612)}.items():
            page, size = self.paper("--paper", name, "--margin", "10mm")
            for side, wanted in zip(size, sides):
                self.assertAlmostEqual(side, wanted, delta=0.1)
            margin = 10 / 25.4 * 36
            room = (page.width - 2 * margin, page.height - 2 * margin)
            left, top, right, bottom = page.solid(1)
            fills = max((right - left) / room[0], (bottom - top) / room[1])
            self.assertGreater(fills, 0.85)
            self.assertLess(fills, 1)
            left, top, right, bottom = page.solid()
            shares = outline(self.picture(self.box(), ending="svg"))
            drawn = Pixels(self.picture(self.box(), "--ground", "transparent", "--pixels", "400"))
            shape = (shares[2] - shares[0]) * drawn.width / ((shares[3] - shares[1]) * drawn.height)
            self.assertAlmostEqual((right - left) / (bottom - top), shape, delta=0.02 * shape)
        page, _ = self.paper("--paper", "a4", "--ground", "sage")
        near = [page.at(x, y) for x in (2, page.width - 3) for y in (2, page.height - 3)]  # its rim crosses pixels
        self.assertEqual(set(near), {(0x9A, 0xAF, 0x90, 255)})

    def test_views_are_named_or_told_in_degrees(self):
        design = self.box()
        pictures = {view: self.picture(design, "--view", view, ending="svg") for view in ("front", "above", "three-quarter", "20,10")}
        self.assertEqual(len(set(pictures.values())), 4)
        self.assertEqual(pictures["three-quarter"], self.picture(design, ending="svg"))
        self.assertEqual(pictures["front"], self.picture(design, "--view", "0,0", ending="svg"))
        self.assertEqual(pictures["above"], self.picture(design, "--view", "0,89", ending="svg"))
        lid = self.design("new", "--style", "straight-tuck-box", "--product", "box:90x60x30mm")
        for view, (across, up) in {"front": (90, 30), "above": (90, 60)}.items():
            left, top, right, bottom = outline(self.picture(lid, "--open", "closed", "--view", view, ending="svg"))
            svg = ET.fromstring(self.picture(lid, "--open", "closed", "--view", view, ending="svg"))
            _, _, width, height = map(float, svg.get("viewBox").split())
            self.assertAlmostEqual((right - left) * width, across, delta=6, msg=view)
            self.assertAlmostEqual((bottom - top) * height, up, delta=6, msg=view)

    def test_stages_go_from_flat_to_finished(self):
        design = self.box()
        out = self.folder / "no.svg"
        sentence = self.refuse("export", design, "--folded", "--stage", "999", "-o", out, naming="--stage")
        last = int(re.search(r"to (\d+) for finished", sentence).group(1))
        self.assertGreater(last, 3)
        pictures = [self.picture(design, "--stage", str(n), ending="svg") for n in range(last + 1)]
        self.assertEqual(pictures[last], self.picture(design, "--open", "ajar", ending="svg"), "as it tells most")
        for before, after in zip(pictures, pictures[1:]):
            self.assertNotEqual(before, after)

    def test_what_cannot_be_is_told(self):
        design = self.box()
        png, pdf, dxf = (self.folder / f"no.{ending}" for ending in ("png", "pdf", "dxf"))
        for wrong in ("0", "15", "8001", "100x", "x100", "100x100x100", "wide", "1e3", "-5x20", "99999999999x5"):
            self.refuse("export", design, "--folded", "--pixels", wrong, "-o", png, naming="--pixels")
        self.refuse("export", design, "--folded", "--pixels", "100x100", "-o", pdf, naming="--paper")
        for wrong in ("side", "1", "1,2,3", "nan,3", "400,0", "0,90", "a,b", ","):
            self.refuse("export", design, "--folded", "--view", wrong, "-o", png, naming="--view")
        for wrong in ("mauvish", "#12", "#GGGGGG", "sage/cream"):
            self.refuse("export", design, "--folded", "--ground", wrong, "-o", png, naming="--ground")
        for wrong in ("-1", "two", "1.5", ""):
            if wrong:
                self.refuse("export", design, "--folded", "--stage", wrong, "-o", png, naming="--stage")
        self.refuse("export", design, "--folded", "--stage", "1", "--open", "ajar", "-o", png, naming="--open")
        self.refuse("export", design, "--folded", "-o", dxf, naming="--folded")
        for name, value in {"--view": "front", "--stage": "1", "--pixels": "100", "--ground": "sage"}.items():
            self.refuse("export", design, name, value, "-o", png, naming=name)
        for file in (png, pdf, dxf):
            self.assertFalse(file.exists())


if __name__ == "__main__":
    unittest.main()
