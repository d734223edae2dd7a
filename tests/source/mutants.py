#!/usr/bin/env python3
"""Plants one-token faults in core and says which of them no test notices.

    tests/source/mutants.py N SEED [--only core/making] [--jobs 2] [--from K] [--quick]

Copies the sources to build/mutants/source, builds them once, then N times changes one token of one file (a sign, a
bound, a min for a max, true for false, and for or), rebuilds, and runs the tests that can reach it: those of the file's
own room first, then what is accepted of all nets, pages and plans, the others of core, the window's and papers', the
command line's, until one fails; with --quick only the first two, so that what survives may still be caught by others. A test can reach
a file when a chain of includes leads there, a header standing for its source file too. Limits are seconds of processor
time, so that a busy machine catches nothing. Prints each fault and what caught it, and at the end those that survived. A fault that changes nothing anyone could see is listed, with its reason, in mutants_equivalent.txt; a
survivor otherwise shows a missing test. Not part of the normal run: allow some minutes for each survivor.
"""

from __future__ import annotations

import argparse
import dataclasses
import functools
import os
import pathlib
import random
import re
import resource
import shutil
import signal
import subprocess
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
WORK = ROOT / "build" / "mutants"
COPIED = ("CMakeLists.txt", "DEVELOPERS.md", "README.md", "app", "core", "resources", "tests", "translations", ".cmake", ".clang-format")
EQUIVALENT = pathlib.Path(__file__).with_name("mutants_equivalent.txt")

SWAPS = [
    (re.compile(r"(?<=[\w)\]]) \+ (?=[\w(])"), " - "),
    (re.compile(r"(?<=[\w)\]]) - (?=[\w(])"), " + "),
    (re.compile(r"(?<=[\w)\]]) < (?=[\w(-])"), " <= "),
    (re.compile(r" <= "), " < "),
    (re.compile(r"(?<=[\w)\]]) > (?=[\w(-])"), " >= "),
    (re.compile(r" >= "), " > "),
    (re.compile(r" == "), " != "),
    (re.compile(r" != "), " == "),
    (re.compile(r" && "), " || "),
    (re.compile(r" \|\| "), " && "),
    (re.compile(r"\bstd::min\("), "std::max("),
    (re.compile(r"\bstd::max\("), "std::min("),
    (re.compile(r"\btrue\b"), "false"),
    (re.compile(r"\bfalse\b"), "true"),
    (re.compile(r"\+= "), "-= "),
    (re.compile(r"-= "), "+= "),
]
COMMENT_OR_TEXT = re.compile(r'//[^\n]*|"(?:[^"\\\n]|\\.)*"|^\s*#[^\n]*', re.MULTILINE)


@dataclasses.dataclass(frozen=True)
class Fault:
    file: str  # as core/making/cut_plan.cpp
    start: int
    end: int
    new: str
    line: int
    before: str  # the line, without its indentation

    def planted(self, source: str) -> str:
        return source[: self.start] + self.new + source[self.end :]

    def __str__(self) -> str:
        return f"{self.file}:{self.line}: {self.before}   [{self.new.strip()}]"


def faults_of(file: str, source: str) -> list[Fault]:
    """Every place where one token can be another."""
    hidden = COMMENT_OR_TEXT.sub(lambda found: "~" * len(found.group()), source)
    found = []
    for pattern, new in SWAPS:
        for place in pattern.finditer(hidden):
            line = source.count("\n", 0, place.start()) + 1
            text = source.splitlines()[line - 1].strip()
            if text.startswith(("static_assert", "template", "using", "assert(")) or "operator" in text:
                continue
            found.append(Fault(file, place.start(), place.end(), new, line, text))
    return found


def chosen(count: int, seed: int, only: str) -> list[Fault]:
    """`count` faults; each file in proportion to its places, the same for the same seed and sources."""
    every = []
    for path in sorted((ROOT / "core").rglob("*.cpp")):
        name = path.relative_to(ROOT).as_posix()
        if name.startswith(only):
            every += faults_of(name, path.read_text(encoding="utf-8"))
    random.Random(seed).shuffle(every)
    return every[:count]


