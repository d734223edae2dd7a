#include "session/affected_panels.h"

#include <cmath>

#include "bridge/text.h"
#include "document/room_advice.h"

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

Design offGrid(Design design) {
  design.grid = ToolGrid::none();
  return design;
}

}  // namespace

AffectedPanels::AffectedPanels(const Design& design)
    : design_(offGrid(design)), now_(buildWithoutAdvice(design_)) {}

QStringList AffectedPanels::of(std::string_view key) const {
  if (!now_) return {};
  const ParameterKind kind = kindOf(*now_->style, key);
  const std::int64_t step = kind == ParameterKind::Length ? 200'000 : 1;  // 0.2 mm
  for (const std::int64_t by : {step, -step}) {
    Design other = design_;
    const std::int64_t raw = design_.parameters.raw(key);
    other.parameters.setCount(key, kind == ParameterKind::Flag ? 1 - raw : raw + by);
    if (const auto changed = buildWithoutAdvice(other)) return differences(*now_, *changed);
  }
  return {};
}

}  // namespace creasewright
