"""The guide: each kind is written whole or not at all, in both languages and all units."""

import unittest
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

    def test_what_cannot_be_written_is_one_sentence(self):
        design = self.design()
        for wrong, word in (
            (("-o", self.folder / "g.doc"), "-o"),
            (("-o", self.folder / "g.pdf", "--units", "ell"), "--units"),
            (("-o", self.folder / "g.pdf", "--language", "xx"), "--language"),
            (("-o", self.folder / "g.pdf", "--paper", "quarto"), "--paper"),
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
