"""Plans open cutting instances through the command line and prints them beside what is known.

    cutting_table.py CREASEWRIGHT FOLDER [NUMBER ...]

FOLDER, or CREASEWRIGHT_CUTTING_INSTANCES, holds gcut1d .. gcut12d (Cintra, Miyazawa, Wakabayashi & Xavier, Eur. J.
Oper. Res. 191, 2008, 61-85; from the OR-Library of Beasley), each a line `width height types` and for each type
`width height demand`. Seconds of the processor and memory are those of the whole program, what one more set takes
included. Every plan is judged by tests/independent. Exit 1: a plan is faulty, contradicts what is known, or took more
than 100 MB; 77: no instances.
"""

import json
import os
import pathlib
import subprocess
import sys
import tempfile

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent.parent / "independent"))

import class_kit  # noqa: E402
import plan_judge  # noqa: E402
from class_kit import MM, Blank, Kit, Sheet  # noqa: E402

MOST_MEMORY = int(os.environ.get("CREASEWRIGHT_MEMORY", "100"))  # MB; sanitizers take more
SKIPPED = 77  # exit code for ctest
# Fixed: best published, equal to the linear bound, so optimal (Cintra et al. 2008).
FIXED = (294, 345, 332, 836, 197, 343, 591, 690, 131, 293, 330, 672)
# Turned: (lower bound, fewest sheets seen), as they stand beside the instances.
TURNED = (
    (291, 291), (282, 283), (313, 313), (836, 836), (174, 175), (301, 301),
    (542, 542), (650, 651), (122, 123), (270, 270), (298, 298), (601, 602),
)  # fmt: skip


def read_instance(file, may_turn):
    """As a kit for one person; a sheet with a pattern keeps its blanks as they are."""
    numbers = [int(word) for word in file.read_text(encoding="ascii").split()]
    width, height, types = numbers[:3]
    rows = [numbers[i : i + 3] for i in range(3, 3 + 3 * types, 3)]
    blanks = [Blank(f"T{i}", w * MM, h * MM, demand) for i, (w, h, demand) in enumerate(rows, 1)]
    return Kit([Sheet("S", width * MM, height * MM, pattern=not may_turn)], blanks)


def timed(command):
    """(seconds of the processor, MB at most, exit code) of a process."""
    with subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL) as process:
        _, status, used = os.wait4(process.pid, 0)
        process.returncode = os.waitstatus_to_exitcode(status)
    return used.ru_utime + used.ru_stime, used.ru_maxrss / 1024, process.returncode


def print_row(program, folder, number, may_turn):
    """Whether all is right with it; the sheets and the bound."""
    kit = read_instance(folder / f"gcut{number}d", may_turn)
    bound, best = TURNED[number - 1] if may_turn else (FIXED[number - 1],) * 2
    with tempfile.TemporaryDirectory() as name:
        out = pathlib.Path(name) / "plan.json"
        words = class_kit.write_kit(kit, pathlib.Path(name))
        seconds, memory, code = timed([program, "kit", *words, "-o", str(out)])
        if code != 0:
            print(f"gcut{number}d: exit {code}")
            return False, 0, 0
        plan = json.loads(out.read_text(encoding="utf-8"))
    wrong = plan_judge.judge_plan(kit, plan)
    ours, least = plan["sheets"], plan_judge.total_bound(plan)
    if least > best:
        wrong.append(f"the bound {least} is above {best}, which are known to do")
    if ours < bound:
        wrong.append(f"{ours} sheets, where {bound} are known to be needed")
    if memory > MOST_MEMORY:
        wrong.append(f"{memory:.0f} MB")
    known = f"{best}" if bound == best else f"{bound}..{best}"
    print(
        f"gcut{number}d".ljust(8), "turned" if may_turn else "fixed ", f"{len(kit.blanks):5} {ours:7} {least:7} {known:>9}",
        f"{len(plan['cards'][0]['layouts']):8} {seconds:8.2f} {memory:6.0f}", "; ".join(wrong), flush=True,
    )  # fmt: skip
    return not wrong, ours, least


def main():
    program, folder = sys.argv[1], pathlib.Path(os.environ.get("CREASEWRIGHT_CUTTING_INSTANCES", sys.argv[2]))
    numbers = [int(word) for word in sys.argv[3:]] or list(range(1, 13))
    missing = [number for number in numbers if not (folder / f"gcut{number}d").exists()]
    if missing:
        print(f"SKIPPED: {folder} does not hold the instances {missing}", file=sys.stderr)
        return SKIPPED
    os.environ["QT_QPA_PLATFORM"] = "offscreen"
    print("instance        sizes  sheets   bound     known  layouts  seconds     MB")
    fine = True
    for may_turn in (False, True):
        rows = [print_row(program, folder, number, may_turn) for number in numbers]
        fine = fine and all(row[0] for row in rows)
        known = [TURNED[n - 1] if may_turn else (FIXED[n - 1],) * 2 for n in numbers]
        print(
            "sum      turned" if may_turn else "sum      fixed ",
            f"      {sum(row[1] for row in rows):7} {sum(row[2] for row in rows):7} "
            f"{sum(low for low, _ in known):4}..{sum(high for _, high in known)}",
        )
    return 0 if fine else 1


if __name__ == "__main__":
    sys.exit(main())
