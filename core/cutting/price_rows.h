#pragma once

#include <cstddef>
#include <cstdint>

namespace creasewright {

/// A cut of a part: the sizes of its two parts, as indices into CutGrid::sizes.
struct CutPair {
  std::uint32_t first = 0;  ///< the left or lower one, never the larger
  std::uint32_t second = 0;
};

/// So many worths are reckoned at once.
inline constexpr std::size_t kLanes = 8;

/// row[k] = the larger of row[k] and first[k] + second[k]; `length` is whole lanes.
using JoinRows = void (*)(std::int32_t* row, const std::int32_t* first, const std::int32_t* second,
                          std::size_t length);
/// One cell in kLanes rows at once, `block` holding a lane for each of them: the best of what it is
/// worth and of each cut.
using JoinCuts = void (*)(std::int32_t* block, std::size_t k, const CutPair* cuts,
                          std::size_t count);

struct RowKernels {
  JoinRows rows;
  JoinCuts cuts;
};

/// Those for any machine, and those for machines with 256-bit whole numbers; both give the same.
RowKernels plainKernels();
RowKernels wideKernels();
/// The quicker ones that this machine can run.
RowKernels rowKernels();

}  // namespace creasewright
