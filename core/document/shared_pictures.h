#pragma once

#include <nlohmann/json_fwd.hpp>

namespace creasewright {

/// Moves each picture that a design file has more than once (`file` of a `picture`, base64) to the
/// list `pictures` of the design; where it stood stands its number from 1, as `#1`.
void sharePictures(nlohmann::ordered_json& design);

/// Puts them back and takes the list away. Numbers of no picture stay as they are, and so do those
/// beyond 96 million characters in all, which would fill the memory: they are no base64.
void unsharePictures(nlohmann::ordered_json& design);

}  // namespace creasewright
