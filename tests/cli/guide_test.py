"""The guide: each kind is written whole or not at all, in both languages and all units."""

import unittest
import re
import subprocess
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
