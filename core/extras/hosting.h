#pragma once

#include <vector>

#include "extras/extra_kind.h"

namespace creasewright {

/// What each extra goes with, by its index: Extra::host where it names something that can carry
/// it. Errors: ExtraHostUnknown, ExtraHostUnfit, and for all of a circle the same ExtraHostCircle;
/// an extra whose host cannot be made is not made either.
std::vector<Result<int>> hostsOf(const std::vector<Extra>& extras);

/// Whether something can carry a kind: kOnBox, or the kind of another extra.
bool mayCarry(const ExtraKind& host, const ExtraKind& guest);
bool mayLieOnBox(const ExtraKind& guest);

/// The extras that one of them may lie on without a circle, by their indices.
std::vector<int> possibleHosts(const std::vector<Extra>& extras, int guest);

/// Without one of them: what lay on it lies on what it lay on, or, where that cannot carry it, on
/// what is outermost then.
std::vector<Extra> withoutExtra(std::vector<Extra> extras, int gone);

/// `box`, `outermost`, the number of an extra from 1, or the name of a kind or its last word
/// (`band`), the last one before `self`, else after it, with `-2` behind it the second.
/// Error: ExtraHostUnknown.
Result<int> findHost(const std::vector<Extra>& extras, int self, std::string_view text);
/// The text that findHost reads back: `box`, `outermost`, or a number from 1.
std::string hostText(int host);

}  // namespace creasewright
