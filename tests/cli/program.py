"""Runs the built program for the command line tests. CREASEWRIGHT_PROGRAM names it."""

import json
import os
import pathlib
import subprocess
import tempfile
import unittest

import loaded

PROGRAM = os.environ["CREASEWRIGHT_PROGRAM"]
SAMPLES = pathlib.Path(os.environ["CREASEWRIGHT_SAMPLES"])

TRAY = [
    "new", "--style", "framed-tray",
    "--set", "opening-length=4 1/2 in", "--set", "opening-width=1 1/2 in", "--set", "depth=1 in",
    "--set", "frame=3/8 in", "--set", "glue-strip=3/8 in", "--set", "tab=1/2 in",
]  # fmt: skip


class ProgramTest(unittest.TestCase):
    """A test with a folder of its own."""

    def setUp(self):
        holder = tempfile.TemporaryDirectory()
        self.addCleanup(holder.cleanup)
        self.folder = pathlib.Path(holder.name)

    def run_program(self, *arguments, **more):
        if not more:
            return loaded.run(PROGRAM, arguments)
        return subprocess.run(
            [PROGRAM, *map(str, arguments)], capture_output=True, text=True, timeout=60, **more
        )

    def succeed(self, *arguments):
        done = self.run_program(*arguments)
        self.assertEqual(done.returncode, 0, f"{arguments}: {done.stderr}{done.stdout}")
        return done.stdout

    def refuse(self, *arguments, naming="", **more):
        """The program must say one sentence that names `naming`, exit 2 and print nothing else."""
        done = self.run_program(*arguments, **more)
        self.assertEqual(done.returncode, 2, f"{arguments}: {done.stderr}{done.stdout}")
        self.assertEqual(done.stdout, "", arguments)
        self.assertEqual(done.stderr.count("\n"), 1, f"{arguments}: {done.stderr!r}")
        self.assertRegex(done.stderr, r"\.\n$", arguments)
        self.assertIn(naming, done.stderr, arguments)
        return done.stderr

    def design(self, *arguments):
        """A new design made by `new` with these arguments; the default tray without any."""
        file = self.folder / "design.cwdesign"
        self.succeed(*(arguments or ("new", "--style", "framed-tray")), "-o", file)
        return file

    def exported(self, design):
        net = self.folder / "net.json"
        self.succeed("export", design, "-o", net)
        return json.loads(net.read_text(encoding="utf-8"))
