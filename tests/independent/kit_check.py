"""Random class kits through the command line, each plan judged by code that knows nothing of core.

    kit_check.py CREASEWRIGHT [KIND ...]

Small kits are compared with plain enumeration of every cut; of larger ones, kits that need no more must not be said
to. Prints the seed; CREASEWRIGHT_SEED sets it (0 draws one), and CREASEWRIGHT_KITS sets how many kits are made. Exit 1 when
anything does not hold; what is printed shows the kit.
"""

import collections
import multiprocessing
import os
import random
import resource
import shlex
import statistics
import sys
import tempfile

import carrier_judge
import class_kit
import every_cut
import kit_laws
import plan_judge
import random_kits
from design_kits import design_kit
from planner import Planner

FEW = 28  # kits of the test suite: of every kind but those of many at least one
# Left out of the few: slow ones, and those whose faults are known: scarce sheets are given to each of two cards,
# and settings on an inch scale are printed below the size of a blank in millimetres.
ONLY_OF_MANY = ("priced", "scarce", "many-sizes", "10-to-20", "tiny")
MOST_MEMORY = int(os.environ.get("CREASEWRIGHT_MEMORY", "100"))  # MB of a process; sanitizers take more
NO_PLAN = ("do not suffice", "larger than every sheet", "grain", "pattern")
MOST_LINES = 6


def judge_machine_kit(planner, chance):
    """(kit, faults, outcome) of a kit for a cutting machine."""
    kit = design_kit(planner.program, planner.folder, chance)
    kit.keep_grain = chance.random() < 0.3
    mat = chance.choice(((304.8, 304.8), (330.0, 330.0), (304.8, 609.6)))
    folder, said = planner.carriers(kit, mat)
    if said:
        return kit, [] if "larger than" in said else [f"no-plan: said is: {said}"], "no plan"
    return kit, carrier_judge.judge_carriers(kit, folder, mat), "nested"


def outcome_of(plan, best):
    if plan["proven"]:
        return "proven"
    if best is None:
        return "open"
    return "open at the optimum" if plan_judge.total_cost(plan) == best else "open above the optimum"


def made(planner, kind, chance):
    """(kit, unit of all its sizes where enumeration can solve it, its least cost where that is known)."""
    if kind == "every-cut":
        kit, unit = random_kits.brute_kit(chance)
        return kit, unit, every_cut.kit_cost(kit, unit)
    if kind == "whole-sheets":
        kit, best = random_kits.whole_sheets_kit(chance)
        return kit, None, best
    if kind == "designs":
        return design_kit(planner.program, planner.folder, chance), None, None
    return random_kits.random_kit(kind, chance), None, None


def judge_kit(planner, kind, chance, thorough):
    """(kit, faults, outcome)."""
    if kind == "machine":
        return judge_machine_kit(planner, chance)
    kit, unit, best = made(planner, kind, chance)
    plan, said = planner.plan(kit)
    wrong = kit_laws.judge_against_optimum(best, plan, said) if unit or best else []
    if plan is None:
        if kit_laws.must_have_a_plan(kit) or not any(words in said for words in NO_PLAN):
            wrong.append(f"no-plan: said is: {said}")
        return kit, wrong, "no plan"
    wrong += plan_judge.judge_plan(kit, plan)
    if kit.plan == "easy":
        wrong += kit_laws.judge_easy(planner, kit, plan)
    if thorough or (chance.random() < 0.2 if best else True):
        wrong += kit_laws.judge_papers(planner, kit, plan)
    if thorough or unit:
        wrong += kit_laws.judge_one_more(planner, kit, unit, plan)
    if thorough and not unit:
        wrong += kit_laws.judge_relative(planner, kit, plan, chance)
    return kit, wrong, outcome_of(plan, best)


def check(program, kind, seed, number, thorough):
    """(kind, lines that say what is wrong, outcome, seconds of the slowest run)."""
    chance = random.Random(f"{seed} {kind} {number}")
    with tempfile.TemporaryDirectory() as folder:
        planner, kit = Planner(program, folder), None
        try:
            kit, wrong, outcome = judge_kit(planner, kind, chance, thorough)
        except Exception as error:  # a file that a judge cannot even read is a fault like others
            wrong, outcome = [f"{type(error).__name__}: {str(error)[:300]}"], "broken"
        memory = resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss / 1024
        if memory > MOST_MEMORY:
            wrong.append(f"memory: {memory:.0f} MB, in this kit or one before it on this process")
        lines = []
        if wrong:
            shown = list(dict.fromkeys(wrong))[:MOST_LINES]
            lines = [f"{kind} {number}", *(f"    {line}" for line in shown)]
        if wrong and kit:
            lines.append("  " + shlex.join(planner.words(kit)))
            lines += [f"  | {row}" for row in class_kit.sheet_table(kit).splitlines()]
        return kind, lines, outcome, planner.slowest


def work(kinds, count):
    """Half of the kits are small enough for enumeration, the others of all kinds in turn."""
    others = [kind for kind in kinds if kind != "every-cut"]
    jobs = []
    for i in range(count):
        small = "every-cut" in kinds and (i % 2 == 0 or not others)
        jobs.append(("every-cut" if small else others[(i // 2 if "every-cut" in kinds else i) % len(others)], i))
    return jobs


def main():
    program, kinds = sys.argv[1], sys.argv[2:]
    count = int(os.environ.get("CREASEWRIGHT_KITS", FEW))
    thorough = count > FEW
    every = ["every-cut", "whole-sheets", "designs", "machine", *random_kits.KINDS]
    kinds = kinds or [kind for kind in every if thorough or kind not in ONLY_OF_MANY]
    seed = int(os.environ.get("CREASEWRIGHT_SEED", "4242")) or random.SystemRandom().randrange(1, 1 << 31)
    print(f"seed {seed} (CREASEWRIGHT_SEED={seed} repeats this run), {count} kits", flush=True)
    jobs = [(program, kind, seed, number, thorough) for kind, number in work(kinds, count)]
    outcomes, seconds_of, failed = collections.defaultdict(collections.Counter), collections.defaultdict(list), 0
    with multiprocessing.Pool(int(os.environ.get("CREASEWRIGHT_JOBS", "0")) or None) as pool:
        for kind, lines, outcome, seconds in pool.imap_unordered(run_job, jobs):
            outcomes[kind][outcome] += 1
            seconds_of[kind].append(seconds)
            failed += bool(lines)
            print(*lines, sep="\n", end="\n" if lines else "", flush=True)
    for kind, counts in outcomes.items():
        told = ", ".join(f"{n} {outcome}" for outcome, n in sorted(counts.items()))
        print(f"{kind}: {told}; seconds: median {statistics.median(seconds_of[kind]):.1f}, most {max(seconds_of[kind]):.1f}")
    print(f"{failed} kits with something wrong")
    return 1 if failed or not outcomes else 0


def run_job(job):
    return check(*job)


if __name__ == "__main__":
    sys.exit(main())
