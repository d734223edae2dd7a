#pragma once

#include <cstddef>

namespace creasewright {

/// The number of a panel, a part or a crease as an index.
inline std::size_t at(int index) { return static_cast<std::size_t>(index); }

}  // namespace creasewright