def equivalents() -> dict[tuple[str, str, str], str]:
    """(file, line, new token) -> why nobody could see the difference."""
    found = {}
    for line in EQUIVALENT.read_text(encoding="utf-8").splitlines():
        if line and not line.startswith("#"):
            file, text, new, reason = (part.strip() for part in line.split(" | "))
            found[(file, text, new)] = reason
    return found


def bring(of: pathlib.Path, to: pathlib.Path) -> None:
    """Makes `to` equal to `of`; what is equal keeps its time, so that little is built anew."""
    if of.is_dir():
        to.mkdir(parents=True, exist_ok=True)
        for gone in {entry.name for entry in to.iterdir()} - {entry.name for entry in of.iterdir()}:
            shutil.rmtree(to / gone) if (to / gone).is_dir() else (to / gone).unlink()
        for entry in of.iterdir():
            bring(entry, to / entry.name)
    elif not to.exists() or to.read_bytes() != of.read_bytes():
        shutil.copy(of, to)


class Copy:
    """A copy of the sources with its own build."""

    def __init__(self, jobs: int) -> None:
        self.source, self.build, self.jobs = WORK / "source", WORK / "source/build/tests", str(jobs)
        self.source.mkdir(parents=True, exist_ok=True)
        for name in COPIED:
            bring(ROOT / name, self.source / name)
        subprocess.run(
            ["cmake", "-S", str(self.source), "-B", str(self.build), "-G", "Ninja", "-C", str(self.source / ".cmake/ci.cmake"),
             "-DCREASEWRIGHT_TOGETHER=OFF", "-DCMAKE_DISABLE_PRECOMPILE_HEADERS=ON"],
            check=True, stdout=subprocess.DEVNULL)  # fmt: skip
        if not self.builds("core_tests", "app_tests", "creasewright"):
            sys.exit("the sources do not build")

    def builds(self, *targets: str) -> bool:
        made = subprocess.run(["ninja", "-C", str(self.build), "-j", self.jobs, *targets], capture_output=True)
        return made.returncode == 0

    def failing(self, program: str, filter_: str, seconds: int) -> str | None:
        """The name of a test that fails, or takes more seconds of processor time; None when all hold."""
        if not filter_:
            return None
        if not self.builds(program):
            return "the compiler"
        tests = [str(self.build / "tests" / program), "--gtest_brief=1", "--gtest_fail_fast", f"--gtest_filter={filter_}"]
        ran = subprocess.run(
            tests, capture_output=True, text=True, errors="replace", env=os.environ | {"QT_QPA_PLATFORM": "offscreen"},
            preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_CPU, (seconds, seconds + 5)))  # fmt: skip
        if ran.returncode == 0:
            return None
        if ran.returncode in (-signal.SIGXCPU, -signal.SIGKILL):
            return "the time limit"
        names = re.findall(r"\[  FAILED  \] ([\w./]+)", ran.stdout)
        return names[0] if names else f"a crash (exit code {ran.returncode})"

    def failing_command_line(self) -> str | None:
        if not self.builds("creasewright"):
            return "the compiler"
        ran = subprocess.run(
            ["ctest", "--test-dir", str(self.build), "-R", "^(cli|independent)", "--stop-on-failure", "-j", self.jobs],
            capture_output=True, text=True)  # fmt: skip
        if ran.returncode == 0:
            return None
        names = re.findall(r"\d+ - ([\w.]+) \(", ran.stdout)
        return names[0] if names else "the command line's tests"


@functools.cache
def sources(header: pathlib.Path) -> frozenset[pathlib.Path]:
    """Where what a header declares may be defined: its own source file, and those beside it that have no header."""
    beside = [path for path in header.parent.glob("*.cpp") if not path.with_suffix(".h").is_file()]
    said = f'{header.name}"'
    return frozenset(
        [header.with_suffix(".cpp")]
        + [path for path in beside if any(line.startswith("#include") and line.endswith(("/" + said, '"' + said))
                                          for line in path.read_text(encoding="utf-8").splitlines())])  # fmt: skip


