"""Files that no program of ours wrote: each gets one sentence, quickly, and nothing is left behind."""

import json
import random
import unittest

from program import ProgramTest


class HostileFiles(ProgramTest):
    def setUp(self):
        super().setUp()
        self.sound = self.design("new", "--style", "straight-tuck-box", "--product", "tube:35x20x110mm")
        self.page = json.loads(self.sound.read_text(encoding="utf-8"))
        self.file = self.folder / "hostile.cwdesign"

    def refuse_bytes(self, data, why):
        with self.subTest(why):
            self.file.write_bytes(data)
            self.refuse("check", self.file)
            out = self.folder / "out.json"
            self.refuse("export", self.file, "-o", out)
            self.assertFalse(out.exists(), why)

    def refuse_page(self, why, **changes):
        self.refuse_bytes(json.dumps({**self.page, **changes}).encode(), why)

    def test_not_a_design_at_all(self):
        self.refuse_bytes(b"", "empty")
        self.refuse_bytes(b"\0" * 4096, "zeros")
        self.refuse_bytes(random.Random(7).randbytes(100_000), "noise")
        self.refuse_bytes(b"\x89PNG\r\n\x1a\n", "a picture")
        self.refuse_bytes("ein schönes Päckchen".encode("latin-1"), "not UTF-8")
        for text in ("null", "true", "7", '"design"', "[]", "{}", "[{}]", '{"format":"other","version":1}'):
            self.refuse_bytes(text.encode(), text)

    def test_cut_short_anywhere(self):
        whole = self.sound.read_bytes().rstrip()
        for share in range(1, 20):
            self.refuse_bytes(whole[: len(whole) * share // 20], f"{share}/20")
        self.refuse_bytes(whole[:-1], "all but the last brace")

    def test_nested_deeply(self):
        self.refuse_bytes(b"[" * 200_000, "open lists")
        self.refuse_bytes(b'{"a":' * 200_000, "open objects")
        self.refuse_bytes(b"[" * 200_000 + b"]" * 200_000, "closed lists")

    def test_very_large(self):
        self.refuse_bytes(b'{"title":"' + b"x" * 64_000_000 + b'"}', "64 MB")

    def test_many_keys(self):
        """Read in the square of their number these would take minutes; the time limit is the test's own."""
        keys = {f"key {i}": i for i in range(150_000)}
        self.refuse_page("keys", **keys)
        self.refuse_page("parameters", parameters={**self.page["parameters"], **keys})
        self.refuse_bytes(b'{"a":{' + b",".join(b'"k%d":1' % i for i in range(250_000)) + b"}}", "inner keys")

    def test_texts_over_their_limit_are_named(self):
        for key, most in (("title", 200), ("notes", 100_000)):
            self.file.write_text(json.dumps({**self.page, key: "\u00fc" * most}), encoding="utf-8")
            self.succeed("check", self.file)
            self.file.write_text(json.dumps({**self.page, key: "\u00fc" * (most + 1)}), encoding="utf-8")
            self.assertIn(key, self.refuse("check", self.file, naming=f"{most:,}"))

    def test_new_writes_nothing_that_check_refuses(self):
        out = self.folder / "new.cwdesign"
        start = ("new", "--style", "straight-tuck-box", "--product", "box:60x35x120mm", "-o", out)
        self.refuse(*start, "--title", "x" * 120_000, naming="200")
        self.refuse(*start, *["--extra", "greeting-slip"] * 51, naming="50")
        self.assertFalse(out.exists())
        self.succeed(*start, "--title", "x" * 200)
        self.succeed("export", out, "-o", self.folder / "o.pdf")

    def test_newer_version(self):
        self.file.write_text(json.dumps({**self.page, "version": 999}))
        self.refuse("check", self.file, naming="999")

    def test_versions_that_are_none(self):
        for version in (0, -1, 1.5, "1", None, [], 10**30):
            self.refuse_page(f"version {version}", version=version)

    def test_every_field_of_a_wrong_type(self):
        for key in self.page:
            for value in ([[]], {"x": {}}, 12345678901234567890, -1.5e300, True):
                if not (key in ("title", "notes") and isinstance(value, str)):
                    self.refuse_page(f"{key} = {value!r}", **{key: value})

    def test_every_parameter_of_a_wrong_type_or_unreadable(self):
        for key in self.page["parameters"]:
            for value in ([], {}, None, "blue", "1/0 in", "1e999 mm", "nan", "99999999999999999999 mm"):
                changed = {**self.page["parameters"], key: value}
                self.refuse_page(f"{key} = {value!r}", parameters=changed)

    def test_a_parameter_past_its_limit_fails_the_check(self):
        changed = {**self.page["parameters"], "length": "40000 mm"}
        self.file.write_text(json.dumps({**self.page, "parameters": changed}))
        done = self.run_program("check", self.file)
        self.assertEqual((done.returncode, done.stderr), (1, ""))
        self.refuse("export", self.file, "-o", self.folder / "out.json")

    def test_kits_over_a_limit_are_refused_before_anything_is_written(self):
        out = self.folder / "k.cwkit"
        kit = ("kit", self.sound, "--sheet", "12x12", "-o", out)
        table, names = self.folder / "t.csv", self.folder / "names.txt"
        names.write_text("Ann\n" * 1001)
        self.refuse(*kit, "--names", names, naming="--names")
        table.write_text("name,width,height\n" + "Kraft,12 in,12 in\n" * 1001)
        self.refuse("kit", self.sound, "--stock", table, "-o", out, naming="1,000")
        self.refuse(*kit, *["--blank", "4x6in"] * 201, naming="--blank")
        self.refuse("kit", *[self.sound] * 201, "--sheet", "12x12", "-o", out, naming="200")
        self.assertFalse(out.exists())
        table.write_text("name,kind,width,length\nTape,tape,6 mm,250 m\nRibbon,ribbon,1 in,110 yd\n")
        names.write_text("Ann\n" * 1000)
        self.succeed(*kit, "--names", names, "--supplies", table, *["--blank", "4x6in"] * 200)
        again = self.folder / "again.cwkit"
        self.succeed("kit", out, "-o", again)
        self.assertEqual(out.read_bytes(), again.read_bytes())
        self.assertIn('"250 m"', out.read_text(encoding="utf-8"))

    def test_an_endless_file(self):
        self.refuse("check", "/dev/zero", naming="/dev/zero")


if __name__ == "__main__":
    unittest.main()
