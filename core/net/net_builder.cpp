#include "net/net_builder.h"

#include <cassert>
#include <utility>

namespace creasewright {

Shape rectangle(double width, double height) { return trapezoid(width, height, 0, 0); }

Shape trapezoid(double width, double height, double leftInset, double rightInset) {
  return {{{0, 0}, {width, 0}, {width - rightInset, height}, {leftInset, height}},
          {"inner", "right", "outer", "left"}};
}

Shape roundedFlap(double width, double height, double radius) {
  Shape shape{{{0, 0}, {width, 0}, {width, height - radius}}, {"inner", "right"}};
  const auto append = [&shape](const Polyline& points) {
    for (const Point& p : points) {
      shape.edges.emplace_back("outer");
      shape.outline.push_back(p);
    }
  };
  append(arc({width, height - radius}, {width - radius, height - radius}, 90));
  if (width - 2 * radius > 1e-9) append({{radius, height}});
  append(arc({radius, height}, {radius, height - radius}, 90));
  shape.edges.emplace_back("left");
  return shape;
}

NetBuilder::NetBuilder(std::vector<std::string> stages) { net_.stages = std::move(stages); }

NetBuilder& NetBuilder::root(std::string id, Shape shape) {
  assert(net_.panels.empty());
  net_.panels.push_back(
      {std::move(id), std::move(shape.outline), std::move(shape.edges), std::move(shape.openings)});
  return *this;
}

NetBuilder& NetBuilder::hinge(HingeAt at, std::string id, Shape shape, HingeFold fold) {
  const Segment crease = part(at);
  const int parent = index(at.panel);
  const int child = static_cast<int>(net_.panels.size());
  net_.panels.push_back(
      {std::move(id), std::move(shape.outline), std::move(shape.edges), std::move(shape.openings)});
  net_.creases.push_back({parent, child, crease, Angle::degrees(fold.degrees), fold.stage,
                          fold.kind, false, fold.driven, fold.sense, std::move(fold.way)});
  return *this;
}

NetBuilder& NetBuilder::loop(HingeAt at, std::string_view other, HingeFold fold) {
  net_.creases.push_back({index(at.panel), index(other), part(at), Angle::degrees(fold.degrees),
                          fold.stage, fold.kind, true, false, fold.sense, std::move(fold.way)});
  return *this;
}

NetBuilder& NetBuilder::bends(int stage, BendCode why) {
  net_.bends.push_back({stage, why});
  return *this;
}

NetBuilder& NetBuilder::mate(std::string_view panel, std::string_view onto, Face face,
                             Method method, bool rim, Polygon patch) {
  net_.mates.push_back({index(panel), index(onto), face, method, rim, std::move(patch)});
  return *this;
}

NetBuilder& NetBuilder::open(EdgeOf one, EdgeOf other, std::string why) {
  net_.openEdges.push_back({index(one.panel), std::string(one.edge), index(other.panel),
                            std::string(other.edge), std::move(why)});
  return *this;
}

NetBuilder& NetBuilder::meetsIn(int stage) {
  assert(!net_.mates.empty());
  net_.mates.back().stage = stage;
  return *this;
}

NetBuilder& NetBuilder::slit(std::string_view panel, Polyline line) {
  net_.slits.push_back({index(panel), std::move(line)});
  return *this;
}

NetBuilder& NetBuilder::showing(const std::vector<std::string_view>& ids) {
  for (const std::string_view id : ids)
    net_.panels[static_cast<std::size_t>(index(id))].shows = true;
  return *this;
}

Segment NetBuilder::part(const HingeAt& at) const {
  const Segment side = edge(at.panel, at.edge);
  const Point along = unit(side.b - side.a);
  const double end = at.length > 0 ? at.start + at.length : length(side);
  return {side.a + along * at.start, side.a + along * end};
}

double NetBuilder::edgeLength(std::string_view panel, std::string_view name) const {
  return length(edge(panel, name));
}

int NetBuilder::index(std::string_view id) const {
  const auto found = net_.find(id);
  assert(found.has_value());
  return found.value_or(0);
}

Segment NetBuilder::edge(std::string_view panel, std::string_view name) const {
  const Panel& owner = net_.panels[static_cast<std::size_t>(index(panel))];
  const std::size_t n = owner.edges.size();
  for (std::size_t i = 0; i < n; ++i) {
    if (owner.edges[i] != name) continue;
    std::size_t last = i;
    while (last + 1 < n && owner.edges[last + 1] == name) ++last;
    return {owner.outline[i], owner.outline[(last + 1) % n]};
  }
  assert(false && "no such edge");
  return {};
}

}  // namespace creasewright
