"""Random class kits through the command line, each plan judged by code that knows nothing of core.

    kit_check.py CREASEWRIGHT [KIND ...]

Small kits are compared with plain enumeration of every cut; of larger ones, kits that need no more must not be said
to. Prints the seed; CREASEWRIGHT_SEED repeats it, and CREASEWRIGHT_KITS sets how many kits are made. Exit 1 when
anything does not hold; what is printed shows the kit.
"""

import collections
import dataclasses
import json
import math
import multiprocessing
import os
import pathlib
import random
import resource
import shlex
import subprocess
import sys
import tempfile

import carrier_judge
import class_kit
import every_cut
import paper
import paper_judge
import plan_judge
import random_kits
import relatives
import same_judge
from design_kits import design_kit

FEW = 60  # kits of the test suite
# Left out of the few: slow ones, and those whose settings are printed below the size that is asked for.
ONLY_OF_MANY = ("priced", "scarce", "many-sizes", "tiny", "two-cards", "mixed-units")
SECONDS = 120
MOST_MEMORY = int(os.environ.get("CREASEWRIGHT_MEMORY", "100"))  # MB of a process; sanitizers take more
NO_PLAN = ("do not suffice", "larger than every sheet", "grain", "pattern")
MOST_LINES = 6


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


def judge_papers(planner, kit, plan, same):
    """The pages for themselves; with `same` they must show the plan of another run, and the saved kit give it again."""
    folder = planner.papers(kit)
    pages = paper.read_paper(folder / "plan.pdf", (90, 50))
    wrong = paper_judge.judge_paper(kit, pages)
    if not same:
        return wrong
    wrong += same_judge.judge_same(kit, plan, pages)
    wrong += same_judge.judge_table(kit, plan, (folder / "plan.csv").read_text(encoding="utf-8"))
    return wrong + judge_saved(planner, folder / "class.cwkit", plan)


def judge_saved(planner, file, plan):
    """The saved kit gives the same plan, whatever else the machine does."""
    again = planner.folder / "again.json"
    said = planner.run(["kit", str(file)], again)
    if said:
        return [f"saved: the saved kit gives no plan: {said}"]
    other = json.loads(again.read_text(encoding="utf-8"))
    if other == plan:
        return []
    sums = [(p["sheets"], plan_judge.total_bound(p), p["one_more"]) for p in (plan, other)]
    return [f"unsteady: the same kit gave {sums[0]} and then {sums[1]}" + (", laid out otherwise" if sums[0] == sums[1] else "")]


def judge_against_enumeration(kit, unit, plan, said):
    best = every_cut.kit_cost(kit, unit)
    if plan is None:
        return [] if best is None else [f"no-plan: {best} is possible, said is: {said}"]
    if best is None:
        return ["no-plan: a plan is told where none can be"]
    cost, bound = plan_judge.total_cost(plan), plan_judge.total_bound(plan)
    wrong = []
    if cost < best:
        wrong.append(f"optimum: {cost} is told, {best} is the least")
    if bound > best:
        wrong.append(f"false-proof: the bound is {bound}, {best} can do")
    if plan["proven"] and cost != best:
        wrong.append(f"false-proof: {cost} is called proven, {best} can do")
    return wrong


def judge_one_more(planner, kit, unit, plan):
    """What one more person takes, against the plan for so many."""
    more = plan["one_more"]
    larger = dataclasses.replace(kit, takers=kit.takers + 1)
    amounts = [kit.priced(card) for card in kit.demands()]
    if more is None or any(amounts) != all(amounts):
        return []
    told = plan_judge.total_cost(plan) + (more["price"] if all(amounts) else more["sheets"])
    wanted = [blank.per_set * larger.sets for blank in larger.blanks]
    if unit and math.prod(n + 1 for n in wanted) <= 100:
        least = most = every_cut.kit_cost(larger, unit)
    else:
        anew, _ = planner.plan(larger)
        least, most = (plan_judge.total_bound(anew), plan_judge.total_cost(anew)) if anew else (None, None)
    if least is None or told < least:
        return [f"one-more: {told} in all is told for one more person, at least {least} are needed"]
    if more["proven"] and told > most:
        return [f"one-more: {told} in all is called proven for one more person, {most} can do"]
    return []


