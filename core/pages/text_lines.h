#pragma once

#include <functional>
#include <string>
#include <vector>

namespace creasewright {

/// Width in mm of a line of words.
using MeasureLine = std::function<double(const std::string&)>;

/// `words` broken at spaces so that no line is wider than `width` mm by `measure`; a single longer
/// word is broken too.
std::vector<std::string> wrapped(const std::string& words, double width,
                                 const MeasureLine& measure);

/// The same by the estimate of textWidth() for `height` mm type; a single longer word stays whole.
std::vector<std::string> wrapped(const std::string& words, double width, double height);

/// `words` shortened with an ellipsis to fit `width` mm at `height` mm type.
std::string shortened(const std::string& words, double width, double height);

}  // namespace creasewright
