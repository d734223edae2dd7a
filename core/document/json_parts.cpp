#include "document/json_parts.h"

#include <cmath>

namespace creasewright {

Json numberJson(double value) { return std::round(value * 1e6) / 1e6 + 0.0; }

Json pointJson(Point p) { return Json::array({numberJson(p.x), numberJson(p.y)}); }

Json pointsJson(const std::vector<Point>& points) {
  Json list = Json::array();
  for (const Point& p : points) list.push_back(pointJson(p));
  return list;
}

std::string_view faceText(Face face) { return face == Face::Inside ? "inside" : "outside"; }

std::string_view methodText(Method method) {
  switch (method) {
    case Method::Glue:
      return "glue";
    case Method::Tuck:
      return "tuck";
    case Method::Lock:
      return "lock";
    case Method::Rest:
      return "rest";
  }
  return "";
}

}  // namespace creasewright
