#include "document/photo.h"

#include <algorithm>

namespace creasewright {

const Photo* findPhoto(const std::vector<Photo>& photos, std::string_view step) {
  const auto found = std::ranges::find(photos, step, &Photo::step);
  return found == photos.end() ? nullptr : &*found;
}

std::vector<Photo> withPhoto(std::vector<Photo> photos, Photo photo) {
  const auto found = std::ranges::find(photos, photo.step, &Photo::step);
  if (found == photos.end())
    photos.push_back(std::move(photo));
  else
    *found = std::move(photo);
  return photos;
}

std::vector<Photo> withoutPhoto(std::vector<Photo> photos, std::string_view step) {
  std::erase_if(photos, [step](const Photo& photo) { return photo.step == step; });
  return photos;
}

}  // namespace creasewright
