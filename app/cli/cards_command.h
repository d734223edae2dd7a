#pragma once

namespace creasewright {

/// Lists the cards that can be named, thickness and weight beside each; `json` as DEVELOPERS.md
/// describes it.
int runCards(bool json);

}  // namespace creasewright
