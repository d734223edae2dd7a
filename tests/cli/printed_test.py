"""Printed papers and pictures as papers: pages to print and cut, a person's own picture kept in the design; what cannot
serve is told in one sentence and nothing is written."""

import base64
import json
import struct
import subprocess
import unittest
import xml.etree.ElementTree as ET
import zlib

from program import ProgramTest

SVG = "{http://www.w3.org/2000/svg}"
BOX = ["new", "--style", "straight-tuck-box", "--product", "box:60x35x120mm", "--grid", "1mm"]
DRAWN = (
    '<svg xmlns="http://www.w3.org/2000/svg" width="{width}" height="{height}" viewBox="0 0 40 20">'
    '<rect width="40" height="20" fill="#F2C14E"/><rect width="20" height="20" fill="#7A2E4D"/></svg>'
)


def png(width, height, pixel=lambda x, y: (200, 120, 60), dots_per_metre=None):
    """A true-colour PNG, put together by hand (ISO/IEC 15948)."""

    def chunk(kind, data):
        return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))

    lines = bytearray()
    for y in range(height):
        lines.append(0)
        for x in range(width):
            lines.extend(pixel(x, y))
    size = chunk(b"pHYs", struct.pack(">IIB", dots_per_metre, dots_per_metre, 1)) if dots_per_metre else b""
    head = struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)
    return (b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head) + size + chunk(b"IDAT", zlib.compress(bytes(lines)))
            + chunk(b"IEND", b""))  # fmt: skip


def said_wide(width, height):
    """A PNG that says it is so large; there are no such pixels."""
    small = bytearray(png(8, 8))
    small[16:24] = struct.pack(">II", width, height)
    small[29:33] = struct.pack(">I", zlib.crc32(bytes(small[12:29])))
    return bytes(small)


