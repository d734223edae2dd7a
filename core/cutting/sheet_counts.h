#pragma once

#include "cutting/plan_state.h"

namespace creasewright {

std::int64_t worthOf(const std::vector<int>& counts, const std::vector<std::int64_t>& worth);

/// What follows for the bound from prices of the blanks, where all patterns are columns.
void boundByWorths(PlanState& state, const std::vector<double>& prices);

/// Raises the bound over the numbers of sheets of each kind, and looks for plans of just these
/// numbers. For any worths of the blanks, sheets of each kind times what one is worth at most must
/// be as much as all blanks are worth. The cheapest numbers that no worths rule out are a bound; a
/// linear programme (fewest blanks, by area, left over from just so many sheets) gives worths that
/// rule them out or shows that there are none; then a plan with these numbers is looked for. Own
/// derivation; near to it is branching on the numbers of stock lengths (Belov & Scheithauer, Eur.
/// J. Oper. Res. 141, 2002).
void boundByCounts(PlanState& state);

/// Of all that is known as few worths as give the bound.
std::vector<WorthProof> fewProofs(PlanState& state);

}  // namespace creasewright
