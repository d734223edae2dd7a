"""Lists the tests of a GoogleTest program for CTest, one entry for each suite: starting the program takes longer than most
tests.

list_suites.py PROGRAM INTO [--singly SUITE ...] [--environment NAME=VALUE ...]

Suites named by --singly have an entry for each of their tests: those that are long, so that they run side by side, and those
that may be skipped, so that CTest says so.
"""

import argparse
import os
import pathlib
import subprocess


def tests_of(program, environment):
    """Suites in their order, each with the names of its tests."""
    listed = subprocess.run([program, "--gtest_list_tests"], capture_output=True, text=True, check=True, timeout=60,
                            env=os.environ | environment)
    suites = {}
    for line in listed.stdout.splitlines():
        name = line.split("  #", 1)[0].rstrip()
        if line.startswith("  "):
            suites[suite].append(name.strip())
        elif name.endswith("."):
            suite = name.removesuffix(".")
            suites[suite] = []
    return suites


def main():
    reader = argparse.ArgumentParser()
    reader.add_argument("program")
    reader.add_argument("into", type=pathlib.Path)
    reader.add_argument("--singly", nargs="*", default=[])
    reader.add_argument("--environment", nargs="*", default=[])
    asked = reader.parse_args()
    suites = tests_of(asked.program, dict(each.split("=", 1) for each in asked.environment))
    missing = set(asked.singly) - set(suites)
    if missing or not suites:
        raise SystemExit(f"{asked.program} has no {', '.join(sorted(missing)) or 'tests'}")
    environment = "".join(f" ENVIRONMENT [==[{each}]==]" for each in asked.environment)
    lines = []
    for suite, tests in suites.items():
        singly = suite in asked.singly
        for name in [f"{suite}.{test}" for test in tests] if singly else [suite]:
            only = name if singly else f"{suite}.*"
            lines.append(f"add_test([==[{name}]==] [==[{asked.program}]==] [==[--gtest_filter={only}]==])")
            skipped = r' SKIP_REGULAR_EXPRESSION "\\[  SKIPPED \\]"' if singly else ""
            if environment or skipped:
                lines.append(f"set_tests_properties([==[{name}]==] PROPERTIES{environment}{skipped})")
    asked.into.write_text("\n".join(lines) + "\n", encoding="utf-8")


main()
