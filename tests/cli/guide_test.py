"""The guide: each kind is written whole or not at all, in both languages and all units."""

import unittest
import re
import subprocess
import unicodedata
import xml.etree.ElementTree

from program import SAMPLES, TRAY, ProgramTest

TRANSLATIONS = SAMPLES.parents[1] / "translations"


class Guide(ProgramTest):
    def test_every_kind_is_whole(self):
        design = self.design()
        pdf, html, folder = self.folder / "g.pdf", self.folder / "g.html", self.folder / "pictures"
        for out in (pdf, html, f"{folder}/"):
            self.assertEqual(self.succeed("guide", design, "-o", out), "")
        self.assertTrue(pdf.read_bytes().startswith(b"%PDF-"))
        self.assertTrue(pdf.read_bytes().rstrip().endswith(b"%%EOF"))
        page = html.read_text(encoding="utf-8")
        self.assertTrue(page.startswith("<!DOCTYPE html>"))
        self.assertTrue(page.rstrip().endswith("</html>"))
        steps = page.count("<h3>")
        self.assertGreater(steps, 5)
        self.assertEqual(len(list(folder.glob("step-*.png"))), steps)
        self.assertEqual((folder / "guide.txt").read_text(encoding="utf-8").count("\n\n") > steps, True)

    def test_numbers_are_the_trade_s(self):
        """Settings of the framed tray as in the common worked example: 3/8, 1 3/8, 1 3/4, 2 3/4 in from all four
        sides (common practice, no published source)."""
        html = self.folder / "g.html"
        self.succeed("guide", self.design(*TRAY), "-o", html, "--units", "in")
        page = html.read_text(encoding="utf-8")
        self.assertIn("All four sides: Score all the way across at ³⁄₈ in, 1³⁄₈ in, 1³⁄₄ in, 2³⁄₄ in.", page)

    def test_units_and_languages_change_the_words(self):
        pages = set()
        for more in (("--units", "both"), ("--units", "mm"), ("--units", "in"), ("--language", "de")):
            out = self.folder / "g.html"
            self.succeed("guide", self.design(), "-o", out, *more)
            pages.add(out.read_bytes())
        self.assertEqual(len(pages), 4)
        self.assertIn('lang="de"', out.read_text(encoding="utf-8"))
        self.assertIn("Örtliche Vorschriften", out.read_text(encoding="utf-8"))

    def test_the_languages_are_those_of_the_translations(self):
        codes = sorted(file.stem.split("_")[1] for file in TRANSLATIONS.glob("creasewright_*.ts"))
        self.assertIn("de", codes)
        self.assertIn("|".join(["en", *(code for code in codes if code != "en")]), self.succeed("guide", "--help"))
        sentence = self.refuse("guide", self.design(), "-o", self.folder / "g.html", "--language", "xx", naming="--language")
        for code in codes:
            self.assertRegex(sentence, rf"\b{code}\b")

    def test_a_guide_speaks_in_the_units_of_its_grid(self):
        for grid, units in (("1mm", "mm"), ("1/16in", "in")):
            design = self.design("new", "--style", "straight-tuck-box", "--grid", grid)
            plain, told = self.folder / "plain.html", self.folder / "told.html"
            self.succeed("guide", design, "-o", plain)
            self.succeed("guide", design, "-o", told, "--units", units)
            self.assertEqual(plain.read_bytes(), told.read_bytes(), grid)

    def test_the_left_hand_reads_from_the_other_edge(self):
        """A band that the right hand scores from its left side: each number for the left hand is the width less that."""
        design = self.design("new", "--style", "belly-band", "--grid", "1mm")
        right, left = self.folder / "right.html", self.folder / "left.html"
        self.succeed("guide", design, "-o", right)
        self.succeed("guide", design, "-o", left, "--hand", "left")
        reading = re.compile(r"(Left|Right) side: Score all the way across at ([\d. m,]+)\.")
        told = {hand: reading.search(page.read_text(encoding="utf-8")) for hand, page in (("R", right), ("L", left))}
        self.assertEqual((told["R"].group(1), told["L"].group(1)), ("Left", "Right"))
        width = float(re.search(r"Trim 1 sheet of card to ([\d.]+)", right.read_text(encoding="utf-8")).group(1))
        numbers = {hand: [float(n) for n in re.findall(r"[\d.]+", match.group(2))] for hand, match in told.items()}
        self.assertEqual(numbers["L"], sorted(width - n for n in numbers["R"]))
        self.assertIn("For the left hand", left.read_text(encoding="utf-8"))
        self.refuse("guide", design, "-o", left, "--hand", "third", naming="--hand")

    def pdf_words(self, pdf):
        return subprocess.run(["pdftotext", "-layout", pdf, "-"], capture_output=True, check=True).stdout.decode().replace("\ufb00", "ff")

    def test_readers_of_both_countries_in_one_run(self):
        """Letter is 612 x 792 pt, A4 595 x 842 pt; each guide speaks in one unit and tells what is different."""
        design = self.design(*TRAY)
        self.succeed("guide", design, "-o", self.folder / "g.pdf", "--for", "both")
        self.assertFalse((self.folder / "g.pdf").exists())
        sizes = {}
        for readers in ("inch", "metric"):
            info = subprocess.run(["pdfinfo", self.folder / f"g-{readers}.pdf"], capture_output=True, check=True)
            sizes[readers] = re.search(r"Page size: +(\d+)[.\d]* x (\d+)", info.stdout.decode()).groups()
        self.assertEqual(sizes, {"inch": ("612", "792"), "metric": ("595", "841")})
        inch, metric = (self.pdf_words(self.folder / f"g-{readers}.pdf") for readers in ("inch", "metric"))
        self.assertNotIn("what is different", inch)
        before, note = metric.split("Made anew for readers of millimetres: what is different")
        self.assertNotRegex(before, r"\d in\b")
        self.assertRegex(note, r"Depth: \d+ mm, before 1 in")
        self.assertRegex(note, r"Marks of rulers and boards: 1 mm, before")
        for readings in re.findall(r"all the way\s+across at ([\d\s,.m]+)\.", before):
            for number in re.findall(r"[\d.]+", readings):
                self.assertEqual(float(number) % 1, 0, "off the marks of a metric board")

    def test_readers_say_their_own_units(self):
        design, out = self.design(), self.folder / "g.pdf"
        self.refuse("guide", design, "-o", out, "--for", "mars", naming="--for")
        self.refuse("guide", design, "-o", out, "--for", "inch", "--units", "mm", naming="--units")
        self.refuse("guide", design, "-o", out, "--for", "both", "--paper", "a4", naming="--paper")
        self.assertEqual(list(self.folder.glob("g*.pdf")), [])

    def coloured(self, pdf):
        """How many pixels of the pages are neither black, grey nor white."""
        pages = subprocess.run(["pdftoppm", "-r", "40", pdf], capture_output=True, check=True).stdout
        count = 0
        for page in re.finditer(rb"P6\n(\d+) (\d+)\n255\n", pages):
            size = 3 * int(page.group(1)) * int(page.group(2))
            pixels = pages[page.end() : page.end() + size]
            count += sum(1 for red, green, blue in zip(pixels[::3], pixels[1::3], pixels[2::3])
                         if max(red, green, blue) - min(red, green, blue) > 4)  # fmt: skip
        return count

    def test_larger_type_takes_more_pages_and_black_has_no_colour(self):
        design = self.design()
        pages = {}
        for form in ("standard", "clear", "large"):
            out = self.folder / f"{form}.pdf"
            self.succeed("guide", design, "-o", out, "--type", form)
            info = subprocess.run(["pdfinfo", out], capture_output=True, text=True, check=True).stdout
            pages[form] = int(re.search(r"Pages: +(\d+)", info).group(1))
        self.assertLess(pages["standard"], pages["clear"])
        self.assertLess(pages["clear"], pages["large"])
        black, html = self.folder / "black.pdf", self.folder / "black.html"
        self.succeed("guide", design, "-o", black, "--black")
        self.assertEqual(self.coloured(black), 0)
        checked = self.folder / "checked.cwdesign"
        self.succeed("new", "--style", "pillow-box", "--pattern", "gingham:scale=8mm", "-o", checked)
        self.succeed("guide", checked, "-o", black, "--black")
        self.assertEqual(self.coloured(black), 0)
        self.assertGreater(self.coloured(self.folder / "standard.pdf"), 1000)
        self.succeed("guide", design, "-o", html, "--black", "--type", "large")
        self.assertIn("font-size: 18pt", html.read_text(encoding="utf-8"))
        self.assertIn("grayscale(1)", html.read_text(encoding="utf-8"))

    def test_a_card_of_measures_is_one_page_and_a_talk_sheet_has_minutes(self):
        design = self.design()
        for kind, words in (("measures", "Parts to cut"), ("talk", "0:05")):
            out = self.folder / f"{kind}.pdf"
            self.succeed("guide", design, "-o", out, "--kind", kind, "--paper", "a4")
            text = subprocess.run(["pdftotext", "-layout", out, "-"], capture_output=True, text=True, check=True).stdout
            self.assertIn(words, text)
            self.assertEqual("page 1 of 1" in text, kind == "measures")

    def test_the_note_of_a_design_stands_in_its_hand_out(self):
        design = self.design("new", "--style", "framed-tray", "--notes", "For show, unlit: keep from flames.")
        pdf, html = self.folder / "guide.pdf", self.folder / "guide.html"
        self.succeed("guide", design, "-o", pdf)
        self.succeed("guide", design, "-o", html)
        page = subprocess.run(["pdftotext", "-l", "1", pdf, "-"], capture_output=True, text=True, check=True).stdout
        words = unicodedata.normalize("NFKC", page).replace("\n", " ")  # ligatures as letters
        self.assertIn("For show, unlit: keep from flames.", words)
        self.assertIn("<p>For show, unlit: keep from flames.</p>", html.read_text(encoding="utf-8"))

    def test_what_cannot_be_written_is_one_sentence(self):
        design = self.design()
        for wrong, word in (
            (("-o", self.folder / "g.doc"), "-o"),
            (("-o", self.folder / "g.pdf", "--units", "ell"), "--units"),
            (("-o", self.folder / "g.pdf", "--language", "xx"), "--language"),
            (("-o", self.folder / "g.pdf", "--paper", "quarto"), "--paper"),
            (("-o", self.folder / "g.pdf", "--type", "huge"), "--type"),
            (("-o", self.folder / "g.pdf", "--kind", "poem"), "--kind"),
            (("-o", self.folder / "g.html", "--kind", "talk"), "--kind"),
            (("-o", self.folder / "missing" / "g.pdf"), "missing"),
            ((), "-o"),
        ):
            with self.subTest(wrong=wrong):
                self.refuse("guide", design, *wrong, naming=word)
        self.assertFalse((self.folder / "g.pdf").exists())

    def test_figures_are_well_formed(self):
        html = self.folder / "g.html"
        self.succeed("guide", self.design(), "-o", html)
        page = html.read_text(encoding="utf-8")
        for part in page.split("<figure>")[1:]:
            xml.etree.ElementTree.fromstring(part.split("</figure>")[0])


if __name__ == "__main__":
    unittest.main()
