"""Runs the program's class kits in a folder of its own."""

import json
import pathlib
import resource
import subprocess

import class_kit

SECONDS = 300  # of the clock, on a busy machine; a run that takes longer hangs


class Planner:
    """Runs the program in a folder of its own."""

    def __init__(self, program, folder):
        self.program, self.folder = program, pathlib.Path(folder)
        self.slowest = 0.0  # seconds of the processor

    def words(self, kit):
        return ["kit", *class_kit.write_kit(kit, self.folder)]

    def run(self, words, out):
        before = resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime
        done = subprocess.run(
            [self.program, *words, "-o", str(out)], capture_output=True, text=True, timeout=SECONDS, check=False
        )
        self.slowest = max(self.slowest, resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime - before)
        said = [line for line in done.stderr.splitlines() if not line.startswith("Planning for ")]
        if done.returncode not in (0, 2) or (done.returncode == 2) != bool(said):
            raise RuntimeError(f"exit {done.returncode}: {done.stderr.strip()}")
        return " ".join(said)

    def plan(self, kit):
        """(plan or None, what was said)."""
        out = self.folder / "plan.json"
        out.unlink(missing_ok=True)
        said = self.run(self.words(kit), out)
        return (None if said else json.loads(out.read_text(encoding="utf-8"))), said

    def carriers(self, kit, mat):
        """The folder of the machine's files, or what was said."""
        out = self.folder / "machine"
        size = "x".join(f"{side:g}" for side in mat)
        said = self.run([*self.words(kit), "--machine", f"{size}mm"], f"{out}/")
        return out, said

    def papers(self, kit):
        """The folder with pages, table and kit."""
        out = self.folder / "papers"
        said = self.run(self.words(kit), f"{out}/")
        if said:
            raise RuntimeError(f"a plan but no papers: {said}")
        return out
