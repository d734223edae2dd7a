#pragma once

#include <string>
#include <vector>

namespace creasewright {

/// `words` broken at spaces so that no line is estimated wider than `width` mm at `height` mm type;
/// a single longer word stays whole.
std::vector<std::string> wrapped(const std::string& words, double width, double height);

/// `words` shortened with an ellipsis to fit `width` mm at `height` mm type.
std::string shortened(const std::string& words, double width, double height);

}  // namespace creasewright
