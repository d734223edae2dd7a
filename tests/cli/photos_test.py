"""Photos of the finished box and of steps: kept in the design, shown in the guide; what cannot serve is told."""

import base64
import json
import random
import re
import resource
import struct
import subprocess
import unittest
import zlib

from program import ProgramTest


def png(width, height, pixel=lambda x, y: (200, 120, 60), rows=None):
    """A true-colour PNG, put together by hand (ISO/IEC 15948). `rows`: so many are there, whatever is said."""

    def chunk(kind, data):
        return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))

    lines = bytearray()
    for y in range(height if rows is None else rows):
        lines.append(0)
        for x in range(width):
            lines.extend(pixel(x, y))
    head = struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)
    return (b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head) + chunk(b"IDAT", zlib.compress(bytes(lines)))
            + chunk(b"IEND", b""))  # fmt: skip


def exif_turn(jpeg, orientation):
    """The JPEG with an Exif segment that says how it lies (Exif 2.3, tag 0x0112), and a comment."""
    tiff = b"II*\0" + struct.pack("<IHHHIHHI", 8, 1, 0x0112, 3, 1, orientation, 0, 0)
    segment = b"Exif\0\0" + tiff
    words = b"taken at the secret garden"
    return (jpeg[:2] + b"\xff\xe1" + struct.pack(">H", len(segment) + 2) + segment
            + b"\xff\xfe" + struct.pack(">H", len(words) + 2) + words + jpeg[2:])  # fmt: skip


def pixels_of(jpeg):
    """Width and height of a JPEG from its frame header (ISO/IEC 10918-1, B.2.2)."""
    at = 2
    while True:
        mark, length = jpeg[at + 1], struct.unpack(">H", jpeg[at + 2 : at + 4])[0]
        if 0xC0 <= mark <= 0xC2:
            height, width = struct.unpack(">HH", jpeg[at + 5 : at + 9])
            return width, height
        at += 2 + length