@functools.cache
def includes(file: pathlib.Path) -> frozenset[pathlib.Path]:
    """The project's files that a file includes, with their source files."""
    found = set()
    for name in re.findall(r'^#include "([^"]+)"', file.read_text(encoding="utf-8"), re.MULTILINE):
        for root in (file.parent, ROOT / "core", ROOT / "app", ROOT / "tests", ROOT):
            header = (root / name).resolve()
            if header.is_file():
                found |= {header} | sources(header)
                break
    return frozenset(path for path in found if path.is_file())


@functools.cache
def reached(test: pathlib.Path) -> frozenset[pathlib.Path]:
    """All files that a chain of includes leads to."""
    known, open_ = {test}, [test]
    while open_:
        for path in includes(open_.pop()) - known:
            known.add(path)
            open_.append(path)
    return frozenset(known)


def suites(tests: list[pathlib.Path]) -> str:
    """A filter for the tests in some files."""
    names = set()
    for path in tests:
        names |= set(re.findall(r"^TEST(?:_F|_P)?\((\w+),", path.read_text(encoding="utf-8"), re.MULTILINE))
    return ":".join(f"{name}.*:*/{name}.*" for name in sorted(names))


def reaching(file: str) -> list[tuple[str, list[pathlib.Path]]]:
    """The test files that can reach a file of core, with their program, in the order in which they are run."""
    room = ROOT / "tests" / file.rsplit("/", 1)[0]
    while not room.is_dir():  # core/edits/kinds has its tests in tests/core/edits
        room = room.parent
    every = [path for path in sorted((ROOT / "tests").rglob("*_test.cpp")) if ROOT / file in reached(path)]
    core = [path for path in every if path.is_relative_to(ROOT / "tests/core")]
    app = [path for path in every if path.is_relative_to(ROOT / "tests/app")]
    own = [path for path in core if path.parent == room]
    quick = [path for path in core if path.name.startswith("accepted_") and path not in own]
    shown = [path for path in app if path.name.startswith("accepted_")]
    return [("core_tests", own), ("core_tests", quick), ("app_tests", shown),
            ("core_tests", [path for path in core if path not in own + quick]),
            ("app_tests", [path for path in app if path not in shown])]  # fmt: skip


def caught_by(copy: Copy, fault: Fault, quick: bool) -> str | None:
    path = copy.source / fault.file
    source = path.read_text(encoding="utf-8")
    path.write_text(fault.planted(source), encoding="utf-8")
    try:
        rounds = reaching(fault.file)
        for program, tests in rounds[:3] if quick else rounds:
            if found := copy.failing(program, suites(tests), 1800):
                return found
        return None if quick else copy.failing_command_line()
    finally:
        path.write_text(source, encoding="utf-8")


def main() -> int:
    asks = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    asks.add_argument("count", type=int)
    asks.add_argument("seed", type=int)
    asks.add_argument("--only", default="core/", help="a room, as core/making")
    asks.add_argument("--jobs", type=int, default=2)
    asks.add_argument("--from", type=int, default=1, dest="first", help="go on with the K-th of the N")
    asks.add_argument("--quick", action="store_true", help="only its own room and what is accepted")
    asked = asks.parse_args()
    known = equivalents()
    copy = Copy(asked.jobs)
    caught, same, unbuilt, survived = 0, 0, 0, []
    for fault in chosen(asked.count, asked.seed, asked.only)[asked.first - 1 :]:
        if reason := known.get((fault.file, fault.before, fault.new.strip())):
            same += 1
            print(f"equivalent  {fault}: {reason}", flush=True)
            continue
        by = caught_by(copy, fault, asked.quick)
        if by == "the compiler":
            unbuilt += 1
            print(f"not built   {fault}", flush=True)
        elif by:
            caught += 1
            print(f"caught      {fault} by {by}", flush=True)
        else:
            survived.append(fault)
            print(f"SURVIVED    {fault}", flush=True)
    judged = caught + len(survived)
    print(f"{caught} of {judged} caught; {same} equivalent, {unbuilt} that the compiler refuses")
    return 1 if judged and caught < 0.8 * judged else 0


if __name__ == "__main__":
    sys.exit(main())
