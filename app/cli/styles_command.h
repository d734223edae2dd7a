#pragma once

namespace creasewright {

/// Lists every style with its parameters; `json` as DEVELOPERS.md describes it.
int runStyles(bool json);

}  // namespace creasewright
