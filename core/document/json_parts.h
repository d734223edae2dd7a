#pragma once

#include <nlohmann/json.hpp>

#include "net/flat_net.h"

namespace creasewright {

using Json = nlohmann::ordered_json;

/// Rounded to six decimals, never minus zero.
Json numberJson(double value);
Json pointJson(Point p);
Json pointsJson(const std::vector<Point>& points);
std::string_view faceText(Face face);
std::string_view methodText(Method method);

}  // namespace creasewright
