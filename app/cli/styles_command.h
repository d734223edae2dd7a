#pragma once

namespace creasewright {

/// Lists every style with its parameters; `json` as DEVELOPERS.md describes it.
int runStyles(bool json);

/// The same for every kind of extra.
int runExtras(bool json);

}  // namespace creasewright
