#include "pages/legend.h"

#include <algorithm>
#include <array>
#include <string>

#include "drawing/arrange.h"
#include "drawing/hatching.h"
#include "drawing/role.h"

namespace creasewright {
namespace {

constexpr double kLegendText = 2.5;
constexpr double kRow = 4.2;
constexpr double kSample = 14;  // two full dash-dot patterns
constexpr double kEntryGap = 5;

/// What one sample stands for.
struct Entry {
  Role role;
  bool behind;
  std::string code;
};

std::vector<Entry> entriesFor(const std::vector<Role>& roles, const LegendForm& form) {
  std::vector<Entry> entries;
  for (const Role role : roles) {
    if (role == Role::CutMark && form.prick)
      entries.push_back({role, false, "legend-prick"});
    else if (role != Role::Glue || form.glue)
      entries.push_back({role, false, std::string(roleStyle(role).legend)});
    if (role == Role::Glue && form.glueBehind)
      entries.push_back({role, true, "legend-glue-behind"});
  }
  return entries;
}

Polygon sampleBox(Point at) {
  return {{at.x, at.y + 0.6},
          {at.x + kSample, at.y + 0.6},
          {at.x + kSample, at.y + kRow - 0.6},
          {at.x, at.y + kRow - 0.6}};
}

void addGlueSample(Drawing& out, bool behind, bool outlined, Point at) {
  const Polygon box = sampleBox(at);
  PathItem lines{.role = Role::Legend, .rings = {}, .like = Role::Glue};
  for (const Segment& line : hatch({box}, kGlueSpacing, behind ? kGlueBehindDegrees : kGlueDegrees))
    lines.rings.push_back({line.a, line.b});
  if (!outlined) out.paths.push_back(std::move(lines));
  out.paths.push_back({.role = Role::Legend, .rings = {box}, .closed = true, .like = Role::Glue});
}

void addWasteSample(Drawing& out, bool tint, Point at) {
  PathItem sample{.role = Role::Legend, .rings = {}, .like = Role::Waste};
  const Polygon box = sampleBox(at);
  if (tint) {
    sample.rings = {box};
    sample.closed = true;
    sample.filled = true;
    out.paths.push_back(
        {.role = Role::Legend, .rings = {box}, .closed = true, .like = Role::Waste});
  } else {
    sample.rings = {{box[3] + Point{0, -2}, box[3], box[3] + Point{3, 0}},
                    {box[1] + Point{0, 2}, box[1], box[1] + Point{-3, 0}}};
  }
  out.paths.insert(out.paths.begin(), std::move(sample));
}

void addPrickSample(Drawing& out, Point centre) {
  for (const double radius : {0.35, 1.2}) {
    const Point from = centre + Point{radius, 0};
    Polygon ring = arc(from, centre, 360, 0.01);
    out.paths.push_back(
        {.role = Role::Legend, .rings = {std::move(ring)}, .closed = true, .filled = radius < 1});
  }
}

void addSample(Drawing& out, const Entry& entry, const LegendForm& form, Point at) {
  const Point middle = at + Point{0, kRow / 2};
  if (entry.role == Role::Glue)
    addGlueSample(out, entry.behind, form.glueOutlined, at);
  else if (entry.role == Role::Waste)
    addWasteSample(out, form.tint, at);
  else if (entry.role == Role::CutMark && form.prick)
    addPrickSample(out, middle + Point{kSample / 2, 0});
  else
    out.paths.push_back({.role = Role::Legend,
                         .rings = {{middle, middle + Point{kSample, 0}}},
                         .like = entry.role});
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
                   const LegendForm& form) {
  Drawing out;
  Point at;
  for (const Entry& each : entriesFor(roles, form)) {
    const Label label{each.code, {}, {}};
    const double entry = kSample + 1.5 + textWidth(wording(label), kLegendText);
    if (at.x > 0 && at.x + entry > width) at = {0, at.y - kRow};
    addSample(out, each, form, at);
    out.texts.push_back({.role = Role::Legend,
                         .label = label,
                         .at = at + Point{kSample + 1.5, kRow / 2 - 0.36 * kLegendText},
                         .height = kLegendText});
    out.width = std::max(out.width, at.x + entry);
    at.x += entry + kEntryGap;
  }
  // Rows grew downwards from 0.
  const double rows = roles.empty() ? 0 : kRow - at.y;
  out.height = rows;
  return moved(std::move(out), {0, -at.y});
}

}  // namespace creasewright
