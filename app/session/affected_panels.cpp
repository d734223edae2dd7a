#include "session/affected_panels.h"

#include <cmath>

#include "bridge/text.h"
#include "document/build.h"
#include "styles/registry.h"

namespace creasewright {

namespace {

ParameterKind kindOf(const Style& style, std::string_view key) {
  for (const ParameterSpec& spec : style.parameters)
    if (spec.key == key) return spec.kind;
  return ParameterKind::Length;
}

bool sameOutline(const Polygon& a, const Polygon& b) {
  constexpr double kTolerance = 1e-4;  // mm
  if (a.size() != b.size()) return false;
  for (std::size_t i = 0; i < a.size(); ++i)
    if (distance(a[i], b[i]) > kTolerance) return false;
  return true;
}

QStringList differences(const BuiltDesign& a, const BuiltDesign& b) {
  QStringList out;
  for (std::size_t i = 0; i < std::min(a.pieces.size(), b.pieces.size()); ++i) {
    const Net& before = a.pieces[i].net;
    const Net& after = b.pieces[i].net;
    for (const Panel& panel : before.panels) {
      const auto other = after.find(panel.id);
      if (!other ||
          !sameOutline(panel.outline, after.panels[static_cast<std::size_t>(*other)].outline))
        out += text(panel.id);
    }
  }
  return out;
}

}  // namespace

QStringList affectedPanels(const Design& design, std::string_view key) {
  const auto style = findStyle(design.styleId);
  // On a grid a flap that gives way would take the little change back.
  Design free = design;
  free.grid = ToolGrid::none();
  const auto now = build(free);
  if (!style || !now) return {};
  const ParameterKind kind = kindOf(**style, key);
  const std::int64_t step = kind == ParameterKind::Length ? 200'000 : 1;  // 0.2 mm
  for (const std::int64_t by : {step, -step}) {
    Design other = free;
    const std::int64_t raw = design.parameters.raw(key);
    other.parameters.setCount(key, kind == ParameterKind::Flag ? 1 - raw : raw + by);
    if (const auto changed = build(other)) return differences(*now, *changed);
  }
  return {};
}

}  // namespace creasewright
