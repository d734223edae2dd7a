#include "pages/legend.h"

#include <algorithm>
#include <array>
#include <string>

#include "drawing/arrange.h"
#include "drawing/hatching.h"
#include "drawing/role.h"

namespace creasewright {
namespace {

constexpr double kText = 2.5;
constexpr double kRow = 4.2;
constexpr double kSample = 14;  // two full dash-dot patterns
constexpr double kGap = 5;

/// What one sample stands for.
struct Entry {
  Role role;
  bool behind;
  std::string code;
};

std::vector<Entry> entriesFor(const std::vector<Role>& roles, GlueFaces glue) {
  std::vector<Entry> entries;
  for (const Role role : roles) {
    if (role != Role::Glue || glue.drawn)
      entries.push_back({role, false, std::string(roleStyle(role).legend)});
    if (role == Role::Glue && glue.behind) entries.push_back({role, true, "legend-glue-behind"});
  }
  return entries;
}

void addSample(Drawing& out, const Entry& entry, Point at) {
  const Role role = entry.role;
  const double middle = at.y + kRow / 2;
  if (role != Role::Glue && role != Role::Waste) {
    out.paths.push_back({.role = Role::Legend,
                         .rings = {{{at.x, middle}, {at.x + kSample, middle}}},
                         .like = role});
    return;
  }
  const Polygon box{{at.x, at.y + 0.6},
                    {at.x + kSample, at.y + 0.6},
                    {at.x + kSample, at.y + kRow - 0.6},
                    {at.x, at.y + kRow - 0.6}};
  PathItem lines{.role = Role::Legend, .rings = {}, .like = role};
  const bool glue = role == Role::Glue;
  const double degrees = glue && !entry.behind ? kGlueDegrees : kGlueBehindDegrees;
  for (const Segment& line : hatch({box}, glue ? kGlueSpacing : 4, degrees))
    lines.rings.push_back({line.a, line.b});
  out.paths.push_back(std::move(lines));
  if (glue)
    out.paths.push_back({.role = Role::Legend, .rings = {box}, .closed = true, .like = role});
}

}  // namespace

std::vector<Role> legendRoles(const Drawing& drawing) {
  constexpr std::array kOrder{Role::Cut,     Role::Valley, Role::Mountain, Role::Perforation,
                              Role::CutMark, Role::Glue,   Role::Waste};
  std::vector<Role> roles;
  std::copy_if(kOrder.begin(), kOrder.end(), std::back_inserter(roles), [&](Role role) {
    return std::any_of(drawing.paths.begin(), drawing.paths.end(),
                       [role](const PathItem& item) { return item.role == role; });
  });
  return roles;
}

Drawing drawLegend(const std::vector<Role>& roles, double width, const Wording& wording,
                   GlueFaces glue) {
  Drawing out;
  Point at;
  for (const Entry& each : entriesFor(roles, glue)) {
    const Label label{each.code, {}, {}};
    const double entry = kSample + 1.5 + textWidth(wording(label), kText);
    if (at.x > 0 && at.x + entry > width) at = {0, at.y - kRow};
    addSample(out, each, at);
    out.texts.push_back({.role = Role::Legend,
                         .label = label,
                         .at = at + Point{kSample + 1.5, kRow / 2 - 0.36 * kText},
                         .height = kText});
    out.width = std::max(out.width, at.x + entry);
    at.x += entry + kGap;
  }
  // Rows grew downwards from 0.
  const double rows = roles.empty() ? 0 : kRow - at.y;
  out.height = rows;
  return moved(std::move(out), {0, -at.y});
}

}  // namespace creasewright
