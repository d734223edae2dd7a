#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/picture_file.h"

namespace creasewright {

/// A picture that the maker took for the hand-out: of the finished box, or of a step.
struct Photo {
  std::string step;     ///< its name (guide/step_names.h); empty = the finished box
  std::string caption;  ///< in the maker's words, or empty
  PictureFile picture;
  bool operator==(const Photo&) const = default;
};

/// The photo of a step, or of the finished box where `step` is empty; null when there is none.
const Photo* findPhoto(const std::vector<Photo>& photos, std::string_view step);

/// The photos with this one in place of another of the same step.
std::vector<Photo> withPhoto(std::vector<Photo> photos, Photo photo);

/// The photos without that of `step`.
std::vector<Photo> withoutPhoto(std::vector<Photo> photos, std::string_view step);

}  // namespace creasewright
