"""What holds for the plans of a class kit whatever the kit is."""

import dataclasses
import json
import math
import shlex

import easy_judge
import every_cut
import paper
import paper_judge
import plan_judge
import relatives
import same_judge


def judge_papers(planner, kit, plan):
    """The pages for themselves; they must show the plan of another run, and the saved kit give it again."""
    folder = planner.papers(kit)
    pages = paper.read_paper(folder / "plan.pdf", (90, 50))
    wrong = paper_judge.judge_paper(kit, pages)
    wrong += same_judge.judge_same(kit, plan, pages)
    wrong += same_judge.judge_table(kit, plan, (folder / "plan.csv").read_text(encoding="utf-8"))
    return wrong + judge_saved(planner, kit, folder / "class.cwkit", plan)


def judge_easy(planner, kit, plan):
    fewest, said = planner.plan(dataclasses.replace(kit, plan="fewest"))
    return easy_judge.judge_easy(kit, plan, fewest) if fewest else [f"no-plan: an easy plan, and for fewest said is: {said}"]


def judge_saved(planner, kit, file, plan):
    """The saved kit gives the same plan for the same trimmer, whatever else the machine does."""
    again = planner.folder / "again.json"
    said = planner.run(["kit", str(file), "--units", kit.units], again)
    if said:
        return [f"saved: the saved kit gives no plan: {said}"]
    other = json.loads(again.read_text(encoding="utf-8"))
    if other == plan:
        return []
    sums = [(p["sheets"], plan_judge.total_bound(p), p["one_more"]) for p in (plan, other)]
    return [f"unsteady: the same kit gave {sums[0]} and then {sums[1]}" + (", laid out otherwise" if sums[0] == sums[1] else "")]


def judge_against_optimum(best, plan, said):
    """`best` = the least cost, None where the kit cannot be cut."""
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