class Printed(ProgramTest):
    def box(self, *arguments):
        out = self.folder / "box.cwdesign"
        self.succeed(*BOX, *arguments, "-o", out)
        return out

    def file(self, name, content):
        path = self.folder / name
        path.write_bytes(content if isinstance(content, bytes) else content.encode())
        return path

    @staticmethod
    def names(folder):
        return sorted(p.name for p in folder.iterdir() if not p.name.startswith("."))

    def pages(self, pdf):
        said = subprocess.run(["pdfinfo", pdf], capture_output=True, text=True, check=True).stdout
        return int(next(line.split()[1] for line in said.splitlines() if line.startswith("Pages")))

    def test_pdf_svg_and_png(self):
        design = self.box("--pattern", "dots", "--extra", "mats:colour=plum")
        for ending in ("pdf", "svg", "png"):
            out = self.folder / f"out-{ending}"
            self.succeed("export", design, "--kind", "printed", "--as", ending, "-o", f"{out}/")
            names = self.names(out)
            self.assertTrue(names and all(n.endswith(ending) for n in names), names)
        fills = [p.get("fill") for name in (self.folder / "out-svg").glob("*.svg")
                 for p in ET.parse(name).iter(SVG + "path") if p.get("class") == "printed"]  # fmt: skip
        plum = json.loads(self.succeed("cards", "--json"))["colours"]
        self.assertIn(next(c["srgb"] for c in plum if c["id"] == "plum"), fills)
        self.assertGreater(len(set(fills)), 2)

    def test_both_sides_are_twice_the_pages(self):
        design = self.box("--colour", "sage/cream")
        front, both = self.folder / "front.pdf", self.folder / "both.pdf"
        self.succeed("export", design, "--kind", "printed", "-o", front)
        self.succeed("export", design, "--kind", "printed", "--side", "both", "-o", both)
        self.assertEqual(2 * self.pages(front), self.pages(both))

    def test_refusals(self):
        design = self.box("--colour", "sage")
        out = self.folder / "box.pdf"
        for arguments, naming in (
            (["--kind", "printed", "--bleed", "40mm"], "40mm"),
            (["--kind", "printed", "--bleed", "wide"], "wide"),
            (["--kind", "printed", "--bleed=-1mm"], "-1mm"),
            (["--kind", "printed", "--side", "left"], "left"),
            (["--bleed", "2mm"], "--bleed"),
            (["--no-cuts"], "--no-cuts"),
            (["--kind", "printed", "-o", self.folder / "box.dxf"], ".svg"),
        ):
            self.refuse("export", design, *arguments, *([] if "-o" in arguments else ["-o", out]), naming=naming)
        self.refuse("export", self.box(), "--kind", "printed", "-o", out, naming="colour")
        self.assertFalse(out.exists())

    def test_a_picture_is_kept_in_the_design(self):
        picture = self.file("leaves.png", png(100, 50, lambda x, y: (250, 240, 200) if x < 50 else (90, 20, 60), 4000))
        design = self.box("--pattern", f"picture:{picture}:turn=90:right=2mm:up=-3mm:side=face")
        picture.unlink()
        pattern = json.loads(design.read_text())["card"]["pattern"]
        self.assertEqual((pattern["id"], pattern["turn"]), ("picture", 90))
        self.assertEqual(pattern["scale"], "25 mm")  # 100 dots at 4000 to the metre
        self.assertEqual((pattern["picture"]["right"], pattern["picture"]["up"]), ("2 mm", "-3 mm"))
        self.assertTrue(base64.b64decode(pattern["picture"]["file"]).startswith(b"\x89PNG"))
        mean, dark, light = pattern["colours"]
        self.assertEqual((dark, light), ("#5A143C", "#FAF0C8"))
        for arguments in (["--folded"], ["--kind", "printed"]):
            out = self.folder / "pages"
            self.succeed("export", design, *arguments, "--as", "svg", "-o", f"{out}/")
            page = ET.parse(sorted(out.glob("*.svg"))[0])
            self.assertTrue(list(page.iter(SVG + "image")))
            self.assertTrue(list(page.iter(SVG + "pattern")))
            for file in out.glob("*.svg"):
                file.unlink()
        card = self.exported(design)["pieces"][0]["card"]
        self.assertNotIn("file", card["pattern"]["picture"])
        self.succeed("check", design)

    def test_an_svg_has_its_true_size(self):
        for width, height, scale in (("80mm", "40mm", "80 mm"), ("4in", "2in", "101.6 mm"), ("96", "48", "25.4 mm")):
            drawn = self.file("drawn.svg", DRAWN.format(width=width, height=height))
            design = self.box("--extra", f"mats:pattern=picture:{drawn}:tiled=no:plate=yes")
            pattern = json.loads(design.read_text())["extras"][0]["card"]["pattern"]
            self.assertIn(pattern["scale"], (scale, "4 in", "1 in"), width)
            self.assertEqual((pattern["picture"]["tiled"], pattern["plate"]), (False, True))

    def test_pictures_that_cannot_serve(self):
        broken = png(64, 64)[:-40]
        huge = self.folder / "huge.png"
        with huge.open("wb") as file:
            file.write(png(4, 4))
            file.truncate(300_000_000)
        good = self.file("good.png", png(40, 20))
        out = self.folder / "none.cwdesign"
        for written, naming in (
            (f"picture:{self.folder}/missing.png", "missing.png"),
            (f"picture:{self.file('broken.png', broken)}", "broken.png"),
            (f"picture:{self.file('words.jpg', 'no picture')}", "words.jpg"),
            (f"picture:{self.file('torn.svg', DRAWN[:90])}", "torn.svg"),
            (f"picture:{self.file('bomb.svg', '<!DOCTYPE s [<!ENTITY a ' + chr(34) + 'aaaa' + chr(34) + '>]><svg>&b;</svg>')}", "bomb.svg"),
            (f"picture:{self.file('flat.svg', DRAWN.format(width='400mm', height='0.01mm'))}", "flat.svg"),
            (f"picture:{huge}", "50"),
            (f"picture:{self.file('wide.png', said_wide(30_000, 40))}", "30"),
            (f"picture:{self.folder}", self.folder.name),
            ("picture:", "picture:"),
            ("picture", "picture:"),
            (f"picture:{good}:scale=0", "0"),
            (f"picture:{good}:scale=10km", "10km"),
            (f"picture:{good}:scale=10000000mm", "10000000mm"),
            (f"picture:{good}:tiled=often", "often"),
            (f"picture:{good}:right=2000mm", "2000mm"),
            (f"picture:{good}:colours=sage", "colours=sage"),
        ):
            self.refuse(*BOX, "--pattern", written, "-o", out, naming=naming)
            self.refuse(*BOX, "--extra", f"mats:pattern={written}", "-o", out, naming=naming)
        self.assertFalse(out.exists())

    def test_a_design_with_a_faulty_picture_is_refused(self):
        good = self.file("good.png", png(40, 20))
        design = self.box("--pattern", f"picture:{good}")
        written = json.loads(design.read_text())

        def refused(change, naming):
            broken = json.loads(json.dumps(written))
            change(broken["card"]["pattern"])
            other = self.file("other.cwdesign", json.dumps(broken))
            self.refuse("check", other, naming=naming)

        refused(lambda p: p["picture"].pop("file"), "file")
        refused(lambda p: p["picture"].update(file="?"), "file")
        refused(lambda p: p["picture"].update(file=base64.b64encode(b"x" * 400).decode()), "file")
        refused(lambda p: p.pop("picture"), "picture")
        refused(lambda p: p["picture"].update(right="5 km"), "right")
        refused(lambda p: p.update(scale="0 mm"), "0 mm")
        long = base64.b64encode(png(8, 8) + b"x" * 1_600_000).decode()
        refused(lambda p: p["picture"].update(file=long), "1,500,000")

    def test_words_are_warned_of(self):
        faint = self.box("--extra", "label:pattern=dots:colours=#FFFFFF,#333333,text=Soap")
        self.assertIn("text-faint", self.codes(faint))
        plate = self.box("--extra", "label:pattern=dots:colours=#FFFFFF,#333333:plate=yes,text=Soap")
        self.assertNotIn("text-faint", self.codes(plate))
        small = self.box("--extra", "label:width=12mm,height=10mm,text=a very long line of words for so small a label")
        self.assertTrue({"text-small", "text-too-large"} & set(self.codes(small)))
        coarse = self.file("coarse.png", png(40, 20))
        self.assertIn("picture-coarse", self.codes(self.box("--pattern", f"picture:{coarse}:scale=100mm")))

    def codes(self, design):
        done = self.run_program("check", design, "--json")
        return [p["code"] for p in json.loads(done.stdout)["problems"]]

    def test_a_product_has_its_colour(self):
        design = self.folder / "soap.cwdesign"
        self.succeed("new", "--style", "framed-tray", "--product", "box:80x50x25mm:plum", "-o", design)
        self.assertIn(":#", json.loads(design.read_text())["product"])
        shown = self.folder / "soap.svg"
        self.succeed("export", design, "--folded", "-o", shown)
        plain = self.folder / "plain.svg"
        other = self.folder / "other.cwdesign"
        self.succeed("new", "--style", "framed-tray", "--product", "box:80x50x25mm", "-o", other)
        self.succeed("export", other, "--folded", "-o", plain)
        fills = [{p.get("fill") for p in ET.parse(file).iter(SVG + "path")} for file in (shown, plain)]
        self.assertTrue(fills[0] - fills[1] and fills[1] - fills[0])
        self.refuse("new", "--style", "framed-tray", "--product", "box:80x50x25mm:plumm", "-o", other, naming="plumm")


if __name__ == "__main__":
    unittest.main()