class Photos(ProgramTest):
    def picture(self, name="box.png", content=None):
        file = self.folder / name
        file.write_bytes(png(64, 48) if content is None else content)
        return file

    def jpeg(self, name="photo.jpg"):
        """A page of a guide as a JPEG, twice as high as wide or so: made by another program (Poppler)."""
        pdf = self.folder / "page.pdf"
        self.succeed("export", self.design(), "-o", pdf)
        subprocess.run(["pdftoppm", "-jpeg", "-singlefile", "-r", "90", pdf, self.folder / "page"], check=True)
        file = self.folder / name
        (self.folder / "page.jpg").rename(file)
        return file

    def kept(self, design):
        return json.loads(design.read_text(encoding="utf-8")).get("photos", [])

    def with_photos(self, *arguments):
        out = self.folder / "with.cwdesign"
        self.succeed("photos", self.design(), *arguments, "-o", out)
        return out

    def test_photos_are_kept_listed_changed_and_taken_out(self):
        with_photos = self.with_photos("--photo", self.picture(), "--step-photo", f"2={self.picture('two.png')}",
                                       "--caption", "2=Score first, then fold")  # fmt: skip
        self.assertEqual(len(self.kept(with_photos)), 2)
        listed = self.succeed("photos", with_photos).splitlines()
        self.assertRegex(listed[0], r"^box  .*\[photo, 1 kB\]$")
        self.assertRegex(listed[2], r"^ *2  .*\[photo, 1 kB\] Score first, then fold$")
        self.assertEqual(sum("[photo" in line for line in listed), 2)
        less = self.folder / "less.cwdesign"
        self.succeed("photos", with_photos, "--remove", "box", "-o", less)
        self.assertEqual([photo["caption"] for photo in self.kept(less)], ["Score first, then fold"])
        self.succeed("check", less)

    def test_they_stand_in_the_web_page_with_words_for_those_who_do_not_see_them(self):
        design = self.with_photos("--photo", self.picture(), "--step-photo", f"3={self.picture('3.png')}",
                                  "--caption", "3=Like & so")  # fmt: skip
        out = self.folder / "g.html"
        self.succeed("guide", design, "-o", out)
        page = out.read_text(encoding="utf-8")
        images = re.findall(r'<img alt="([^"]*)" width="(\d+)" height="(\d+)" src="data:image/(png|jpeg);base64,([^"]*)"', page)
        self.assertEqual([image[:3] for image in images],
                         [("Photo of the finished piece", "64", "48"), ("Photo of step 3", "64", "48")])  # fmt: skip
        for *_, kind, data in images:
            self.assertTrue(base64.b64decode(data, validate=True).startswith({"png": b"\x89PNG", "jpeg": b"\xff\xd8"}[kind]))
        self.assertIn("<figcaption>Like &amp; so</figcaption>", page)
        self.assertNotRegex(page, r'src="(?!data:)')
        step = page.split("<h3>")[3]
        self.assertIn("Photo of step 3", step)

    def test_they_are_printed(self):
        """What Poppler finds in the PDF: two pictures, at their own shape, in their colour."""
        design = self.with_photos("--photo", self.picture(), "--step-photo", f"3={self.picture('3.png')}")
        out = self.folder / "g.pdf"
        self.succeed("guide", design, "-o", out)
        listed = subprocess.run(["pdfimages", "-list", out], capture_output=True, text=True, check=True).stdout
        sizes = [line.split()[3:6] for line in listed.splitlines()[2:]]
        self.assertEqual(sizes, [["64", "48", "rgb"]] * 2)
        black = self.folder / "black.pdf"
        self.succeed("guide", design, "--black", "-o", black)
        subprocess.run(["pdfimages", black, self.folder / "grey"], check=True)
        pictures = sorted(self.folder.glob("grey*.ppm"))
        self.assertEqual(len(pictures), 2)
        for picture in pictures:
            pixels = picture.read_bytes()[-64 * 48 * 3 :]
            self.assertEqual(pixels[0::3], pixels[1::3])
            self.assertEqual(pixels[0::3], pixels[2::3])
        self.assertEqual(self.pages(self.design(), "none.pdf", 0), 0)

    def pages(self, design, name, photos):
        out = self.folder / name
        self.succeed("guide", design, "-o", out)
        return len(subprocess.run(["pdfimages", "-list", out], capture_output=True, text=True, check=True).stdout.splitlines()[2:])

    def test_for_one_guide_alone(self):
        design, out, picture = self.design(), self.folder / "g.html", self.picture()
        before = design.read_bytes()
        self.succeed("guide", design, "--photo", picture, "-o", out)
        self.assertIn("data:image/", out.read_text(encoding="utf-8"))
        self.assertEqual(design.read_bytes(), before)
        other = self.folder / "other.cwdesign"
        other.write_bytes(before)
        self.refuse("guide", design, other, "--photo", picture, "-o", f"{self.folder}/out/", naming="--photo")

    def test_a_camera_s_picture_is_turned_shrunk_and_stripped(self):
        """Orientation 6: the first row is at the right (Exif 2.3), so width and height change places."""
        jpeg = self.jpeg()
        large = jpeg.read_bytes()
        wide, high = pixels_of(large)
        jpeg.write_bytes(exif_turn(large, 6))
        kept = base64.b64decode(self.kept(self.with_photos("--photo", jpeg))[0]["picture"])
        got = pixels_of(kept)
        self.assertEqual(got, (high, wide) if max(wide, high) <= 1200 else got)
        self.assertLess(abs(got[0] / got[1] - high / wide), 0.01)
        self.assertNotIn(b"secret garden", kept)
        self.assertNotIn(b"Exif", kept)
        self.assertLess(len(kept), 300_000)

    def test_a_large_picture_is_shrunk(self):
        table = random.Random(1606).randbytes(70_000)
        noise = png(2400, 1600, lambda x, y: table[(x * 3 + y * 7919) % 69_997 :][:3])
        kept = base64.b64decode(self.kept(self.with_photos("--photo", self.picture("n.png", noise)))[0]["picture"])
        self.assertLessEqual(len(kept), 300_000)
        self.assertTrue(kept.startswith(b"\xff\xd8"), "a PNG of noise")
        self.assertLessEqual(max(pixels_of(kept)), 1200)
        self.assertGreater(max(pixels_of(kept)), 600)

    def test_what_cannot_serve_is_told_and_nothing_is_written(self):
        design, out = self.design(), self.folder / "out.cwdesign"
        whole = png(64, 48)
        half = self.jpeg("half.jpg")
        half.write_bytes(half.read_bytes()[: half.stat().st_size // 2])
        huge = self.folder / "huge.png"
        with open(huge, "wb") as file:
            file.write(whole)
            file.truncate(300_000_000)
        cases = {
            "missing.png": self.folder / "missing.png",
            "half.png": self.picture("half.png", whole[: len(whole) // 2]),
            "half.jpg": half,
            "text.png": self.picture("text.png", b"no picture at all"),
            "empty.png": self.picture("empty.png", b""),
            "gif.png": self.picture("gif.png", b"GIF89a" + bytes(40)),
            "wide.png": self.picture("wide.png", png(30_000, 2, rows=0)),
            "bomb.png": self.picture("bomb.png", png(15_000, 15_000, rows=0)),
            "huge.png": huge,
            "folder": self.folder,
        }
        for name, file in cases.items():
            with self.subTest(name):
                for argument in (("--photo", file), ("--step-photo", f"1={file}")):
                    sentence = self.refuse("photos", design, *argument, "-o", out, naming=argument[0])
                    self.assertIn(file.name, sentence)
                self.assertFalse(out.exists())
        self.assertIn("30,000", self.refuse("photos", design, "--photo", cases["wide.png"], "-o", out))
        self.assertIn("300,000,000", self.refuse("photos", design, "--photo", huge, "-o", out))

    def test_a_camera_s_largest_picture_is_taken_within_bounds(self):
        """49 million pixels, as the largest cameras of phones make: less than 700 MB of memory (our own bound)."""
        row = b"\0" + bytes(range(250)) * 84
        packed = zlib.compressobj(1)
        data = b"".join([packed.compress(row) for _ in range(7000)] + [packed.flush()])
        whole = png(7000, 7000, rows=0)
        at = whole.index(b"IDAT") - 4
        idat = b"IDAT" + data
        picture = whole[:at] + struct.pack(">I", len(data)) + idat + struct.pack(">I", zlib.crc32(idat)) + whole[-12:]
        kept = base64.b64decode(self.kept(self.with_photos("--photo", self.picture("large.png", picture)))[0]["picture"])
        self.assertLessEqual(len(kept), 300_000)
        self.assertLess(resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss, 700_000)

    def test_wrong_places_and_words_are_told(self):
        design, out, picture = self.design(), self.folder / "out.cwdesign", self.picture()
        for arguments, naming in (
            (("--step-photo", f"99={picture}"), "99"),
            (("--step-photo", f"0={picture}"), "“0”"),
            (("--step-photo", f"two={picture}"), "two"),
            (("--step-photo", picture), "equals"),
            (("--caption", "box=No photo there"), "box"),
            (("--photo", picture, "--caption", "box=" + "w" * 201), "--caption"),
            (("--remove", "3"), "3"),
        ):
            self.refuse("photos", design, *arguments, "-o", out, naming=naming)
        self.refuse("photos", design, "--photo", picture, naming="-o")
        self.refuse("photos", design, "--photo", picture, "-o", design, naming="-o")
        self.refuse("photos", design, "--photo", picture, "-o", self.folder / "x.png", naming="-o")
        self.assertFalse(out.exists())

    def test_too_many_photos_are_told(self):
        design = self.design("new", "--style", "framed-tray", "--extra", "mats", "--extra", "belly-band")
        text = json.loads(design.read_text(encoding="utf-8"))
        picture = base64.b64encode(png(2, 2)).decode()
        text["photos"] = [{"step": f"gone/{i}", "caption": "", "picture": picture} for i in range(25)]
        design.write_text(json.dumps(text), encoding="utf-8")
        self.refuse("check", design, naming="photos")

    def test_a_design_whose_photo_is_broken_still_has_its_guide(self):
        design, out = self.with_photos("--photo", self.picture()), self.folder / "g.html"
        text = json.loads(design.read_text(encoding="utf-8"))
        text["photos"][0]["picture"] = base64.b64encode(png(64, 48)[:60]).decode()
        text["photos"].append({"step": "gone/step", "caption": "Old way", "picture": base64.b64encode(png(4, 4)).decode()})
        design.write_text(json.dumps(text), encoding="utf-8")
        done = self.run_program("guide", design, "-o", out)
        self.assertEqual(done.returncode, 0, done.stderr)
        self.assertEqual(done.stderr.count("\n"), 2, done.stderr)
        self.assertIn("photo 1", done.stderr)
        self.assertIn("Old way", done.stderr)
        self.assertIn("</html>", out.read_text(encoding="utf-8"))
        again = self.folder / "again.cwdesign"
        self.succeed("photos", design, "--step-photo", f"1={self.picture('one.png')}", "-o", again)
        self.assertEqual(len(self.kept(again)), 3)  # nothing is lost

    def test_a_photo_keeps_to_its_step(self):
        """An extra puts new steps in before the last ones: the photo goes on with the step that it shows."""
        design = self.folder / "plain.cwdesign"
        tray = ("new", "--style", "framed-tray", "--product", "box:60x30x20mm")
        self.succeed(*tray, "-o", design)
        titles = [line.split("  ")[1] for line in self.succeed("photos", design).splitlines()]
        last = len(titles) - 1
        with_photo = self.folder / "with.cwdesign"
        self.succeed("photos", design, "--step-photo", f"{last}={self.picture()}", "-o", with_photo)
        banded = self.design(*tray, "--extra", "mats", "--extra", "belly-band")
        text = json.loads(banded.read_text(encoding="utf-8"))
        text["photos"] = self.kept(with_photo)
        banded.write_text(json.dumps(text), encoding="utf-8")
        listed = [line for line in self.succeed("photos", banded).splitlines() if "[photo" in line]
        self.assertEqual(len(listed), 1, listed)
        self.assertIn(titles[last].strip(), listed[0])


if __name__ == "__main__":
    unittest.main()