def judge_relative(planner, kit, plan, chance):
    change, relative = relatives.random_relative(kit, chance)
    other, said = planner.plan(relative)
    if other is None:
        return [f"relative: {change}, and there is no plan: {said}"]
    wrong = [f"relative: {change}: {line}" for line in plan_judge.judge_plan(relative, other)]
    if plan_judge.total_bound(other) > plan_judge.total_cost(plan):
        wrong.append(
            f"false-proof: {change}, at least {plan_judge.total_bound(other)} are said to be needed, "
            f"{plan_judge.total_cost(plan)} do: {shlex.join(planner.words(relative))}"
        )
    return wrong


def must_have_a_plan(kit):
    """Whether every blank fits a sheet of which there are as many as one wants."""

    def holds(sheet, blank):
        w, h = kit.laid(sheet)
        return (blank.w <= w and blank.h <= h) or (kit.may_turn(sheet) and blank.h <= w and blank.w <= h)

    return all(
        any(holds(sheet, blank) for sheet in kit.sheets_for(card) if not sheet.limit)
        for card, blanks in kit.demands().items()
        for blank in blanks
    )


def judge_machine_kit(planner, chance):
    """(kit, faults, outcome) of a kit for a cutting machine."""
    kit = design_kit(planner.program, planner.folder, chance)
    kit.keep_grain = chance.random() < 0.3
    mat = chance.choice(((304.8, 304.8), (330.0, 330.0), (304.8, 609.6)))
    folder, said = planner.carriers(kit, mat)
    if said:
        return kit, [] if "larger than" in said else [f"no-plan: said is: {said}"], "no plan"
    return kit, carrier_judge.judge_carriers(kit, folder, mat), "nested"


def judge_kit(planner, kind, chance, thorough):
    """(kit, faults, outcome)."""
    if kind == "machine":
        return judge_machine_kit(planner, chance)
    unit = None
    if kind == "every-cut":
        kit, unit = random_kits.brute_kit(chance)
    elif kind == "designs":
        kit = design_kit(planner.program, planner.folder, chance)
    else:
        kit = random_kits.random_kit(kind, chance)
    plan, said = planner.plan(kit)
    wrong = judge_against_enumeration(kit, unit, plan, said) if unit else []
    if plan is None:
        if must_have_a_plan(kit) or not any(words in said for words in NO_PLAN):
            wrong.append(f"no-plan: said is: {said}")
        return kit, wrong, "no plan"
    wrong += plan_judge.judge_plan(kit, plan)
    if not unit or chance.random() < 0.2:
        wrong += judge_papers(planner, kit, plan, bool(unit) or thorough)
    if thorough or unit:
        wrong += judge_one_more(planner, kit, unit, plan)
    if thorough and not unit:
        wrong += judge_relative(planner, kit, plan, chance)
    return kit, wrong, "proven" if plan["proven"] else "open"


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
            lines += [f"  {shlex.join(planner.words(kit))}", *(f"  | {row}" for row in class_kit.sheet_table(kit).splitlines())]
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
    every = ["every-cut", "designs", "machine", *random_kits.KINDS]
    kinds = kinds or [kind for kind in every if thorough or kind not in ONLY_OF_MANY]
    seed = int(os.environ.get("CREASEWRIGHT_SEED", "0")) or random.SystemRandom().randrange(1, 1 << 31)
    print(f"seed {seed} (CREASEWRIGHT_SEED={seed} repeats this run), {count} kits", flush=True)
    jobs = [(program, kind, seed, number, thorough) for kind, number in work(kinds, count)]
    outcomes, slowest, failed = collections.defaultdict(collections.Counter), collections.Counter(), 0
    with multiprocessing.Pool(int(os.environ.get("CREASEWRIGHT_JOBS", "0")) or None) as pool:
        for kind, lines, outcome, seconds in pool.imap_unordered(run_job, jobs):
            outcomes[kind][outcome] += 1
            slowest[kind] = max(slowest[kind], seconds)
            failed += bool(lines)
            print(*lines, sep="\n", end="\n" if lines else "", flush=True)
    for kind, counts in outcomes.items():
        print(f"{kind}: " + ", ".join(f"{n} {outcome}" for outcome, n in sorted(counts.items())), f"; slowest {slowest[kind]:.1f} s")
    print(f"{failed} kits with something wrong")
    return 1 if failed or not outcomes else 0


def run_job(job):
    return check(*job)


if __name__ == "__main__":
    sys.exit(main())
