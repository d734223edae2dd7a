#include "document/shared_pictures.h"

#include <charconv>
#include <cstddef>
#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include <nlohmann/json.hpp>

namespace creasewright {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t kMostCharacters = 96'000'000;

/// Calls `see` with the `file` of each `picture` below.
void eachFile(Json& json, const std::function<void(std::string&)>& see) {
  if (json.is_array())
    for (Json& item : json) eachFile(item, see);
  if (!json.is_object()) return;
  for (auto& [key, value] : json.items()) {
    const bool picture = key == "picture" && value.is_object() && value.contains("file");
    if (picture && value["file"].is_string())
      see(value["file"].get_ref<std::string&>());
    else
      eachFile(value, see);
  }
}

/// The place in a list that `#3` names, or the end.
std::size_t placeIn(const Json& list, std::string_view text) {
  std::size_t number = 0;
  const char* end = text.data() + text.size();
  if (!text.starts_with('#')) return list.size();
  const auto read = std::from_chars(text.data() + 1, end, number);
  const bool whole = read.ec == std::errc() && read.ptr == end && number > 0;
  return whole && number <= list.size() ? number - 1 : list.size();
}

}  // namespace

void sharePictures(Json& design) {
  std::map<std::string, int> seen;
  eachFile(design, [&](const std::string& file) { ++seen[file]; });
  std::map<std::string, std::size_t> places;
  std::vector<std::string> shared;
  eachFile(design, [&](std::string& file) {
    if (seen[file] < 2) return;
    const auto [place, isNew] = places.try_emplace(file, shared.size());
    if (isNew) shared.push_back(file);
    file = "#" + std::to_string(place->second + 1);
  });
  if (!shared.empty()) design["pictures"] = shared;
}

void unsharePictures(Json& design) {
  if (!design.is_object() || !design.contains("pictures")) return;
  const Json list = std::move(design["pictures"]);
  design.erase("pictures");
  if (!list.is_array()) return;
  std::size_t characters = 0;
  eachFile(design, [&](std::string& file) {
    const std::size_t place = placeIn(list, file);
    if (place == list.size() || !list[place].is_string()) return;
    const auto& whole = list[place].get_ref<const std::string&>();
    characters += whole.size();
    if (characters <= kMostCharacters) file = whole;
  });
}

}  // namespace creasewright
